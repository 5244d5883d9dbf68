package stridetally.cli.commands;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stridetally.cli.Console;
import stridetally.cli.ExitCodes;
import stridetally.cli.files.Content;
import stridetally.cli.files.WholeFile;
import stridetally.cli.input.LogRead;
import stridetally.cli.input.ScoredLogbook;
import stridetally.cli.input.Sources;
import stridetally.cli.options.AsOfOption;
import stridetally.cli.options.Format;
import stridetally.cli.options.NarrowOptions;
import stridetally.cli.options.OutputOptions;
import stridetally.cli.options.SourceOption;
import stridetally.cli.options.WritingOptions;
import stridetally.cli.output.SessionOutput;
import stridetally.cli.output.TrendOutput;
import stridetally.model.StudentCode;
import stridetally.trend.SeriesWindow;

/** {@code trend}: lines with their uncertainty, the aim line, the forecast and the judgement with its reason. */
@Command(
        description =
                "One row a goal and side (or a series of a bare log): own line and robust line per week with 95 %%"
                        + " intervals, rank trend, aim line, forecast at the due date, chance, judgement and reason;"
                        + " then whether the change is beyond the error of measurement, its limit and where that comes from.",
        footer = "  stridetally trend samples/logs/2026-autumn-gym.tsv --as-of 2026-11-20")
public final class TrendCommand implements Callable<Integer> {
    private final Console console;

    @Mixin
    private final SourceOption source = new SourceOption();

    @Option(
            names = "--scores",
            paramLabel = "FILE",
            description = "Also write the session table to FILE, from the same reading.")
    private @Nullable Path scores;

    @Mixin
    private final NarrowOptions narrow = new NarrowOptions();

    @Mixin
    private final WritingOptions writing = new WritingOptions();

    @Mixin
    private final AsOfOption asOf = new AsOfOption();

    @Mixin
    private final OutputOptions output = new OutputOptions();

    public TrendCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        LocalDate day = asOf.day(console.clock());
        Sources sources = new Sources(console);
        Format format = output.format(Format.CSV);
        if (source.isFolder()) {
            narrow.checkForLogbook();
            Predicate<StudentCode> shown = narrow::shows;
            ScoredLogbook book = sources.logbook(source.path(), source.known(), day);
            sources.tellUnknown(narrow, book);
            writeScores(SessionOutput.logbook(book, shown, narrow, Format.CSV));
            output.write(console, TrendOutput.logbook(book, shown, narrow, format));
            return ExitCodes.DONE;
        }
        LogRead log = sources.log(source, writing, day);
        sources.tellUnknown(narrow, log);
        writeScores(SessionOutput.log(log, narrow, Format.CSV));
        output.write(console, TrendOutput.log(log, narrow, SeriesWindow.upTo(day), format));
        return log.setAside() > 0 ? ExitCodes.SET_ASIDE : ExitCodes.DONE;
    }

    private void writeScores(Content content) {
        if (scores != null) {
            WholeFile.write(scores, content);
        }
    }
}
