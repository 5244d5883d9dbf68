package stridetally.measures;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import stridetally.model.Direction;
import stridetally.model.MeasureId;
import stridetally.model.Summary;
import stridetally.problem.At;
import stridetally.problem.Checked;
import stridetally.problem.ProblemCode;
import stridetally.units.Amount;
import stridetally.units.Folding;
import stridetally.units.Unit;
import stridetally.units.UnitNames;

/**
 * One row of a {@code measures.csv}, ours or a logbook's, into a measure. A row whose id is known changes that measure: its
 * blank cells keep what the catalogue says. A row with a new id needs {@code id,unit,better,kind}; the rest has a usual
 * value.
 */
public final class MeasureRow {
    private static final Range ANY = new Range(Optional.empty(), Optional.empty());

    private MeasureRow() {}

    /**
     * Reads a row.
     *
     * @param cells heading to cell; absent headings are blank
     * @param at where the row stands
     * @param known the catalogue that the row adds to
     */
    public static Checked<Measure> parse(Map<String, String> cells, At at, Catalogue known) {
        RowCells row = new RowCells(cells, at);
        String written = row.text("id");
        if (written.isEmpty()) {
            row.problem(ProblemCode.FIELD_MISSING, "id", "an id such as line-steps", "write an id");
            return Checked.setAside(row.problems());
        }
        Optional<Measure> old = known.find(written);
        MeasureId id = old.map(Measure::id)
                .orElseGet(() -> new MeasureId(Catalogue.fold(written).replace(' ', '-')));
        Optional<MeasureKind> kind = row.word("kind", MeasureKind.values(), MeasureKind::word, old.map(Measure::kind));
        Optional<Unit> unit = unit(row, old);
        Optional<Better> better = row.word("better", Better.values(), Better::word, old.map(Better::of));
        if (kind.isEmpty() || unit.isEmpty() || better.isEmpty()) {
            return Checked.setAside(row.problems());
        }
        if (unit.get().dimension() != kind.get().dimension()) {
            row.problem(
                    ProblemCode.UNIT_OF_ANOTHER_KIND,
                    "unit",
                    "a unit of the kind " + kind.get().word(),
                    "change one");
        }
        Measure measure = measure(row, id, old, kind.get(), unit.get(), better.get().direction);
        return row.problems().isEmpty() ? Checked.fine(measure) : Checked.setAside(row.problems());
    }

    private static Measure measure(
            RowCells row,
            MeasureId id,
            Optional<Measure> old,
            MeasureKind kind,
            Unit unit,
            Optional<Direction> better) {
        String name = row.text("name", old.map(Measure::name).orElse(id.text().replace('-', ' ')));
        Range possible = row.range(
                "possible_low", "possible_high", old.map(Measure::possible).orElse(ANY));
        return new Measure(
                id,
                name,
                row.text("plain", old.map(Measure::plain).orElse(name)),
                unit,
                better,
                kind,
                row.word(
                                "rhythm",
                                Rhythm.values(),
                                Rhythm::word,
                                old.map(Measure::rhythm).or(() -> Optional.of(Rhythm.PROBE)))
                        .orElse(Rhythm.PROBE),
                row.whole("usual_trials", 1, 100, old.map(Measure::usualTrials).orElse(3)),
                row.word(
                                "summary",
                                Summary.values(),
                                Summary::word,
                                old.map(Measure::summary).or(() -> Optional.of(kind.usualSummary())))
                        .orElse(kind.usualSummary()),
                possible,
                row.range(
                        "plausible_low",
                        "plausible_high",
                        old.map(Measure::plausible).orElse(ANY)),
                row.word(
                                "sides",
                                Sidedness.values(),
                                Sidedness::word,
                                old.map(Measure::sidedness).or(() -> Optional.of(Sidedness.NONE)))
                        .orElse(Sidedness.NONE),
                keys(row, old),
                row.whole("decimals", 0, 9, old.map(Measure::decimals).orElse(2)),
                row.text("cautions", old.map(Measure::cautions).orElse("")),
                row.text("source", old.map(Measure::source).orElse("")));
    }

    private static Optional<Unit> unit(RowCells row, Optional<Measure> old) {
        String written = row.text("unit");
        if (written.isEmpty() && old.isPresent()) {
            return old.map(Measure::unit);
        }
        Optional<Unit> unit = UnitNames.find(written, Unit.METRES);
        if (unit.isEmpty()) {
            row.needed(
                    written.isEmpty() ? ProblemCode.FIELD_MISSING : ProblemCode.UNIT_UNKNOWN,
                    "unit",
                    "a unit such as s, m, steps");
        }
        return unit;
    }

    /** Which way is better, as the file writes it. */
    private enum Better {
        HIGHER(Optional.of(Direction.HIGHER)),
        LOWER(Optional.of(Direction.LOWER)),
        NONE(Optional.empty());

        private final Optional<Direction> direction;

        Better(Optional<Direction> direction) {
            this.direction = direction;
        }

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        static Better of(Measure measure) {
            return measure.better()
                    .map(way -> way == Direction.HIGHER ? HIGHER : LOWER)
                    .orElse(NONE);
        }
    }

    private static List<String> keys(RowCells row, Optional<Measure> old) {
        String written = row.text("protocol_keys");
        return written.isEmpty()
                ? old.map(Measure::protocolKeys).orElse(List.of())
                : List.of(written.split("[ ;|]+", -1));
    }

    /** A limit of a range, where it is written. */
    static Optional<Amount> limit(String decimal) {
        return isPlainDecimal(decimal) ? Optional.of(Amount.of(new BigDecimal(decimal))) : Optional.empty();
    }

    /** At most 7 digits and 9 decimals, so that it fits an amount. */
    private static boolean isPlainDecimal(String text) {
        String unsigned = text.startsWith("-") ? text.substring(1) : text;
        int point = unsigned.indexOf('.');
        return point < 0
                ? Folding.isDigits(unsigned, 7)
                : Folding.isDigits(unsigned.substring(0, point), 7)
                        && Folding.isDigits(unsigned.substring(point + 1), 9);
    }
}
