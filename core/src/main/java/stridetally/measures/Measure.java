package stridetally.measures;

import java.util.List;
import java.util.Optional;
import stridetally.model.Direction;
import stridetally.model.MeasureId;
import stridetally.model.Summary;
import stridetally.units.Unit;

/**
 * One measure of the catalogue.
 *
 * @param name the trade name
 * @param plain what it is in words for a family: "steps on the line before a foot came off"
 * @param unit the unit in which values are kept
 * @param better empty = neither way by itself (cadence): no goal can be judged on it
 * @param usualTrials tries usually given in a session
 * @param summary how a session is valued unless the goal says otherwise
 * @param possible outside it a value is set aside
 * @param plausible outside it a value is taken and told
 * @param protocolKeys the closed list of keys that say how it was taken
 * @param decimals digits that a person can use, for tables only
 * @param source where the definition comes from; "common practice, no source" when the trade has none
 */
public record Measure(
        MeasureId id,
        String name,
        String plain,
        Unit unit,
        Optional<Direction> better,
        MeasureKind kind,
        Rhythm rhythm,
        int usualTrials,
        Summary summary,
        Range possible,
        Range plausible,
        Sidedness sidedness,
        List<String> protocolKeys,
        int decimals,
        String cautions,
        String source) {

    public Measure {
        protocolKeys = List.copyOf(protocolKeys);
    }
}
