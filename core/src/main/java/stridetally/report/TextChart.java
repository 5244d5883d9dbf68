package stridetally.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stridetally.model.Change;
import stridetally.model.SchoolBreak;
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
    private record Dated(LocalDate day, int order, String line) {}

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
            this.scale = ChartScale.of(Stream.of(
                            baseline.stream(),
                            target.stream(),
                            shown.stream()
                                    .flatMap(session -> value(session).stream().map(Measured::value)))
                    .flatMap(values -> values)
                    .toList());
        }

        List<String> lines(int earlier) {
            List<String> lines = new ArrayList<>();
            lines.add(header());
            if (earlier > 0) {
                lines.add("           " + Counted.of(earlier, "earlier session") + " not shown");
            }
            List<Dated> dated = new ArrayList<>();
            shown.forEach(session -> dated.add(new Dated(session.date(), 2, session(session))));
            LocalDate first = shown.get(0).date();
            data.changes().stream()
                    .filter(change -> !change.date().isBefore(first))
                    .forEach(change -> dated.add(new Dated(change.date(), 1, change(change))));
            LocalDate last = shown.get(shown.size() - 1).date();
            data.breaks().stream()
                    .filter(one -> !one.days().last().isBefore(first)
                            && !one.days().first().isAfter(last))
                    .forEach(one -> dated.add(new Dated(one.days().first(), 0, pause(one))));
            dated.stream()
                    .sorted(Comparator.comparing(Dated::day).thenComparingInt(Dated::order))
                    .forEach(one -> lines.add(one.line()));
            lines.add(key());
            return lines;
        }

        private String header() {
            char[] field = blank();
            baseline.ifPresent(value -> field[scale.column(value)] = 'B');
            target.ifPresent(value -> {
                int column = scale.column(value);
                field[column] = field[column] == 'B' ? '=' : 'T';
            });
            return clip(("           " + new String(field)).stripTrailing());
        }

        private String session(Session session) {
            char[] field = blank();
            baseline.ifPresent(value -> field[scale.column(value)] = '|');
            target.ifPresent(value -> field[scale.column(value)] = '|');
            Optional<Integer> aimColumn = aim.on(session.date()).value().map(scale::column);
            aimColumn.ifPresent(column -> field[column] = mark('+'));
            value(session).ifPresent(value -> {
                int column = scale.column(value.value());
                boolean onAim = aimColumn.equals(Optional.of(column));
                field[column] = mark(value.bound()
                        .map(bound -> bound == stridetally.scoring.Bound.AT_LEAST ? '>' : '<')
                        .orElse(onAim ? '*' : 'o'));
            });
            return clip(session.date() + " " + new String(field) + " " + note(session));
        }

        private String note(Session session) {
            String label = session.label().isBlank() ? "" : " " + session.label();
            return value(session).map(unit::text).orElseGet(() -> whyNone(session)) + label;
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
            baseline.ifPresent(value -> parts.add("B baseline " + unit.number(value)));
            target.ifPresent(value -> parts.add("T target " + unit.number(value)));
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
