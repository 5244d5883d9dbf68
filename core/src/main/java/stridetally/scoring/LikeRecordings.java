package stridetally.scoring;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntUnaryOperator;
import stridetally.ingest.SeriesNumbers;
import stridetally.measures.Measure;
import stridetally.model.Goal;
import stridetally.model.SeriesKey;

/**
 * Keeps recordings apart that were not taken or worked up alike. What a sway figure comes to depends on sensor, sampling
 * rate, filter, detrending and length of the recording, so figures of unlike recordings are no series. A goal that names these
 * keys says which recordings it means; where it does not, the student's latest recording says it, because the next ones will
 * be like it. A recording that is silent on a key goes with it.
 *
 * @source ours the rule; that the figures depend on them, see the cautions of the measures
 */
final class LikeRecordings {
    private static final List<String> KEYS = List.of("sensor", "rate", "filter", "detrend", "ellipse", "duration");

    private LikeRecordings() {}

    /** Whether the figures of a measure depend on how a recording was taken. */
    static boolean matter(Measure measure) {
        return measure.protocolKeys().contains("rate");
    }

    /** The latest of some series, by the last day of each; of one day that whose protocol comes last as text. */
    static SeriesKey latest(List<GoalMatch.Taken> taken, SeriesNumbers numbers, IntUnaryOperator lastDay) {
        int latest = taken.get(0).series();
        for (GoalMatch.Taken one : taken) {
            int days = Integer.compare(lastDay.applyAsInt(one.series()), lastDay.applyAsInt(latest));
            int texts = text(numbers, one.series()).compareTo(text(numbers, latest));
            if (days > 0 || (days == 0 && texts > 0)) {
                latest = one.series();
            }
        }
        return numbers.key(latest);
    }

    /** The keys that the goal does not name and two series have unlike. */
    static List<String> unlike(Goal goal, SeriesKey one, SeriesKey other) {
        List<String> unlike = new ArrayList<>();
        for (String key : KEYS) {
            String first = one.protocol().keys().getOrDefault(key, "");
            String second = other.protocol().keys().getOrDefault(key, "");
            boolean written = !first.isEmpty() && !second.isEmpty();
            if (written && !first.equals(second) && !goal.protocol().keys().containsKey(key)) {
                unlike.add(key);
            }
        }
        return unlike;
    }

    private static String text(SeriesNumbers numbers, int series) {
        return numbers.key(series).protocol().text();
    }
}
