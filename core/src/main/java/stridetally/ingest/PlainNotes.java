package stridetally.ingest;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import stridetally.problem.ProblemCode;
import stridetally.problem.ProblemTally;
import stridetally.problem.RowProblem;

/**
 * Notes that plain rows bring, such as {@code PLACE_BLANK}. The first rows with each set of them go the long way, which makes
 * the sentences; all further ones are only counted.
 */
final class PlainNotes {
    /** The notes that the cells of a series bring to each of its rows, in the order of their bits. */
    private static final List<ProblemCode> OF_SERIES =
            List.of(ProblemCode.PLACE_BLANK, ProblemCode.SIDE_MISSING, ProblemCode.SIDE_NOT_USED);

    /** The bit of a blank help cell. */
    static final int HELP_BLANK = 1 << 3;

    /** The notes that other cells of a row may bring; they say nothing of the series. */
    private static final Set<ProblemCode> OF_ROW = EnumSet.of(
            ProblemCode.HELP_BLANK, ProblemCode.VALUE_UNUSUAL, ProblemCode.VALUE_MARKED, ProblemCode.DATE_SHORT_YEAR);

    /** What {@link #ofSeries} says of notes that no plain row may have. */
    static final int UNKNOWN = -1;

    /** So many of a kind go the long way; the tally shows as many. */
    private static final int TOLD = 5;

    private final int[] told = new int[2 * HELP_BLANK];
    private final long[] counted = new long[2 * HELP_BLANK];

    /** The bits of the notes that a checked row's series brings; {@link #UNKNOWN} when it has one that is not known here. */
    static int ofSeries(List<RowProblem> problems) {
        int brings = 0;
        for (RowProblem problem : problems) {
            int bit = OF_SERIES.indexOf(problem.code());
            if (bit < 0 && !OF_ROW.contains(problem.code())) {
                return UNKNOWN;
            }
            brings |= bit < 0 ? 0 : 1 << bit;
        }
        return brings;
    }

    /** Counts the notes of a row; false when the row is one of the first, whose notes must be told. */
    boolean count(int brings) {
        if (countTold(brings)) {
            return true;
        }
        told[brings]++;
        return false;
    }

    /** The same of a row that goes the long way later, when it is false: then nothing has changed. */
    boolean countTold(int brings) {
        if (brings != 0 && told[brings] < TOLD) {
            return false;
        }
        counted[brings] += brings == 0 ? 0 : 1;
        return true;
    }

    /** Adds what was only counted. */
    void addTo(ProblemTally problems) {
        for (int brings = 0; brings < counted.length; brings++) {
            for (int bit = 0; bit < OF_SERIES.size(); bit++) {
                problems.addCounted(OF_SERIES.get(bit), (brings & 1 << bit) == 0 ? 0 : counted[brings]);
            }
            problems.addCounted(ProblemCode.HELP_BLANK, (brings & HELP_BLANK) == 0 ? 0 : counted[brings]);
        }
    }
}
