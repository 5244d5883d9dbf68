package stridetally.ingest;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stridetally.measures.Measure;
import stridetally.measures.ProtocolText;
import stridetally.measures.Sidedness;
import stridetally.model.Protocol;
import stridetally.model.Side;
import stridetally.model.StudentCode;
import stridetally.model.TrialPlace;
import stridetally.model.Use;
import stridetally.problem.Checked;
import stridetally.problem.ProblemCode;
import stridetally.problem.Spelling;
import stridetally.units.Folding;

/** The cells of a row that say which try it is: whose, when, of what, and how it was taken. */
final class TrialIdentity {
    /** A longer cell is no name of a measure with its side; ours. */
    private static final int LONGEST_NAME = 80;

    private final LogRules rules;
    private final CheckedCells row;
    private boolean sideNotUsed;
    private String sideInMeasure = "";

    TrialIdentity(LogRules rules, CheckedCells row) {
        this.rules = rules;
        this.row = row;
    }

    /** Whether a side was written for a measure that has none. */
    boolean sideNotUsed() {
        return sideNotUsed;
    }

    Optional<StudentCode> student() {
        String written = row.text(TrialColumn.STUDENT);
        if (written.isEmpty()) {
            row.tell(TrialColumn.STUDENT, ProblemCode.STUDENT_MISSING, "", "a student code", "write whose try it was");
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
            row.tell(
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
        String written = row.text(TrialColumn.DATE);
        DayText.Outcome outcome = DayText.read(written, rules.order());
        if (outcome.problem().isPresent()) {
            row.tell(TrialColumn.DATE, outcome.problem().get(), written, outcome.expected(), outcome.mend());
        }
        if (outcome.day().isPresent() && outcome.day().get().isAfter(rules.asOf())) {
            row.tell(
                    TrialColumn.DATE,
                    ProblemCode.DATE_AHEAD,
                    written,
                    "a day up to " + rules.asOf(),
                    "correct the date, or import it when the day has come");
            return Optional.empty();
        }
        if (outcome.day().isPresent() && DayText.shortYear(written)) {
            row.tell(
                    TrialColumn.DATE,
                    ProblemCode.DATE_SHORT_YEAR,
                    written,
                    "a year of four digits",
                    "read as " + outcome.day().get());
        }
        return outcome.day();
    }

    Optional<Measure> measure() {
        String written = row.text(TrialColumn.MEASURE);
        if (written.isEmpty()) {
            row.tell(
                    TrialColumn.MEASURE,
                    ProblemCode.MEASURE_MISSING,
                    "",
                    "a measure such as line-steps",
                    "write what was measured");
            return Optional.empty();
        }
        Optional<Measure> known = rules.catalogue().find(written);
        Optional<Measure> measure = known.isPresent() ? known : withSide(written);
        if (measure.isEmpty()) {
            String near = rules.catalogue()
                            .nearest(written)
                            .map(one -> "did you mean " + one + "? Else correct it, or say")
                            .orElse("correct it, describe the measure in measures.csv, or say")
                    + " what the form means by it under [words.measure] of a mapping (import --columns)";
            row.tell(TrialColumn.MEASURE, ProblemCode.MEASURE_UNKNOWN, written, "a measure of the catalogue", near);
        }
        return measure;
    }

    /** A measure and its side in one cell, as in {@code SLS L}, where the side is not said elsewhere. */
    private Optional<Measure> withSide(String written) {
        if (written.length() > LONGEST_NAME || !row.text(TrialColumn.SIDE).isEmpty()) {
            return Optional.empty();
        }
        Optional<ColumnMeaning> said = new HeadingReader(rules.catalogue())
                .read(written)
                .filter(one -> one.sets().keySet().equals(Set.of(TrialColumn.MEASURE, TrialColumn.SIDE)));
        said.ifPresent(one -> sideInMeasure = one.sets().getOrDefault(TrialColumn.SIDE, ""));
        return said.flatMap(one -> rules.catalogue().find(one.sets().getOrDefault(TrialColumn.MEASURE, "")));
    }

    int number() {
        String written = row.text(TrialColumn.TRIAL);
        if (written.isEmpty()) {
            return 0;
        }
        if (Folding.isDigits(written, 6) && written.charAt(0) != '0') {
            return Integer.parseInt(written);
        }
        row.tell(
                TrialColumn.TRIAL,
                ProblemCode.TRIAL_UNREADABLE,
                written,
                "a whole number from 1",
                "correct the number of the try, or leave it blank");
        return 0;
    }

    Side side(Measure measure) {
        String written = sideInMeasure.isEmpty() ? row.text(TrialColumn.SIDE) : sideInMeasure;
        Optional<Side> side = TrialWords.side(written);
        if (side.isEmpty()) {
            row.tell(
                    TrialColumn.SIDE,
                    ProblemCode.SIDE_UNKNOWN,
                    written,
                    "left or right",
                    "write one row for each side");
            return Side.NONE;
        }
        if (measure.sidedness() == Sidedness.REQUIRED && side.get() == Side.NONE) {
            row.tell(
                    TrialColumn.SIDE,
                    ProblemCode.SIDE_MISSING,
                    "",
                    "left or right for " + measure.id(),
                    "kept, but counted for no goal until the side is written");
        }
        if (measure.sidedness() == Sidedness.NONE && side.get() != Side.NONE) {
            sideNotUsed = true;
            row.tell(
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
        String written = row.text(TrialColumn.PROTOCOL);
        if (written.isEmpty()) {
            return Protocol.NONE;
        }
        Checked<Protocol> protocol = ProtocolText.parse(written, measure, row.at(TrialColumn.PROTOCOL));
        row.problems().addAll(protocol.problems());
        return protocol.value().orElse(Protocol.NONE);
    }

    Use use() {
        String written = row.text(TrialColumn.USE);
        Optional<Use> use = TrialWords.use(written);
        if (use.isEmpty()) {
            row.tell(TrialColumn.USE, ProblemCode.USE_UNKNOWN, written, "probe or practice", "correct the word");
        }
        return use.orElse(Use.PROBE);
    }

    TrialPlace place() {
        String written = row.text(TrialColumn.PLACE);
        if (written.isEmpty()) {
            row.tell(TrialColumn.PLACE, ProblemCode.PLACE_BLANK, "", "school, home or clinic", "read as school");
            return TrialPlace.SCHOOL;
        }
        Optional<TrialPlace> place = TrialWords.place(written);
        if (place.isEmpty()) {
            row.tell(
                    TrialColumn.PLACE,
                    ProblemCode.PLACE_UNKNOWN,
                    written,
                    "school, home or clinic",
                    "correct the word");
        }
        return place.orElse(TrialPlace.SCHOOL);
    }
}
