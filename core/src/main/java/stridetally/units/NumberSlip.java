package stridetally.units;

import java.util.Optional;
import java.util.regex.Pattern;

/** Slips in a folded number cell that can be named, so that the person is told the mend and not only "unreadable". */
final class NumberSlip {
    private static final Pattern NEGATIVE = Pattern.compile("- ?[0-9.,].*");
    private static final Pattern EXPONENT = Pattern.compile("[+-]?[0-9.,]+e[+-]?[0-9]+( .*)?");
    private static final Pattern NO_NUMBER = Pattern.compile("[+-]?(nan|inf|infinity|\u221e)");
    private static final Pattern LETTERS = Pattern.compile("[0-9.,]*[oli][0-9.,oli]*");
    private static final Pattern RANGE = Pattern.compile("[0-9.,]+ ?(-|to) ?[0-9.,]+.*");

    private NumberSlip() {}

    /** The slip, when there is a known one. */
    static Optional<Refusal> in(String text) {
        if (NEGATIVE.matcher(text).matches()) {
            return refusal(Reason.NEGATIVE, "a value below zero cannot be measured; check the cell");
        }
        if (EXPONENT.matcher(text).matches() || NO_NUMBER.matcher(text).matches()) {
            return refusal(Reason.NOT_A_PLAIN_NUMBER, "write the number in plain digits");
        }
        if (hasLetterForDigit(text)) {
            return refusal(Reason.LETTER_FOR_DIGIT, "a letter O or l stands among the digits; type 0 or 1");
        }
        if (RANGE.matcher(text).matches()) {
            return refusal(Reason.UNREADABLE, "write one number, not a range");
        }
        if (text.indexOf(':') >= 0) {
            return refusal(Reason.UNREADABLE, "write a time as minutes:seconds with two digits, such as 1:05");
        }
        return Optional.empty();
    }

    private static boolean hasLetterForDigit(String text) {
        int space = text.indexOf(' ');
        String first = space < 0 ? text : text.substring(0, space);
        boolean digits = first.chars().anyMatch(Character::isDigit);
        return LETTERS.matcher(first).matches() && (digits || first.equals("o"));
    }

    private static Optional<Refusal> refusal(Reason reason, String mend) {
        return Optional.of(new Refusal(reason, mend));
    }
}
