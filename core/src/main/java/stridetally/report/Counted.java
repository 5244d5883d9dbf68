package stridetally.report;

/** A count with its noun, one or many: {@code 1 session}, {@code 3 sessions}, {@code 1 try}, {@code 2 tries}. */
final class Counted {
    private Counted() {}

    static String of(long count, String noun) {
        return count + " " + noun(count, noun);
    }

    static String noun(long count, String noun) {
        if (count == 1) {
            return noun;
        }
        return noun.equals("try") ? "tries" : noun + "s";
    }
}
