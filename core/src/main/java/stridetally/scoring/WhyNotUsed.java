package stridetally.scoring;

/** Why a try of the goal's student and measure is not used for the goal; in the order in which the reasons are looked for. */
public enum WhyNotUsed {
    PRACTICE("practice, not a probe"),
    ANOTHER_PLACE("done at another place"),
    SIDE_MISSING("the side was not written"),
    OTHER_SIDE("done on another side"),
    PROTOCOL("taken another way"),
    BEFORE("before the goal's first day"),
    AFTER("after the goal's last day"),
    AHEAD("after the day of the report"),
    MORE_HELP("needed more help or prompt than the goal permits"),
    HELP_NOT_WRITTEN("help or prompt not written");

    private final String words;

    WhyNotUsed(String words) {
        this.words = words;
    }

    /** The reason in words. */
    public String words() {
        return words;
    }
}
