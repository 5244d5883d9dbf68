package stridetally.ingest;

import stridetally.measures.Measure;
import stridetally.model.SeriesKey;
import stridetally.units.Amount;
import stridetally.units.Expecting;

/**
 * What the cells of a row besides the student and the try itself say.
 *
 * @param like a key of any student with these cells
 * @param low billionths; a value below it has something to be said of it
 * @param high the same above
 * @param brings the notes that every row with these cells has, as bits of {@link PlainNotes}
 */
record PlainTask(SeriesKey like, Expecting expecting, long low, long high, int brings) {

    static PlainTask of(SeriesKey like, Measure measure, int brings) {
        Expecting expecting = measure.kind().expecting();
        long low = Math.max(
                measure.possible().low().map(Amount::billionths).orElse(0L),
                measure.plausible().low().map(Amount::billionths).orElse(0L));
        long high = Math.min(
                measure.possible().high().map(Amount::billionths).orElse(Long.MAX_VALUE),
                measure.plausible().high().map(Amount::billionths).orElse(Long.MAX_VALUE));
        return new PlainTask(like, expecting, low, high, brings);
    }
}
