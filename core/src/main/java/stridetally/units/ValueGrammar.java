package stridetally.units;

import java.util.List;
import java.util.Optional;
import stridetally.units.Parsed.NotTaken;
import stridetally.units.Parsed.Taken;

/**
 * One value cell, with its unit and {@code of} cells, into one reading. Refuses by default: nothing is guessed from the
 * size of a number, nothing is stripped silently, and missing is never zero. Never throws on any text; only a share whose unit is not one of shares is a mistake of the caller.
 *
 * <p>Taken: plain decimals; a number with a unit of the measure's kind ({@code 12 sec}, {@code 6 ft 2 in}, {@code 6'2"});
 * clock times ({@code 1:05}); {@code >60}, {@code 60+}, {@code <5}; {@code 4/5}, {@code 4 of 5} and {@code 80%} where a
 * share is expected; the words of {@link ValueWords}; and the marks of {@link Remarked}.
 *
 * @param decimal the decimal mark of the file
 * @param words the words that stand where a value would
 */
public record ValueGrammar(DecimalMark decimal, ValueWords words) {

    /** Decimal point and the usual words. */
    public static final ValueGrammar STANDARD = new ValueGrammar(DecimalMark.POINT, ValueWords.STANDARD);

    /** A longer cell is not a value. Ours. */
    private static final int LONGEST = 60;

    /** Below every limit of a number, and exact as an amount. */
    private static final int LONGEST_PLAIN = 6;

    private static final int LONGEST_SHOWN = 24;

    /**
     * Reads one value.
     *
     * @param value the value cell as written
     * @param unit the unit cell; blank when the file has none
     * @param of the cell of the whole; blank when the file has none
     * @param expecting what sort of value the measure has
     * @param target the measure's unit, also that of a number without one
     */
    public Parsed parse(String value, String unit, String of, Expecting expecting, Unit target) {
        if (expecting == Expecting.SHARE_OR_TRIES && target.dimension() != Dimension.SHARE) {
            throw new IllegalArgumentException("a share is not kept in " + target);
        }
        String text = CellText.fold(value);
        if (of.isEmpty() && isPlain(text, expecting) && (unit.isEmpty() || unit.equals(target.symbol()))) {
            return new Taken(new Reading.Exact(Amount.of(text)), List.of());
        }
        Optional<Reading.Why> word = words.find(text);
        if (word.isPresent()) {
            return new Taken(new Reading.NotObtained(word.get()), List.of());
        }
        MarkedText marked = MarkedText.read(text);
        ValueCells cells =
                new ValueCells(marked.body(), marked.bound(), CellText.fold(unit), CellText.fold(of), target, decimal);
        Step<Reading> read = reading(text, cells, expecting);
        if (read instanceof Step.Went<Reading> went) {
            return new Taken(went.value(), marked.marks());
        }
        Refusal refusal = ((Step.Stopped<Reading>) read).refusal();
        return new NotTaken(refusal.reason(), shown(value, text), expected(expecting, target), refusal.mend());
    }

    /** A short bare number in the measure's own unit, as nearly every row has: no rule below can say anything else of it. */
    private boolean isPlain(String text, Expecting expecting) {
        return (expecting == Expecting.AMOUNT || (expecting == Expecting.WHOLE_NUMBER && text.indexOf('.') < 0))
                && decimal == DecimalMark.POINT
                && !text.isEmpty()
                && text.length() <= LONGEST_PLAIN
                && text.charAt(text.length() - 1) != '.'
                && NumberText.isBare(text, decimal);
    }

    private Step<Reading> reading(String text, ValueCells cells, Expecting expecting) {
        Optional<Reading.Why> word = words.find(cells.value());
        if (word.isPresent() && cells.bound() == MarkedText.Bound.NONE) {
            return Step.of(new Reading.NotObtained(word.get()));
        }
        Optional<Refusal> fault = NumberText.isBare(text, decimal) && text.length() <= LONGEST
                ? Optional.empty()
                : fault(text, cells.value(), expecting);
        if (fault.isPresent()) {
            return new Step.Stopped<>(fault.get());
        }
        return switch (expecting) {
            case AMOUNT, WHOLE_NUMBER -> AmountRule.read(cells, expecting);
            case TRIES -> TriesRule.read(cells);
            case SHARE_OR_TRIES -> ShareRule.read(cells);
        };
    }

    /** Faults of the whole cell that hold whatever is expected. */
    private Optional<Refusal> fault(String text, String body, Expecting expecting) {
        if (text.isEmpty()) {
            return Optional.of(new Refusal(Reason.MISSING, "write a value, or why there is none"));
        }
        if (text.length() > LONGEST) {
            return Optional.of(new Refusal(Reason.UNREADABLE, "write the value only; words belong in the note"));
        }
        if (DateText.looksLikeOne(text)) {
            return Optional.of(
                    new Refusal(
                            Reason.LOOKS_LIKE_A_DATE,
                            "this is a date; a spreadsheet may have turned 4/5 into one: write 4 of 5, or 4 here and 5 in the column of"));
        }
        boolean yesOrNo = body.equals("yes") || body.equals("no");
        if (isWords(body) && !(expecting == Expecting.TRIES && yesOrNo)) {
            return Optional.of(new Refusal(
                    Reason.WORD_UNKNOWN,
                    words.opening(body)
                            .map(known -> "write " + known + " here, and the rest in the note")
                            .or(() -> words.nearest(body).map(known -> "did you mean " + known + "?"))
                            .orElse("words belong in the note")));
        }
        return Optional.empty();
    }

    private static boolean isWords(String body) {
        boolean letterFirst = !body.isEmpty() && Character.isLetter(body.charAt(0));
        boolean digits = body.chars().anyMatch(Character::isDigit);
        return letterFirst && !digits && !body.equals("o") && !body.matches("nan|inf|infinity");
    }

    /** The cell as written, or blank when it may be free text. */
    private String shown(String value, String text) {
        boolean likeANumber = text.length() <= LONGEST_SHOWN && text.chars().anyMatch(Character::isDigit);
        boolean sign = text.length() <= 3;
        return likeANumber || sign || words.nearest(text).isPresent() ? value.strip() : "";
    }

    private static String expected(Expecting expecting, Unit target) {
        String what = switch (expecting) {
            case AMOUNT -> "a number in " + target.symbol() + ", or >60 when stopped at the cap";
            case WHOLE_NUMBER -> "a whole number in " + target.symbol();
            case TRIES -> "tries met of tries given, such as 4 of 5";
            case SHARE_OR_TRIES -> "a share such as 80% or 0.8, or tries such as 4 of 5";
        };
        return what + ", or not tested, refused, absent, unable";
    }
}
