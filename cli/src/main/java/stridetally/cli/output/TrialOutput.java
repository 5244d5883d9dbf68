package stridetally.cli.output;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import stridetally.cli.files.Content;
import stridetally.cli.input.OpenLogbook;
import stridetally.cli.input.ScoredLogbook;
import stridetally.cli.options.Format;
import stridetally.ingest.TrialCells;
import stridetally.measures.Measure;
import stridetally.model.Goal;
import stridetally.model.GoalId;
import stridetally.model.SeriesKey;
import stridetally.model.StudentCode;
import stridetally.model.Trial;
import stridetally.report.TrialRows;
import stridetally.scoring.DerivedTry;
import stridetally.scoring.TrialJudge;
import stridetally.scoring.TrialVerdict;
import stridetally.table.TableWriter;

/** The table of {@code score --by trial}: one row a trial that stands, in the order of the entries, then what follows from walks. */
public final class TrialOutput {
    private final OpenLogbook open;
    private final Map<GoalId, TrialJudge> judges = new LinkedHashMap<>();
    private final Map<SeriesKey, List<GoalId>> goalsOf = new LinkedHashMap<>();
    private final ScoredLogbook book;
    private final Optional<GoalId> asked;

    /** For one goal, or for all: then counted, meets and why are those of the first goal that takes the trial. */
    public TrialOutput(ScoredLogbook book, Optional<GoalId> asked) {
        this.book = book;
        this.open = book.open();
        this.asked = asked;
        for (Goal goal : open.caseload().goals()) {
            Optional<Measure> measure = open.catalogue().find(goal.measure());
            measure.ifPresent(one -> judges.put(
                    goal.id(), TrialJudge.of(goal, one, open.caseload().settings(), book.asOf())));
        }
    }

    /** The table in a format. */
    public Content content(Predicate<StudentCode> shown, Format format) {
        return Content.text(out -> write(shown, format, out));
    }

    private void write(Predicate<StudentCode> shown, Format format, Appendable out) throws IOException {
        TableWriter table = Tables.open(format, out, TrialRows.HEADINGS);
        open.book().trials().forEach((entry, line, cells) -> {
            Trial trial = TrialCells.read(cells, open.caseload().settings(), "entry " + entry + ", line " + line);
            write(table, shown, trial, cells, entry, line);
        });
        for (DerivedTry made : book.walks().tries()) {
            Trial trial = made.trial(open.caseload().settings());
            Measure measure = open.catalogue().find(trial.key().measure()).orElseThrow();
            write(table, shown, trial, TrialCells.of(trial, measure), made.entry(), made.line());
        }
        table.finish();
    }

    private void write(
            TableWriter table, Predicate<StudentCode> shown, Trial trial, List<String> cells, int entry, long line) {
        boolean ahead = trial.date().isAfter(book.asOf());
        List<GoalId> goals = goalsOf.computeIfAbsent(trial.key(), this::goals);
        boolean wanted = asked.map(goal -> isOf(goal, trial)).orElse(true);
        if (!ahead && wanted && shown.test(trial.key().student())) {
            Optional<TrialVerdict> verdict =
                    asked.or(() -> goals.stream().findFirst()).map(goal -> verdict(goal, trial));
            table.row(TrialRows.row(cells, ids(goals), verdict, entry, line));
        }
    }

    private List<GoalId> goals(SeriesKey key) {
        List<GoalId> goals = new ArrayList<>();
        for (Goal goal : open.caseload().goals()) {
            TrialJudge judge = judges.get(goal.id());
            if (judge != null && judge.takes(key)) {
                goals.add(goal.id());
            }
        }
        return goals;
    }

    private boolean isOf(GoalId goal, Trial trial) {
        return open.caseload()
                .goal(goal)
                .map(one -> one.student().equals(trial.key().student())
                        && one.measure().equals(trial.key().measure()))
                .orElse(false);
    }

    private TrialVerdict verdict(GoalId goal, Trial trial) {
        TrialJudge judge = judges.get(goal);
        if (judge == null) {
            throw new IllegalStateException("a goal that takes trials has a judge");
        }
        return judge.verdict(trial);
    }

    private static String ids(List<GoalId> goals) {
        return goals.stream().map(GoalId::text).collect(Collectors.joining(" "));
    }
}
