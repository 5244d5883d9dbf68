package stridetally.plan;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stridetally.problem.ProblemCode;
import stridetally.problem.RowProblem;
import stridetally.problem.Spelling;
import stridetally.table.Cells;

/** One row of the ladder or of the approvals while it is read, with all that is wrong with it. */
final class PlanRow {
    private final Cells cells;
    private final List<RowProblem> problems = new ArrayList<>();

    PlanRow(Cells cells) {
        this.cells = cells;
    }

    List<RowProblem> problems() {
        return List.copyOf(problems);
    }

    boolean isFine() {
        return problems.isEmpty();
    }

    String text(String column) {
        return cells.text(column);
    }

    String needed(String column, String expected) {
        String text = cells.text(column);
        if (text.isEmpty()) {
            problems.add(new RowProblem(ProblemCode.FIELD_MISSING, cells.at(column), "", expected, "fill it in"));
        }
        return text;
    }

    void wrong(String column, String expected, String mend) {
        wrong(column, cells.text(column), expected, mend);
    }

    void wrong(String column, String found, String expected, String mend) {
        problems.add(new RowProblem(ProblemCode.FIELD_UNREADABLE, cells.at(column), found, expected, mend));
    }

    /** Words of a closed list, separated by semicolons or commas. */
    <T> List<T> words(String column, List<String> known, Function<String, Optional<T>> find) {
        List<T> found = new ArrayList<>();
        for (String word : Arrays.asList(cells.text(column).split("[;,]", -1))) {
            if (!word.isBlank()) {
                word(column, word.strip(), known, find).ifPresent(found::add);
            }
        }
        return found;
    }

    /** One word of a closed list; empty and told when it is none of them. */
    <T> Optional<T> word(String column, String written, List<String> known, Function<String, Optional<T>> find) {
        Optional<T> found = find.apply(written);
        if (found.isEmpty()) {
            wrong(
                    column,
                    written,
                    "one of " + String.join(", ", known),
                    Spelling.nearest(written, known)
                            .map(near -> "did you mean " + near + "?")
                            .orElse("correct the word"));
        }
        return found;
    }

    Optional<LocalDate> day(String column) {
        String text = cells.text(column);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException unreadable) {
            wrong(column, "a day written as 2026-09-02", "write year-month-day");
            return Optional.empty();
        }
    }
}
