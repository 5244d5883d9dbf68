package stridetally.measures;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
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
    private static final Pattern BETWEEN_KEYS = Pattern.compile("[ ;|]+");

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
        MeasureId id = old.isPresent()
                ? old.get().id()
                : new MeasureId(Catalogue.fold(written).replace(' ', '-'));
        Optional<MeasureKind> kind = row.word(
                "kind", MeasureKind.values(), old.isPresent() ? old.get().kind() : null);
        Optional<Unit> unit = unit(row, old);
        Optional<Better> better = row.word("better", Better.values(), old.isPresent() ? Better.of(old.get()) : null);
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
        Measure usual = old.isPresent() ? old.get() : usual(row, id, kind.get(), unit.get());
        Measure measure = measure(row, usual, kind.get(), unit.get(), better.get().direction);
        return row.problems().isEmpty() ? Checked.fine(measure) : Checked.setAside(row.problems());
    }

    /** What the blank cells of a new measure mean. */
    private static Measure usual(RowCells row, MeasureId id, MeasureKind kind, Unit unit) {
        String name = row.text("name", id.text().replace('-', ' '));
        return new Measure(
                id,
                name,
                name,
                unit,
                Optional.empty(),
                kind,
                Rhythm.PROBE,
                3,
                kind.usualSummary(),
                ANY,
                ANY,
                Sidedness.NONE,
                List.of(),
                2,
                "",
                "");
    }

    private static Measure measure(
            RowCells row, Measure usual, MeasureKind kind, Unit unit, Optional<Direction> better) {
        return new Measure(
                usual.id(),
                row.text("name", usual.name()),
                row.text("plain", usual.plain()),
                unit,
                better,
                kind,
                row.word("rhythm", Rhythm.values(), usual.rhythm()).orElse(usual.rhythm()),
                row.whole("usual_trials", 1, 100, usual.usualTrials()),
                row.word("summary", Summary.values(), usual.summary()).orElse(usual.summary()),
                row.range("possible_low", "possible_high", usual.possible()),
                row.range("plausible_low", "plausible_high", usual.plausible()),
                row.word("sides", Sidedness.values(), usual.sidedness()).orElse(usual.sidedness()),
                keys(row, usual),
                row.whole("decimals", 0, 9, usual.decimals()),
                row.text("cautions", usual.cautions()),
                row.text("source", usual.source()));
    }

    private static Optional<Unit> unit(RowCells row, Optional<Measure> old) {
        String written = row.text("unit");
        if (written.isEmpty() && old.isPresent()) {
            return Optional.of(old.get().unit());
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

        static Better of(Measure measure) {
            if (measure.better().isEmpty()) {
                return NONE;
            }
            return measure.better().get() == Direction.HIGHER ? HIGHER : LOWER;
        }
    }

    private static List<String> keys(RowCells row, Measure usual) {
        String written = row.text("protocol_keys");
        return written.isEmpty() ? usual.protocolKeys() : List.of(BETWEEN_KEYS.split(written, -1));
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
