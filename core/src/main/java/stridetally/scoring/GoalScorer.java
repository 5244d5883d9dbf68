package stridetally.scoring;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import stridetally.measures.Measure;
import stridetally.measures.MeasureKind;
import stridetally.model.Caseload;
import stridetally.model.DateRange;
import stridetally.model.Goal;
import stridetally.model.GoalSide;
import stridetally.model.MeasureId;
import stridetally.model.SeriesKey;
import stridetally.model.Side;
import stridetally.model.Use;

/** Scores the goals of a caseload from one table of tries. */
public final class GoalScorer {
    private final Caseload caseload;
    private final Function<MeasureId, Optional<Measure>> measures;
    private final SessionIndex index;
    private final GoalMatch match;
    private final LocalDate asOf;

    /**
     * Over a complete table.
     *
     * @param measures the catalogue
     * @param asOf last day that counts, inclusive; later tries are ignored and told
     */
    public GoalScorer(
            Caseload caseload, Function<MeasureId, Optional<Measure>> measures, SessionTable table, LocalDate asOf) {
        this.caseload = caseload;
        this.measures = measures;
        this.index = table.index();
        this.match = new GoalMatch(caseload.settings().id(), index, asOf);
        this.asOf = asOf;
    }

    /** All goals, in the order of the goal file. */
    public List<GoalScore> scoreAll() {
        List<GoalScore> scores = new ArrayList<>();
        for (Goal goal : caseload.goals()) {
            scores.add(score(goal));
        }
        return scores;
    }

    /** The series of probes that no goal takes: what was measured beside the goals, or at home. */
    public List<Integer> seriesWithoutGoal() {
        return seriesOutside(any -> true);
    }

    /** The series of probes that none of some goals takes. */
    public List<Integer> seriesOutside(Predicate<Goal> goals) {
        Set<Integer> taken = new HashSet<>();
        for (Goal goal : caseload.goals()) {
            Optional<Measure> measure = measures.apply(goal.measure());
            if (measure.isPresent() && goals.test(goal)) {
                for (GoalMatch.Taken one : match.find(goal, measure.get()).taken()) {
                    taken.add(one.series());
                }
            }
        }
        List<Integer> outside = new ArrayList<>();
        for (int series = 0; series < index.seriesCount(); series++) {
            if (!taken.contains(series) && index.numbers().key(series).use() == Use.PROBE) {
                outside.add(series);
            }
        }
        return outside;
    }

    /** The goals that take a series, in the order of the goal file. */
    public List<Goal> goalsOf(int series) {
        SeriesKey key = index.numbers().key(series);
        List<Goal> goals = new ArrayList<>();
        for (Goal goal : caseload.goals()) {
            if (goal.student().equals(key.student()) && goal.measure().equals(key.measure()) && takes(goal, series)) {
                goals.add(goal);
            }
        }
        return goals;
    }

    private boolean takes(Goal goal, int series) {
        Optional<Measure> measure = measures.apply(goal.measure());
        if (measure.isPresent()) {
            for (GoalMatch.Taken taken : match.find(goal, measure.get()).taken()) {
                if (taken.series() == series) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The sessions of the table. */
    public SessionIndex index() {
        return index;
    }

    /** One goal. */
    public GoalScore score(Goal goal) {
        Optional<Measure> measure = measures.apply(goal.measure());
        return measure.isPresent() ? score(goal, measure.get()) : unscored(goal);
    }

    /** Recorded tries of a goal at each level of help, in some days: its probes, or the practice of its measure and side. */
    public HelpCounts help(Goal goal, Use use, DateRange days) {
        Optional<Measure> measure = measures.apply(goal.measure());
        return measure.isPresent()
                ? help(goal, measure.get(), use, days::holds)
                : new HelpTally(caseload.settings()).counts();
    }

    private GoalScore score(Goal goal, Measure measure) {
        GoalMatch.Found found = match.find(goal, measure);
        GoalSpan span = new GoalSpan(goal, asOf);
        Counting counting = Counting.forGoal(goal, measure, caseload.settings());
        Predicate<LocalDate> within = day -> span.outside(day).isEmpty();
        NotUsedTally notUsed = notTaken(found, within);
        List<SideScore> sides = new ArrayList<>();
        HighestCap cap = new HighestCap();
        for (Side side : GoalMatch.sides(goal, measure)) {
            List<TrialGroup> sessions = notUsed.within(span, index.joined(seriesOf(found, side)));
            for (TrialGroup session : sessions) {
                cap.look(session, counting);
            }
            sides.add(SideScorer.score(goal, counting, side, sessions));
        }
        List<List<Session>> sessionsBySide = new ArrayList<>();
        for (SideScore side : sides) {
            sessionsBySide.add(side.sessions());
            for (Session session : side.sessions()) {
                notUsed.addHelp(session);
            }
        }
        GoalTimeline timeline = new GoalTimeline(goal.side(), sessionsBySide, sessionsToMeet(goal, measure));
        Optional<LocalDate> reached = reachedOn(goal, sides);
        return new GoalScore(
                goal,
                Optional.of(measure),
                sides,
                timeline.streak(),
                timeline.metOn(),
                timeline.sinceMet(),
                reached,
                statuses(sides),
                notUsed.all(),
                help(goal, measure, Use.PROBE, within),
                help(goal, measure, Use.PRACTICE, within),
                cap.amount(),
                GoalCautions.of(goal, measure, reached, sides, caseload.settings()));
    }

    private GoalScore unscored(Goal goal) {
        HelpCounts none = new HelpTally(caseload.settings()).counts();
        return new GoalScore(
                goal,
                Optional.empty(),
                List.of(),
                0,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Map.of(),
                List.of(),
                none,
                none,
                Optional.empty(),
                List.of("The measure is not in the catalogue."));
    }

    private NotUsedTally notTaken(GoalMatch.Found found, Predicate<LocalDate> within) {
        NotUsedTally notUsed = new NotUsedTally();
        for (GoalMatch.NotTaken other : found.notTaken()) {
            for (TrialGroup session : index.of(other.series())) {
                if (within.test(session.date())) {
                    notUsed.add(other.why(), other.detail(), session);
                }
            }
        }
        return notUsed;
    }

    /** No defaults: without a written criterion, help or target, or without a better way, a goal is never met. */
    private static OptionalInt sessionsToMeet(Goal goal, Measure measure) {
        boolean triesAlone = goal.criterion().byTries() && measure.kind() == MeasureKind.TRIES;
        boolean judgeable =
                triesAlone || (goal.target().isPresent() && measure.better().isPresent());
        boolean possible = goal.criterion().triesMet().orElse(1) > 0
                && goal.criterion().sessionsMet().orElse(0) > 0;
        return goal.help().isPresent() && judgeable && possible
                ? goal.criterion().sessionsMet()
                : OptionalInt.empty();
    }

    private static Optional<LocalDate> reachedOn(Goal goal, List<SideScore> sides) {
        List<LocalDate> days = new ArrayList<>();
        for (SideScore side : sides) {
            if (side.targetReachedOn().isPresent()) {
                days.add(side.targetReachedOn().get());
            }
        }
        boolean enough = goal.side() == GoalSide.EITHER ? !days.isEmpty() : days.size() == sides.size();
        if (!enough) {
            return Optional.empty();
        }
        return Optional.of(goal.side() == GoalSide.EITHER ? Collections.min(days) : Collections.max(days));
    }

    private static Map<SessionStatus, Integer> statuses(List<SideScore> sides) {
        Map<SessionStatus, Integer> counts = new EnumMap<>(SessionStatus.class);
        for (SideScore side : sides) {
            for (Session session : side.sessions()) {
                counts.put(session.status(), counts.getOrDefault(session.status(), 0) + 1);
            }
        }
        return counts;
    }

    private static List<Integer> seriesOf(GoalMatch.Found found, Side side) {
        List<Integer> series = new ArrayList<>();
        for (GoalMatch.Taken taken : found.taken()) {
            if (taken.side() == side) {
                series.add(taken.series());
            }
        }
        return series;
    }

    private HelpCounts help(Goal goal, Measure measure, Use use, Predicate<LocalDate> days) {
        HelpTally tally = new HelpTally(caseload.settings());
        for (int series : helpSeries(goal, measure, use)) {
            for (TrialGroup session : index.of(series)) {
                if (days.test(session.date())) {
                    tally.add(session);
                }
            }
        }
        return tally.counts();
    }

    private List<Integer> helpSeries(Goal goal, Measure measure, Use use) {
        GoalMatch.Found found = match.find(goal, measure);
        List<Integer> series = new ArrayList<>();
        if (use == Use.PROBE) {
            for (GoalMatch.Taken taken : found.taken()) {
                series.add(taken.series());
            }
            return series;
        }
        for (GoalMatch.NotTaken other : found.notTaken()) {
            if (other.why() == WhyNotUsed.PRACTICE
                    && practises(goal, measure, index.numbers().key(other.series()))) {
                series.add(other.series());
            }
        }
        return series;
    }

    private static boolean practises(Goal goal, Measure measure, SeriesKey key) {
        return goal.places().contains(key.place()) && GoalMatch.onSide(goal, measure, key);
    }
}
