package stridetally.measures;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stridetally.model.Protocol;
import stridetally.problem.At;
import stridetally.problem.Checked;
import stridetally.problem.ProblemCode;
import stridetally.problem.RowProblem;
import stridetally.problem.Spelling;
import stridetally.units.Folding;

/**
 * A protocol cell, {@code key=value} pairs joined by {@code ;}, into a protocol. Keys are the measure's closed list. Case,
 * order, spaces and the space between a number and its unit do not matter, so that {@code Line Length = 3 M} and {@code
 * line_length=3m} are one protocol.
 */
public final class ProtocolText {
    private static final int LONGEST_SHOWN = 24;

    private ProtocolText() {}

    /** Reads a cell; a blank one states nothing. One problem for each pair that cannot be read. */
    public static Checked<Protocol> parse(String text, Measure measure, At at) {
        TreeMap<String, String> keys = new TreeMap<>();
        List<RowProblem> problems = new java.util.ArrayList<>();
        if (text.isEmpty()) {
            return Checked.fine(Protocol.NONE);
        }
        for (String pair : text.split(";", -1)) {
            if (!pair.isBlank()) {
                take(pair, measure, at, keys).ifPresent(problems::add);
            }
        }
        return problems.isEmpty() ? Checked.fine(new Protocol(keys)) : Checked.setAside(problems);
    }

    private static Optional<RowProblem> take(String pair, Measure measure, At at, Map<String, String> keys) {
        int equals = pair.indexOf('=');
        String key = equals < 0
                ? ""
                : folded(pair.substring(0, equals)).replace(' ', '_').replace('-', '_');
        String value = equals < 0 ? "" : value(pair.substring(equals + 1));
        if (key.isEmpty() || value.isEmpty() || value.indexOf('=') >= 0) {
            return Optional.of(problem(
                    ProblemCode.PROTOCOL_UNREADABLE,
                    at,
                    pair,
                    "key=value",
                    "write pairs such as shoes=on;surface=floor"));
        }
        if (!measure.protocolKeys().contains(key)) {
            String mend = Spelling.nearest(key, measure.protocolKeys())
                    .map(known -> "did you mean " + known + "?")
                    .orElse("leave it out, or write it in the note");
            String known = measure.protocolKeys().isEmpty() ? "no keys" : String.join(", ", measure.protocolKeys());
            return Optional.of(
                    problem(ProblemCode.PROTOCOL_KEY_UNKNOWN, at, key, "for " + measure.id() + ": " + known, mend));
        }
        String before = keys.putIfAbsent(key, value);
        return before == null || before.equals(value)
                ? Optional.empty()
                : Optional.of(
                        problem(ProblemCode.PROTOCOL_UNREADABLE, at, key, "each key once", "keep one value of " + key));
    }

    private static RowProblem problem(ProblemCode code, At at, String found, String expected, String mend) {
        String shown = found.strip();
        return new RowProblem(code, at, shown.length() > LONGEST_SHOWN ? "" : shown, expected, mend);
    }

    /** Without the space between a number and its unit, which is one letter or two. */
    private static String value(String written) {
        String value = folded(written);
        int space = value.lastIndexOf(' ');
        int letters = value.length() - space - 1;
        boolean unit = space > 0
                && (letters == 1 || letters == 2)
                && isUnitLetter(value.charAt(value.length() - 1))
                && isUnitLetter(value.charAt(space + 1));
        return unit && value.charAt(space - 1) >= '0' && value.charAt(space - 1) <= '9'
                ? value.substring(0, space) + value.substring(space + 1)
                : value;
    }

    private static boolean isUnitLetter(char letter) {
        return letter >= 'a' && letter <= 'z';
    }

    private static String folded(String written) {
        return Folding.words(written, ProtocolText::isGap);
    }

    private static boolean isGap(int letter) {
        return Folding.isBlank(letter) || letter == '\u00a0' || letter == '\u202f';
    }
}
