package stridetally.logbook;

import java.util.HashMap;
import java.util.Map;
import stridetally.model.GoalAim;
import stridetally.model.GoalEnd;
import stridetally.model.GoalSide;
import stridetally.model.Summary;
import stridetally.model.TrialPlace;
import stridetally.model.Visit;
import stridetally.model.WordScale;

/** The closed word lists of the hand-kept files, folded, with the other ways people write them (common practice, no source). */
final class KeptWords {
    static final Map<String, GoalSide> SIDES = sides();
    static final Map<String, Summary> SUMMARIES = new HashMap<>();
    static final Map<String, TrialPlace> PLACES = new HashMap<>();
    static final Map<String, GoalAim> AIMS = new HashMap<>();
    static final Map<String, GoalEnd> ENDS = new HashMap<>();
    static final Map<String, Visit.Status> STATUSES = statuses();

    static {
        for (Summary one : Summary.values()) {
            SUMMARIES.put(one.word(), one);
        }
        for (TrialPlace one : TrialPlace.values()) {
            PLACES.put(one.word(), one);
        }
        for (GoalAim one : GoalAim.values()) {
            AIMS.put(one.word(), one);
        }
        for (GoalEnd one : GoalEnd.values()) {
            ENDS.put(one.word(), one);
        }
    }

    private KeptWords() {}

    private static Map<String, GoalSide> sides() {
        Map<String, GoalSide> words = new HashMap<>();
        for (GoalSide one : GoalSide.values()) {
            words.put(one.word(), one);
        }
        words.remove("");
        words.put("none", GoalSide.NONE);
        words.put("l", GoalSide.LEFT);
        words.put("lt", GoalSide.LEFT);
        words.put("r", GoalSide.RIGHT);
        words.put("rt", GoalSide.RIGHT);
        // "Both" asks for both legs; one of them being enough must be typed as such.
        words.put("both", GoalSide.EACH);
        return words;
    }

    private static Map<String, Visit.Status> statuses() {
        Map<String, Visit.Status> words = new HashMap<>();
        for (Visit.Status one : Visit.Status.values()) {
            words.put(WordScale.fold(one.word()), one);
        }
        words.put("absent", Visit.Status.STUDENT_ABSENT);
        words.put("seen", Visit.Status.HELD);
        words.put("attended", Visit.Status.HELD);
        words.put("pt absent", Visit.Status.THERAPIST_ABSENT);
        words.put("no school", Visit.Status.SCHOOL_CLOSED);
        words.put("closed", Visit.Status.SCHOOL_CLOSED);
        return words;
    }
}
