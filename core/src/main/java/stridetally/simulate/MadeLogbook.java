package stridetally.simulate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A made-up caseload as the files of a logbook, a log of its tries and its truth: seconds of standing, steps on a line and,
 * with less being better, seconds of walking. Every third goal has no criterion; a jump has its change of strategy; where
 * lines end, a try that got there says so. The same scenario, size and seed make the same bytes.
 */
public final class MadeLogbook {
    private static final LocalDate START = LocalDate.of(2026, 9, 7);
    private static final int UNWRITTEN = 3;

    private final Scenario scenario;
    private final List<MadeChild> children = new ArrayList<>();

    public MadeLogbook(Scenario scenario, int goals, long seed) {
        this.scenario = scenario;
        ChildMaker maker = new ChildMaker(scenario, seed);
        for (int i = 0; i < goals; i++) {
            MadeMeasure measure = MadeMeasure.of(i, scenario);
            MadeChild child = maker.next();
            children.add(new MadeChild(
                    child.lineAtDue(),
                    child.sessions().stream()
                            .map(session -> session.written(measure))
                            .toList()));
        }
    }

    /** {@code logbook.toml}. */
    public String settings() {
        return "# Made up by simulate; no child is behind it.\nid = \"made-up\"\nversion = 1\n";
    }

    /** {@code students.csv}. */
    public String students() {
        StringBuilder text = new StringBuilder("student,grade\n");
        for (int i = 0; i < children.size(); i++) {
            text.append(code(i)).append(",2\n");
        }
        return text.toString();
    }

    /** {@code goals.csv}. */
    public String goals() {
        StringBuilder text = new StringBuilder("goal,student,measure,side,statement,baseline,baseline_date,target,due,"
                + "trials_met,trials_given,sessions_met,help,summary\n");
        for (int i = 0; i < children.size(); i++) {
            MadeMeasure measure = MadeMeasure.of(i, scenario);
            text.append(String.join(
                            ",",
                            code(i) + "-goal",
                            code(i),
                            measure.id(),
                            measure.side(),
                            "made up",
                            Integer.toString(measure.baseline()),
                            START.toString(),
                            Integer.toString(measure.target()),
                            START.plusWeeks(ChildMaker.WEEKS).toString(),
                            isWritten(i) ? "4,5,3" : ",,",
                            "independent",
                            "mean"))
                    .append('\n');
        }
        return text.toString();
    }

    /** {@code changes.csv}; without rows unless lines jump. */
    public String changes() {
        StringBuilder text = new StringBuilder("student,goal,date,change\n");
        for (int i = 0; scenario == Scenario.JUMP && i < children.size(); i++) {
            text.append(code(i))
                    .append(',')
                    .append(code(i))
                    .append("-goal,")
                    .append(START.plusDays(ChildMaker.LAST_DAY_BEFORE_JUMP))
                    .append(",made-up change of strategy\n");
        }
        return text.toString();
    }

    /** The log of all tries. */
    public String trials() {
        StringBuilder text = new StringBuilder("student,date,measure,side,trial,value,of,unit,help,place\n");
        for (int i = 0; i < children.size(); i++) {
            MadeMeasure measure = MadeMeasure.of(i, scenario);
            for (MadeSession session : children.get(i).sessions()) {
                for (int one = 0; one < session.tries().size(); one++) {
                    text.append(String.join(
                                    ",",
                                    code(i),
                                    START.plusDays(session.day()).toString(),
                                    measure.id(),
                                    measure.side(),
                                    Integer.toString(one + 1),
                                    value(measure, session.tries().get(one)),
                                    measure.unit(),
                                    "independent",
                                    "school"))
                            .append('\n');
                }
            }
        }
        return text.toString();
    }

    /** Where each line comes to lie on the due date, and whether that is at the target and the criterion is satisfied by then. */
    public String truth() {
        StringBuilder text = new StringBuilder("goal,line_at_due,line_reaches,criterion_satisfied\n");
        for (int i = 0; i < children.size(); i++) {
            MadeChild child = children.get(i);
            String satisfied = child.satisfiesAfter(0, MadeCases.SESSIONS_MET) ? "yes" : "no";
            text.append(code(i))
                    .append("-goal,")
                    .append(MadeMeasure.of(i, scenario).place(child.lineAtDue()))
                    .append(child.reaches() ? ",yes," : ",no,")
                    .append(isWritten(i) ? satisfied : "not written")
                    .append('\n');
        }
        return text.toString();
    }

    /** Value and full amount: a timed try is stopped at its cap, steps end with the line. */
    private String value(MadeMeasure measure, double scaled) {
        String amount = measure.amount(scaled).toPlainString();
        if (scenario != Scenario.CEILING || scaled < ChildMaker.CEILING - 1e-9) {
            return amount + ",";
        }
        return measure == MadeMeasure.STEPS ? amount + "," + amount : ">" + amount + ",";
    }

    private static String code(int child) {
        return String.format(Locale.ROOT, "made-%03d", child + 1);
    }

    private static boolean isWritten(int child) {
        return child % UNWRITTEN != UNWRITTEN - 1;
    }
}
