package stridetally.measures;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stridetally.model.Protocol;
import stridetally.problem.At;
import stridetally.problem.Checked;
import stridetally.problem.ProblemCode;
import stridetally.problem.RowProblem;
import stridetally.problem.Spelling;

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
        for (String pair : text.split(";", -1)) {
            if (!pair.isBlank()) {
                take(pair, measure, at, keys).ifPresent(problems::add);
            }
        }
        return problems.isEmpty() ? Checked.fine(new Protocol(keys)) : Checked.setAside(problems);
    }

    private static Optional<RowProblem> take(String pair, Measure measure, At at, Map<String, String> keys) {
        int equals = pair.indexOf('=');
        String key = equals < 0 ? "" : folded(pair.substring(0, equals)).replaceAll("[ -]", "_");
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

    private static String value(String written) {
        return folded(written).replaceAll("(?<=[0-9]) (?=[a-z]{1,2}$)", "");
    }

    private static String folded(String written) {
        return written.toLowerCase(Locale.ROOT)
                .replaceAll("[\\s\u00a0\u202f]+", " ")
                .strip();
    }
}
