package stridetally.table;

import com.fasterxml.jackson.core.io.NumberOutput;
import java.time.LocalDate;
import java.util.OptionalInt;

/** One cell to be written; what it is decides how each kind of table shows it. */
public sealed interface Cell {
    /** Words from outside; guarded against being run as a formula. */
    record Text(String text) implements Cell {}

    /** Our own words, never guarded: codes, ids, units, readings such as {@code >60}. */
    record Code(String text) implements Cell {}

    /**
     * A finite number, unrounded.
     *
     * @param decimals digits shown to people in Markdown; empty = as many as there are
     */
    record Decimal(double value, OptionalInt decimals) implements Cell {
        public Decimal {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("value " + value + " is not a number to write");
            }
        }
    }

    /** A whole number. */
    record Whole(long value) implements Cell {}

    /** A day, ISO. */
    record Day(LocalDate value) implements Cell {}

    /** Nothing known. */
    record Blank() implements Cell {}

    /** Words from outside. */
    static Cell text(String text) {
        return text.isEmpty() ? blank() : new Text(text);
    }

    /** Our own words. */
    static Cell code(String text) {
        return text.isEmpty() ? blank() : new Code(text);
    }

    /** A finite number; negative zero is written as zero. */
    static Decimal number(double value) {
        return new Decimal(value + 0.0, OptionalInt.empty());
    }

    /** A finite number of which people can use so many decimals. */
    static Cell number(double value, int decimals) {
        return new Decimal(value + 0.0, OptionalInt.of(decimals));
    }

    /** A whole number. */
    static Cell whole(long value) {
        return new Whole(value);
    }

    /** A day. */
    static Cell date(LocalDate value) {
        return new Day(value);
    }

    /** Nothing known. */
    static Cell blank() {
        return new Blank();
    }

    /**
     * The text without guard, quotes or rounding. A number has the fewest digits that tell it from its neighbours, under every JDK:
     * {@code Double.toString} has more of some before JDK 19.
     */
    default String plain() {
        if (this instanceof Text words) {
            return words.text();
        }
        if (this instanceof Code words) {
            return words.text();
        }
        if (this instanceof Decimal number) {
            return NumberOutput.toString(number.value(), true);
        }
        if (this instanceof Whole whole) {
            return Long.toString(whole.value());
        }
        return this instanceof Day day ? day.value().toString() : "";
    }
}
