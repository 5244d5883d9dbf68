package stridetally.cli.input;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import stridetally.cli.options.NarrowOptions;
import stridetally.ingest.SeriesNumbers;
import stridetally.measures.Catalogue;
import stridetally.model.SeriesKey;
import stridetally.model.Use;
import stridetally.scoring.SeriesScore;
import stridetally.scoring.SeriesScorer;
import stridetally.scoring.SeriesSessions;

/** The series of a log without goals, scored one after another in the order of their keys. */
public final class BareSeries {
    private BareSeries() {}

    private static int byKey(SeriesKey one, SeriesKey other) {
        int order = one.source().compareTo(other.source());
        order = order != 0 ? order : one.student().compareTo(other.student());
        order = order != 0 ? order : one.measure().compareTo(other.measure());
        order = order != 0 ? order : one.side().compareTo(other.side());
        order = order != 0
                ? order
                : one.protocol().text().compareTo(other.protocol().text());
        return order != 0 ? order : one.place().compareTo(other.place());
    }

    /** Every series that is not narrowed out; probes and practice of one key count together. */
    public static void forEach(LogRead log, NarrowOptions narrow, Consumer<SeriesScore> taker) {
        scored(log.sessions(), chosen(log.sessions(), narrow), log.catalogue(), narrow, taker);
    }

    /**
     * The numbers of the series that are not narrowed out, in the order of their keys; those of one key that differ in their
     * use stand together.
     */
    public static List<int[]> inOrder(LogRead log, NarrowOptions narrow) {
        List<Integer> chosen = chosen(log.sessions(), narrow);
        SeriesNumbers numbers = log.sessions().numbers();
        chosen.sort((one, other) -> {
            // What the numbers are depends on who has read what.
            int order = byKey(numbers.key(one), numbers.key(other));
            return order != 0
                    ? order
                    : numbers.key(one).use().compareTo(numbers.key(other).use());
        });
        List<int[]> together = new ArrayList<>();
        int start = 0;
        for (int next = 1; next <= chosen.size(); next++) {
            if (next == chosen.size() || byKey(numbers.key(chosen.get(start)), numbers.key(chosen.get(next))) != 0) {
                int[] alike = new int[next - start];
                for (int one = 0; one < alike.length; one++) {
                    alike[one] = chosen.get(start + one);
                }
                together.add(alike);
                start = next;
            }
        }
        return together;
    }

    private static List<Integer> chosen(SeriesSessions index, NarrowOptions narrow) {
        List<Integer> chosen = new ArrayList<>();
        for (int series = 0; series < index.seriesCount(); series++) {
            SeriesKey key = index.numbers().key(series);
            if (shows(narrow, key)) {
                chosen.add(series);
            }
        }
        return chosen;
    }

    /** Whether a series is not narrowed out. */
    public static boolean shows(NarrowOptions narrow, SeriesKey key) {
        return narrow.shows(key.student())
                && narrow.places().contains(key.place())
                && narrow.uses().contains(key.use());
    }

    /** Some series of an index. */
    public static void scored(
            SeriesSessions index,
            List<Integer> series,
            Catalogue catalogue,
            NarrowOptions narrow,
            Consumer<SeriesScore> taker) {
        SeriesScorer scorer = new SeriesScorer(catalogue::find, narrow.summary(), narrow.helpUpTo());
        Map<SeriesKey, List<Integer>> together = new LinkedHashMap<>();
        for (int one : series) {
            SeriesKey key = withoutUse(index.numbers().key(one));
            List<Integer> same = together.get(key);
            if (same == null) {
                same = new ArrayList<>();
                together.put(key, same);
            }
            same.add(one);
        }
        List<SeriesKey> keys = new ArrayList<>(together.keySet());
        keys.sort(BareSeries::byKey);
        for (SeriesKey key : keys) {
            taker.accept(scorer.score(index, together.getOrDefault(key, List.of())));
        }
    }

    private static SeriesKey withoutUse(SeriesKey key) {
        return new SeriesKey(
                key.source(), key.student(), key.measure(), key.side(), key.protocol(), key.place(), Use.PROBE);
    }
}
