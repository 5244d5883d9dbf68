package stridetally.scoring;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One scored session of one goal and side, or of one bare series.
 *
 * @param label splits a day; blank as a rule
 * @param trials probes at a place and protocol of the goal, recorded or not, whatever the help
 * @param recorded of these, the tries that were made
 * @param counted of these, the tries within the goal's help and prompt (opportunities, when a row holds several)
 * @param value by the goal's summary, else the measure's
 * @param sd sample SD of the exact counted values; empty under two of them
 * @param independentTries recorded tries with help {@code independent}
 * @param permittedTries recorded tries at permitted help and prompt
 * @param helpRecorded recorded tries whose help was written
 * @param mostHelp rank of the most help among recorded tries; empty when none was written
 * @param capped counted tries that were capped
 * @param met against the criterion (or the target, when no tries are written)
 * @param streak consecutive sessions that meet, up to and with this one
 */
public record Session(
        LocalDate date,
        String label,
        int trials,
        int recorded,
        int counted,
        SessionValue value,
        SessionValue best,
        SessionValue mean,
        SessionValue median,
        SessionValue last,
        Optional<Double> sd,
        int independentTries,
        int permittedTries,
        int helpRecorded,
        OptionalInt mostHelp,
        int capped,
        int triesMet,
        int triesGiven,
        Answer met,
        int streak) {

    /** Probes were made, and every one needed more help than the goal permits. */
    public boolean assistedOnly() {
        return recorded > 0 && permittedTries == 0;
    }
}
