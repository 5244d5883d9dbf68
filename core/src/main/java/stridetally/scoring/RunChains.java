package stridetally.scoring;

import java.util.Arrays;

/**
 * How long the chains of runs of a series are, of which there is one a part. They are gone along side by side: each run lies
 * elsewhere in memory, and so the memory brings several at once, where one chain alone would wait for each run. Hot loop. Not for
 * several threads.
 */
final class RunChains {
    private int count;
    private TrialRuns[] of = new TrialRuns[8];
    private int[] at = new int[8];
    private int[] length = new int[8];

    /** The chains that have not ended yet. */
    private int[] open = new int[8];

    /** Forgets all chains. */
    void clear() {
        count = 0;
    }

    /** One more, by its last run; empty for {@link TrialRuns#NONE}. */
    void add(TrialRuns runs, int last) {
        if (count == at.length) {
            of = Arrays.copyOf(of, count * 2);
            at = Arrays.copyOf(at, count * 2);
            length = Arrays.copyOf(length, count * 2);
            open = Arrays.copyOf(open, count * 2);
        }
        of[count] = runs;
        at[count] = last;
        length[count] = 0;
        count++;
    }

    /** Goes along all of them. */
    void measure() {
        int left = 0;
        for (int chain = 0; chain < count; chain++) {
            if (at[chain] != TrialRuns.NONE) {
                open[left++] = chain;
            }
        }
        while (left > 0) {
            int still = 0;
            for (int one = 0; one < left; one++) {
                int chain = open[one];
                length[chain]++;
                at[chain] = of[chain].before(at[chain]);
                if (at[chain] != TrialRuns.NONE) {
                    open[still++] = chain;
                }
            }
            left = still;
        }
    }

    int count() {
        return count;
    }

    /** Its runs. */
    int length(int chain) {
        return length[chain];
    }
}
