package stridetally.scoring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import stridetally.ingest.ReadingKind;
import stridetally.ingest.TrialFeed;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.SeriesKey;
import stridetally.units.Amount;

/** One logged part of a walk. */
record PartTry(WalkPart part, SeriesKey key, ReadingKind kind, long value, int help, int prompt, long origin) {

    static PartTry of(WalkPart part, SeriesKey key, TrialGroup session, int row) {
        return new PartTry(
                part,
                key,
                session.kind(row),
                session.value(row),
                session.help(row),
                session.prompt(row),
                session.origin(row));
    }

    /**
     * Parts of one trial number, by how they were taken: a comfortable and a fast walk may both be try 1. The distance does
     * not part them, and a part of which nothing is stated goes with the others when they agree.
     */
    static List<List<PartTry>> byProtocol(List<PartTry> parts) {
        Map<Protocol, List<PartTry>> walks = new LinkedHashMap<>();
        for (PartTry part : parts) {
            walks.computeIfAbsent(withoutDistance(part.key.protocol()), any -> new ArrayList<>())
                    .add(part);
        }
        List<PartTry> silent = walks.get(Protocol.NONE);
        if (silent != null && walks.size() == 2) {
            return List.of(parts);
        }
        return List.copyOf(walks.values());
    }

    /** The key of a measure of this walk: how it was taken is what any part says of it. */
    SeriesKey keyOf(MeasureId measure, List<PartTry> walk) {
        Protocol all = Protocol.NONE;
        for (PartTry one : walk) {
            all = one.key.protocol().over(all);
        }
        return new SeriesKey(key.source(), key.student(), measure, key.side(), all, key.place(), key.use());
    }

    /** {@code walk-time 8.41 s (entry 1, line 5)}. */
    String text(String unit) {
        String place = TrialFeed.entry(origin) == 0
                ? "line " + TrialFeed.line(origin)
                : "entry " + TrialFeed.entry(origin) + ", line " + TrialFeed.line(origin);
        return part.id().text() + " " + new Amount(value).text() + (unit.isEmpty() ? "" : " " + unit) + " (" + place
                + ")";
    }

    private static Protocol withoutDistance(Protocol protocol) {
        if (!protocol.keys().containsKey(WalkFigures.DISTANCE_KEY)) {
            return protocol;
        }
        TreeMap<String, String> keys = new TreeMap<>(protocol.keys());
        keys.remove(WalkFigures.DISTANCE_KEY);
        return new Protocol(keys);
    }
}
