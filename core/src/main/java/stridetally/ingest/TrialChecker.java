package stridetally.ingest;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.measures.Measure;
import stridetally.measures.MeasureKind;
import stridetally.measures.ProtocolText;
import stridetally.measures.Sidedness;
import stridetally.model.Level;
import stridetally.model.Protocol;
import stridetally.model.SeriesKey;
import stridetally.model.Side;
import stridetally.model.StudentCode;
import stridetally.model.Trial;
import stridetally.model.TrialPlace;
import stridetally.model.Use;
import stridetally.model.WordScale;
import stridetally.problem.At;
import stridetally.problem.Checked;
import stridetally.problem.ProblemCode;
import stridetally.problem.RowProblem;
import stridetally.problem.Severity;
import stridetally.problem.Spelling;
import stridetally.units.Amount;
import stridetally.units.Expecting;
import stridetally.units.Parsed;
import stridetally.units.Reading;
import stridetally.units.Remarked;
import stridetally.units.ValueGrammar;
import stridetally.units.ValueWords;

/**
 * One row of a long trial log to one checked trial. Every cell is looked at, so that a row that is set aside tells all
 * that is wrong with it at once. Nothing is filled in silently: what a blank cell was read as is told as a note.
 */
public final class TrialChecker {
    /** A longer cell is not repeated in a message: it may be free text that slid into the wrong column. Ours. */
    private static final int LONGEST_SHOWN = 24;

    private final LogRules rules;
    private final TrialLayout layout;
    private final String file;
    private final String shortName;
    private final ValueGrammar grammar;

    /** Over the rows of one file: its name for messages, and its short name for what is kept. */
    public TrialChecker(LogRules rules, TrialLayout layout, String file, String shortName) {
        this.shortName = shortName;
        this.grammar = new ValueGrammar(rules.decimals(), ValueWords.STANDARD);
        this.rules = rules;
        this.layout = layout;
        this.file = file;
    }

    /** The trial of a row, without a trial number when none was written (0). */
    public Checked<Trial> check(List<String> cells, long line) {
        Row row = new Row(cells, line);
        row.countCells();
        Optional<StudentCode> student = row.student();
        Optional<LocalDate> date = row.date();
        Optional<Measure> measure = row.measure();
        int number = row.number();
        Optional<Reading> reading = measure.flatMap(row::reading);
        Optional<Level> help = row.help(reading);
        Optional<Level> prompt = row.level(TrialColumn.PROMPT, rules.settings().prompt(), ProblemCode.PROMPT_UNKNOWN);
        Side side = measure.map(row::side).orElse(Side.NONE);
        Protocol protocol = measure.map(row::protocol).orElse(Protocol.NONE);
        Use use = row.use();
        TrialPlace place = row.place();
        if (row.setAside() || student.isEmpty() || date.isEmpty() || measure.isEmpty() || reading.isEmpty()) {
            return Checked.setAside(row.problems);
        }
        String source = row.text(TrialColumn.SOURCE).isEmpty() ? rules.source() : row.text(TrialColumn.SOURCE);
        SeriesKey key = new SeriesKey(source, student.get(), measure.get().id(), side, protocol, place, use);
        Trial trial = new Trial(
                key,
                date.get(),
                row.text(TrialColumn.SESSION),
                number,
                reading.get(),
                help,
                prompt,
                row.text(TrialColumn.OBSERVER),
                row.text(TrialColumn.ACTIVITY),
                row.text(TrialColumn.NOTE),
                kept(line).text(),
                row.asWritten());
        return new Checked<>(Optional.of(trial), row.problems);
    }

    /** Where a try stands, as what is kept names it: its row, or its cell where tries stand side by side. */
    At kept(long line) {
        return layout.otherTries().isEmpty()
                ? At.row(shortName, line)
                : new At(shortName, line, layout.column(TrialColumn.VALUE), "");
    }

    /** The cells of one row while they are looked at. */
    private final class Row {
        private final List<String> cells;
        private final long line;
        private final List<RowProblem> problems = new ArrayList<>();
        private boolean sideNotUsed;
        private boolean helpDeclared;

        Row(List<String> cells, long line) {
            this.cells = cells;
            this.line = line;
        }

        String text(TrialColumn column) {
            return layout.text(cells, column);
        }

        boolean setAside() {
            return problems.stream().anyMatch(problem -> problem.severity() == Severity.SET_ASIDE);
        }

        void tell(TrialColumn column, ProblemCode code, String found, String expected, String mend) {
            At at = new At(file, line, layout.column(column), layout.heading(column));
            boolean shown = found.length() <= LONGEST_SHOWN && found.indexOf('\n') < 0 && found.indexOf('\r') < 0;
            problems.add(new RowProblem(code, at, shown ? found : "", expected, mend));
        }

        void countCells() {
            int headings = layout.headings().size();
            if (cells.size() > headings
                    && cells.subList(headings, cells.size()).stream().anyMatch(cell -> !cell.isBlank())) {
                problems.add(new RowProblem(
                        ProblemCode.CELLS_TOO_MANY,
                        At.row(file, line),
                        cells.size() + " cells",
                        headings + " cells, as the heading row has",
                        "put cells that hold the separator in double quotes"));
            } else if (cells.size() < headings) {
                problems.add(new RowProblem(
                        ProblemCode.CELLS_TOO_FEW,
                        At.row(file, line),
                        cells.size() + " cells",
                        headings + " cells",
                        "the missing cells at the end are read as blank"));
            }
        }

        Optional<StudentCode> student() {
            String written = text(TrialColumn.STUDENT);
            if (written.isEmpty()) {
                tell(TrialColumn.STUDENT, ProblemCode.STUDENT_MISSING, "", "a student code", "write whose try it was");
                return Optional.empty();
            }
            StudentCode code = new StudentCode(written);
            if (rules.roster().isPresent() && !rules.roster().get().contains(code)) {
                // The cell may hold a name, so it is not repeated; only a known code that is near is shown.
                List<String> known = rules.roster().get().stream()
                        .map(StudentCode::text)
                        .sorted()
                        .toList();
                String near = Spelling.nearest(written, known)
                        .map(one -> "did you mean " + one + "? ")
                        .orElse("");
                tell(
                        TrialColumn.STUDENT,
                        ProblemCode.STUDENT_UNKNOWN,
                        "",
                        "a code of students.csv",
                        near + "correct the code, or add the student to students.csv");
                return Optional.empty();
            }
            return Optional.of(code);
        }

        Optional<LocalDate> date() {
            String written = text(TrialColumn.DATE);
            DayText.Outcome outcome = DayText.read(written, rules.order());
            outcome.problem()
                    .ifPresent(code -> tell(TrialColumn.DATE, code, written, outcome.expected(), outcome.mend()));
            if (outcome.day().isPresent() && outcome.day().get().isAfter(rules.asOf())) {
                tell(
                        TrialColumn.DATE,
                        ProblemCode.DATE_AHEAD,
                        written,
                        "a day up to " + rules.asOf(),
                        "correct the date, or import it when the day has come");
                return Optional.empty();
            }
            if (outcome.day().isPresent() && DayText.shortYear(written)) {
                tell(
                        TrialColumn.DATE,
                        ProblemCode.DATE_SHORT_YEAR,
                        written,
                        "a year of four digits",
                        "read as " + outcome.day().get());
            }
            return outcome.day();
        }

        Optional<Measure> measure() {
            String written = text(TrialColumn.MEASURE);
            if (written.isEmpty()) {
                tell(
                        TrialColumn.MEASURE,
                        ProblemCode.MEASURE_MISSING,
                        "",
                        "a measure such as line-steps",
                        "write what was measured");
                return Optional.empty();
            }
            Optional<Measure> measure = rules.catalogue().find(written);
            if (measure.isEmpty()) {
                String near = rules.catalogue()
                        .nearest(written)
                        .map(one -> "did you mean " + one + "?")
                        .orElse("correct it, or describe the measure in measures.csv");
                tell(TrialColumn.MEASURE, ProblemCode.MEASURE_UNKNOWN, written, "a measure of the catalogue", near);
            }
            return measure;
        }

        int number() {
            String written = text(TrialColumn.TRIAL);
            if (written.isEmpty()) {
                return 0;
            }
            if (written.matches("[1-9][0-9]{0,5}")) {
                return Integer.parseInt(written);
            }
            tell(
                    TrialColumn.TRIAL,
                    ProblemCode.TRIAL_UNREADABLE,
                    written,
                    "a whole number from 1",
                    "correct the number of the try, or leave it blank");
            return 0;
        }

        Optional<Reading> reading(Measure measure) {
            String written = text(TrialColumn.VALUE);
            String unit = text(TrialColumn.UNIT).isEmpty() ? layout.unitOfHeading() : text(TrialColumn.UNIT);
            Parsed parsed =
                    grammar.parse(written, unit, text(TrialColumn.OF), expecting(measure.kind()), measure.unit());
            if (parsed instanceof Parsed.NotTaken none) {
                ProblemCode code = none.reason().code();
                TrialColumn column = columnOf(code);
                String found = column == TrialColumn.UNIT ? text(TrialColumn.UNIT) : none.found();
                tell(column, code, found, none.expected(), none.mend());
                return Optional.empty();
            }
            Parsed.Taken taken = (Parsed.Taken) parsed;
            for (Remarked mark : taken.marks()) {
                tell(
                        TrialColumn.VALUE,
                        ProblemCode.VALUE_MARKED,
                        written,
                        "a plain value",
                        "taken; the mark " + mark.mark() + " is kept as written");
            }
            return amount(taken.reading())
                            .map(amount -> inRange(amount, written, measure))
                            .orElse(true)
                    ? Optional.of(taken.reading())
                    : Optional.empty();
        }

        private TrialColumn columnOf(ProblemCode code) {
            return switch (code) {
                case UNIT_UNKNOWN, UNIT_OF_ANOTHER_KIND, UNIT_UNCLEAR ->
                    layout.column(TrialColumn.UNIT) > 0
                                    && !text(TrialColumn.UNIT).isEmpty()
                            ? TrialColumn.UNIT
                            : TrialColumn.VALUE;
                case OF_UNREADABLE, OF_TOO_SMALL -> TrialColumn.OF;
                default -> TrialColumn.VALUE;
            };
        }

        private boolean inRange(Amount amount, String written, Measure measure) {
            String unit = " " + measure.unit().symbol();
            if (!measure.possible().holds(amount)) {
                tell(
                        TrialColumn.VALUE,
                        ProblemCode.VALUE_IMPOSSIBLE,
                        written,
                        measure.possible().text() + unit + " for " + measure.id(),
                        "correct the value or its unit");
                return false;
            }
            if (!measure.plausible().holds(amount)) {
                tell(
                        TrialColumn.VALUE,
                        ProblemCode.VALUE_UNUSUAL,
                        written,
                        "usually " + measure.plausible().text() + unit + " for " + measure.id(),
                        "taken as it is; look at it once more");
            }
            return true;
        }

        /** Where no try was made there was no help to write. */
        Optional<Level> help(Optional<Reading> reading) {
            String written = text(TrialColumn.HELP);
            boolean blank = layout.written(cells, TrialColumn.HELP).isEmpty();
            if (blank && !reading.map(Reading::recorded).orElse(true)) {
                return Optional.empty();
            }
            helpDeclared = blank && !written.isEmpty();
            if (written.isEmpty()) {
                tell(
                        TrialColumn.HELP,
                        ProblemCode.HELP_BLANK,
                        "",
                        "a word of the help scale",
                        rules.blankHelp()
                                .map(level -> "read as " + level.word() + ", declared for the form")
                                .orElse("kept as not recorded"));
                helpDeclared = rules.blankHelp().isPresent();
                return rules.blankHelp();
            }
            return level(TrialColumn.HELP, rules.settings().help(), ProblemCode.HELP_UNKNOWN);
        }

        Optional<Level> level(TrialColumn column, WordScale scale, ProblemCode unknown) {
            String written = text(column);
            if (written.isEmpty()) {
                return Optional.empty();
            }
            Optional<Level> level = scale.find(written);
            if (level.isEmpty()) {
                String near = Spelling.nearest(WordScale.fold(written), scale.words())
                        .map(word -> "did you mean " + word + "?")
                        .orElse("correct it, or add the word to the scale in logbook.toml");
                tell(column, unknown, written, "one of: " + String.join(", ", scale.words()), near);
            }
            return level;
        }

        Side side(Measure measure) {
            String written = text(TrialColumn.SIDE);
            Optional<Side> side = TrialWords.side(written);
            if (side.isEmpty()) {
                tell(
                        TrialColumn.SIDE,
                        ProblemCode.SIDE_UNKNOWN,
                        written,
                        "left or right",
                        "write one row for each side");
                return Side.NONE;
            }
            if (measure.sidedness() == Sidedness.REQUIRED && side.get() == Side.NONE) {
                tell(
                        TrialColumn.SIDE,
                        ProblemCode.SIDE_MISSING,
                        "",
                        "left or right for " + measure.id(),
                        "kept, but counted for no goal until the side is written");
            }
            if (measure.sidedness() == Sidedness.NONE && side.get() != Side.NONE) {
                sideNotUsed = true;
                tell(
                        TrialColumn.SIDE,
                        ProblemCode.SIDE_NOT_USED,
                        written,
                        "no side for " + measure.id(),
                        "the side is kept in the entry as written and not used");
                return Side.NONE;
            }
            return side.get();
        }

        Protocol protocol(Measure measure) {
            String written = text(TrialColumn.PROTOCOL);
            if (written.isEmpty()) {
                return Protocol.NONE;
            }
            At at = new At(file, line, layout.column(TrialColumn.PROTOCOL), layout.heading(TrialColumn.PROTOCOL));
            Checked<Protocol> protocol = ProtocolText.parse(written, measure, at);
            problems.addAll(protocol.problems());
            return protocol.value().orElse(Protocol.NONE);
        }

        Use use() {
            String written = text(TrialColumn.USE);
            Optional<Use> use = TrialWords.use(written);
            if (use.isEmpty()) {
                tell(TrialColumn.USE, ProblemCode.USE_UNKNOWN, written, "probe or practice", "correct the word");
            }
            return use.orElse(Use.PROBE);
        }

        TrialPlace place() {
            String written = text(TrialColumn.PLACE);
            if (written.isEmpty()) {
                tell(TrialColumn.PLACE, ProblemCode.PLACE_BLANK, "", "school, home or clinic", "read as school");
                return TrialPlace.SCHOOL;
            }
            Optional<TrialPlace> place = TrialWords.place(written);
            if (place.isEmpty()) {
                tell(
                        TrialColumn.PLACE,
                        ProblemCode.PLACE_UNKNOWN,
                        written,
                        "school, home or clinic",
                        "correct the word");
            }
            return place.orElse(TrialPlace.SCHOOL);
        }

        /** The value as it was written, with its unit and {@code of}, and what was declared rather than written. */
        String asWritten() {
            StringBuilder written = new StringBuilder(layout.written(cells, TrialColumn.VALUE));
            if (!text(TrialColumn.UNIT).isEmpty()) {
                written.append(' ').append(text(TrialColumn.UNIT));
            }
            if (!text(TrialColumn.OF).isEmpty()) {
                written.append(" of ").append(text(TrialColumn.OF));
            }
            if (sideNotUsed) {
                written.append(" | side ").append(text(TrialColumn.SIDE));
            }
            if (helpDeclared) {
                written.append(" | help declared by form");
            }
            return written.toString();
        }
    }

    private static Optional<Amount> amount(Reading reading) {
        if (reading instanceof Reading.Exact exact) {
            return Optional.of(exact.amount());
        }
        if (reading instanceof Reading.AtLeast least) {
            return Optional.of(least.amount());
        }
        if (reading instanceof Reading.AtMost most) {
            return Optional.of(most.amount());
        }
        return Optional.empty();
    }

    private static Expecting expecting(MeasureKind kind) {
        return switch (kind) {
            case COUNT, SCORE, EVENTS -> Expecting.WHOLE_NUMBER;
            case TRIES -> Expecting.TRIES;
            case SHARE -> Expecting.SHARE_OR_TRIES;
            case DURATION, DISTANCE, SPEED, FREQUENCY -> Expecting.AMOUNT;
        };
    }
}
