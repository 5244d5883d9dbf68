package stridetally.cli.options;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import stridetally.model.Level;
import stridetally.model.StudentCode;
import stridetally.model.Summary;
import stridetally.model.TrialPlace;
import stridetally.model.Use;
import stridetally.model.WordScale;

/** Whom to show, what of a bare log counts, and how a session is valued. A logbook's goals say the last two themselves. */
public final class NarrowOptions {
    private final ListOption<StudentCode> students = ListOption.repeated(
            "--student", "CODE", StudentCode.class, new CodeWord(), "Only these students (may be repeated).");

    private final ValueOption<Level> help = ValueOption.of(
            "--help-up-to",
            "WORD",
            Level.class,
            new HelpWord(),
            "Bare log: count tries with at most this help, such as stand-by.");

    private final ListOption<TrialPlace> places = ListOption.withCommas(
            "--places",
            "PLACE",
            TrialPlace.class,
            new PlaceWord(),
            "Bare log: only school, home, clinic (several with commas).");

    private final ValueOption<Use> use =
            ValueOption.of("--use", "USE", Use.class, new UseWord(), "Bare log: only probe or only practice.");

    private final ValueOption<Summary> summary = ValueOption.of(
            "--session-value",
            "SUMMARY",
            Summary.class,
            new SummaryWord(),
            "Value a session by best, mean, median or last instead of as the measure is usually valued;"
                    + " a goal keeps its own.");

    private @Nullable CommandSpec command;

    /** Declares the options. */
    public void addTo(CommandSpec owner) {
        command = owner;
        students.addTo(owner);
        help.addTo(owner);
        places.addTo(owner);
        use.addTo(owner);
        summary.addTo(owner);
    }

    /** Whether the student is to be shown. */
    public boolean shows(StudentCode student) {
        return students().isEmpty() || students().contains(student);
    }

    /** The students typed; all are shown when there are none. */
    public List<StudentCode> students() {
        return students.typed();
    }

    /** The most help that counts. */
    public Optional<Level> helpUpTo() {
        return help.typed();
    }

    /** The places that count; all when none was said. */
    public Set<TrialPlace> places() {
        return places.typed().isEmpty() ? EnumSet.allOf(TrialPlace.class) : EnumSet.copyOf(places.typed());
    }

    /** The use that counts; both when none was said. */
    public Set<Use> uses() {
        return use.typed().isPresent() ? EnumSet.of(use.typed().get()) : EnumSet.allOf(Use.class);
    }

    /** The summary that values a session. */
    public Optional<Summary> summary() {
        return summary.typed();
    }

    /** Wrong usage on a logbook when anything was said that only a bare log can heed. */
    public void checkForLogbook() {
        if (command != null
                && (help.typed().isPresent()
                        || !places.typed().isEmpty()
                        || use.typed().isPresent())) {
            throw new ParameterException(
                    command.commandLine(),
                    "--help-up-to, --places and --use are for a bare log; the goals of a logbook say what counts");
        }
    }

    /** Reads a student's code. */
    static final class CodeWord implements ITypeConverter<StudentCode> {
        @Override
        public StudentCode convert(String text) {
            if (text.isBlank()) {
                throw new TypeConversionException("a student's code is not blank");
            }
            return new StudentCode(text);
        }
    }

    /** Reads a word of the usual scale of help. */
    static final class HelpWord implements ITypeConverter<Level> {
        @Override
        public Level convert(String text) {
            return WordScale.HELP
                    .find(text)
                    .orElseThrow(() -> new TypeConversionException(
                            "'" + text + "' is none of: " + String.join(", ", WordScale.HELP.words())));
        }
    }

    /** Reads a place. */
    static final class PlaceWord extends Word<TrialPlace> {
        PlaceWord() {
            super(TrialPlace.class);
        }

        @Override
        String written(TrialPlace place) {
            return place.word();
        }
    }

    /** Reads a use. */
    static final class UseWord extends Word<Use> {
        UseWord() {
            super(Use.class);
        }

        @Override
        String written(Use use) {
            return use.word();
        }
    }

    /** Reads a summary; a total has no place here, because it grows with the number of tries. */
    static final class SummaryWord implements ITypeConverter<Summary> {
        @Override
        public Summary convert(String text) {
            for (Summary one : List.of(Summary.BEST, Summary.MEAN, Summary.MEDIAN, Summary.LAST)) {
                if (one.word().equalsIgnoreCase(text)) {
                    return one;
                }
            }
            throw new TypeConversionException("'" + text + "' is none of: best, mean, median, last");
        }
    }
}
