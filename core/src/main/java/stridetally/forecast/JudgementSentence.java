package stridetally.forecast;

import java.util.ArrayList;
import java.util.List;

/**
 * The fixed sentences of the judgement, in one place so that they can be read, checked and put into another language as a
 * whole. {@code {0}}, {@code {1}}, … stand for dates (ISO), counts and words.
 */
public enum JudgementSentence {
    MET("Met on {0}; since then {1} of {2} sessions meet."),
    MET_AND_NO_SESSION_SINCE("Met on {0}; no session since."),
    MET_SOME_NOT_KNOWN("Met on {0}; since then {1} of {2} sessions meet, and of {3} it is not known."),
    HELD("The target was to be held until {0}, and the last session up to then meets the criterion."),
    ON_COURSE("The chance to reach the goal by {0} is at or above {1} %."),
    TOO_CLOSE("The chance to reach the goal by {0} is above {2} % and below {1} %."),
    OFF_COURSE("The chance to reach the goal by {0} is at or below {1} %."),
    KEEP_ON_COURSE("The chance that the target is still held on {0} is at or above {1} %."),
    KEEP_TOO_CLOSE("The chance that the target is still held on {0} is above {2} % and below {1} %."),
    KEEP_OFF_COURSE("The chance that the target is still held on {0} is at or below {1} %."),
    TOO_FEW("{0} of the {1} sessions with a value that a forecast needs; the last was on {2}."),
    TOO_FEW_NONE("No session has a value yet; a forecast needs {0}."),
    STALE("{0} sessions with a value, but none in the last {1} weeks outside school breaks; the last was on {2}."),
    NO_LINE("No forecast: {0}."),
    MISSED("Missed since {0}: {1}."),
    NOT_YET_WITHOUT_HELP("{0} sessions, and every try in them needed more help than the goal permits."),
    NOT_YET_WITHOUT_HELP_ONE("1 session, and every try in it needed more help than the goal permits."),
    BEGINS("The goal begins on {0}."),
    NOTHING_RECORDED("No try has been recorded yet."),
    NOTHING_RECORDED_SINCE("No try has been recorded since {0}."),
    DATE_PASSED("Its date, {0}, has passed."),
    NOT_MET("Its date, {0}, has passed and the criterion was not satisfied by then."),
    NOT_HELD("The target was to be held until {0}, and the last session up to then does not meet the criterion."),
    NOT_SHOWN_HELD("The target was to be held until {0}, and no session up to then shows that it was."),
    TARGET_NOT_REACHED("Its date, {0}, has passed and the target was not reached by then."),
    SATISFIED_LATE("Its date was {0}; the criterion was satisfied on {1}, after it."),
    ENDED_ON("Closed on {0}: {1}."),
    ENDED("Closed: {0}."),
    ENDED_UNSAID("Closed on {0}; how is not written."),
    STUDENT_LEFT("The student left the caseload on {0}."),
    CRITERION_UNWRITTEN("Target reached on {0}, criterion not written."),
    HELP_UNWRITTEN(
            "Criterion satisfied on {0} with tries up to stand-by help; the goal states no help, so it is not called met."),
    NOT_JUDGED("Not judged: the goal has {0}."),
    REVIEWED("Not judged by chance: {0}."),
    ASSISTED_SHARE(
            "In {0} of {1} sessions every try needed more help than the goal permits; the line describes only the rest."),
    WEAKER_SIDE("Judged by the weaker side, {0}; {1}: {2}."),
    BETTER_SIDE("Judged by the better side, {0}; {1}: {2}."),

    ENOUGH("If change goes on as it has, it is enough to reach the goal by {0}."),
    NOT_ENOUGH("If change goes on as it has, it is not enough to reach the goal by {0}."),
    ENOUGH_TO_KEEP("If change goes on as it has, the target is still held on {0}."),
    NOT_ENOUGH_TO_KEEP("If change goes on as it has, the target is no longer held on {0}."),
    OPEN("The sessions so far do not settle whether change is enough to reach the goal by {0}."),
    OPEN_TO_KEEP("The sessions so far do not settle whether the target is still held on {0}."),
    UNSAID_TOO_FEW("Whether change is enough to reach the goal by {0} cannot be said from so few sessions."),
    UNSAID_STALE("Whether change is enough to reach the goal by {0} cannot be said: the last session is too long ago."),
    UNSAID_NO_LINE("Whether change is enough to reach the goal by {0} cannot be said without a forecast."),
    UNSAID_HELP("Whether change is enough to reach the goal by {0} cannot be said before a try at permitted help."),
    UNSAID_NOT_BEGUN("Whether change is enough to reach the goal by {0} cannot be said before it has begun."),
    UNSAID_REVIEW("Whether change is enough to reach the goal by {0} cannot be said from a few measurements a year."),
    UNSAID_GOAL("Whether change is enough to reach the goal cannot be said: the goal has {0}."),
    UNSAID_NO_DATE("Whether change is enough cannot be said: the goal has no due date."),
    SETTLED_MET("The goal is met; whether change is enough is no longer the question."),
    SETTLED_DATE("The date, {0}, has passed; whether change is enough is no longer the question."),
    SETTLED_ENDED("The goal is closed; whether change is enough is no longer the question.");

    private final String template;

    JudgementSentence(String template) {
        this.template = template;
    }

    /** The sentence with its places open. */
    public String template() {
        return template;
    }

    /** The sentence with its places filled, in order. */
    public Sentence with(Object... words) {
        List<String> texts = new ArrayList<>();
        for (Object word : words) {
            texts.add(String.valueOf(word));
        }
        return new Sentence(this, texts);
    }
}
