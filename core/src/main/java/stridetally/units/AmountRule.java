package stridetally.units;

import java.math.BigDecimal;

/**
 * A number in the measure's unit. With {@code of}, the full amount: reaching it is censored like a cap, because the line
 * or the stairs ended and not the child.
 */
final class AmountRule {
    private AmountRule() {}

    static Step<Reading> read(ValueCells cells, Expecting expecting) {
        if (cells.isFraction()) {
            return Step.stop(
                    Reason.FRACTION_FOR_AMOUNT,
                    "for tries met of tries given use the measure success; for 6 of 8 steps write 6 here and 8 in the column of");
        }
        return cells.column().then(column -> {
            Unit usual = column.orElse(cells.target());
            Step<Amount> amount = cells.quantity()
                    .then(quantity -> quantity.in(cells.target(), usual))
                    .then(value -> whole(value, expecting));
            return amount.then(
                    value -> cells.of().isEmpty() ? cells.bounded(value) : ofWhole(cells, value, usual, expecting));
        });
    }

    private static Step<Reading> ofWhole(ValueCells cells, Amount value, Unit usual, Expecting expecting) {
        Step<Amount> full = cells.ofQuantity().then(whole -> {
            Step<Amount> amount = whole.in(cells.target(), usual).then(read -> whole(read, expecting));
            return amount instanceof Step.Stopped<Amount> stopped
                    ? Step.stop(
                            Reason.OF_UNREADABLE,
                            "in the column of: " + stopped.refusal().mend())
                    : amount;
        });
        return full.then(end -> {
            int order = value.compareTo(end);
            if (order > 0) {
                return Step.stop(Reason.OF_TOO_SMALL, "the value is more than the whole in the column of; check both");
            }
            boolean reached = order == 0 && cells.bound() == MarkedText.Bound.NONE;
            return reached ? Step.of(new Reading.AtLeast(value)) : cells.bounded(value);
        });
    }

    private static Step<Amount> whole(Amount amount, Expecting expecting) {
        boolean fits =
                expecting != Expecting.WHOLE_NUMBER || Quantity.whole(BigDecimal.valueOf(amount.billionths(), 9));
        return fits ? Step.of(amount) : Step.stop(Reason.NOT_WHOLE, "only whole ones count; write the last full one");
    }
}
