package stridetally.model;

import java.util.Optional;

/**
 * What {@code precautions} of {@code students.csv} may hold: a closed list. {@code none} is typed, so that a blank cell never
 * reads as "nothing to heed". What each means for practice is the business of {@code plan}.
 */
public enum Precaution {
    NONE("none"),
    NECK("neck"),
    BONES("bones"),
    SEIZURES("seizures"),
    HEART("heart"),
    NO_JUMPS("no-jumps"),
    NO_BEAM("no-beam"),
    NO_STAIRS("no-stairs"),
    NO_EYES_CLOSED("no-eyes-closed"),
    TWO_ADULTS("two-adults"),
    /** Something that the list has no word for. */
    OTHER("other");

    private final String word;

    Precaution(String word) {
        this.word = word;
    }

    /** The word of the files. */
    public String word() {
        return word;
    }

    /** The precaution written so; dashes, blanks and capitals do not matter. */
    public static Optional<Precaution> find(String written) {
        String folded = WordScale.fold(written);
        for (Precaution one : values()) {
            if (WordScale.fold(one.word).equals(folded)) {
                return Optional.of(one);
            }
        }
        return Optional.empty();
    }
}
