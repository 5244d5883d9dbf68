package stridetally.ingest;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stridetally.units.Folding;

/**
 * The columns of a trial log, with the other headings people write over them (common practice, no source). Headings are
 * compared folded: lower case, signs as spaces.
 */
@SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
public enum TrialColumn {
    SOURCE("source", "source log"),
    STUDENT("student", "student code", "student id", "code", "child", "pupil", "id"),
    DATE("date", "day", "session date", "date of session", "test date"),
    SESSION("session", "session label"),
    MEASURE("measure", "skill", "task", "test", "what"),
    TRIAL("trial", "try", "attempt", "trial no", "trial number", "try no", "no", "nr", "#"),
    VALUE("value", "score", "result", "reading", "counted value", "measured"),
    UNIT("unit", "units"),
    OF("of", "out of", "opportunities", "given", "offered"),
    HELP("help", "assist", "assistance", "assist level", "level of assistance", "help given", "loa"),
    PROMPT("prompt", "cue", "cues", "prompts", "cueing", "prompting", "cue given"),
    SIDE("side", "leg", "foot", "stance leg", "l r", "left right"),
    PROTOCOL("protocol", "conditions", "set up", "setup", "how"),
    USE("use", "probe or practice", "probe practice"),
    PLACE("place", "where", "location", "setting"),
    OBSERVER("observer", "recorded by", "recorder", "rater", "tester", "who logged", "initials"),
    ACTIVITY("activity"),
    NOTE("note", "notes", "comment", "comments");

    private static final Map<String, TrialColumn> BY_HEADING = byHeading();

    private final String heading;
    private final List<String> alsoWritten;

    TrialColumn(String heading, String... alsoWritten) {
        this.heading = heading;
        this.alsoWritten = List.of(alsoWritten);
    }

    private static Map<String, TrialColumn> byHeading() {
        Map<String, TrialColumn> columns = new HashMap<>();
        for (TrialColumn column : values()) {
            columns.putIfAbsent(column.heading, column);
            for (String other : column.alsoWritten) {
                columns.putIfAbsent(other, column);
            }
        }
        return Map.copyOf(columns);
    }

    /** Its place among the canonical columns, from 0: entries are written in this order. */
    @SuppressWarnings("EnumOrdinal")
    int position() {
        return ordinal();
    }

    /** The column of a heading, however it is written. */
    static Optional<TrialColumn> of(String written) {
        return Optional.ofNullable(BY_HEADING.get(fold(written)));
    }

    /** The canonical heading. */
    public String heading() {
        return heading;
    }

    /** The other ways of writing it, folded. */
    public List<String> alsoWritten() {
        return alsoWritten;
    }

    /** Lower case; every run of signs and spaces as one space. The lone sign {@code #} stays. */
    public static String fold(String written) {
        return written.strip().equals("#") ? "#" : Folding.words(written, TrialColumn::isSign);
    }

    private static boolean isSign(int letter) {
        return switch (Character.getType(letter)) {
            case Character.LETTER_NUMBER, Character.OTHER_NUMBER -> false;
            default -> !Character.isLetterOrDigit(letter);
        };
    }
}
