package stridetally.cli.commands;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.Supplier;
import picocli.CommandLine.Model.CommandSpec;
import stridetally.cli.Console;
import stridetally.cli.ExitCodes;
import stridetally.cli.Subcommand;
import stridetally.cli.files.Content;
import stridetally.cli.files.WholeFile;
import stridetally.cli.input.LogPasses;
import stridetally.cli.input.ScoredLogbook;
import stridetally.cli.input.Sources;
import stridetally.cli.options.AsOfOption;
import stridetally.cli.options.ChartOptions;
import stridetally.cli.options.ForecastOption;
import stridetally.cli.options.Format;
import stridetally.cli.options.NarrowOptions;
import stridetally.cli.options.OutputOptions;
import stridetally.cli.options.RulesOption;
import stridetally.cli.options.SourceOption;
import stridetally.cli.options.ValueOption;
import stridetally.cli.options.WritingOptions;
import stridetally.cli.output.Charts;
import stridetally.cli.output.SessionOutput;
import stridetally.cli.output.TrendOutput;
import stridetally.model.StudentCode;
import stridetally.trend.SeriesWindow;

/** {@code trend}: lines with their uncertainty, the aim line, the forecast and the judgement with its reason. */
public final class TrendCommand implements Subcommand {
    private final Console console;

    private final SourceOption source = new SourceOption();
    private final ValueOption<Path> scores = ValueOption.path(
            List.of("--scores"), "FILE", "Also write the session table to FILE, from the same reading.");
    private final ChartOptions charts = new ChartOptions();
    private final NarrowOptions narrow = new NarrowOptions();
    private final WritingOptions writing = new WritingOptions();
    private final ForecastOption forecast = new ForecastOption();
    private final RulesOption rules = new RulesOption();
    private final AsOfOption asOf = new AsOfOption();
    private final OutputOptions output = new OutputOptions();

    public TrendCommand(Console console) {
        this.console = console;
    }

    @Override
    public void declare(CommandSpec spec) {
        spec.usageMessage()
                .description(
                        "One row a goal and side (or a series of a bare log): own line and robust line per week with 95 %%"
                                + " intervals, rank trend, aim line, forecast at the due date, chance, judgement and reason;"
                                + " then whether the change is beyond the error of measurement, its limit and where that comes from.")
                .footer("  stridetally trend samples/logs/2026-autumn-gym.tsv --as-of 2026-11-20");
        source.addTo(spec);
        scores.addTo(spec);
        charts.addTo(spec);
        narrow.addTo(spec);
        writing.addTo(spec);
        forecast.addTo(spec);
        rules.addTo(spec);
        asOf.addTo(spec);
        output.addTo(spec);
    }

    @Override
    public Integer call() {
        LocalDate day = asOf.day(console.clock());
        Sources sources = new Sources(console);
        Format format = output.format(Format.CSV);
        if (source.isFolder()) {
            narrow.checkForLogbook();
            Predicate<StudentCode> shown = narrow::shows;
            ScoredLogbook book = sources.logbook(source.path(), source.known(), day, forecast.way())
                    .beside(rules.rules());
            sources.tellUnknown(narrow, book);
            writeScores(SessionOutput.logbook(book, shown, narrow, Format.CSV));
            draw(() -> Charts.logbook(book, shown), TrendOutput.logbook(book, shown, narrow, format));
            return ExitCodes.DONE;
        }
        rules.checkForLog();
        boolean ranges = format == Format.CSV && !charts.asked();
        LogPasses passes = sources.passes(source, writing, writing.reader(), narrow, day, ranges);
        boolean lacks = passes.current().lacks();
        SeriesWindow window = SeriesWindow.upTo(day);
        if (scores.typed().isPresent() && ranges) {
            WholeFile.write(
                    scores.value(),
                    sessions -> output.write(console, TrendOutput.beside(passes, narrow, window, sessions)));
        } else {
            writeScores(SessionOutput.logs(passes, narrow, Format.CSV));
            draw(() -> Charts.log(passes.current(), narrow, window), TrendOutput.logs(passes, narrow, window, format));
        }
        sources.tellRest(passes, narrow);
        return lacks ? ExitCodes.SET_ASIDE : ExitCodes.DONE;
    }

    private void draw(Supplier<Charts> drawings, Content table) {
        charts.folder().ifPresent(folder -> drawings.get().files(folder));
        output.write(console, charts.draws() ? drawings.get().drawn() : table);
    }

    private void writeScores(Content content) {
        scores.typed().ifPresent(file -> WholeFile.write(file, content));
    }
}
