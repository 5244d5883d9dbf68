package stridetally.units;

/**
 * What one try gave. A try stopped at the time limit is not the same fact as a measured time, and a refusal or an absence
 * is not a zero.
 */
public sealed interface Reading {

    /** A measured value in the measure's unit. */
    record Exact(Amount amount) implements Reading {}

    /** Stopped at the cap or at the end of the line: the true value is at least this. */
    record AtLeast(Amount amount) implements Reading {}

    /** Below what could be measured: the true value is at most this. */
    record AtMost(Amount amount) implements Reading {}

    /** So many tries met out of so many offered, written on one row. */
    record Tries(int met, int given) implements Reading {
        public Tries {
            if (met < 0 || given < 1 || met > given) {
                throw new IllegalArgumentException("met " + met + " of given " + given);
            }
        }
    }

    /** No value; the four words are four different facts. */
    record NotObtained(Why why) implements Reading {}

    /** Why there is no value. */
    enum Why {
        /** Nobody tried. */
        NOT_TESTED("not tested"),
        /** The student said no. */
        REFUSED("refused"),
        /** The student was not there. */
        ABSENT("absent"),
        /** Tried and not done: a failed try, the lowest rank, never a zero in a mean. */
        UNABLE("unable");

        private final String word;

        Why(String word) {
            this.word = word;
        }

        /** The canonical word of the log. */
        public String word() {
            return word;
        }
    }

    /** Recorded = a number, a capped value, tries, or {@code unable}; the other three words are not recorded tries. */
    default boolean recorded() {
        return !(this instanceof NotObtained none) || none.why() == Why.UNABLE;
    }
}
