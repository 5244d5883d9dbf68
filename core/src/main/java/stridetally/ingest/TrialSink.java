package stridetally.ingest;

/**
 * Where trials flow on, one call a trial, in file order: the seam between reading and scoring. Nothing is boxed and
 * nothing is collected on the way, so the same scoring serves a child's log and a country's.
 */
public interface TrialSink {

    /**
     * One checked trial.
     *
     * @param series number of the interned {@link stridetally.model.SeriesKey}, see {@link SeriesNumbers}
     * @param day days since 1970-01-01
     * @param label number of the interned session label; 0 = none
     * @param number trial number within its session; 0 = not written, then file order counts
     * @param kind how to read {@code value}
     * @param value billionths of the measure's unit; tries met for {@link ReadingKind#TRIES}; 0 when there is no value
     * @param given tries given for {@link ReadingKind#TRIES}; else 1
     * @param help rank on the help scale; {@link stridetally.model.Level#BLANK} = not recorded
     * @param prompt rank on the prompt scale; {@link stridetally.model.Level#BLANK} = not recorded
     * @param origin entry number times 2^32 plus the line; entry 0 for a bare log
     */
    void trial(
            int series,
            int day,
            int label,
            int number,
            ReadingKind kind,
            long value,
            int given,
            int help,
            int prompt,
            long origin);
}
