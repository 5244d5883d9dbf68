package stridetally.ingest;

import java.util.Optional;
import stridetally.measures.Measure;
import stridetally.measures.MeasureKind;
import stridetally.model.Level;
import stridetally.model.WordScale;
import stridetally.problem.ProblemCode;
import stridetally.problem.Spelling;
import stridetally.units.Amount;
import stridetally.units.Expecting;
import stridetally.units.Parsed;
import stridetally.units.Reading;
import stridetally.units.Remarked;
import stridetally.units.ValueGrammar;

/** The cells of a row that say how the try went: its value, and with how much help. */
final class TrialOutcome {
    private final LogRules rules;
    private final ValueGrammar grammar;
    private final CheckedCells row;
    private boolean helpDeclared;

    TrialOutcome(LogRules rules, ValueGrammar grammar, CheckedCells row) {
        this.rules = rules;
        this.grammar = grammar;
        this.row = row;
    }

    Optional<Reading> reading(Measure measure) {
        String written = row.text(TrialColumn.VALUE);
        String unit = row.text(TrialColumn.UNIT).isEmpty() ? row.layout().unitOfHeading() : row.text(TrialColumn.UNIT);
        Parsed parsed =
                grammar.parse(written, unit, row.text(TrialColumn.OF), expecting(measure.kind()), measure.unit());
        if (parsed instanceof Parsed.NotTaken none) {
            ProblemCode code = none.reason().code();
            TrialColumn column = columnOf(code);
            String found = column == TrialColumn.UNIT ? row.text(TrialColumn.UNIT) : none.found();
            row.tell(column, code, found, none.expected(), none.mend());
            return Optional.empty();
        }
        Parsed.Taken taken = (Parsed.Taken) parsed;
        for (Remarked mark : taken.marks()) {
            row.tell(
                    TrialColumn.VALUE,
                    ProblemCode.VALUE_MARKED,
                    written,
                    "a plain value",
                    "taken; the mark " + mark.mark() + " is kept as written");
        }
        Optional<Amount> amount = amount(taken.reading());
        return amount.isEmpty() || inRange(amount.get(), written, measure)
                ? Optional.of(taken.reading())
                : Optional.empty();
    }

    private TrialColumn columnOf(ProblemCode code) {
        return switch (code) {
            case UNIT_UNKNOWN, UNIT_OF_ANOTHER_KIND, UNIT_UNCLEAR ->
                row.layout().column(TrialColumn.UNIT) > 0
                                && !row.text(TrialColumn.UNIT).isEmpty()
                        ? TrialColumn.UNIT
                        : TrialColumn.VALUE;
            case OF_UNREADABLE, OF_TOO_SMALL -> TrialColumn.OF;
            default -> TrialColumn.VALUE;
        };
    }

    private boolean inRange(Amount amount, String written, Measure measure) {
        String unit = " " + measure.unit().symbol();
        if (!measure.possible().holds(amount)) {
            row.tell(
                    TrialColumn.VALUE,
                    ProblemCode.VALUE_IMPOSSIBLE,
                    written,
                    measure.possible().text() + unit + " for " + measure.id(),
                    "correct the value or its unit");
            return false;
        }
        if (!measure.plausible().holds(amount)) {
            row.tell(
                    TrialColumn.VALUE,
                    ProblemCode.VALUE_UNUSUAL,
                    written,
                    "usually " + measure.plausible().text() + unit + " for " + measure.id(),
                    "taken as it is; look at it once more");
        }
        return true;
    }

    /** Where no try was made there was no help to write. */
    Optional<Level> help(Optional<Reading> reading) {
        String written = row.text(TrialColumn.HELP);
        boolean blank = row.written(TrialColumn.HELP).isEmpty();
        if (blank && reading.isPresent() && !reading.get().recorded()) {
            return Optional.empty();
        }
        helpDeclared = blank && !written.isEmpty();
        if (written.isEmpty()) {
            row.tell(
                    TrialColumn.HELP,
                    ProblemCode.HELP_BLANK,
                    "",
                    "a word of the help scale",
                    rules.blankHelp().isPresent()
                            ? "read as " + rules.blankHelp().get().word() + ", declared for the form"
                            : "kept as not recorded");
            helpDeclared = rules.blankHelp().isPresent();
            return rules.blankHelp();
        }
        return level(TrialColumn.HELP, rules.settings().help(), ProblemCode.HELP_UNKNOWN);
    }

    Optional<Level> level(TrialColumn column, WordScale scale, ProblemCode unknown) {
        String written = row.text(column);
        if (written.isEmpty()) {
            return Optional.empty();
        }
        Optional<Level> level = scale.find(written);
        if (level.isEmpty()) {
            String near = Spelling.nearest(WordScale.fold(written), scale.words())
                    .map(word -> "did you mean " + word + "?")
                    .orElse("correct it, add the word to the scale in logbook.toml, or say what it means under [words."
                            + column.heading() + "] of a mapping (import --columns)");
            row.tell(column, unknown, written, "one of: " + String.join(", ", scale.words()), near);
        }
        return level;
    }

    /** The value as it was written, with its unit and {@code of}, and what was declared rather than written. */
    String asWritten(TrialIdentity identity) {
        StringBuilder written = new StringBuilder(row.written(TrialColumn.VALUE));
        if (!row.text(TrialColumn.UNIT).isEmpty()) {
            written.append(' ').append(row.text(TrialColumn.UNIT));
        }
        if (!row.text(TrialColumn.OF).isEmpty()) {
            written.append(" of ").append(row.text(TrialColumn.OF));
        }
        if (identity.sideNotUsed()) {
            written.append(" | side ").append(row.text(TrialColumn.SIDE));
        }
        if (helpDeclared) {
            written.append(" | help declared by form");
        }
        return written.toString();
    }

    private static Optional<Amount> amount(Reading reading) {
        if (reading instanceof Reading.Exact exact) {
            return Optional.of(exact.amount());
        }
        if (reading instanceof Reading.AtLeast least) {
            return Optional.of(least.amount());
        }
        if (reading instanceof Reading.AtMost most) {
            return Optional.of(most.amount());
        }
        return Optional.empty();
    }

    private static Expecting expecting(MeasureKind kind) {
        return switch (kind) {
            case COUNT, SCORE, EVENTS -> Expecting.WHOLE_NUMBER;
            case TRIES -> Expecting.TRIES;
            case SHARE -> Expecting.SHARE_OR_TRIES;
            case DURATION, DISTANCE, SPEED, FREQUENCY, RATIO, WALK_RATIO, AREA, OSCILLATION, ACCELERATION, JERK ->
                Expecting.AMOUNT;
        };
    }
}
