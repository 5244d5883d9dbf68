package stridetally.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import stridetally.model.Change;
import stridetally.model.SchoolBreak;
import stridetally.scoring.Bound;
import stridetally.scoring.Session;
import stridetally.scoring.SessionStatus;
import stridetally.stats.Estimate;
import stridetally.trend.AimLine;

/**
 * A small chart in plain characters, one line a session from the top down, at most {@value #WIDTH} columns: the value, the
 * aim line of that day, and upright lines at baseline and target. Changes of strategy and school breaks stand between the
 * sessions on their days. Same goal, same characters.
 */
public record TextChart(List<String> lines) {
    /** The widest line, in characters. */
    public static final int WIDTH = 78;
    /** Sessions drawn; earlier ones are counted, not drawn. */
    public static final int MOST_SESSIONS = 24;

    private static final String ELLIPSIS = "...";

    public TextChart {
        lines = List.copyOf(lines);
    }

    /** The chart of some data. */
    public static TextChart of(ChartData data) {
        List<Session> sessions = data.sessions();
        if (sessions.isEmpty()) {
            return new TextChart(List.of("No session to draw."));
        }
        int earlier = Math.max(0, sessions.size() - MOST_SESSIONS);
        return new TextChart(new Drawing(data, sessions.subList(earlier, sessions.size())).lines(earlier));
    }

    /** What stands above the chart where no page says it: which goal or series, and which way is better. */
    public static String heading(ChartData data) {
        return clip(data.title() + ": " + data.better());
    }

    /** A line of the chart with its day; breaks come before changes, changes before sessions of the same day. */
    private record Dated(LocalDate day, int order, String line) implements Comparable<Dated> {
        @Override
        public int compareTo(Dated other) {
            int byDay = day.compareTo(other.day);
            return byDay != 0 ? byDay : Integer.compare(order, other.order);
        }
    }

    private static final class Drawing {
        private final ChartData data;
        private final List<Session> shown;
        private final AimLine aim;
        private final ShownUnit unit;
        private final Optional<Double> baseline;
        private final Optional<Double> target;
        private final ChartScale scale;
        private final StringBuilder marks = new StringBuilder();

        Drawing(ChartData data, List<Session> shown) {
            this.data = data;
            this.shown = shown;
            this.aim = data.aim();
            this.unit = data.unit();
            this.baseline = data.baseline();
            this.target = data.target();
            this.scale = ChartScale.of(amounts());
        }

        private List<Double> amounts() {
            List<Double> amounts = new ArrayList<>();
            if (baseline.isPresent()) {
                amounts.add(baseline.get());
            }
            if (target.isPresent()) {
                amounts.add(target.get());
            }
            for (Session session : shown) {
                Optional<Measured> value = value(session);
                if (value.isPresent()) {
                    amounts.add(value.get().value());
                }
            }
            return amounts;
        }

        List<String> lines(int earlier) {
            List<String> lines = new ArrayList<>();
            lines.add(header());
            if (earlier > 0) {
                lines.add("           " + Counted.of(earlier, "earlier session") + " not shown");
            }
            for (Dated one : dated()) {
                lines.add(one.line());
            }
            lines.add(key());
            return lines;
        }

        private List<Dated> dated() {
            LocalDate first = shown.get(0).date();
            LocalDate last = shown.get(shown.size() - 1).date();
            List<Dated> dated = new ArrayList<>();
            for (Session session : shown) {
                dated.add(new Dated(session.date(), 2, session(session)));
            }
            for (Change change : data.changes()) {
                if (!change.date().isBefore(first)) {
                    dated.add(new Dated(change.date(), 1, change(change)));
                }
            }
            for (SchoolBreak one : data.breaks()) {
                if (!one.days().last().isBefore(first) && !one.days().first().isAfter(last)) {
                    dated.add(new Dated(one.days().first(), 0, pause(one)));
                }
            }
            Collections.sort(dated);
            return dated;
        }

        private String header() {
            char[] field = blank();
            if (baseline.isPresent()) {
                field[scale.column(baseline.get())] = 'B';
            }
            if (target.isPresent()) {
                int column = scale.column(target.get());
                field[column] = field[column] == 'B' ? '=' : 'T';
            }
            return clip(("           " + new String(field)).stripTrailing());
        }

        private String session(Session session) {
            char[] field = blank();
            if (baseline.isPresent()) {
                field[scale.column(baseline.get())] = '|';
            }
            if (target.isPresent()) {
                field[scale.column(target.get())] = '|';
            }
            int aimColumn = -1;
            Estimate<Double> aimed = aim.on(session.date());
            if (aimed.isEstimated()) {
                aimColumn = scale.column(aimed.orElseThrow());
                field[aimColumn] = mark('+');
            }
            Optional<Measured> value = value(session);
            if (value.isPresent()) {
                int column = scale.column(value.get().value());
                field[column] = mark(sign(value.get(), column == aimColumn));
            }
            return clip(session.date() + " " + new String(field) + " " + note(session));
        }

        private static char sign(Measured value, boolean onAim) {
            if (value.bound().isPresent()) {
                return value.bound().get() == Bound.AT_LEAST ? '>' : '<';
            }
            return onAim ? '*' : 'o';
        }

        private String note(Session session) {
            String label = session.label().isBlank() ? "" : " " + session.label();
            Optional<Measured> value = value(session);
            return (value.isPresent() ? unit.text(value.get()) : whyNone(session)) + label;
        }

        private static String whyNone(Session session) {
            if (session.status() != SessionStatus.TRIED) {
                return session.status().word();
            }
            return session.assistedOnly() ? "all with more help" : "no value";
        }

        private static String change(Change change) {
            return clip(change.date() + " ~ change: " + change.what());
        }

        private static String pause(SchoolBreak one) {
            return clip(one.days().first() + " ~ no school until " + one.days().last()
                    + (one.name().isBlank() ? "" : " (" + one.name() + ")"));
        }

        private String key() {
            List<String> parts = new ArrayList<>();
            if (baseline.isPresent()) {
                parts.add("B baseline " + unit.number(baseline.get()));
            }
            if (target.isPresent()) {
                parts.add("T target " + unit.number(target.get()));
            }
            if (baseline.isPresent() && target.isPresent() && header().indexOf('=') >= 0) {
                parts.add("= B and T");
            }
            add(parts, 'o', "o session");
            add(parts, '+', "+ aim line");
            add(parts, '*', "* both");
            add(parts, '>', "> at least");
            add(parts, '<', "< at most");
            return clip(String.join(", ", parts));
        }

        private void add(List<String> parts, char mark, String words) {
            if (marks.indexOf(String.valueOf(mark)) >= 0) {
                parts.add(words);
            }
        }

        private char mark(char mark) {
            marks.append(mark);
            return mark;
        }

        private static Optional<Measured> value(Session session) {
            Estimate<Measured> value = Measured.of(session.value());
            return value.value();
        }

        private static char[] blank() {
            return " ".repeat(ChartScale.COLUMNS).toCharArray();
        }
    }

    /** One line of plain characters: no line ends or control characters, no back-ticks, cut at the width. */
    static String clip(String line) {
        String plain = XmlText.fitLine(line).replace('`', '\'').stripTrailing();
        if (plain.codePointCount(0, plain.length()) <= WIDTH) {
            return plain;
        }
        return plain.substring(0, plain.offsetByCodePoints(0, WIDTH - ELLIPSIS.length())) + ELLIPSIS;
    }
}
