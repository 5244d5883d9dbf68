package stridetally.simulate;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A made-up caseload as the files of a logbook, a log of its tries and its truth: seconds of standing on the left leg, from
 * 20 at the baseline to 30 at the target, or its mirror, seconds of walking from 30 down to 20. Every third goal has no
 * criterion. The same scenario, size and seed make the same bytes.
 */
public final class MadeLogbook {
    private static final LocalDate START = LocalDate.of(2026, 9, 7);
    private static final int MIXED = 4;
    private static final int UNWRITTEN = 3;

    private final List<MadeChild> children = new ArrayList<>();

    public MadeLogbook(Scenario scenario, int goals, long seed) {
        ChildMaker maker = new ChildMaker(scenario, seed);
        for (int i = 0; i < goals; i++) {
            children.add(maker.next());
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
            text.append(code(i))
                    .append("-goal,")
                    .append(code(i))
                    .append(mirrored(i) ? ",timed-up-and-go,," : ",single-leg-stance,left,")
                    .append("made up,")
                    .append(mirrored(i) ? "30," : "20,")
                    .append(START)
                    .append(mirrored(i) ? ",20," : ",30,")
                    .append(START.plusWeeks(ChildMaker.WEEKS))
                    .append(i % UNWRITTEN == 2 ? ",,,," : ",4,5,3,")
                    .append("independent,mean\n");
        }
        return text.toString();
    }

    /** The log of all tries. */
    public String trials() {
        StringBuilder text = new StringBuilder("student,date,measure,side,trial,value,unit,help\n");
        for (int i = 0; i < children.size(); i++) {
            for (MadeSession session : children.get(i).sessions()) {
                for (int one = 0; one < session.tries().size(); one++) {
                    text.append(code(i))
                            .append(',')
                            .append(START.plusDays(session.day()))
                            .append(mirrored(i) ? ",timed-up-and-go,," : ",single-leg-stance,left,")
                            .append(one + 1)
                            .append(',')
                            .append(value(i, session.tries().get(one)))
                            .append(",s,independent\n");
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
            text.append(code(i))
                    .append("-goal,")
                    .append(value(i, child.lineAtDue()))
                    .append(',')
                    .append(child.reaches() ? "yes" : "no")
                    .append(',')
                    .append(
                            i % UNWRITTEN == 2
                                    ? "not written"
                                    : child.satisfiesAfter(0, MadeCases.SESSIONS_MET) ? "yes" : "no")
                    .append('\n');
        }
        return text.toString();
    }

    private static String code(int child) {
        return String.format(Locale.ROOT, "made-%03d", child + 1);
    }

    private static boolean mirrored(int child) {
        return child % MIXED == MIXED - 1;
    }

    /** Two decimals; nobody takes less than no time. */
    private static String value(int child, double scaled) {
        double seconds = mirrored(child) ? 30 - 10 * scaled : 20 + 10 * scaled;
        return BigDecimal.valueOf(Math.max(0.01, seconds))
                .setScale(2, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
