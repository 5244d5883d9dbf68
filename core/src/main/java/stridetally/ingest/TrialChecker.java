package stridetally.ingest;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stridetally.measures.Measure;
import stridetally.model.Level;
import stridetally.model.Protocol;
import stridetally.model.SeriesKey;
import stridetally.model.Side;
import stridetally.model.StudentCode;
import stridetally.model.Trial;
import stridetally.model.TrialPlace;
import stridetally.model.Use;
import stridetally.problem.At;
import stridetally.problem.Checked;
import stridetally.problem.ProblemCode;
import stridetally.units.Reading;
import stridetally.units.ValueGrammar;
import stridetally.units.ValueWords;

/**
 * One row of a long trial log to one checked trial. Every cell is looked at, so that a row that is set aside tells all
 * that is wrong with it at once. Nothing is filled in silently: what a blank cell was read as is told as a note.
 */
public final class TrialChecker {
    private final LogRules rules;
    private final TrialLayout layout;
    private final String file;
    private final String shortName;
    private final ValueGrammar grammar;

    /** Over the rows of one file: its name for messages, and its short name for what is kept. */
    public TrialChecker(LogRules rules, TrialLayout layout, String file, String shortName) {
        this.shortName = shortName;
        this.grammar = new ValueGrammar(rules.decimals(), ValueWords.STANDARD);
        this.rules = rules;
        this.layout = layout;
        this.file = file;
    }

    /** The trial of a row, without a trial number when none was written (0). */
    public Checked<Trial> check(List<String> cells, long line) {
        CheckedCells row = new CheckedCells(layout, file, cells, line);
        TrialIdentity identity = new TrialIdentity(rules, row);
        TrialOutcome outcome = new TrialOutcome(rules, grammar, row);
        row.countCells();
        Optional<StudentCode> student = identity.student();
        Optional<LocalDate> date = identity.date();
        Optional<Measure> measure = identity.measure();
        int number = identity.number();
        Optional<Reading> reading = measure.isPresent() ? outcome.reading(measure.get()) : Optional.empty();
        Optional<Level> help = outcome.help(reading);
        Optional<Level> prompt =
                outcome.level(TrialColumn.PROMPT, rules.settings().prompt(), ProblemCode.PROMPT_UNKNOWN);
        Side side = measure.isPresent() ? identity.side(measure.get()) : Side.NONE;
        Protocol protocol = measure.isPresent() ? identity.protocol(measure.get()) : Protocol.NONE;
        Use use = identity.use();
        TrialPlace place = identity.place();
        if (row.setAside() || student.isEmpty() || date.isEmpty() || measure.isEmpty() || reading.isEmpty()) {
            return Checked.setAside(row.problems());
        }
        String source = row.text(TrialColumn.SOURCE).isEmpty() ? rules.source() : row.text(TrialColumn.SOURCE);
        SeriesKey key = new SeriesKey(source, student.get(), measure.get().id(), side, protocol, place, use);
        Trial trial = new Trial(
                key,
                date.get(),
                row.text(TrialColumn.SESSION),
                number,
                reading.get(),
                help,
                prompt,
                row.text(TrialColumn.OBSERVER),
                row.text(TrialColumn.ACTIVITY),
                row.text(TrialColumn.NOTE),
                kept(line).text(),
                outcome.asWritten(identity));
        return new Checked<>(Optional.of(trial), row.problems());
    }

    /** Where a try stands, as what is kept names it: its row, or its cell where tries stand side by side. */
    At kept(long line) {
        return layout.otherTries().isEmpty()
                ? At.row(shortName, line)
                : new At(shortName, line, layout.column(TrialColumn.VALUE), "");
    }
}
