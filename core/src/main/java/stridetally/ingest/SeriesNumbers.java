package stridetally.ingest;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stridetally.model.SeriesKey;

/** Gives each series key and each session label one small number, in order of first appearance. Not for several threads. */
public final class SeriesNumbers {
    private final Map<SeriesKey, Integer> numberOf = new HashMap<>();
    private final List<SeriesKey> keys = new ArrayList<>();
    private final Map<String, Integer> labelNumber = new HashMap<>();
    private final List<String> labels = new ArrayList<>(List.of(""));

    /** The number of a key, a new one at its first appearance. */
    public int number(SeriesKey key) {
        Integer known = numberOf.get(key);
        if (known != null) {
            return known;
        }
        numberOf.put(key, keys.size());
        keys.add(key);
        return keys.size() - 1;
    }

    /** The number of a session label; 0 for a blank one. */
    public int label(String label) {
        if (label.isEmpty()) {
            return 0;
        }
        Integer known = labelNumber.get(label);
        if (known != null) {
            return known;
        }
        labelNumber.put(label, labels.size());
        labels.add(label);
        return labels.size() - 1;
    }

    /** The key of a number. */
    public SeriesKey key(int number) {
        return keys.get(number);
    }

    /** The text of a label number. */
    public String labelText(int number) {
        return labels.get(number);
    }

    /** How many labels there are, with the blank one. */
    public int labels() {
        return labels.size();
    }

    /** How many series there are. */
    public int size() {
        return keys.size();
    }
}
