package stridetally.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import stridetally.forecast.CaseloadReview;
import stridetally.forecast.OwnLineForecaster;
import stridetally.ingest.ReadingKind;
import stridetally.ingest.SeriesNumbers;
import stridetally.measures.Measure;
import stridetally.measures.MeasureKind;
import stridetally.measures.Range;
import stridetally.measures.Rhythm;
import stridetally.measures.Sidedness;
import stridetally.model.Benchmark;
import stridetally.model.Caseload;
import stridetally.model.Change;
import stridetally.model.Criterion;
import stridetally.model.DateRange;
import stridetally.model.Direction;
import stridetally.model.Goal;
import stridetally.model.GoalAim;
import stridetally.model.GoalEnd;
import stridetally.model.GoalId;
import stridetally.model.GoalSide;
import stridetally.model.Level;
import stridetally.model.MeasureId;
import stridetally.model.Period;
import stridetally.model.Protocol;
import stridetally.model.Remark;
import stridetally.model.SchoolBreak;
import stridetally.model.SeriesKey;
import stridetally.model.ServicePlan;
import stridetally.model.Settings;
import stridetally.model.Side;
import stridetally.model.Student;
import stridetally.model.StudentCode;
import stridetally.model.Summary;
import stridetally.model.Thresholds;
import stridetally.model.TrialPlace;
import stridetally.model.Use;
import stridetally.model.Visit;
import stridetally.model.WordScale;
import stridetally.problem.ProblemCode;
import stridetally.scoring.BaselineSessions;
import stridetally.scoring.GoalScore;
import stridetally.scoring.GoalScorer;
import stridetally.scoring.SessionTable;
import stridetally.units.Amount;
import stridetally.units.Unit;

/** A caseload made up for tests, from its records and tries to the input of the documents. */
final class MadeCaseload {
    static final StudentCode STUDENT = new StudentCode("S-1");
    static final Measure STEPS =
            measure("line-steps", Unit.STEPS, MeasureKind.COUNT, Direction.HIGHER, 0, Sidedness.NONE);
    static final Measure STANCE =
            measure("single-leg-stance", Unit.SECONDS, MeasureKind.DURATION, Direction.HIGHER, 1, Sidedness.REQUIRED);
    static final Measure STAIRS =
            measure("stairs-time", Unit.SECONDS, MeasureKind.DURATION, Direction.LOWER, 1, Sidedness.NONE);
    static final Measure SUCCESS =
            measure("success", Unit.PROPORTION, MeasureKind.TRIES, Direction.HIGHER, 2, Sidedness.NONE);
    static final Map<MeasureId, Measure> CATALOGUE = List.of(STEPS, STANCE, STAIRS, SUCCESS).stream()
            .collect(Collectors.toMap(Measure::id, Function.identity()));

    final List<Student> students = new ArrayList<>();
    final List<Goal> goals = new ArrayList<>();
    final List<Benchmark> benchmarks = new ArrayList<>();
    final List<Change> changes = new ArrayList<>();
    final List<ServicePlan> services = new ArrayList<>();
    final List<Visit> visits = new ArrayList<>();
    final List<Remark> remarks = new ArrayList<>();
    final List<SetAsideRow> setAside = new ArrayList<>();
    final Map<StudentCode, Integer> ahead = new HashMap<>();
    final Map<StudentCode, String> names = new HashMap<>();
    LocalDate asOf = LocalDate.parse("2027-03-05");
    ReportInput.PeriodChoice period = new ReportInput.PeriodChoice.Named("winter");
    private final SessionTable table = new SessionTable(new SeriesNumbers());

    static Measure measure(
            String id, Unit unit, MeasureKind kind, Direction better, int decimals, Sidedness sidedness) {
        Range any = new Range(Optional.empty(), Optional.empty());
        return new Measure(
                new MeasureId(id),
                id.replace('-', ' '),
                "plain words for " + id.replace('-', ' '),
                unit,
                Optional.of(better),
                kind,
                Rhythm.PROBE,
                3,
                Summary.MEDIAN,
                any,
                any,
                sidedness,
                List.of("surface", "shoes"),
                decimals,
                "A floor line before a beam.",
                "a measure made up for tests");
    }

    static Settings settings() {
        return new Settings(
                "made-up",
                List.of(
                        period("autumn", "2026-08-31", "2026-11-20"),
                        period("winter", "2026-11-23", "2027-03-05"),
                        period("spring", "2027-03-08", "2027-06-11")),
                List.of(new SchoolBreak("winter break", range("2026-12-21", "2027-01-01"), "")),
                Map.of(),
                WordScale.HELP,
                WordScale.PROMPT,
                Thresholds.USUAL,
                List.of("en"));
    }

    static Period period(String name, String first, String last) {
        return new Period(name, range(first, last), "");
    }

    static DateRange range(String first, String last) {
        return new DateRange(LocalDate.parse(first), LocalDate.parse(last));
    }

    static Student student(StudentCode code, String... precautions) {
        return new Student(
                code,
                "2",
                "Invented School",
                Optional.empty(),
                Optional.empty(),
                "",
                "",
                "",
                "",
                "",
                "en",
                List.of(precautions));
    }

    static Visit visit(String day, Visit.Status status, int minutes, String makeUpFor, String reason) {
        return new Visit(
                STUDENT,
                LocalDate.parse(day),
                minutes == 0 ? OptionalInt.empty() : OptionalInt.of(minutes),
                status,
                "direct",
                Optional.of(makeUpFor).filter(text -> !text.isEmpty()).map(LocalDate::parse),
                reason);
    }

    /** Tries such as {@code 4 5 >6 unable refused 3/5}, each at one level of help; {@code 5@minimal} is at another. */
    void tries(Measure measure, Side side, TrialPlace place, Use use, String day, String help, String tries) {
        tries(STUDENT, measure, side, place, use, day, help, tries);
    }

    void tries(
            StudentCode student,
            Measure measure,
            Side side,
            TrialPlace place,
            Use use,
            String day,
            String help,
            String tries) {
        int series = table.numbers().number(new SeriesKey("", student, measure.id(), side, Protocol.NONE, place, use));
        int epochDay = (int) LocalDate.parse(day).toEpochDay();
        long line = epochDay * 1000L;
        for (String one : tries.split(" ", -1)) {
            String[] parts = one.split("@", -1);
            String word = parts.length > 1 ? parts[1].replace('_', ' ') : help;
            int rank = word.isEmpty()
                    ? Level.BLANK
                    : WordScale.HELP.find(word).orElseThrow().rank();
            add(series, epochDay, parts[0], rank, line++);
        }
    }

    void steps(String day, String help, String tries) {
        tries(STEPS, Side.NONE, TrialPlace.SCHOOL, Use.PROBE, day, help, tries);
    }

    private void add(int series, int day, String value, int help, long line) {
        if (value.contains("/")) {
            String[] share = value.split("/", -1);
            table.trial(
                    series,
                    day,
                    0,
                    0,
                    ReadingKind.TRIES,
                    Long.parseLong(share[0]),
                    Integer.parseInt(share[1]),
                    help,
                    0,
                    line);
            return;
        }
        ReadingKind kind = switch (value) {
            case "unable" -> ReadingKind.UNABLE;
            case "refused" -> ReadingKind.REFUSED;
            case "absent" -> ReadingKind.ABSENT;
            case "untested" -> ReadingKind.NOT_TESTED;
            default ->
                value.startsWith(">")
                        ? ReadingKind.AT_LEAST
                        : value.startsWith("<") ? ReadingKind.AT_MOST : ReadingKind.EXACT;
        };
        boolean measured = kind == ReadingKind.EXACT || kind == ReadingKind.AT_LEAST || kind == ReadingKind.AT_MOST;
        long amount = measured ? Amount.of(value.replaceAll("[<>]", "")).billionths() : 0;
        table.trial(series, day, 0, 0, kind, amount, 1, help, 0, line);
    }

    Caseload caseload() {
        return new Caseload(
                settings(), students, goals, benchmarks, List.of(), changes, services, visits, List.of(), remarks);
    }

    static Optional<Measure> catalogue(MeasureId id) {
        return Optional.ofNullable(CATALOGUE.get(id));
    }

    ReportInput input() {
        Caseload caseload = caseload();
        GoalScorer scorer = new GoalScorer(caseload, MadeCaseload::catalogue, table, asOf);
        List<GoalScore> scores = scorer.scoreAll();
        CaseloadReview review = CaseloadReview.of(
                caseload,
                scores,
                asOf,
                new OwnLineForecaster(caseload.settings().thresholds()));
        ReportInput bare = new ReportInput(
                caseload,
                review,
                Map.of(),
                period,
                new ReportInput.Stamp("made-up", 12),
                setAside,
                ahead,
                "own-line",
                new SpreadError(
                        caseload,
                        review.goals(),
                        new BaselineSessions(caseload, MadeCaseload::catalogue, scorer.index(), asOf)),
                names);
        return bare.gather(scorer, MadeCaseload::catalogue);
    }

    TeamReport team() {
        return TeamReport.of(input(), STUDENT).orElseThrow();
    }

    /** One goal that has everything. */
    static MadeCaseload rich() {
        MadeCaseload made = new MadeCaseload();
        made.students.add(student(STUDENT, "seizures"));
        made.goals.add(new Draft().goal());
        made.benchmarks.add(new Benchmark(new GoalId("G-1"), LocalDate.parse("2026-11-20"), Amount.of("7")));
        made.benchmarks.add(new Benchmark(new GoalId("G-1"), LocalDate.parse("2027-04-30"), Amount.of("12")));
        made.changes.add(new Change(
                STUDENT,
                Optional.of(new GoalId("G-1")),
                LocalDate.parse("2026-11-30"),
                "Arms free instead of on the hips"));
        made.services.add(new ServicePlan(
                STUDENT, Optional.of(LocalDate.parse("2026-08-31")), Optional.empty(), 60, "week", "direct"));
        made.visits.add(visit("2026-12-01", Visit.Status.HELD, 30, "", ""));
        made.visits.add(visit("2026-12-08", Visit.Status.STUDENT_ABSENT, 0, "", "cold"));
        made.visits.add(visit("2026-12-10", Visit.Status.HELD, 30, "2026-12-08", ""));
        made.visits.add(visit("2027-01-12", Visit.Status.SCHOOL_CLOSED, 0, "", ""));
        made.visits.add(visit("2027-02-02", Visit.Status.HELD, 0, "", ""));
        made.remarks.add(new Remark(
                new GoalId("G-1"),
                "winter",
                "en",
                "Walks the tape to lunch with the class most days now.",
                "Add a turn at the end of the line.",
                Optional.of("on course"),
                ""));
        made.setAside.add(new SetAsideRow(STUDENT, "0003:14", List.of(ProblemCode.DATE_UNREADABLE)));
        made.ahead.put(STUDENT, 1);
        for (String session : List.of(
                "2026-09-29 4 5 4",
                "2026-10-13 6 5 5",
                "2026-10-27 6 6 7",
                "2026-11-10 7 6 8",
                "2026-12-01 8 7 8",
                "2026-12-15 9 8 9@minimal",
                "2027-01-19 10 9 10",
                "2027-02-02 11 >10 9",
                "2027-03-02 12 11 13")) {
            made.steps(session.substring(0, 10), "supervision", session.substring(11));
        }
        made.steps("2027-01-26", "minimal", "12 12");
        made.steps("2027-02-09", "", "refused");
        made.tries(STEPS, Side.NONE, TrialPlace.SCHOOL, Use.PRACTICE, "2027-02-02", "contact guard", "9 9");
        made.tries(STEPS, Side.NONE, TrialPlace.HOME, Use.PROBE, "2027-02-06", "stand-by", "10 12 11");
        return made;
    }

    /** A goal that lacks what makes it a goal, and of which nothing was recorded. */
    static MadeCaseload poor() {
        MadeCaseload made = new MadeCaseload();
        Draft draft = new Draft();
        draft.statement = "";
        draft.routine = "";
        draft.baseline = "";
        draft.baselineDate = "";
        draft.target = "";
        draft.due = "";
        draft.criterion = Criterion.NONE;
        draft.help = "";
        made.goals.add(draft.goal());
        return made;
    }

    /** A goal being written. */
    static final class Draft {
        String id = "G-1";
        StudentCode student = STUDENT;
        Measure measure = STEPS;
        GoalSide side = GoalSide.NONE;
        String statement = "Walks 12 steps in a row on a floor line, in 2 of 3 tries, 3 sessions running.";
        String routine = "walking with the class line to lunch";
        String baseline = "4";
        String baselineDate = "2026-09-18";
        String target = "12";
        String due = "2027-06-04";
        Criterion criterion = new Criterion(OptionalInt.of(2), OptionalInt.of(3), OptionalInt.of(3));
        String help = "supervision";
        Set<TrialPlace> places = EnumSet.of(TrialPlace.SCHOOL, TrialPlace.CLINIC);
        GoalAim aim = GoalAim.REACH;
        Optional<GoalEnd> ended = Optional.empty();
        Map<String, String> protocol = Map.of("shoes", "on");

        Goal goal() {
            return new Goal(
                    new GoalId(id),
                    student,
                    measure.id(),
                    side,
                    new Protocol(new TreeMap<>(protocol)),
                    statement,
                    routine,
                    amount(baseline),
                    day(baselineDate),
                    baseline.isEmpty() ? "" : "median of three sessions",
                    amount(target),
                    day(due),
                    criterion,
                    Optional.of(help)
                            .filter(word -> !word.isEmpty())
                            .map(word -> WordScale.HELP.find(word).orElseThrow()),
                    Optional.empty(),
                    Optional.empty(),
                    places,
                    aim,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    ended,
                    Optional.empty());
        }

        private static Optional<Amount> amount(String text) {
            return text.isEmpty() ? Optional.empty() : Optional.of(Amount.of(text));
        }

        private static Optional<LocalDate> day(String text) {
            return text.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(text));
        }
    }
}
