package stridetally.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * A part of a whole: {@code 80%}, {@code 0.8}; tries met of tries given; or a measured part of a measured whole, such as
 * 3.4 m of 5 m, divided exactly and rounded to the billionth.
 */
final class ShareRule {
    private static final String ASK =
            "for tries write whole numbers; for a length write its unit, such as 3.4 m of 5 m";

    private ShareRule() {}

    static Step<Reading> read(ValueCells written) {
        return written.split()
                .then(cells -> cells.column()
                        .then(column -> cells.quantity().then(part -> {
                            Optional<Unit> own = part.unit().or(() -> column);
                            return cells.of().isEmpty() ? alone(cells, part, own) : ofWhole(cells, part, own, column);
                        })));
    }

    private static Step<Reading> alone(ValueCells cells, Quantity part, Optional<Unit> own) {
        Unit unit = own.orElse(cells.target());
        if (unit == Unit.TRIES || unit == Unit.COUNT) {
            return TriesRule.read(cells);
        }
        if (unit.dimension() != Dimension.SHARE) {
            return Step.stop(Reason.OF_NEEDED, "write the whole in the column of, such as 3.4 m of 5 m");
        }
        Amount share = unit.convert(part.number(), cells.target());
        return share.compareTo(Unit.PROPORTION.convert(BigDecimal.ONE, cells.target())) <= 0
                ? cells.bounded(share)
                : Step.stop(Reason.SHARE_OVER_ONE, "a share is at most 1 or 100%: write 80% or 0.8");
    }

    private static Step<Reading> ofWhole(ValueCells cells, Quantity part, Optional<Unit> own, Optional<Unit> column) {
        return cells.ofQuantity().then(whole -> {
            Optional<Unit> wholeUnit = whole.unit().or(() -> column).or(() -> own);
            Optional<Unit> partUnit = own.or(() -> wholeUnit);
            if (TriesRule.counts(partUnit, cells.target()) && TriesRule.counts(wholeUnit, cells.target())) {
                return tries(cells, part, whole);
            }
            Unit one = partUnit.orElse(cells.target());
            Unit other = wholeUnit.orElse(cells.target());
            return measured(cells, part, whole, one, other);
        });
    }

    private static Step<Reading> tries(ValueCells cells, Quantity met, Quantity given) {
        if (!Quantity.whole(met.number()) || !Quantity.whole(given.number())) {
            return Step.stop(Reason.UNIT_NEEDED, ASK);
        }
        return cells.bound() == MarkedText.Bound.NONE
                ? TriesRule.of(met.number(), given.number())
                : Step.stop(Reason.UNREADABLE, "tries are counted: write them without > and <");
    }

    private static Step<Reading> measured(ValueCells cells, Quantity part, Quantity whole, Unit one, Unit other) {
        boolean tellsPart =
                one.dimension() == Dimension.LENGTH || one.dimension() == Dimension.TIME || one == Unit.STEPS;
        if (!tellsPart || one.dimension() != other.dimension() || other == Unit.TRIES) {
            return Step.stop(Reason.UNIT_OF_ANOTHER_KIND, ASK);
        }
        BigDecimal top = BigDecimal.valueOf(one.convert(part.number(), one).billionths());
        BigDecimal bottom =
                BigDecimal.valueOf(other.convert(whole.number(), one).billionths());
        if (bottom.signum() == 0 || top.compareTo(bottom) > 0) {
            return Step.stop(Reason.OF_TOO_SMALL, "the part is more than the whole in the column of; check both");
        }
        BigDecimal share = top.divide(bottom, 9, RoundingMode.HALF_UP);
        return cells.bounded(Unit.PROPORTION.convert(share, cells.target()));
    }
}
