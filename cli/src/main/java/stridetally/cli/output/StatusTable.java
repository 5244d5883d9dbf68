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
import stridetally.table.Cell;
import stridetally.table.TableWriter;

/** How a logbook stands, a line a fact: entries, rows still set aside, gaps, students without data of late. */
public final class StatusTable {
    private static final List<String> HEADINGS = List.of("about", "which", "count", "says");

    /** Days without a try after which a student is named; our choice. */
    private static final int QUIET_DAYS = 28;

    private StatusTable() {}

    /** The table in a format. */
    public static Content content(OpenLogbook open, LocalDate asOf, Format format) {
        List<List<Cell>> rows = new ArrayList<>();
        LogbookStatus status = open.book().status();
        status.entries().forEach(standing -> rows.add(entry(standing)));
        open.book().openSetAside().forEach(row -> rows.add(setAside(row)));
        status.gaps().forEach(gap -> rows.add(line("gap", "", Cell.blank(), gap)));
        quiet(open, asOf, rows);
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
                + (standing.state() == LogbookStatus.State.UNDONE ? "; taken back" : "");
        return List.of(
                Cell.code("entry"),
                EntryNumber.cell(standing.entry().number()),
                Cell.whole(counts.taken()),
                Cell.text(says + "; " + standing.entry().label()));
    }

    private static List<Cell> setAside(SetAsideRecord row) {
        return List.of(
                Cell.code("set aside"),
                Cell.code(row.id()),
                Cell.blank(),
                Cell.text(row.row().at() + ": " + row.row().codes() + "; "
                        + row.row().mend()));
    }

    private static void quiet(OpenLogbook open, LocalDate asOf, List<List<Cell>> rows) {
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
            if (here && (day == null || day <= asOf.toEpochDay() - QUIET_DAYS)) {
                String says = day == null ? "no try yet" : "no try since " + LocalDate.ofEpochDay(day);
                rows.add(line("student", student.code().text(), Cell.blank(), says));
            }
        }
    }

    private static List<Cell> line(String about, String which, Cell count, String says) {
        return List.of(Cell.code(about.toLowerCase(Locale.ROOT)), Cell.text(which), count, Cell.text(says));
    }
}
