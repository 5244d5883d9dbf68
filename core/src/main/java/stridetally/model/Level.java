package stridetally.model;

import org.jspecify.annotations.Nullable;

/**
 * One word of an ordered scale of words (help or prompt). It has an order and no arithmetic, so nobody averages it; the
 * rank is for comparing and for the stream, and is never printed.
 *
 * @param rank 0 is the least help
 */
public record Level(String word, int rank) {

    /** Rank of a level that was not recorded. */
    public static final int BLANK = -1;

    // By hand: a record makes its own at run time, which costs a small run ten milliseconds.
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Level that && rank == that.rank && word.equals(that.word);
    }

    @Override
    public int hashCode() {
        return 31 * word.hashCode() + rank;
    }
}
