package stridetally.units;

import java.math.BigDecimal;
import java.util.Optional;

/** Tries met of tries given: {@code 4/5}, {@code 4 of 5}, 4 with {@code of} 5; without {@code of} one try, met (1, yes) or not (0, no). */
final class TriesRule {
    private TriesRule() {}

    static Step<Reading> read(ValueCells written) {
        if (written.bound() != MarkedText.Bound.NONE) {
            return Step.stop(Reason.UNREADABLE, "tries are counted: write them without > and <");
        }
        if (written.value().equals("yes") || written.value().equals("no")) {
            return oneWord(written);
        }
        return written.split()
                .then(cells -> cells.column()
                        .then(column -> cells.quantity().then(met -> {
                            if (!counts(met.unit().or(() -> column), cells.target())) {
                                return Step.stop(
                                        Reason.UNIT_OF_ANOTHER_KIND,
                                        "say how many tries were met and how many given, such as 4 of 5");
                            }
                            if (!Quantity.whole(met.number())) {
                                return Step.stop(
                                        Reason.NOT_WHOLE,
                                        "tries are whole: write them as met of given, such as 4 of 5");
                            }
                            return cells.of().isEmpty() ? oneTry(met) : given(cells, met);
                        })));
    }

    private static Step<Reading> oneWord(ValueCells cells) {
        if (cells.of().isEmpty() || cells.of().equals("1")) {
            return Step.of(new Reading.Tries(cells.value().equals("yes") ? 1 : 0, 1));
        }
        return Step.stop(Reason.UNREADABLE, "with more than one try write how many were met");
    }

    private static Step<Reading> oneTry(Quantity met) {
        return met.number().compareTo(BigDecimal.ONE) <= 0
                ? Step.of(new Reading.Tries(met.number().intValue(), 1))
                : Step.stop(Reason.OF_NEEDED, "write in the column of how many tries were given");
    }

    private static Step<Reading> given(ValueCells cells, Quantity met) {
        return cells.ofQuantity().then(given -> {
            if (!Quantity.whole(given.number()) || !counts(given.unit(), cells.target())) {
                return Step.stop(Reason.OF_UNREADABLE, "write in the column of a whole number of tries");
            }
            return of(met.number(), given.number());
        });
    }

    /** So many of so many, both whole. */
    static Step<Reading> of(BigDecimal met, BigDecimal given) {
        return met.compareTo(given) <= 0
                ? Step.of(new Reading.Tries(met.intValue(), given.intValue()))
                : Step.stop(Reason.OF_TOO_SMALL, "more tries met than given; check both");
    }

    /** Whether a unit says tries; the measure's own unit does, as our own files write it. */
    static boolean counts(Optional<Unit> unit, Unit target) {
        return unit.map(named ->
                        named == Unit.TRIES || named == Unit.COUNT || (named == target && target != Unit.PERCENT))
                .orElse(true);
    }
}
