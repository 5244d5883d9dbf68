package stridetally.cli.input;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stridetally.ingest.TrialCells;
import stridetally.logbook.ReportLine;
import stridetally.measures.Measure;
import stridetally.model.Goal;
import stridetally.model.GoalId;
import stridetally.model.Level;
import stridetally.model.StudentCode;
import stridetally.model.Trial;
import stridetally.report.GoalPast;
import stridetally.scoring.DerivedTry;
import stridetally.scoring.TrialJudge;
import stridetally.scoring.TrialVerdict;

/** Reads the tries of a logbook a second time, for what pages say beyond figures: only when somebody needs it. */
public final class TriesBehind {
    /** How much of the tries a page shows. */
    public enum Detail {
        /** Only how many came in after something was told. */
        COUNTS,
        /** Every one. */
        EVERY_TRY
    }

    private record Judged(Goal goal, TrialJudge judge) {}

    private final ScoredLogbook book;
    private final Detail detail;
    private final Map<GoalId, ReportLine> told;
    private final Map<StudentCode, List<Judged>> judges = new HashMap<>();
    private final Map<GoalId, List<GoalPast.TrialLine>> lines = new HashMap<>();
    private final Map<GoalId, Integer> since = new HashMap<>();

    private TriesBehind(ScoredLogbook book, Map<GoalId, ReportLine> told, Detail detail) {
        this.book = book;
        this.told = told;
        this.detail = detail;
    }

    /**
     * The past of goals.
     *
     * @param goals those that are shown
     * @param told what was told of them last, of those of which anything was
     */
    public static Map<GoalId, GoalPast> of(
            ScoredLogbook book, List<Goal> goals, Map<GoalId, ReportLine> told, Detail detail) {
        TriesBehind behind = new TriesBehind(book, told, detail);
        int last = ReportRequest.lastEntry(book);
        boolean later = firstTold(told) < last;
        if (detail == Detail.EVERY_TRY || later) {
            behind.read(goals);
        }
        Map<GoalId, GoalPast> past = new LinkedHashMap<>();
        for (Goal goal : goals) {
            past.put(goal.id(), behind.past(goal.id()));
        }
        return past;
    }

    /** The last entry behind what was told the longest ago. */
    private static int firstTold(Map<GoalId, ReportLine> told) {
        int first = Integer.MAX_VALUE;
        for (ReportLine line : told.values()) {
            first = Math.min(first, line.lastEntry());
        }
        return first;
    }

    private GoalPast past(GoalId goal) {
        return new GoalPast(
                told.containsKey(goal)
                        ? Optional.of(new GoalPast.Told(told.get(goal), since.getOrDefault(goal, 0)))
                        : Optional.empty(),
                detail == Detail.EVERY_TRY ? Optional.of(lines.getOrDefault(goal, List.of())) : Optional.empty());
    }

    private void read(List<Goal> goals) {
        for (Goal goal : goals) {
            Optional<Measure> measure = book.open().catalogue().find(goal.measure());
            if (measure.isPresent()) {
                TrialJudge judge = TrialJudge.of(
                        goal, measure.get(), book.open().caseload().settings(), book.asOf());
                judges.computeIfAbsent(goal.student(), any -> new ArrayList<>()).add(new Judged(goal, judge));
            }
        }
        int first = detail == Detail.EVERY_TRY ? 0 : firstTold(told);
        book.open()
                .book()
                .trials()
                .after(first)
                .forEach((entry, line, cells) -> take(
                        TrialCells.read(cells, book.open().caseload().settings(), "entry " + entry + ", line " + line),
                        entry,
                        line));
        for (DerivedTry made : book.walks().tries()) {
            if (made.entry() > first) {
                take(made.trial(book.open().caseload().settings()), made.entry(), made.line());
            }
        }
    }

    private void take(Trial trial, int entry, long line) {
        if (trial.date().isAfter(book.asOf())) {
            return;
        }
        for (Judged one : judges.getOrDefault(trial.key().student(), List.of())) {
            if (one.goal().measure().equals(trial.key().measure())) {
                GoalId goal = one.goal().id();
                if (detail == Detail.EVERY_TRY) {
                    lines.computeIfAbsent(goal, any -> new ArrayList<>())
                            .add(line(trial, one.judge().verdict(trial), entry, line));
                }
                ReportLine before = told.get(goal);
                if (before != null
                        && entry > before.lastEntry()
                        && !trial.date().isAfter(before.asOf())
                        && one.judge().takes(trial.key())) {
                    since.put(goal, since.getOrDefault(goal, 0) + 1);
                }
            }
        }
    }

    private static GoalPast.TrialLine line(Trial trial, TrialVerdict verdict, int entry, long line) {
        return new GoalPast.TrialLine(
                trial.date(),
                trial.session(),
                trial.number(),
                trial.asWritten(),
                trial.help().map(Level::word).orElse(""),
                trial.prompt().map(Level::word).orElse(""),
                trial.key().side().word(),
                trial.key().place().word(),
                trial.key().use().word(),
                verdict.counted(),
                verdict.why(),
                entry,
                line,
                trial.at());
    }
}
