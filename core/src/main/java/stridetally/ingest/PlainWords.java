package stridetally.ingest;

import java.nio.charset.StandardCharsets;
import stridetally.model.Level;
import stridetally.model.WordScale;
import stridetally.table.FormulaGuard;

/** Words of help and prompt, and session labels: each is understood once and then only compared. A thread's own. */
final class PlainWords {
    /** No word that is known: the row is not plain. */
    static final int UNREADABLE = Integer.MIN_VALUE;

    private static final int LONGEST_CELL = 255;

    private final SeriesNumbers numbers;
    private final ByteMemo helpWords = new ByteMemo(ByteMemo.Spread.FEW);
    private final ByteMemo promptWords = new ByteMemo(ByteMemo.Spread.FEW);
    private final ByteMemo labels = new ByteMemo(ByteMemo.Spread.MANY);

    PlainWords(SeriesNumbers numbers) {
        this.numbers = numbers;
    }

    /** The rank of a word of help; {@link #UNREADABLE} when it is none. The column is below 0 when there is none. */
    int help(ByteRecords records, int column, WordScale scale) {
        return rank(helpWords, records, column, scale);
    }

    /** The same for a prompt. */
    int prompt(ByteRecords records, int column, WordScale scale) {
        return rank(promptWords, records, column, scale);
    }

    /** The number of a session label; below 0 when the cell is not plain. */
    int label(ByteRecords records, int column) {
        if (column < 0 || records.start(column) == records.end(column)) {
            return 0;
        }
        int found = labels.find(records.bytes(), records.start(column), records.end(column));
        if (found != ByteMemo.UNKNOWN) {
            return found;
        }
        if (isOdd(records, column)) {
            return UNREADABLE;
        }
        int one = numbers.label(written(records, column));
        labels.put(records.bytes(), records.start(column), records.end(column), one);
        return one;
    }

    private static int rank(ByteMemo words, ByteRecords records, int column, WordScale scale) {
        if (column < 0) {
            return Level.BLANK;
        }
        int found = words.find(records.bytes(), records.start(column), records.end(column));
        return found == ByteMemo.UNKNOWN ? newRank(words, records, column, scale) : found - 1;
    }

    /** Ranks are remembered plus one; 0 is a blank cell. */
    private static int newRank(ByteMemo words, ByteRecords records, int column, WordScale scale) {
        if (isOdd(records, column)) {
            return UNREADABLE;
        }
        String word = written(records, column);
        int rank =
                word.isEmpty() ? Level.BLANK : scale.find(word).map(Level::rank).orElse(UNREADABLE);
        if (rank != UNREADABLE) {
            words.put(records.bytes(), records.start(column), records.end(column), rank + 1);
        }
        return rank;
    }

    private static boolean isOdd(ByteRecords records, int column) {
        return records.hasDoubled(column) || records.end(column) - records.start(column) > LONGEST_CELL;
    }

    /** The cell as {@link TrialLayout#written} gives it. */
    static String written(ByteRecords records, int column) {
        String cell = new String(
                records.bytes(),
                records.start(column),
                records.end(column) - records.start(column),
                StandardCharsets.UTF_8);
        return FormulaGuard.unguard(cell).strip();
    }
}
