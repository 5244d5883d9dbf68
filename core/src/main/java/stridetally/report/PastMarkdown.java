package stridetally.report;

import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.regex.Pattern;
import stridetally.logbook.ReportLine;
import stridetally.scoring.Session;
import stridetally.table.Cell;
import stridetally.trend.Point;

/** What was told of a goal before, what was mended since, and, when asked, what each figure is made of. */
final class PastMarkdown {
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?(E-?[0-9]+)?");

    private final MarkdownPage page;
    private final GoalPart part;

    PastMarkdown(MarkdownPage page, GoalPart part) {
        this.page = page;
        this.part = part;
    }

    /** One bullet of a list; nothing when nothing was told. */
    void told() {
        if (part.past().told().isEmpty()) {
            return;
        }
        GoalPast.Told told = part.past().told().get();
        ReportLine line = told.line();
        page.bullet(
                "Told last time",
                line.period() + ", as of " + line.asOf() + ": " + line.judgement()
                        + (line.value().isBlank() ? ", no value" : ", latest value " + shown(line.value()))
                        + "; mended since: " + mended(told));
    }

    private String mended(GoalPast.Told told) {
        String now = latestUpTo(told.line());
        boolean same = now.equals(told.line().value());
        String days = "the days up to " + told.line().asOf();
        if (same && told.triesSince() == 0) {
            return "nothing of " + days;
        }
        String tries = told.triesSince() == 0
                ? "tries of " + days + " were taken back, or the goal was changed"
                : Counted.of(told.triesSince(), "try") + " of " + days + " came in or "
                        + (told.triesSince() == 1 ? "was" : "were") + " corrected later";
        return tries + "; "
                + (same
                        ? "the latest value of those days is the same"
                        : now.isEmpty()
                                ? "those days now have no value"
                                : "the latest value of those days is now " + shown(now));
    }

    /** As {@code reports.csv} writes it: left and right with a slash between. */
    private String latestUpTo(ReportLine told) {
        boolean none = true;
        StringJoiner sides = new StringJoiner("/");
        for (SidePart side : part.sides()) {
            String latest = "";
            for (Point point : side.review().trend().series().points()) {
                latest = point.date().isAfter(told.asOf()) ? latest : cell(point);
            }
            none &= latest.isEmpty();
            sides.add(latest);
        }
        return none ? "" : sides.toString();
    }

    private static String cell(Point point) {
        return FigureCells.of(Measured.of(point)).plain();
    }

    /** The value of a line, in the unit that people see. */
    String shown(String values) {
        StringJoiner shown = new StringJoiner(" left, ", "", values.contains("/") ? " right" : "");
        for (String value : values.split("/", -1)) {
            shown.add(value.isEmpty() ? "none" : number(value));
        }
        return shown.toString();
    }

    private String number(String value) {
        String digits = value.startsWith(">=") || value.startsWith("<=") ? value.substring(2) : value;
        String sign = value.substring(0, value.length() - digits.length());
        return NUMBER.matcher(digits).matches()
                ? (sign.isEmpty() ? "" : sign + " ") + part.unit().text(Double.parseDouble(digits))
                : value;
    }

    /** A part of its own; nothing when nobody asked. */
    void behind() {
        Optional<List<GoalPast.TrialLine>> tries = part.past().tries();
        if (tries.isEmpty()) {
            return;
        }
        page.heading(3, "Behind the figures");
        part.sides().forEach(this::sessions);
        if (tries.get().isEmpty()) {
            page.paragraph("No try of this student and measure is in the logbook.");
            return;
        }
        page.paragraph(
                "Every try of this student and measure up to the day of this report; from is where it stood in what"
                        + " was imported, entry and line are where it stands in the logbook.");
        page.table(
                List.of(
                        "day",
                        "try",
                        "as written",
                        "side",
                        "help",
                        "prompt",
                        "where",
                        "use",
                        "counts",
                        "from",
                        "entry",
                        "line"),
                tries.get().stream().map(PastMarkdown::row).toList());
    }

    private void sessions(SidePart side) {
        String word = side.review().side().word();
        String of = word.isEmpty() ? "" : ", " + word + " side";
        side.before()
                .ifPresent(before -> page.bullet("Median of the period before" + of + " is of", values(side, before)));
        side.now().ifPresent(now -> page.bullet("Median of this period" + of + " is of", values(side, now)));
        page.bullet(
                "Lines and forecast" + of + " are of",
                Counted.of(side.review().trend().sessions(), "session") + " with a value, those above and all since the"
                        + " baseline date");
    }

    private String values(SidePart side, PeriodFigures figures) {
        List<String> values = side.drawing().sessions().stream()
                .filter(session -> figures.days().holds(session.date()))
                .filter(session -> Measured.of(session.value()).isEstimated())
                .map(this::value)
                .toList();
        return values.isEmpty() ? "no session with a value" : String.join("; ", values);
    }

    private String value(Session session) {
        return part.unit().text(Measured.of(session.value()).orElseThrow()) + " on " + session.date() + " ("
                + session.counted() + " of " + Counted.of(session.recorded(), "try") + ")";
    }

    private static List<Cell> row(GoalPast.TrialLine one) {
        return List.of(
                Cell.text(one.date() + (one.session().isBlank() ? "" : " " + one.session())),
                Cell.code(one.number() == 0 ? "not numbered" : Integer.toString(one.number())),
                Cell.text(one.value()),
                Cell.code(one.side().isEmpty() ? "none" : one.side()),
                Cell.text(one.help().isEmpty() ? "not written" : one.help()),
                Cell.text(one.prompt().isEmpty() ? "not written" : one.prompt()),
                Cell.code(one.place()),
                Cell.code(one.use()),
                Cell.text((one.counted() ? "yes" : "no") + (one.why().isBlank() ? "" : ": " + one.why())),
                Cell.text(one.at()),
                Cell.whole(one.entry()),
                Cell.whole(one.line()));
    }
}
