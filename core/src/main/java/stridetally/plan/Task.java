package stridetally.plan;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import stridetally.model.MeasureId;
import stridetally.model.Precaution;

/**
 * What a child does on a rung of the ladder. Which tasks stay away from home and which precaution bars which task is fixed
 * here: no file can take it away.
 *
 * @source ours which precaution bars which task, after what the trade commonly warns of
 */
@SuppressWarnings("ImmutableEnumChecker") // List.of and the sets are never changed
public enum Task {
    FORWARD("forward", At.HOME_TOO, List.of(), List.of()),
    TURN("turn", At.HOME_TOO, List.of(), List.of()),
    SIDEWAYS("sideways", At.HOME_TOO, List.of(), List.of("side-steps")),
    ONE_LEG(
            "one-leg",
            At.HOME_TOO,
            List.of(Precaution.BONES),
            List.of("single-leg-stance", "single-leg-stance-closed")),
    BACKWARD("backward", At.SCHOOL_ONLY, List.of(Precaution.BONES), List.of("back-steps", "back-time")),
    BEAM(
            "beam",
            At.SCHOOL_ONLY,
            List.of(Precaution.NO_BEAM, Precaution.BONES, Precaution.SEIZURES),
            List.of("beam-steps")),
    EYES_CLOSED(
            "eyes-closed",
            At.SCHOOL_ONLY,
            List.of(Precaution.NO_EYES_CLOSED, Precaution.BONES, Precaution.SEIZURES),
            List.of("single-leg-stance-closed")),
    STAIRS(
            "stairs",
            At.SCHOOL_ONLY,
            List.of(Precaution.NO_STAIRS, Precaution.BONES, Precaution.SEIZURES, Precaution.HEART),
            List.of("stairs-time")),
    /** Jumps, leaps, hops. */
    JUMP(
            "jump",
            At.SCHOOL_ONLY,
            List.of(Precaution.NO_JUMPS, Precaution.NECK, Precaution.BONES, Precaution.HEART),
            List.of("jump-distance", "jump-count", "leap-distance", "hop-count", "hop-distance"));

    private enum At {
        HOME_TOO,
        SCHOOL_ONLY
    }

    private final String word;
    private final At at;
    private final List<Precaution> notWith;
    private final List<String> measures;

    Task(String word, At at, List<Precaution> notWith, List<String> measures) {
        this.word = word;
        this.at = at;
        this.notWith = notWith;
        this.measures = measures;
    }

    /** The word of the ladder file. */
    public String word() {
        return word;
    }

    /** Whether it may be practised at home at all. */
    public boolean comesHome() {
        return at == At.HOME_TOO;
    }

    /** The precautions with which it is never practised. */
    public Set<Precaution> notWith() {
        Set<Precaution> barred = EnumSet.noneOf(Precaution.class);
        barred.addAll(notWith);
        return barred;
    }

    /** The task of a word of the ladder file. */
    public static Optional<Task> find(String written) {
        String folded = written.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
        return Arrays.stream(values()).filter(one -> one.word.equals(folded)).findFirst();
    }

    /** What is done wherever a measure is taken, whatever anybody writes. */
    public static Set<Task> of(MeasureId measure) {
        Set<Task> tasks = EnumSet.noneOf(Task.class);
        for (Task one : values()) {
            if (one.measures.contains(measure.text())) {
                tasks.add(one);
            }
        }
        return tasks;
    }

    /** What bars any of these tasks. */
    public static Set<Precaution> barring(Set<Task> tasks) {
        Set<Precaution> barred = EnumSet.noneOf(Precaution.class);
        tasks.forEach(one -> barred.addAll(one.notWith));
        return barred;
    }
}
