package stridetally.scoring;

import java.time.LocalDate;
import java.util.Optional;
import stridetally.ingest.ReadingKind;
import stridetally.ingest.TrialFeed;
import stridetally.model.Level;
import stridetally.model.SeriesKey;
import stridetally.model.Settings;
import stridetally.model.Trial;
import stridetally.units.Amount;
import stridetally.units.Reading;

/**
 * A try whose value follows from the parts of one walk.
 *
 * @param kind {@link ReadingKind#EXACT}, or the word that stands for a part
 * @param value billionths of the measure's unit
 * @param help the most help of the parts
 * @param origin of the first part
 * @param madeOf the parts with their places
 */
public record DerivedTry(
        SeriesKey key,
        LocalDate date,
        String label,
        int number,
        ReadingKind kind,
        long value,
        int help,
        int prompt,
        long origin,
        String madeOf) {

    /** The try for people; where it stands and how it was written are its parts. */
    public Trial trial(Settings settings) {
        return new Trial(
                key,
                date,
                label,
                number,
                reading(),
                help == Level.BLANK
                        ? Optional.empty()
                        : Optional.of(settings.help().level(help)),
                prompt == Level.BLANK
                        ? Optional.empty()
                        : Optional.of(settings.prompt().level(prompt)),
                "",
                "",
                "",
                "derived",
                madeOf);
    }

    /** The entry of its first part. */
    public int entry() {
        return TrialFeed.entry(origin);
    }

    /** The line of its first part. */
    public long line() {
        return TrialFeed.line(origin);
    }

    private Reading reading() {
        return switch (kind) {
            case UNABLE -> new Reading.NotObtained(Reading.Why.UNABLE);
            case REFUSED -> new Reading.NotObtained(Reading.Why.REFUSED);
            case ABSENT -> new Reading.NotObtained(Reading.Why.ABSENT);
            case NOT_TESTED -> new Reading.NotObtained(Reading.Why.NOT_TESTED);
            case EXACT, AT_LEAST, AT_MOST, TRIES -> new Reading.Exact(new Amount(value));
        };
    }
}
