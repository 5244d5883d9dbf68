package stridetally.scoring;

import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * One scored session of one goal and side, or of one bare series. Tries are counted one by one; a row that holds several
 * counts as so many.
 *
 * @param label splits a day; blank as a rule
 * @param trials probes at a place and protocol of the goal, recorded or not, whatever the help
 * @param recorded of these, the tries that were made
 * @param counted of these, the tries within the goal's help and prompt, from which the value is made
 * @param value by the goal's summary, else the measure's
 * @param best of the first counted tries only, as many as the goal offers, else the usual number
 * @param sd sample SD of the exact counted values; empty under two of them
 * @param independentTries recorded tries with the least help of the scale
 * @param permittedTries recorded tries known to be at permitted help and prompt
 * @param helpRecorded recorded tries whose help was written
 * @param mostHelp rank of the most help among recorded tries; empty when none was written
 * @param capped counted tries that were capped
 * @param triesMet counted tries known to be at or beyond the target, or written as met
 * @param triesGiven counted tries that can be held against it; 0 without a target
 * @param met against the criterion (or the target, when no tries are written)
 * @param streak consecutive sessions that meet, up to and with this one
 * @param doubtfulTries recorded tries not known to be at permitted help and prompt, because it was not written
 * @param status whether a try was made
 * @param note what else was true of the session and must be said; blank as a rule
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
        int streak,
        int doubtfulTries,
        SessionStatus status,
        String note) {

    /** Probes were made, and every one needed more help than the goal permits. */
    public boolean assistedOnly() {
        return recorded > 0 && permittedTries == 0 && doubtfulTries == 0;
    }

    /** Share of the tries at permitted help and prompt, over those of which it is known; empty when it is known of none. */
    public Optional<Double> permittedShare() {
        int known = recorded - doubtfulTries;
        return known == 0 ? Optional.empty() : Optional.of(permittedTries / (double) known);
    }

    /** Share of the tries with the least help, over those whose help was written; empty when it was written for none. */
    public Optional<Double> independentShare() {
        return helpRecorded == 0 ? Optional.empty() : Optional.of(independentTries / (double) helpRecorded);
    }

    /** Everything that has to be said about this session, in one line; blank when there is nothing. */
    public String reason() {
        Set<String> parts = new LinkedHashSet<>();
        if (value instanceof SessionValue.Missing missing) {
            parts.add(missing.reason());
        }
        parts.add(met.reason());
        parts.add(note);
        parts.remove("");
        return String.join("; ", parts);
    }

    /** The same session at its place in a row of sessions. */
    Session withStreak(int length) {
        return judged(met, length);
    }

    /** The same session with another answer, because it is not evidence for the goal. */
    Session withAnswer(Answer answer) {
        return judged(answer, streak);
    }

    private Session judged(Answer answer, int length) {
        return new Session(
                date,
                label,
                trials,
                recorded,
                counted,
                value,
                best,
                mean,
                median,
                last,
                sd,
                independentTries,
                permittedTries,
                helpRecorded,
                mostHelp,
                capped,
                triesMet,
                triesGiven,
                answer,
                length,
                doubtfulTries,
                status,
                note);
    }

    /** Compares by day, then by label. */
    public int compareDayTo(Session other) {
        int byDay = date.compareTo(other.date);
        return byDay != 0 ? byDay : label.compareTo(other.label);
    }
}
