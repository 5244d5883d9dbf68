package stridetally.cli.options;

import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.TypeConversionException;
import stridetally.recordings.Detrend;
import stridetally.recordings.RecordingKind;
import stridetally.recordings.Recordings;

/** What is known of a recording that is scored by itself; a manifest says it for each of its own. */
public final class RecordingOptions {
    private final ValueOption<RecordingKind> kind = ValueOption.of(
            "--kind",
            "KIND",
            RecordingKind.class,
            new RecordingKindWord(),
            "SOURCE is a recording: ${COMPLETION-CANDIDATES} (guessed from the headings of a file).");

    private final ValueOption<Double> rate = ValueOption.of(
            "--rate", "HZ", Double.class, new RateWord(), "Sway: samples in a second, to check the times against.");

    private final ValueOption<Detrend> detrend = ValueOption.of(
            "--detrend",
            "HOW",
            Detrend.class,
            new DetrendWord(),
            "Sway: take out the mean, or a straight line (default: mean).");

    private final ValueOption<String> filter = ValueOption.text(
            "--filter",
            "TEXT",
            "Sway: how the samples were filtered before, such as lowpass-10Hz (none is applied here).");

    /** Declares the options. */
    public void addTo(CommandSpec command) {
        kind.addTo(command);
        rate.addTo(command);
        detrend.addTo(command);
        filter.addTo(command);
    }

    /** What the source is, when said. */
    public Optional<RecordingKind> kind() {
        return kind.typed();
    }

    /** What is known of it. */
    public Recordings.How how() {
        return new Recordings.How(
                rate.typed().map(OptionalDouble::of).orElseGet(OptionalDouble::empty),
                detrend.typed().orElse(Detrend.MEAN),
                filter.typed().orElse(""));
    }

    /** Reads a rate. */
    static final class RateWord implements ITypeConverter<Double> {
        @Override
        public Double convert(String text) {
            double rate = Double.NaN;
            try {
                rate = Double.parseDouble(text);
            } catch (NumberFormatException unreadable) {
                throw new TypeConversionException(sentence(text));
            }
            if (rate > 0 && rate < Double.POSITIVE_INFINITY) {
                return rate;
            }
            throw new TypeConversionException(sentence(text));
        }

        private static String sentence(String text) {
            return "'" + text + "' is no number of samples in a second";
        }
    }
}
