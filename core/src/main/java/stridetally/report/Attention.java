package stridetally.report;

import java.util.List;
import java.util.Optional;
import stridetally.forecast.Judgement;
import stridetally.forecast.Sentence;

/** In which order goals need a busy therapist: no judgement at all first, then what is lost or slipping, what is done last. */
public final class Attention {
    /** The words from the most to the least urgent; empty = no word. */
    public static final List<Optional<Judgement>> ORDER = List.of(
            Optional.empty(),
            Optional.of(Judgement.NOT_MET_BY_ITS_DATE),
            Optional.of(Judgement.OFF_COURSE),
            Optional.of(Judgement.NOT_YET_WITHOUT_HELP),
            Optional.of(Judgement.TOO_FEW_SESSIONS),
            Optional.of(Judgement.TOO_CLOSE_TO_CALL),
            Optional.of(Judgement.NOT_BEGUN),
            Optional.of(Judgement.ON_COURSE),
            Optional.of(Judgement.MET),
            Optional.of(Judgement.ENDED));

    private Attention() {}

    /** Whether someone should look at the goal before those that are open, going well or done. */
    static boolean isUrgent(Optional<Judgement> judgement) {
        return ORDER.indexOf(judgement) < ORDER.indexOf(Optional.of(Judgement.TOO_FEW_SESSIONS));
    }

    /** The sufficiency sentence in a word or two, for a table; the sentence is on the team's page and in the flat tables. */
    static String enough(Sentence sufficiency) {
        return switch (sufficiency.form()) {
            case ENOUGH, ENOUGH_TO_KEEP -> "yes";
            case NOT_ENOUGH, NOT_ENOUGH_TO_KEEP -> "no";
            case OPEN, OPEN_TO_KEEP -> "not settled";
            case SETTLED_MET -> "met";
            case SETTLED_DATE -> "date over";
            case SETTLED_ENDED -> "closed";
            default -> "cannot be said";
        };
    }

    /** The word on the page. */
    static String word(Optional<Judgement> judgement) {
        return judgement.map(Judgement::word).orElse("no judgement");
    }
}
