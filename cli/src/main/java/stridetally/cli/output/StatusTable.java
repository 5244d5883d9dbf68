package stridetally.cli.output;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import stridetally.cli.files.Content;
import stridetally.cli.input.OpenLogbook;
import stridetally.cli.options.Format;
import stridetally.ingest.SeriesNumbers;
import stridetally.ingest.TrialFeed;
import stridetally.logbook.LogbookStatus;
import stridetally.logbook.SetAsideRecord;
import stridetally.model.Student;
import stridetally.problem.ProblemCode;
import stridetally.table.Cell;
import stridetally.table.TableWriter;

/**
 * How a logbook stands, a line a fact: entries, open rows by student and one by one (conflicts under their own word), gaps,
 * students without data of late.
 */
public final class StatusTable {
    private static final List<String> HEADINGS = List.of("about", "which", "count", "says");

    private StatusTable() {}

    /** The table in a format; a student without a try for {@code quietDays} is named. */
    public static Content content(OpenLogbook open, LocalDate asOf, int quietDays, Format format) {
        List<List<Cell>> rows = new ArrayList<>();
        LogbookStatus status = open.book().status();
        status.entries().forEach(standing -> rows.add(entry(standing)));
        status.openSetAside().forEach((student, count) -> rows.add(open(student, count)));
        open.book().openSetAside().forEach(row -> rows.add(setAside(row)));
        status.gaps().forEach(gap -> rows.add(line("gap", "", Cell.blank(), gap)));
        quiet(open, asOf, quietDays, rows);
        return Content.text(out -> {
            TableWriter table = Tables.open(format, out, HEADINGS);
            rows.forEach(table::row);
            table.finish();
        });
    }

    private static List<Cell> entry(LogbookStatus.Standing standing) {
        var counts = standing.entry().counts();
        String says = standing.entry().kind().word() + ", " + counts.rowsRead() + " rows = " + counts.taken()
                + " taken + " + counts.known() + " known + " + counts.setAside() + " set aside + " + counts.blank()
                + " blank"
                + (standing.superseded() > 0 ? "; " + standing.superseded() + " replaced since" : "")
                + (standing.mended() > 0 ? "; " + standing.mended() + " mended since" : "")
                + (standing.dismissed() > 0 ? "; " + standing.dismissed() + " dismissed" : "")
                + (standing.state() == LogbookStatus.State.UNDONE ? "; taken back" : "");
        return List.of(
                Cell.code("entry"),
                EntryNumber.cell(standing.entry().number()),
                Cell.whole(counts.taken()),
                Cell.text(says + "; " + standing.entry().label()));
    }

    private static List<Cell> open(String student, long count) {
        String says = student.isEmpty() ? "rows set aside whose student could not be read" : "rows set aside";
        return line("open rows", student, Cell.whole(count), says);
    }

    private static boolean isConflict(SetAsideRecord row) {
        return List.of(row.row().codes().split(" ", -1)).contains(ProblemCode.CONFLICT.name());
    }

    private static List<Cell> setAside(SetAsideRecord row) {
        return List.of(
                Cell.code(isConflict(row) ? "conflict" : "set aside"),
                Cell.code(row.id()),
                Cell.blank(),
                Cell.text(row.row().at() + ": " + row.row().codes() + "; "
                        + row.row().mend()));
    }

    private static void quiet(OpenLogbook open, LocalDate asOf, int quietDays, List<List<Cell>> rows) {
        Map<String, Integer> last = new TreeMap<>();
        SeriesNumbers numbers = new SeriesNumbers();
        TrialFeed feed = new TrialFeed(
                numbers,
                open.caseload().settings(),
                (series, day, label, number, kind, value, given, help, prompt, origin) -> {
                    if (kind.recorded()) {
                        last.merge(numbers.key(series).student().text(), day, Math::max);
                    }
                });
        open.book().trials().forEach((entry, line, cells) -> feed.push(cells, entry, line));
        for (Student student : open.caseload().students()) {
            boolean here = student.until().map(until -> !until.isBefore(asOf)).orElse(true);
            Integer day = last.get(student.code().text());
            if (here && (day == null || day <= asOf.toEpochDay() - quietDays)) {
                String says = day == null ? "no try yet" : "no try since " + LocalDate.ofEpochDay(day);
                rows.add(line("student", student.code().text(), Cell.blank(), says));
            }
        }
    }

    private static List<Cell> line(String about, String which, Cell count, String says) {
        return List.of(Cell.code(about.toLowerCase(Locale.ROOT)), Cell.text(which), count, Cell.text(says));
    }
}
