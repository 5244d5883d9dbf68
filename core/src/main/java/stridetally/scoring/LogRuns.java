package stridetally.scoring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import stridetally.ingest.SeriesNumbers;
import stridetally.model.Use;

/**
 * The sessions of a long log, read in parts and joined here: each part keeps its tries, only the numbers of its series and
 * labels are brought together. What comes out depends on the order of the tries in the file and not on the parts.
 */
public final class LogRuns implements SeriesSessions {
    private final List<TrialRuns> parts;
    private final SeriesNumbers numbers;
    private final int[][] local;
    private final int[][] labels;

    /** The parts in file order. */
    public LogRuns(List<TrialRuns> parts) {
        this.parts = List.copyOf(parts);
        this.numbers = parts.size() == 1 ? parts.get(0).numbers() : new SeriesNumbers();
        this.local = new int[parts.size()][0];
        this.labels = new int[parts.size()][];
        for (int part = 0; part < parts.size(); part++) {
            join(part);
        }
    }

    private void join(int part) {
        SeriesNumbers own = parts.get(part).numbers();
        int[] localOf = new int[Math.max(numbers.size(), own.size())];
        Arrays.fill(localOf, -1);
        for (int series = 0; series < own.size(); series++) {
            int joined = numbers.number(own.key(series));
            if (joined >= localOf.length) {
                int before = localOf.length;
                localOf = Arrays.copyOf(localOf, joined + joined / 2 + 1);
                Arrays.fill(localOf, before, localOf.length, -1);
            }
            localOf[joined] = series;
        }
        local[part] = localOf;
        labels[part] = new int[own.labels()];
        for (int label = 0; label < labels[part].length; label++) {
            labels[part][label] = numbers.label(own.labelText(label));
        }
    }

    /** Whether any try is of this use. */
    public boolean has(Use use) {
        for (int series = 0; series < numbers.size(); series++) {
            if (numbers.key(series).use() == use) {
                return true;
            }
        }
        return false;
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
        if (series.size() != 1) {
            throw new IllegalArgumentException("the place of a try in its file is known within its series only");
        }
        List<TrialGroup> sessions = new ArrayList<>();
        SeriesWalk walk = walk();
        walk.over(series.get(0));
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
        return series < local[part].length ? local[part][series] : -1;
    }

    int label(int part, int ownLabel) {
        return labels[part][ownLabel];
    }
}
