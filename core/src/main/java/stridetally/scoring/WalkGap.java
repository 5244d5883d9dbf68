package stridetally.scoring;

import java.time.LocalDate;
import stridetally.model.SeriesKey;

/**
 * A try, or a session, from which a measure does not follow.
 *
 * @param key of the measure that is missing
 * @param number of the try; 0 where it has none
 * @param reason why, naming the part
 */
public record WalkGap(SeriesKey key, LocalDate date, String label, int number, String reason) {

    /** One sentence, with the place of the try. */
    public String sentence() {
        return key.measure().text() + " of " + key.student().text() + " on " + date
                + (label.isEmpty() ? "" : " (" + label + ")") + (number == 0 ? "" : ", try " + number) + ": not known, "
                + reason;
    }
}
