package stridetally.units;

/**
 * How a reading is written in our own files, so that {@link ValueGrammar} reads back the same.
 *
 * @param value the value cell
 * @param of the cell of the whole; blank unless tries are counted
 */
public record ReadingText(String value, String of) {

    /** The cells of a reading in its measure's unit. */
    public static ReadingText of(Reading reading) {
        if (reading instanceof Reading.Exact exact) {
            return new ReadingText(exact.amount().text(), "");
        }
        if (reading instanceof Reading.AtLeast end) {
            return new ReadingText(">" + end.amount().text(), "");
        }
        if (reading instanceof Reading.AtMost end) {
            return new ReadingText("<" + end.amount().text(), "");
        }
        if (reading instanceof Reading.Tries tries) {
            return new ReadingText(Integer.toString(tries.met()), Integer.toString(tries.given()));
        }
        return new ReadingText(((Reading.NotObtained) reading).why().word(), "");
    }
}
