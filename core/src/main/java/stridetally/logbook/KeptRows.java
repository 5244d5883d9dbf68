package stridetally.logbook;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stridetally.model.Attainment;
import stridetally.model.Benchmark;
import stridetally.model.Body;
import stridetally.model.Change;
import stridetally.model.GoalId;
import stridetally.model.Precaution;
import stridetally.model.Remark;
import stridetally.model.ServicePlan;
import stridetally.model.Student;
import stridetally.model.StudentCode;
import stridetally.model.Visit;
import stridetally.problem.Checked;
import stridetally.problem.ProblemCode;
import stridetally.problem.Spelling;
import stridetally.table.Cells;

/** One row of each of the smaller hand-kept files, and of a visits log, to its record. */
final class KeptRows {
    private static final Pattern MONTH = Pattern.compile("\\d{4}-(0[1-9]|1[0-2])");
    private static final Map<String, String> PER = Map.of(
            "week", "week", "weekly", "week", "month", "month", "monthly", "month", "year", "year", "yearly", "year");

    private KeptRows() {}

    static Checked<Student> student(Cells cells) {
        KeptRow row = new KeptRow(cells);
        String code = row.required("student");
        var from = row.date("from");
        var until = row.date("until");
        row.matching("birth_month", MONTH, "year-month such as 2018-04; no day is kept");
        tellStrangePrecautions(row);
        return row.checked(() -> new Student(
                new StudentCode(code),
                row.text("grade"),
                row.text("school"),
                from,
                until,
                row.text("left"),
                row.text("birth_month"),
                row.text("sex"),
                row.text("population"),
                row.text("function_level"),
                row.text("language"),
                row.list("precautions")));
    }

    /** The student is taken, and plan makes no home sheet: a row set aside would take the tries of the child with it. */
    private static void tellStrangePrecautions(KeptRow row) {
        List<String> words =
                Stream.of(Precaution.values()).map(Precaution::word).toList();
        for (String word : row.list("precautions")) {
            if (Precaution.find(word).isEmpty()) {
                row.tell(
                        ProblemCode.PRECAUTION_UNKNOWN,
                        "precautions",
                        "",
                        "one or more of " + String.join(", ", words),
                        Spelling.nearest(word, words)
                                .map(near -> "did you mean " + near + "?")
                                .orElse("use other for what the list has no word for; no home sheet is made"));
            }
        }
    }

    static Checked<Body> body(Cells cells) {
        KeptRow row = new KeptRow(cells);
        String student = row.required("student");
        row.required("date");
        var date = row.date("date");
        var height = row.amount("height_cm");
        var leg = row.amount("leg_length_cm");
        var weight = row.amount("weight_kg");
        return row.checked(
                () -> new Body(new StudentCode(student), date.orElseThrow(), height, leg, weight, row.text("how")));
    }

    static Checked<Benchmark> benchmark(Cells cells) {
        KeptRow row = new KeptRow(cells);
        String goal = row.required("goal");
        row.required("by");
        row.required("value");
        var by = row.date("by");
        var value = row.amount("value");
        return row.checked(() -> new Benchmark(new GoalId(goal), by.orElseThrow(), value.orElseThrow()));
    }

    static Checked<Attainment> attainment(Cells cells) {
        KeptRow row = new KeptRow(cells);
        String goal = row.required("goal");
        row.required("level");
        row.required("value");
        var level = row.whole("level", -2, 2);
        var value = row.amount("value");
        return row.checked(() -> new Attainment(new GoalId(goal), level.orElseThrow(), value.orElseThrow()));
    }

    static Checked<Change> change(Cells cells) {
        KeptRow row = new KeptRow(cells);
        String student = row.required("student");
        row.required("date");
        var date = row.date("date");
        var goal = row.id("goal", GoalId::new);
        return row.checked(() -> new Change(new StudentCode(student), goal, date.orElseThrow(), row.text("change")));
    }

    static Checked<ServicePlan> service(Cells cells) {
        KeptRow row = new KeptRow(cells);
        String student = row.required("student");
        row.required("minutes");
        row.required("per");
        var from = row.date("from");
        var until = row.date("until");
        var minutes = row.whole("minutes", 0, Integer.MAX_VALUE);
        var per = row.word("per", PER);
        return row.checked(() -> new ServicePlan(
                new StudentCode(student), from, until, minutes.orElseThrow(), per.orElseThrow(), row.text("kind")));
    }

    static Checked<Remark> remark(Cells cells) {
        KeptRow row = new KeptRow(cells);
        String goal = row.required("goal");
        String period = row.required("period");
        return row.checked(() -> new Remark(
                new GoalId(goal),
                period,
                row.text("language"),
                row.text("remark"),
                row.text("next"),
                row.id("judgement", word -> word),
                row.text("why"),
                row.text("routine"),
                row.text("home"),
                row.text("family")));
    }

    static Checked<Visit> visit(Cells cells) {
        KeptRow row = new KeptRow(cells);
        String student = row.required("student");
        row.required("date");
        row.required("status");
        var date = row.date("date");
        var minutes = row.whole("minutes", 0, 24 * 60);
        var status = row.word("status", KeptWords.STATUSES);
        var makeUpFor = row.date("make_up_for");
        return row.checked(() -> new Visit(
                new StudentCode(student),
                date.orElseThrow(),
                minutes,
                status.orElseThrow(),
                row.text("kind"),
                makeUpFor,
                row.text("reason")));
    }
}
