package stridetally.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.scoring.Session;

/** What a chart shows, in sentences, for a reader who cannot see it. */
final class ChartDescription {
    private ChartDescription() {}

    static String of(ChartData data) {
        List<String> sentences = new ArrayList<>();
        sentences.add(sessions(data));
        data.baseline()
                .ifPresent(value ->
                        sentences.add("The baseline is " + data.unit().text(value) + on(data.baselineDate()) + "."));
        data.target()
                .ifPresent(value -> sentences.add("The target is " + data.unit().text(value)
                        + data.due().map(day -> ", due " + day).orElse("") + "."));
        data.aim()
                .on(data.asOf())
                .value()
                .ifPresent(value ->
                        sentences.add("The aim line is at " + data.unit().text(value) + " on " + data.asOf() + "."));
        ChartFrame.ownLine(data)
                .ifPresent(own -> sentences.add("The own line goes from "
                        + data.unit().text(own.firstValue()) + " on " + own.first() + " to "
                        + data.unit().text(own.lastValue()) + " on " + own.last() + "."));
        data.outlook()
                .ifPresent(outlook -> sentences.add(
                        "The forecast for the due date is " + data.unit().text(outlook.value()) + ", 80 % range "
                                + data.unit().number(outlook.low80()) + " to "
                                + data.unit().number(outlook.high80()) + "."));
        data.changes()
                .forEach(change -> sentences.add("On " + change.date() + " teaching changed: " + change.what()
                        + (change.what().endsWith(".") ? "" : ".")));
        return String.join(" ", sentences);
    }

    private static String sessions(ChartData data) {
        List<Session> valued = data.sessions().stream()
                .filter(session -> Measured.of(session.value()).isEstimated())
                .toList();
        int without = data.sessions().size() - valued.size();
        String none = without == 0 ? "" : ", and " + Counted.of(without, "session") + " without a value";
        if (valued.isEmpty()) {
            return "No session with a value yet" + none + ".";
        }
        Session first = valued.get(0);
        Session last = valued.get(valued.size() - 1);
        return Counted.of(valued.size(), "session") + " with a value, from " + value(data, first) + " on "
                + first.date() + " to " + value(data, last) + " on " + last.date() + none + ".";
    }

    private static String value(ChartData data, Session session) {
        return data.unit().text(Measured.of(session.value()).orElseThrow());
    }

    private static String on(Optional<LocalDate> day) {
        return day.map(one -> " on " + one).orElse("");
    }
}
