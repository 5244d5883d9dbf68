package stridetally.ingest;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stridetally.units.Folding;

/**
 * The columns of a trial log, with the other headings people write over them (common practice, no source; the Spanish
 * ones are our translation, no source). Headings are compared folded: lower case, signs as spaces.
 */
@SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
public enum TrialColumn {
    SOURCE("source", "source log"),
    STUDENT(
            "student",
            "student code",
            "student id",
            "code",
            "child",
            "pupil",
            "kid",
            "name",
            "nombre",
            "id",
            "estudiante",
            "alumno",
            "alumna",
            "niño",
            "niña",
            "código",
            "codigo"),
    DATE("date", "day", "session date", "date of session", "date of the session", "test date", "fecha", "día", "dia"),
    SESSION("session", "session label", "sesión", "sesion"),
    MEASURE("measure", "skill", "task", "test", "what", "medida", "prueba", "tarea", "habilidad"),
    TRIAL(
            "trial",
            "try",
            "attempt",
            "trial no",
            "trial number",
            "try no",
            "no",
            "nr",
            "#",
            "intento",
            "número de intento",
            "intento n"),
    VALUE(
            "value",
            "score",
            "result",
            "reading",
            "counted value",
            "measured",
            "valor",
            "resultado",
            "puntuación",
            "puntuacion"),
    UNIT("unit", "units", "unidad", "unidades"),
    OF("of", "out of", "opportunities", "given", "offered", "de", "oportunidades"),
    HELP(
            "help",
            "assist",
            "assistance",
            "assist level",
            "level of assistance",
            "level of assist",
            "level of help",
            "assistance level",
            "help level",
            "help given",
            "loa",
            "ayuda",
            "asistencia",
            "nivel de ayuda",
            "apoyo"),
    PROMPT(
            "prompt",
            "cue",
            "cues",
            "prompts",
            "cueing",
            "prompting",
            "cue given",
            "indicación",
            "indicacion",
            "señal",
            "indicaciones"),
    SIDE("side", "leg", "foot", "stance leg", "l r", "left right", "lado", "pierna", "pie"),
    PROTOCOL("protocol", "conditions", "set up", "setup", "how", "protocolo", "condiciones"),
    USE("use", "probe or practice", "probe practice", "uso"),
    PLACE("place", "where", "location", "setting", "lugar", "dónde", "donde", "sitio"),
    OBSERVER(
            "observer",
            "recorded by",
            "recorder",
            "rater",
            "tester",
            "who logged",
            "initials",
            "observador",
            "observadora",
            "anotado por",
            "evaluador",
            "evaluadora"),
    ACTIVITY("activity", "actividad"),
    NOTE(
            "note",
            "notes",
            "comment",
            "comments",
            "remark",
            "remarks",
            "observation",
            "observations",
            "nota",
            "notas",
            "comentario",
            "comentarios",
            "observación",
            "observacion",
            "observaciones");

    private static final Map<String, TrialColumn> BY_HEADING = byHeading();

    private final String heading;
    private final List<String> alsoWritten;

    TrialColumn(String heading, String... alsoWritten) {
        this.heading = heading;
        this.alsoWritten = List.of(alsoWritten);
    }

    /** Its place among the canonical columns, from 0: entries are written in this order. */
    @SuppressWarnings("EnumOrdinal")
    int position() {
        return ordinal();
    }

    /** The canonical heading. */
    public String heading() {
        return heading;
    }

    /** The other ways of writing it, folded. */
    public List<String> alsoWritten() {
        return alsoWritten;
    }

    /** The column that a heading names by itself. */
    public static Optional<TrialColumn> named(String written) {
        return Optional.ofNullable(BY_HEADING.get(fold(written)));
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
