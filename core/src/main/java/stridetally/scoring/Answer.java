package stridetally.scoring;

/**
 * Whether a session (or a try) meets: three answers, because a try that was not made is not a miss.
 *
 * @param reason how it came about, in words; blank when there is nothing to add
 */
public record Answer(Meets meets, String reason) {

    /** Nobody asked, and there is nothing to say about it. */
    public static final Answer NOT_ASKED = new Answer(Meets.NOT_ASKED, "");

    /** Yes, no, or not known. */
    public enum Meets {
        /** Meets even if all unknowns fail. */
        YES("yes"),
        /** Fails even if all unknowns pass. */
        NO("no"),
        NOT_KNOWN("not known"),
        /** Not judged: no target, or the session was not a try at the goal. */
        NOT_ASKED("");

        private final String word;

        Meets(String word) {
            this.word = word;
        }

        /** The word of the output. */
        public String word() {
            return word;
        }
    }
}
