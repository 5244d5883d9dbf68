package stridetally.model;

import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

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
        StringBuilder text = new StringBuilder();
        for (Map.Entry<String, String> pair : keys.entrySet()) {
            text.append(text.length() == 0 ? "" : ";")
                    .append(pair.getKey())
                    .append('=')
                    .append(pair.getValue());
        }
        return text.toString();
    }

    // By hand: a record makes its own at run time, which costs a small run ten milliseconds.
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Protocol that && keys.equals(that.keys);
    }

    @Override
    public int hashCode() {
        return keys.hashCode();
    }
}
