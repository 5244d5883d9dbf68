package stridetally.recordings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stridetally.ingest.ByteSource;
import stridetally.problem.InputRefused;
import stridetally.problem.ProblemTally;

/** One recording file into figures. */
public final class Recordings {

    /**
     * What is known of a recording besides its samples.
     *
     * @param rate samples in a second, where written
     * @param filter how the samples were filtered before, in one or two words; blank when nobody said it
     */
    public record How(OptionalDouble rate, Detrend detrend, String filter) {
        /** Nothing known. */
        public static final How UNKNOWN = new How(OptionalDouble.empty(), Detrend.MEAN, "");
    }

    private static final String NOT_STATED = "not stated";

    private Recordings() {}

    /**
     * Reads a recording. Refuses a file that has not the columns of its kind.
     *
     * @param problems learns what was set aside or dropped, with its place
     */
    public static Recorded read(ByteSource source, RecordingKind kind, How how, ProblemTally problems) {
        return switch (kind) {
            case FOOTFALLS -> footfalls(source, problems);
            case SWAY -> sway(source, how, problems);
            case MANIFEST -> throw new InputRefused(source.name() + ": a manifest lists recordings and is none itself");
        };
    }

    private static Recorded footfalls(ByteSource source, ProblemTally problems) {
        List<Recorded.Walk> walks = new ArrayList<>();
        int refused = 0;
        for (Footfalls walk : FootfallReader.read(SampleTable.of(source), problems)) {
            List<Figure> figures = GaitFigures.of(source.name(), walk, problems);
            refused += figures.isEmpty() ? 1 : 0;
            if (!figures.isEmpty()) {
                walks.add(new Recorded.Walk(walk.name(), figures, List.of()));
            }
        }
        return new Recorded(walks, refused);
    }

    private static Recorded sway(ByteSource source, How how, ProblemTally problems) {
        Optional<SwaySamples> samples = SwayReader.read(SampleTable.of(source), problems, how.rate());
        List<Recorded.Walk> walks =
                samples.map(one -> List.of(stance(one, how))).orElse(List.of());
        return new Recorded(walks, samples.isPresent() ? 0 : 1);
    }

    /** Whatever changes path and velocity stands in the protocol, so that unlike recordings are never one line. */
    private static Recorded.Walk stance(SwaySamples samples, How how) {
        String filter = how.filter().isBlank() ? NOT_STATED : how.filter().strip();
        List<Recorded.ProtocolKey> keys = List.of(
                new Recorded.ProtocolKey("rate", Math.round(1 / samples.interval()) + " Hz"),
                new Recorded.ProtocolKey("filter", filter.replace(';', ',').replace('=', ' ')),
                new Recorded.ProtocolKey("detrend", how.detrend().word()),
                new Recorded.ProtocolKey("ellipse", "area-CE"),
                new Recorded.ProtocolKey("duration", Math.round(samples.seconds()) + " s"));
        return new Recorded.Walk("", SwayFigures.of(samples, how.detrend()), keys);
    }
}
