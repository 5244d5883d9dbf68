package stridetally.table;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * How a table separates its cells.
 *
 * @param delimiter comma, semicolon, tab or pipe
 * @param sepLine whether the first line only says so ({@code sep=;}) and is skipped
 */
public record Dialect(char delimiter, boolean sepLine) {
    private static final List<Character> CHOICES = List.of(',', ';', '\t', '|');

    /** Comma-separated, what we write ourselves. */
    public static final Dialect COMMA = new Dialect(',', false);

    private static final String SEP_LINE = "sep=";

    public Dialect {
        if (!CHOICES.contains(delimiter)) {
            throw new IllegalArgumentException("delimiter U+" + Integer.toHexString(delimiter));
        }
    }

    /** With a delimiter that the person named. */
    public static Dialect of(char delimiter) {
        return new Dialect(delimiter, false);
    }

    /**
     * The delimiter under which one of the first lines holds most known headings; with none known, most cells in the first
     * line that is not blank; else comma. Equal counts go to comma, semicolon, tab, pipe in this order. A first line
     * {@code sep=;} decides by itself. The data rows have no say, because decimal commas and free text mislead.
     */
    public static Dialect sniff(List<String> firstLines, Predicate<String> knownHeading) {
        List<String> lines = new ArrayList<>();
        for (String line : firstLines) {
            String plain = FormulaGuard.withoutMark(line);
            if (!plain.isBlank()) {
                lines.add(plain);
            }
        }
        if (lines.isEmpty()) {
            return COMMA;
        }
        String first = lines.get(0).strip();
        if (first.length() == SEP_LINE.length() + 1 && first.startsWith(SEP_LINE) && isChoice(first.charAt(4))) {
            return new Dialect(first.charAt(4), true);
        }
        if (lines.get(0).equals(SEP_LINE + "\t")) {
            return new Dialect('\t', true);
        }
        char chosen = ',';
        long best = -1;
        for (char delimiter : CHOICES) {
            long score = score(lines, delimiter, knownHeading);
            if (score > best) {
                best = score;
                chosen = delimiter;
            }
        }
        return of(chosen);
    }

    /** The delimiter in words, for messages. */
    public String delimiterWord() {
        return switch (delimiter) {
            case ';' -> "semicolon";
            case '\t' -> "tab";
            case '|' -> "pipe";
            default -> "comma";
        };
    }

    private static boolean isChoice(char one) {
        return CHOICES.contains(one);
    }

    /** Known headings first; the number of cells of the first line only breaks ties between delimiters without any. */
    private static long score(List<String> lines, char delimiter, Predicate<String> knownHeading) {
        RecordParser parser = new RecordParser(delimiter);
        long known = 0;
        for (String line : lines) {
            // A line of no more cells than headings known already cannot say more.
            if (mostCells(line, delimiter) <= known) {
                continue;
            }
            List<String> cells = cells(parser, line);
            long here = 0;
            for (int cell = 0; cell < cells.size() && cells.size() > known; cell++) {
                here += knownHeading.test(cells.get(cell)) ? 1 : 0;
            }
            known = Math.max(known, here);
        }
        return known > 0
                ? known * LineFraming.LONGEST_RECORD
                : cells(parser, lines.get(0)).size();
    }

    private static long mostCells(String line, char delimiter) {
        long most = 1;
        for (int place = line.indexOf(delimiter); place >= 0; place = line.indexOf(delimiter, place + 1)) {
            most++;
        }
        return most;
    }

    /** A line whose quotes do not work out, as where a heading goes on in the next line, still shows its delimiter. */
    private static List<String> cells(RecordParser parser, String line) {
        return parser.cells(line).orElseGet(() -> parser.split(line.toCharArray(), 0, line.length()));
    }
}
