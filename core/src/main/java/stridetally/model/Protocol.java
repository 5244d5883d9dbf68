package stridetally.model;

import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How a measure was taken: {@code key=value} pairs, in the order of their keys. Which keys a measure knows is the
 * catalogue's business.
 */
public record Protocol(SortedMap<String, String> keys) {

    /** Nothing stated. */
    public static final Protocol NONE = new Protocol(new TreeMap<>());

    public Protocol {
        keys = java.util.Collections.unmodifiableSortedMap(new TreeMap<>(keys));
    }

    /** Whether a trial taken so serves a goal that names these keys: every key the goal names is equal. */
    public boolean serves(Protocol goal) {
        return goal.keys.entrySet().stream().allMatch(named -> named.getValue().equals(keys.get(named.getKey())));
    }

    /** This protocol with the usual keys of a form or a goal filled in where this one is silent. */
    public Protocol over(Protocol usual) {
        TreeMap<String, String> both = new TreeMap<>(usual.keys);
        both.putAll(keys);
        return new Protocol(both);
    }

    /** {@code eyes=open;surface=floor}; blank when nothing is stated. */
    public String text() {
        return keys.entrySet().stream()
                .map(entry -> entry.getKey() + "=" + entry.getValue())
                .collect(java.util.stream.Collectors.joining(";"));
    }
}
