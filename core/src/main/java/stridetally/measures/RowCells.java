package stridetally.measures;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import org.jspecify.annotations.Nullable;
import stridetally.problem.At;
import stridetally.problem.ProblemCode;
import stridetally.problem.RowProblem;
import stridetally.units.Amount;
import stridetally.units.Folding;

/** The cells of one row while it is read, with what was found wrong so far. Not for several threads. */
final class RowCells {
    private final Map<String, String> cells;
    private final At at;
    private final List<RowProblem> problems = new ArrayList<>();

    RowCells(Map<String, String> cells, At at) {
        this.cells = Map.copyOf(cells);
        this.at = at;
    }

    List<RowProblem> problems() {
        return List.copyOf(problems);
    }

    String text(String heading) {
        return cells.getOrDefault(heading, "").strip();
    }

    String text(String heading, String usual) {
        String written = text(heading);
        return written.isEmpty() ? usual : written;
    }

    /** One word of a closed choice, the names of its constants with hyphens; the usual one, if there is one, for a blank cell. */
    <E extends Enum<E>> Optional<E> word(String heading, E[] choices, @Nullable E usual) {
        String written = text(heading);
        if (written.isEmpty() && usual != null) {
            return Optional.of(usual);
        }
        StringJoiner words = new StringJoiner(", ");
        for (E choice : choices) {
            String word = choice.name().replace('_', '-').toLowerCase(Locale.ROOT);
            if (word.equalsIgnoreCase(written)) {
                return Optional.of(choice);
            }
            words.add(word);
        }
        needed(
                written.isEmpty() ? ProblemCode.FIELD_MISSING : ProblemCode.FIELD_UNREADABLE,
                heading,
                "one of " + words);
        return Optional.empty();
    }

    /** A whole number between two ends, both inclusive; the usual one for a blank cell. */
    int whole(String heading, int lowest, int highest, int usual) {
        String written = text(heading);
        if (written.isEmpty()) {
            return usual;
        }
        if (Folding.isDigits(written, 6)) {
            int number = Integer.parseInt(written);
            if (number >= lowest && number <= highest) {
                return number;
            }
        }
        needed(ProblemCode.FIELD_UNREADABLE, heading, "a whole number from " + lowest + " to " + highest);
        return usual;
    }

    /** Two ends; each blank one keeps the usual end. */
    Range range(String lowHeading, String highHeading, Range usual) {
        Range range = new Range(limit(lowHeading, usual.low()), limit(highHeading, usual.high()));
        if (range.low().isPresent()
                && range.high().isPresent()
                && range.low().get().compareTo(range.high().get()) > 0) {
            needed(ProblemCode.FIELD_UNREADABLE, highHeading, "a limit not below " + lowHeading);
        }
        return range;
    }

    private Optional<Amount> limit(String heading, Optional<Amount> usual) {
        String written = text(heading);
        if (written.isEmpty()) {
            return usual;
        }
        Optional<Amount> limit = MeasureRow.limit(written);
        if (limit.isEmpty()) {
            needed(ProblemCode.FIELD_UNREADABLE, heading, "a plain number in the measure's unit");
        }
        return limit;
    }

    void needed(ProblemCode code, String heading, String expected) {
        problem(code, heading, expected, "correct the cell");
    }

    void problem(ProblemCode code, String heading, String expected, String mend) {
        problems.add(new RowProblem(code, new At(at.file(), at.line(), 0, heading), text(heading), expected, mend));
    }
}
