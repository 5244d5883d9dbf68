package stridetally.scoring;

/**
 * Tries that a goal does not use, for one reason.
 *
 * @param detail what differs, such as {@code home} or {@code surface}; blank when the reason says it all
 * @param tries recorded tries
 */
public record NotUsed(WhyNotUsed why, String detail, int tries) {

    /** The reason with its detail. */
    public String words() {
        return detail.isEmpty() ? why.words() : why.words() + " (" + detail + ")";
    }
}
