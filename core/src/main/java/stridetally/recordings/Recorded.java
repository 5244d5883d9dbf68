package stridetally.recordings;

import java.util.List;

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
    }

    /** One key of how it was recorded. */
    public record ProtocolKey(String key, String value) {}

    public Recorded {
        walks = List.copyOf(walks);
    }
}
