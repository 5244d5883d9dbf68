package stridetally.units;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;

/**
 * A number with the unit that stood beside it.
 *
 * @param number in {@code unit}, or in a unit still to be named when there is none
 * @param unit the unit of the number
 * @param column what a unit column may say without contradicting the cell
 */
record Quantity(BigDecimal number, Optional<Unit> unit, Set<Unit> column) {

    Quantity {
        column = Set.copyOf(column);
    }

    /** This quantity as an amount of the measure's unit; {@code usual} is the unit where the cell names none. */
    Step<Amount> in(Unit target, Unit usual) {
        Unit own = unit.orElse(usual);
        boolean triesForAmount = own == Unit.TRIES && target != Unit.TRIES;
        if (own.dimension() != target.dimension() || triesForAmount) {
            return Step.stop(
                    Reason.UNIT_OF_ANOTHER_KIND, "check the measure, or write the value in " + target.symbol());
        }
        return Step.of(own.convert(number, target));
    }

    /** Whether a number is whole. */
    static boolean whole(BigDecimal number) {
        return number.stripTrailingZeros().scale() <= 0;
    }
}
