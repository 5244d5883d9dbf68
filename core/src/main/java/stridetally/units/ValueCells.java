package stridetally.units;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The folded cells of one value, and the steps that the three rules share.
 *
 * @param value the value cell without marks and bounds
 * @param unit the unit column; blank when there is none
 * @param of the {@code of} column; blank when there is none
 */
record ValueCells(String value, MarkedText.Bound bound, String unit, String of, Unit target, DecimalMark decimal) {
    /** Made when the first cell comes that is no bare number. */
    private static final class Shapes {
        static final String ONE_UNIT = "(?: ?[a-z%'\"][a-z%'\" ]*?)?";
        static final Pattern FRACTION = Pattern.compile(
                "(" + NumberText.SHAPE + ONE_UNIT + ") ?(?:/|of) ?(" + NumberText.SHAPE + ONE_UNIT + ")");
    }

    /** Whether the value cell itself says k of n. */
    boolean isFraction() {
        return !NumberText.isBare(value, decimal) && fraction().matches();
    }

    /** The same cells with a {@code k of n} of the value cell moved into value and {@code of}. */
    Step<ValueCells> split() {
        Matcher fraction = fraction();
        if (!fraction.matches()) {
            return Step.of(this);
        }
        ValueCells moved = new ValueCells(fraction.group(1).strip(), bound, unit, fraction.group(2), target, decimal);
        if (of.isEmpty()) {
            return Step.of(moved);
        }
        return moved.ofQuantity()
                .then(inside -> ofQuantity().then(outside -> {
                    boolean same = inside.number().compareTo(outside.number()) == 0;
                    return same
                            ? Step.of(moved)
                            : Step.stop(
                                    Reason.OF_UNREADABLE, "value and of name different wholes; write the whole once");
                }));
    }

    private Matcher fraction() {
        return Shapes.FRACTION.matcher(value.replace(" out of ", " of "));
    }

    /** The value cell as a number with its unit, not against the unit column. */
    Step<Quantity> quantity() {
        return QuantityText.parse(value, target, decimal).then(this::agreed);
    }

    /** The {@code of} cell as a number with its unit; greater than zero. */
    Step<Quantity> ofQuantity() {
        Step<Quantity> read = QuantityText.parse(of, target, decimal).then(this::agreed);
        if (read instanceof Step.Stopped<Quantity> stopped) {
            return Step.stop(
                    Reason.OF_UNREADABLE,
                    "in the column of: " + stopped.refusal().mend());
        }
        return read.then(whole -> whole.number().signum() > 0
                ? Step.of(whole)
                : Step.stop(Reason.OF_TOO_SMALL, "the whole in the column of must be more than zero"));
    }

    /** The unit of the unit column. */
    Step<Optional<Unit>> column() {
        if (unit.isEmpty()) {
            return Step.of(Optional.empty());
        }
        Optional<Unit> named = UnitNames.find(unit, target);
        return named.isPresent() ? Step.of(named) : QuantityText.unknownUnit(unit);
    }

    private Step<Quantity> agreed(Quantity quantity) {
        return column().then(named -> {
            boolean differs = named.isPresent()
                    && quantity.unit().isPresent()
                    && !quantity.column().contains(named.get());
            return differs
                    ? Step.stop(Reason.UNITS_DISAGREE, "the cell and the unit column name different units; keep one")
                    : Step.of(quantity);
        });
    }

    /** The reading of an amount under the cell's bound. */
    Step<Reading> bounded(Amount amount) {
        return switch (bound) {
            case NONE -> Step.of(new Reading.Exact(amount));
            case AT_LEAST -> Step.of(new Reading.AtLeast(amount));
            case AT_MOST -> Step.of(new Reading.AtMost(amount));
            case CONTRADICTORY -> Step.stop(Reason.UNREADABLE, "write one of > and <");
        };
    }
}
