package stridetally.ingest;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stridetally.model.SeriesKey;

/** Gives each series key and each session label one small number, in order of first appearance. Not for several threads. */
public final class SeriesNumbers {
    private final List<SeriesKey> keys = new ArrayList<>();

    /**
     * At a place that follows from its hash, or at one behind it, the number of each key plus one. A map of objects would be most of
     * what the collector has to move when a long log is read.
     */
    private int[] slots = new int[16];

    private final Map<String, Integer> labelNumber = new HashMap<>();
    private final List<String> labels = new ArrayList<>(List.of(""));

    /** The number of a key, a new one at its first appearance. */
    public int number(SeriesKey key) {
        int slot = slot(key);
        if (slots[slot] != 0) {
            return slots[slot] - 1;
        }
        keys.add(key);
        slots[slot] = keys.size();
        if (2 * keys.size() > slots.length) {
            widen();
        }
        return keys.size() - 1;
    }

    /** Where a key stands, or would stand. */
    private int slot(SeriesKey key) {
        int mask = slots.length - 1;
        int slot = place(key) & mask;
        while (slots[slot] != 0 && !keys.get(slots[slot] - 1).equals(key)) {
            slot = slot + 1 & mask;
        }
        return slot;
    }

    private static int place(SeriesKey key) {
        int mixed = key.hashCode() * 0x9E3779B9;
        return mixed ^ mixed >>> Short.SIZE;
    }

    private void widen() {
        slots = new int[slots.length * 2];
        for (int number = 0; number < keys.size(); number++) {
            slots[slot(keys.get(number))] = number + 1;
        }
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
