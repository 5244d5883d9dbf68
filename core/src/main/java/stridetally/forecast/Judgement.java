package stridetally.forecast;

/** The verdict on a goal. These words are ours and mean what the fixed sentences beside them say, nothing more. */
public enum Judgement {
    /** The written criterion was satisfied by the due date, within the written help. */
    MET("met"),
    /** The chance is at or above the upper limit. */
    ON_COURSE("on course"),
    /** The chance is between the limits. */
    TOO_CLOSE_TO_CALL("too close to call"),
    /** The chance is at or below the lower limit. */
    OFF_COURSE("off course"),
    /** Too few sessions with a value, or none of late. */
    TOO_FEW_SESSIONS("too few sessions"),
    /** Sessions were held, and every probe needed more help than the goal permits. */
    NOT_YET_WITHOUT_HELP("not yet without help"),
    /** The goal's first day is still to come, or nothing was recorded since. */
    NOT_BEGUN("not begun"),
    /** The due date has passed without it. */
    NOT_MET_BY_ITS_DATE("not met by its date"),
    /** Closed by the people who wrote it, or the student left. */
    ENDED("ended");

    private final String word;

    Judgement(String word) {
        this.word = word;
    }

    /** The words of the output. */
    public String word() {
        return word;
    }
}
