package stridetally.cohort;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import stridetally.stats.Descriptive;
import stridetally.stats.Estimate;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.table.TableSlice;

/**
 * Groups sessions and goals, and counts and sums each group. Counts are exact; quartiles are those of every page
 * ({@code stats.Descriptive}), not the library's own, so that no two pages differ.
 */
public final class RollUp {
    private static final String GROUP = "group";
    private static final String STUDENT = "student";
    private static final String GOAL = "goal";
    private static final String SESSION = "session";
    private static final String TRIES = "tries";
    private static final String PERMITTED = "permitted";
    private static final String KNOWN = "known";
    private static final String JUDGEMENT = "judgement";
    private static final String NO_GROUP_OF_A_GOAL = "a goal has no one group here";

    private record Counts(int students, int goals, int sessions, int tries, int permitted, int known) {
        static final Counts NONE = new Counts(0, 0, 0, 0, 0, 0);
    }

    private record GoalCounts(int students, int goals, Map<String, Integer> judgements) {}

    private RollUp() {}

    /** The groups, by their names; those of goals without a session too. */
    public static List<GroupRow> of(GroupBy by, List<CohortSession> sessions, List<CohortGoal> goals) {
        Map<String, Counts> counts = sessions(by, sessions);
        if (by == GroupBy.PERIOD || by == GroupBy.HELP) {
            List<GroupRow> rows = new ArrayList<>();
            counts.forEach((group, one) -> rows.add(row(by, group, one)));
            return rows;
        }
        Function<CohortGoal, String> group = by == GroupBy.SCHOOL ? CohortGoal::school : CohortGoal::measure;
        List<GroupRow> rows = new ArrayList<>();
        goals(goals, group)
                .forEach((name, one) -> rows.add(
                        row(by, name, counts.getOrDefault(name, Counts.NONE), one, shares(goals, group, name))));
        return rows;
    }

    private static Map<String, Counts> sessions(GroupBy by, List<CohortSession> sessions) {
        Map<String, Counts> counts = new TreeMap<>();
        if (sessions.isEmpty()) {
            return counts;
        }
        StringColumn group = StringColumn.create(GROUP);
        StringColumn student = StringColumn.create(STUDENT);
        StringColumn goal = StringColumn.create(GOAL);
        StringColumn session = StringColumn.create(SESSION);
        IntColumn tries = IntColumn.create(TRIES);
        IntColumn permitted = IntColumn.create(PERMITTED);
        IntColumn known = IntColumn.create(KNOWN);
        for (CohortSession one : sessions) {
            group.append(by.of(one));
            student.append(one.student());
            goal.append(one.goal());
            session.append(one.identity());
            tries.append(one.tries());
            permitted.append(one.permitted());
            known.append(one.known());
        }
        Table table = Table.create("sessions", group, student, goal, session, tries, permitted, known);
        for (TableSlice slice : table.splitOn(GROUP)) {
            Table part = slice.asTable();
            counts.put(
                    part.stringColumn(GROUP).get(0),
                    new Counts(
                            part.stringColumn(STUDENT).countUnique(),
                            part.stringColumn(GOAL).countUnique(),
                            part.stringColumn(SESSION).countUnique(),
                            (int) part.intColumn(TRIES).sum(),
                            (int) part.intColumn(PERMITTED).sum(),
                            (int) part.intColumn(KNOWN).sum()));
        }
        return counts;
    }

    private static Map<String, GoalCounts> goals(List<CohortGoal> goals, Function<CohortGoal, String> of) {
        Map<String, GoalCounts> counts = new TreeMap<>();
        if (goals.isEmpty()) {
            return counts;
        }
        StringColumn group = StringColumn.create(GROUP);
        StringColumn student = StringColumn.create(STUDENT);
        StringColumn judgement = StringColumn.create(JUDGEMENT);
        for (CohortGoal one : goals) {
            group.append(of.apply(one));
            student.append(one.student());
            judgement.append(one.judgement());
        }
        Table table = Table.create("goals", group, student, judgement);
        for (TableSlice slice : table.splitOn(GROUP)) {
            Table part = slice.asTable();
            Map<String, Integer> words = new TreeMap<>();
            part.stringColumn(JUDGEMENT).forEach(word -> words.merge(word, 1, Integer::sum));
            counts.put(
                    part.stringColumn(GROUP).get(0),
                    new GoalCounts(part.stringColumn(STUDENT).countUnique(), part.rowCount(), words));
        }
        return counts;
    }

    private static double[] shares(List<CohortGoal> goals, Function<CohortGoal, String> of, String group) {
        return goals.stream()
                .filter(one -> of.apply(one).equals(group))
                .flatMap(one -> one.shareOfWay().stream())
                .mapToDouble(share -> share)
                .toArray();
    }

    private static GroupRow row(GroupBy by, String group, Counts one) {
        return new GroupRow(
                by,
                group,
                one.students(),
                one.goals(),
                one.sessions(),
                one.tries(),
                one.permitted(),
                one.known(),
                Map.of(),
                Estimate.notEstimable(NO_GROUP_OF_A_GOAL),
                Estimate.notEstimable(NO_GROUP_OF_A_GOAL),
                Estimate.notEstimable(NO_GROUP_OF_A_GOAL));
    }

    private static GroupRow row(GroupBy by, String group, Counts sessions, GoalCounts goals, double[] shares) {
        return new GroupRow(
                by,
                group,
                goals.students(),
                goals.goals(),
                sessions.sessions(),
                sessions.tries(),
                sessions.permitted(),
                sessions.known(),
                goals.judgements(),
                Descriptive.quantile(shares, 0.25),
                Descriptive.median(shares),
                Descriptive.quantile(shares, 0.75));
    }
}
