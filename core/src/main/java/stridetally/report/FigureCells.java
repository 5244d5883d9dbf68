package stridetally.report;

import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import stridetally.model.Goal;
import stridetally.model.TrialPlace;
import stridetally.model.WordScale;
import stridetally.scoring.SessionValue;
import stridetally.stats.Estimate;
import stridetally.table.Cell;
import stridetally.units.Amount;

/**
 * Figures as cells of the flat tables: unrounded numbers; a blank where nothing can be said, with the reason in the
 * column of that name. A capped value keeps its sign ({@code >=60.0}): as a bare number it would pass for an exact one.
 */
final class FigureCells {
    private FigureCells() {}

    static Cell of(Estimate<Double> figure) {
        return optional(figure.value());
    }

    /** With so many decimals for people. */
    static Cell of(Estimate<Double> figure, int decimals) {
        return figure.value().map(one -> Cell.number(one, decimals)).orElseGet(Cell::blank);
    }

    static Cell measured(Estimate<Measured> figure) {
        return figure.value().isPresent() ? of(figure.value().get()) : Cell.blank();
    }

    static Cell of(Measured value) {
        Cell.Decimal number = Cell.number(value.value());
        if (value.bound().isEmpty()) {
            return number;
        }
        return Cell.code(value.bound().get().sign() + number.plain());
    }

    static Cell of(SessionValue value) {
        return measured(Measured.of(value));
    }

    static Cell amount(Optional<Amount> amount) {
        return amount.isPresent() ? Cell.number(amount.get().value()) : Cell.blank();
    }

    static Cell date(Optional<LocalDate> day) {
        return day.isPresent() ? Cell.date(day.get()) : Cell.blank();
    }

    static Cell optional(Optional<Double> number) {
        return number.isPresent() ? Cell.number(number.get()) : Cell.blank();
    }

    /** A level of help by its word, never by its rank. */
    static Cell level(OptionalInt rank, WordScale scale) {
        return rank.isPresent() ? Cell.text(scale.level(rank.getAsInt()).word()) : Cell.blank();
    }

    /** {@code school clinic}: the places where a goal's tries count. */
    static Cell places(Goal goal) {
        return Cell.code(goal.places().stream().sorted().map(TrialPlace::word).collect(Collectors.joining(" ")));
    }

    /** Several reasons as one cell; blank ones and repetitions are left out. */
    static Cell reasons(Collection<String> reasons) {
        LinkedHashSet<String> parts = new LinkedHashSet<>(reasons);
        parts.removeIf(String::isBlank);
        return Cell.text(String.join("; ", parts));
    }

    /** {@code name: reason} of a figure that cannot be had; blank when it can. */
    static String why(String name, Estimate<?> figure) {
        return figure.isEstimated() ? "" : name + ": " + figure.reason();
    }

    static List<Cell> blanks(int count) {
        return java.util.Collections.nCopies(count, Cell.blank());
    }
}
