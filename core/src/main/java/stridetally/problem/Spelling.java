package stridetally.problem;

import java.util.Collection;
import java.util.Optional;

/** The word a person probably meant, for a "did you mean". Suggests only: nothing is ever corrected silently. */
public final class Spelling {

    /** A word of up to so many letters may differ by one edit, a longer one by two (ours). */
    private static final int SHORT_WORD = 4;

    private Spelling() {}

    /**
     * The known word with the fewest edits from the written one, at most two (one for short words); the first in
     * alphabetical order when several are as near. Compare folded words: case and dashes count as edits here.
     */
    public static Optional<String> nearest(String written, Collection<String> known) {
        int allowed = written.length() <= SHORT_WORD ? 1 : 2;
        String best = null;
        int bestEdits = allowed + 1;
        for (String word : known) {
            if (Math.abs(word.length() - written.length()) > allowed || word.length() <= 1) {
                continue;
            }
            int edits = distance(written, word);
            if (edits < bestEdits || (edits == bestEdits && best != null && word.compareTo(best) < 0)) {
                best = word;
                bestEdits = edits;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Insertions, deletions, replacements and swaps of neighbours that turn one word into the other, no letter edited twice. */
    public static int distance(String one, String other) {
        int[] twoBack = new int[other.length() + 1];
        int[] back = new int[other.length() + 1];
        for (int j = 0; j <= other.length(); j++) {
            back[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int[] row = new int[other.length() + 1];
            row[0] = i;
            for (int j = 1; j <= other.length(); j++) {
                int replace = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(Math.min(back[j] + 1, row[j - 1] + 1), back[j - 1] + replace);
                if (swapped(one, i, other, j)) {
                    row[j] = Math.min(row[j], twoBack[j - 2] + 1);
                }
            }
            twoBack = back;
            back = row;
        }
        return back[other.length()];
    }

    private static boolean swapped(String one, int i, String other, int j) {
        return i > 1 && j > 1 && one.charAt(i - 1) == other.charAt(j - 2) && one.charAt(i - 2) == other.charAt(j - 1);
    }
}
