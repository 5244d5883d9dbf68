package stridetally.scoring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import stridetally.ingest.BulkLog;
import stridetally.ingest.SeriesNumbers;

/**
 * The sessions of long logs, read in parts and joined here: each part keeps its tries, only the numbers of its series and
 * labels are brought together. What comes out depends on the order of the tries in the files and not on the parts.
 */
public final class LogRuns implements SeriesSessions {
    private final List<TrialRuns> parts = new ArrayList<>();
    private final SeriesNumbers numbers;

    /** By part: the own number of a joined series, below 0 where it is not there. */
    private final List<int[]> local = new ArrayList<>();

    /** By part: the joined number of an own label. */
    private final List<int[]> labels = new ArrayList<>();

    /** The same by the numbers of a thread, which several parts share. */
    private final IdentityHashMap<SeriesNumbers, int[]> localOf = new IdentityHashMap<>();

    private final IdentityHashMap<SeriesNumbers, int[]> labelOf = new IdentityHashMap<>();

    /** The parts in file order, of which there is one at least. The numbers of the first go on to be those of all. */
    public LogRuns(List<BulkLog.Part<TrialRuns>> parts) {
        this.numbers = parts.get(0).numbers();
        parts.forEach(part -> add(part.numbers(), part.sink()));
    }

    /** One more part, whose tries stand behind all others. */
    void add(SeriesNumbers own, TrialRuns runs) {
        parts.add(runs);
        local.add(localOf.computeIfAbsent(own, this::localOf));
        labels.add(labelOf.computeIfAbsent(own, this::labelOf));
    }

    private int[] localOf(SeriesNumbers own) {
        int[] of = new int[Math.max(numbers.size(), own.size())];
        Arrays.fill(of, -1);
        for (int series = 0; series < own.size(); series++) {
            int joined = own == numbers ? series : numbers.number(own.key(series));
            if (joined >= of.length) {
                int before = of.length;
                of = Arrays.copyOf(of, joined + joined / 2 + 1);
                Arrays.fill(of, before, of.length, -1);
            }
            of[joined] = series;
        }
        return of;
    }

    private int[] labelOf(SeriesNumbers own) {
        int[] of = new int[own.labels()];
        for (int label = 0; label < of.length; label++) {
            of[label] = numbers.label(own.labelText(label));
        }
        return of;
    }

    @Override
    public SeriesNumbers numbers() {
        return numbers;
    }

    @Override
    public int seriesCount() {
        return numbers.size();
    }

    @Override
    public List<TrialGroup> joined(List<Integer> series) {
        List<TrialGroup> sessions = new ArrayList<>();
        SeriesWalk walk = walk();
        walk.over(series.stream().mapToInt(Integer::intValue).toArray());
        while (walk.nextSession()) {
            sessions.add(walk.group());
        }
        return sessions;
    }

    /** A way through the sessions of one series after another; each thread has its own. */
    public SeriesWalk walk() {
        return new SeriesWalk(this);
    }

    int parts() {
        return parts.size();
    }

    TrialRuns part(int part) {
        return parts.get(part);
    }

    /** The number of a series within a part; below 0 when it is not there. */
    int local(int part, int series) {
        int[] of = local.get(part);
        return series < of.length ? of[series] : -1;
    }

    int label(int part, int ownLabel) {
        return labels.get(part)[ownLabel];
    }
}
