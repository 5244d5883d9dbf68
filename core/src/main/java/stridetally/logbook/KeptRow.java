package stridetally.logbook;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import stridetally.model.Level;
import stridetally.model.WordScale;
import stridetally.problem.Checked;
import stridetally.problem.ProblemCode;
import stridetally.problem.RowProblem;
import stridetally.problem.Severity;
import stridetally.problem.Spelling;
import stridetally.table.Cells;
import stridetally.units.Amount;
import stridetally.units.IsoDay;

/**
 * One hand-kept row on its way to a record: cells by name, and what is wrong with them. A cell that cannot be read sets its
 * row aside: read as blank it would say something else.
 */
final class KeptRow {
    private static final Pattern DECIMAL = Pattern.compile("[+-]?\\d{1,9}(\\.\\d{1,9})?");
    private static final Pattern BETWEEN_WORDS = Pattern.compile("[\\s,;]+");
    private static final Pattern BETWEEN_FREE_WORDS = Pattern.compile("[,;]");
    private static final Pattern WHOLE = Pattern.compile("[+-]?\\d{1,9}");

    private final Cells cells;
    private final List<RowProblem> problems = new ArrayList<>();

    KeptRow(Cells cells) {
        this.cells = cells;
    }

    String text(String column) {
        return cells.text(column);
    }

    String required(String column) {
        String text = cells.text(column);
        if (text.isEmpty()) {
            tell(ProblemCode.FIELD_MISSING, column, "", "a " + column.replace('_', ' '), "fill it in");
        }
        return text;
    }

    /** An identity: blank is told and answered with nothing. */
    <T> Optional<T> id(String column, Function<String, T> wrapper) {
        String text = cells.text(column);
        return text.isEmpty() ? Optional.empty() : Optional.of(wrapper.apply(text));
    }

    Optional<LocalDate> date(String column) {
        String text = cells.text(column);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(IsoDay.of(text));
        } catch (DateTimeException unreadable) {
            unreadable(column, text, "a day written as 2026-09-02", "write year-month-day");
            return Optional.empty();
        }
    }

    Optional<Amount> amount(String column) {
        String text = cells.text(column);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (!DECIMAL.matcher(text).matches()) {
            unreadable(
                    column, text, "a plain number such as 8.4, in the measure's own unit", "take units and signs out");
            return Optional.empty();
        }
        return Optional.of(Amount.of(new BigDecimal(text)));
    }

    /** A whole number from the least to the greatest allowed, both inclusive. */
    OptionalInt whole(String column, int least, int greatest) {
        String text = cells.text(column);
        if (text.isEmpty()) {
            return OptionalInt.empty();
        }
        int value = WHOLE.matcher(text).matches() ? Integer.parseInt(text) : Integer.MIN_VALUE;
        if (value < least || value > greatest) {
            String expected = greatest == Integer.MAX_VALUE
                    ? "a whole number of at least " + least
                    : "a whole number from " + least + " to " + greatest;
            unreadable(column, text, expected, "correct it");
            return OptionalInt.empty();
        }
        return OptionalInt.of(value);
    }

    /** One of a closed list of words; keys are folded by {@link WordScale#fold}. */
    <T> Optional<T> word(String column, Map<String, T> words) {
        return oneWord(column, cells.text(column), words);
    }

    /** Several words of a closed list, separated by blanks, commas or semicolons. */
    <T> List<T> words(String column, Map<String, T> words) {
        List<T> found = new ArrayList<>();
        for (String text : list(column, BETWEEN_WORDS)) {
            oneWord(column, text, words).ifPresent(found::add);
        }
        return found;
    }

    /** Free words, separated by commas or semicolons. */
    List<String> list(String column) {
        return list(column, BETWEEN_FREE_WORDS);
    }

    Optional<Level> level(String column, WordScale scale, ProblemCode code) {
        String text = cells.text(column);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Optional<Level> level = scale.find(text);
        if (level.isEmpty()) {
            tell(
                    code,
                    column,
                    text,
                    "one of " + String.join(", ", scale.words()),
                    suggestion(WordScale.fold(text), scale.words()));
        }
        return level;
    }

    void matching(String column, Pattern pattern, String expected) {
        String text = cells.text(column);
        if (!text.isEmpty() && !pattern.matcher(text).matches()) {
            unreadable(column, text, expected, "correct it or leave it blank");
        }
    }

    void unreadable(String column, String found, String expected, String mend) {
        tell(ProblemCode.FIELD_UNREADABLE, column, found, expected, mend);
    }

    void tell(ProblemCode code, String column, String found, String expected, String mend) {
        problems.add(new RowProblem(code, cells.at(column), found, expected, mend));
    }

    /** The record, unless something sets the row aside. */
    <T> Checked<T> checked(Supplier<T> record) {
        boolean aside = false;
        for (RowProblem one : problems) {
            aside |= one.severity() == Severity.SET_ASIDE;
        }
        return new Checked<>(aside ? Optional.empty() : Optional.of(record.get()), problems);
    }

    private List<String> list(String column, Pattern between) {
        List<String> words = new ArrayList<>();
        for (String one : between.split(cells.text(column), -1)) {
            if (!one.isBlank()) {
                words.add(one.strip());
            }
        }
        return words;
    }

    private <T> Optional<T> oneWord(String column, String text, Map<String, T> words) {
        if (text.isEmpty()) {
            return Optional.empty();
        }
        T found = words.get(WordScale.fold(text));
        if (found == null) {
            List<String> known = words.keySet().stream().sorted().toList();
            unreadable(
                    column,
                    text,
                    "one of " + String.join(", ", known),
                    suggestion(text.toLowerCase(Locale.ROOT), known));
        }
        return Optional.ofNullable(found);
    }

    private static String suggestion(String written, List<String> known) {
        return Spelling.nearest(written, known)
                .map(near -> "did you mean " + near + "?")
                .orElse("correct the word");
    }
}
