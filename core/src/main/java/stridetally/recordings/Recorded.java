package stridetally.recordings;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What one recording file gave.
 *
 * @param walks one for each walk of a footfall file; one of a sway file
 * @param refused walks or recordings that gave nothing
 */
public record Recorded(List<Walk> walks, int refused) {

    /**
     * The figures of one walk, or of one quiet stance.
     *
     * @param walk its name in the file; blank for a stance
     * @param protocol keys that the recording itself says, such as its rate; blank for footfalls
     */
    public record Walk(String walk, List<Figure> figures, List<ProtocolKey> protocol) {
        public Walk {
            figures = List.copyOf(figures);
            protocol = List.copyOf(protocol);
        }

        /** Keys as somebody wrote them, with those that the recording itself says where they are silent. */
        public String over(String written) {
            return over(written, key -> true);
        }

        /** The same with the keys of one measure only. */
        String over(String written, Predicate<String> wanted) {
            StringBuilder text = new StringBuilder(written);
            Set<String> named = new HashSet<>();
            for (String pair : written.split(";", -1)) {
                int equals = pair.indexOf('=');
                named.add(equals < 0 ? "" : SampleTable.fold(pair.substring(0, equals)));
            }
            for (ProtocolKey key : protocol) {
                if (wanted.test(key.key()) && !named.contains(key.key())) {
                    text.append(text.length() == 0 ? "" : ";")
                            .append(key.key())
                            .append('=')
                            .append(key.value());
                }
            }
            return text.toString();
        }
    }

    /** One key of how it was recorded. */
    public record ProtocolKey(String key, String value) {}

    public Recorded {
        walks = List.copyOf(walks);
    }
}
