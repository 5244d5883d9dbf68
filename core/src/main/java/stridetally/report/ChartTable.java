package stridetally.report;

import java.util.ArrayList;
import java.util.List;
import stridetally.scoring.Session;
import stridetally.scoring.SessionStatus;
import stridetally.stats.Estimate;
import stridetally.trend.AimLine;

/** The sessions of a chart as a table in words, so that nothing is on the chart only. */
final class ChartTable {
    static final List<String> HEADINGS =
            List.of("day", "value", "aim line that day", "tries that count", "tries at permitted help");

    private ChartTable() {}

    /** A row a session, by day; every row has a cell for each heading. */
    static List<List<String>> rows(ChartData data) {
        List<List<String>> rows = new ArrayList<>();
        for (Session session : data.sessions()) {
            rows.add(List.of(
                    day(session),
                    Measured.of(session.value())
                            .value()
                            .map(data.unit()::text)
                            .orElseGet(() -> "none: " + whyNone(session)),
                    data.aim().on(session.date()).value().map(data.unit()::text).orElse("none"),
                    session.counted() + " of " + session.recorded(),
                    permitted(session)));
        }
        return rows;
    }

    /** What fits beside a chart: the aim line's column falls away where there is none. */
    static List<String> shortHeadings(ChartData data) {
        return hasAim(data) ? List.of("day", "value", "aim") : List.of("day", "value");
    }

    /** A row a session, by day, without units. */
    static List<List<String>> shortRows(ChartData data) {
        boolean aim = hasAim(data);
        List<List<String>> rows = new ArrayList<>();
        for (Session session : data.sessions()) {
            List<String> row = new ArrayList<>();
            row.add(day(session));
            Estimate<Measured> value = Measured.of(session.value());
            row.add(value.isEstimated() ? data.unit().number(value.orElseThrow()) : shortly(session));
            if (aim) {
                Estimate<Double> that = data.aim().on(session.date());
                row.add(that.isEstimated() ? data.unit().number(that.orElseThrow()) : "none");
            }
            rows.add(row);
        }
        return rows;
    }

    private static String day(Session session) {
        return session.date() + (session.label().isBlank() ? "" : " " + session.label());
    }

    private static boolean hasAim(ChartData data) {
        return data.aim() instanceof AimLine.Straight;
    }

    private static String shortly(Session session) {
        if (session.status() != SessionStatus.TRIED) {
            return session.status().word();
        }
        return session.assistedOnly() ? "more help" : "no value";
    }

    private static String whyNone(Session session) {
        if (session.status() != SessionStatus.TRIED) {
            return session.status().word();
        }
        return session.assistedOnly()
                ? "every try with more help"
                : Measured.of(session.value()).reason();
    }

    private static String permitted(Session session) {
        int known = session.recorded() - session.doubtfulTries();
        if (session.recorded() == 0) {
            return "no try";
        }
        return session.permittedTries() + " of " + known
                + (session.doubtfulTries() == 0 ? "" : "; not written for " + session.doubtfulTries());
    }
}
