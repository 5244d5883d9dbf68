package stridetally.cli.commands;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import stridetally.cli.Console;
import stridetally.cli.ExitCodes;
import stridetally.cli.Subcommand;
import stridetally.cli.files.Content;
import stridetally.cli.input.LogPasses;
import stridetally.cli.input.ObservedTries;
import stridetally.cli.input.ScoredLogbook;
import stridetally.cli.input.Sources;
import stridetally.cli.options.AsOfOption;
import stridetally.cli.options.FlagOption;
import stridetally.cli.options.ForecastWay;
import stridetally.cli.options.Format;
import stridetally.cli.options.NarrowOptions;
import stridetally.cli.options.OutputOptions;
import stridetally.cli.options.RecordingOptions;
import stridetally.cli.options.ScoreBy;
import stridetally.cli.options.ScoreByWord;
import stridetally.cli.options.SourceOption;
import stridetally.cli.options.ValueOption;
import stridetally.cli.options.WritingOptions;
import stridetally.cli.output.AgreementOutput;
import stridetally.cli.output.ExposureOutput;
import stridetally.cli.output.GoalOutput;
import stridetally.cli.output.HelpOutput;
import stridetally.cli.output.ReferenceOutput;
import stridetally.cli.output.SessionOutput;
import stridetally.cli.output.SidesOutput;
import stridetally.cli.output.TrialOutput;
import stridetally.ingest.WhichReader;
import stridetally.model.GoalId;
import stridetally.model.StudentCode;
import stridetally.recordings.RecordingKind;

/** {@code score}: what was counted, by trial, session, period, goal or student. */
public final class ScoreCommand implements Subcommand {
    private final Console console;

    private final SourceOption source = new SourceOption();

    private final ValueOption<ScoreBy> by = ValueOption.of(
            "--by",
            "WHAT",
            ScoreBy.class,
            new ScoreByWord(),
            "${COMPLETION-CANDIDATES} (default: session; a bare log has session, sides and exposure).");

    private final ValueOption<String> goal =
            ValueOption.text("--goal", "GOAL", "With --by trial: what this goal makes of its trials.");

    private final FlagOption agreement = new FlagOption(
            "--agreement",
            "Two observers on the same tries: percent agreement, kappa, ICC, limits of agreement, SEM, MDC95.");

    private final RecordingOptions recording = new RecordingOptions();
    private final NarrowOptions narrow = new NarrowOptions();
    private final WritingOptions writing = new WritingOptions();
    private final AsOfOption asOf = new AsOfOption();
    private final OutputOptions output = new OutputOptions();
    private @Nullable CommandSpec spec;

    public ScoreCommand(Console console) {
        this.console = console;
    }

    @Override
    public void declare(CommandSpec declared) {
        spec = declared;
        declared.usageMessage()
                .description(
                        "Sessions with their value, help, criterion and streak; or trials, periods, goals, students;"
                                + " or help (tries at each level), sides (left and right), exposure (rates of falls, rests,"
                                + " step-offs), reference (beside published values); or the figures of a recording of footfalls"
                                + " or sway. Amounts are unrounded and in the unit of the unit column. Each column is defined"
                                + " by: stridetally measures --columns")
                .footer("  stridetally score samples/logs/2026-autumn-gym.tsv --as-of 2026-11-20");
        source.addTo(declared);
        by.addTo(declared);
        goal.addTo(declared);
        agreement.addTo(declared);
        recording.addTo(declared);
        narrow.addTo(declared);
        writing.addTo(declared);
        asOf.addTo(declared);
        output.addTo(declared);
    }

    @Override
    public Integer call() {
        Optional<RecordingKind> kind = ScoringRecordings.kind(source, recording);
        if (kind.isPresent()) {
            return new ScoringRecordings(console, output).run(source, kind.get(), recording);
        }
        LocalDate day = asOf.day(console.clock());
        Sources sources = new Sources(console);
        if (agreement.typed()) {
            return agreement(sources.observed(source, writing, narrow, day));
        }
        if (source.isFolder()) {
            narrow.checkForLogbook();
            ScoredLogbook book = sources.logbook(source.path(), source.known(), day, forecast());
            sources.tellUnknown(narrow, book);
            output.write(console, content(book, output.format(Format.CSV)));
            return ExitCodes.DONE;
        }
        if (!by().ofBareLog() || goal.typed().isPresent()) {
            refuse("a bare log has no goals; --by " + by() + " needs a logbook");
        }
        // Sides and exposure look at tries one by one, which only the usual reader keeps.
        WhichReader which = by() == ScoreBy.SESSION ? writing.reader() : WhichReader.USUAL;
        Format format = output.format(Format.CSV);
        boolean ranges = by() == ScoreBy.SESSION && format == Format.CSV;
        LogPasses passes = sources.passes(source, writing, which, narrow, day, ranges);
        boolean lacks = passes.current().lacks();
        output.write(console, content(passes, format));
        sources.tellRest(passes, narrow);
        return lacks ? ExitCodes.SET_ASIDE : ExitCodes.DONE;
    }

    /** Only the rows of students count judgements; the others would pay for a forecast of the whole caseload in vain. */
    private ForecastWay forecast() {
        return by() == ScoreBy.STUDENT ? ForecastWay.POOLED : ForecastWay.OWN;
    }

    private ScoreBy by() {
        return by.typed().orElse(ScoreBy.SESSION);
    }

    private int agreement(ObservedTries observed) {
        output.write(console, AgreementOutput.of(observed, output.format(Format.CSV)));
        return observed.setAside() > 0 ? ExitCodes.SET_ASIDE : ExitCodes.DONE;
    }

    private Content content(ScoredLogbook book, Format format) {
        Predicate<StudentCode> shown = narrow::shows;
        return switch (by()) {
            case TRIAL -> new TrialOutput(book, asked(book)).content(shown, format);
            case SESSION -> SessionOutput.logbook(book, shown, narrow, format);
            case PERIOD -> GoalOutput.periods(book, shown, format);
            case GOAL -> GoalOutput.goals(book, shown, format);
            case STUDENT -> GoalOutput.students(book, shown, format);
            case HELP -> HelpOutput.of(book, shown, format);
            case SIDES -> SidesOutput.logbook(book, shown, narrow, format);
            case EXPOSURE -> ExposureOutput.logbook(book, shown, format);
            case REFERENCE -> ReferenceOutput.of(book, shown, format);
        };
    }

    private Content content(LogPasses passes, Format format) {
        return switch (by()) {
            case SIDES -> SidesOutput.log(passes.current(), narrow, format);
            case EXPOSURE -> ExposureOutput.log(passes.current(), narrow, format);
            default -> SessionOutput.logs(passes, narrow, format);
        };
    }

    private Optional<GoalId> asked(ScoredLogbook book) {
        Optional<GoalId> id = goal.typed().map(GoalId::new);
        if (id.isPresent() && book.open().caseload().goal(id.get()).isEmpty()) {
            refuse("there is no goal " + id.get().text() + " in goals.csv");
        }
        return id;
    }

    private void refuse(String sentence) {
        if (spec != null) {
            throw new ParameterException(spec.commandLine(), sentence);
        }
    }
}
