import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Writes the field logs of Fallowhythe, an invented district: no place, school, child or clinic of this file exists.
 *
 * <p>The goals are read from samples/caseload/goals.csv (kept by hand); how each one unfolds is said in {@link Cast}.
 * Every goal and every student has its own random stream, so one more goal leaves the rows of the others alone. Only
 * additions, products and comparisons of doubles are used, so the bytes are the same on every machine.
 *
 * <p>The cast. "Certain" judgements are those that follow from the rules whatever the forecast's numbers are, or lie
 * far from the thresholds; they are written to samples/expected-judgements.csv, as of the last day of the period.
 *
 * <pre>
 * goal               what it shows                                             winter                 spring
 * fh-003-line        criterion of tries, help and prompt named; home tries     on course              met
 * fh-003-stance      each side; left is the weaker; stopped at 10 s            (open)                 (open)
 * fh-003-stairs      lower is better; a practice try before the probes         (open)                 (open)
 * fh-007-jump        no tries in the criterion; feet and inches; raised        (ended: raised)        (ended: raised)
 * fh-007-jump-2      follows the one before; summer stops the clock            too few sessions       (open)
 * fh-007-hop         either side, typed                                        met                    met
 * fh-007-turn        lower is better, left, flat                               off course             off course
 * fh-011-stepoffs    events, lower is better                                   (open)                 (open)
 * fh-011-floor       every probe with more help than the goal permits          not yet without help   not yet without help
 * fh-011-share       share of a line, mean; home tries                         (open)                 (open)
 * fh-014-beam        a change of strategy on 2027-01-11; seizures              (open)                 (open)
 * fh-014-tandem      learned fast and held; refused once                       met                    met
 * fh-014-threshold   k of n on one row, written "4/5"                          met                    met
 * fh-018-walk6       to keep, tested three times a year                        (open)                 (open)
 * fh-018-tug         to keep; the help rises through the year                  (open)                 (open)
 * fh-018-stairs      slower month by month, "1:05"                             off course             off course
 * fh-022-closed      absent, refused, not tested: two sessions in winter       too few sessions       too few sessions
 * fh-022-speed       time, distance and steps of one walk                      (open)                 (open)
 * fh-025-walk30      logged in feet, kept in metres; walker                    (open)                 (open)
 * fh-025-side        each side, a hand held is permitted                       (open)                 (open)
 * fh-029-shuttle     a maximal test, three times a year                        (open)                 (open)
 * fh-029-hop         steady gain                                               on course              met
 * fh-029-leap        no criterion written; target passed in winter             (open)                 (open)
 * fh-031-stance      joined in January; steady gain; due after summer          (open)                 on course
 * fh-031-line        joined in January; unable at times                        (open)                 (open)
 * fh-031-back        no session until May                                      not begun              too few sessions
 * fh-036-line        child left on 2027-01-29                                  ended                  ended
 * fh-036-reach       child left on 2027-01-29                                  ended                  ended
 * fh-038-line        goal without help: cannot be met                          (open, never met)      (open, never met)
 * fh-038-go          target on the wrong side of the baseline                  (open)                 (open)
 * fh-038-hop         dropped on 2026-12-18                                     ended                  ended
 * fh-042-stance      written "more than 30" at the cap; held since              met                    met
 * fh-042-side        due before its baseline                                   (open)                 (open)
 * fh-042-falls       falls in a week, lower is better, total                   (open)                 (open)
 * fh-045-balance     total score, three times a year                           (open)                 (open)
 * fh-045-walk2       a two-minute walk, one try, twice a day at times          (open)                 (open)
 * fh-045-line        due 2027-02-12, revised on 2027-03-12                     not met by its date    ended
 * fh-045-line-2      follows the one before                                    -                      (open)
 * fh-049-tandem      shoes off is another protocol; end of the line reached    (open)                 (open)
 * fh-049-reach       each side, mean                                           (open)                 (open)
 * fh-049-back        no session since November                                 too few sessions       too few sessions
 * fh-052-stairs      steady gain                                               on course              met
 * fh-052-jumps       flat; due 2027-05-28                                      off course             not met by its date
 * fh-052-line        home tries count too                                      (open)                 (open)
 * fh-056-closed      each side, noisy, near its line                           (open)                 (open)
 * fh-056-turns       k of 10 in a number and an "of"                           (open)                 (open)
 * fh-056-time        lower is better; help left blank on the winter form       (open)                 (open)
 * fh-060-line        hands held all year                                       not yet without help   not yet without help
 * fh-060-floor       goal of February, no session                              not begun              not begun
 * fh-060-walk1       three sessions in the year                                too few sessions       too few sessions
 * </pre>
 *
 * <p>The rows of logs/2027-02-aide-errors.csv are listed in {@link Errors}.
 */
public final class MakeSamples {
    static final long SEED = 20260831L;
    static final LocalDate FIRST = LocalDate.of(2026, 8, 31);
    static final LocalDate LAST = LocalDate.of(2027, 6, 11);

    private MakeSamples() {}

    /** Writes below the folder named by the first argument. */
    public static void main(String[] args) throws IOException {
        Path samples = Path.of(args[0]);
        Map<String, Goal> goals = Goal.read(samples.resolve("caseload/goals.csv"));
        Attendance attendance = new Attendance();
        Cast cast = new Cast(goals, attendance);
        List<Row> rows = cast.rows();
        Out out = new Out(samples);
        Logs.write(out, rows);
        Errors.write(out, rows);
        SecondObserver.write(out, rows);
        Forms.write(out);
        Recordings.write(out);
        attendance.write(out);
        out.file("expected-judgements.csv", cast.expected());
        System.err.println(rows.size() + " trial rows, " + goals.size() + " goals");
    }
}

/** What of a goal the logs need. */
record Goal(String id, String student, String measure, String side) {
    static Map<String, Goal> read(Path file) throws IOException {
        Map<String, Goal> goals = new LinkedHashMap<>();
        List<String> header = List.of();
        for (String line : Files.readAllLines(file)) {
            // The first four cells hold no comma and no quote.
            List<String> cells = List.of(line.split(",", 5));
            if (header.isEmpty()) {
                header = cells.subList(0, 4);
                if (!header.equals(List.of("goal", "student", "measure", "side"))) {
                    throw new IOException("goals.csv should begin with goal,student,measure,side");
                }
            } else {
                goals.put(cells.get(0), new Goal(cells.get(0), cells.get(1), cells.get(2), cells.get(3)));
            }
        }
        return goals;
    }
}

/** One trial; cells as the canonical log writes them. */
record Row(
        Writer writer,
        String student,
        LocalDate date,
        String session,
        String measure,
        String trial,
        String value,
        String unit,
        String of,
        String help,
        String prompt,
        String side,
        String protocol,
        String use,
        String activity,
        String note) {}

/** Who keeps a log; each has a form of their own. */
enum Writer {
    PT("pt-1"),
    PTA(""),
    AIDE("aide-2"),
    PE("pe-1"),
    HOME("family");

    final String observer;

    Writer(String observer) {
        this.observer = observer;
    }
}

/** The three reporting periods. */
enum Term {
    AUTUMN("2026-autumn", LocalDate.of(2026, 11, 20)),
    WINTER("2027-winter", LocalDate.of(2027, 3, 5)),
    SPRING("2027-spring", MakeSamples.LAST);

    final String file;
    final LocalDate last;

    Term(String file, LocalDate last) {
        this.file = file;
        this.last = last;
    }

    static Term of(LocalDate day) {
        return !day.isAfter(AUTUMN.last) ? AUTUMN : !day.isAfter(WINTER.last) ? WINTER : SPRING;
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}

/** Random numbers without logarithms, which machines may round differently. */
final class Chance {
    private final SplittableRandom random;

    Chance(String stream) {
        long seed = MakeSamples.SEED;
        for (char letter : stream.toCharArray()) {
            seed = seed * 31 + letter;
        }
        random = new SplittableRandom(seed);
    }

    boolean happens(double probability) {
        return random.nextDouble() < probability;
    }

    int below(int bound) {
        return random.nextInt(bound);
    }

    /** Nearly normal, mean 0, SD 1: the sum of twelve uniform numbers, less 6. */
    double normal() {
        double sum = -6;
        for (int draw = 0; draw < 12; draw++) {
            sum += random.nextDouble();
        }
        return sum;
    }
}

/** School days: weekdays without the breaks of logbook.toml and a few single days. */
final class Calendar {
    private static final List<String> CLOSED = List.of(
            "2026-09-07 2026-09-07",
            "2026-11-26 2026-11-27",
            "2026-12-21 2027-01-01",
            "2027-01-18 2027-01-18",
            "2027-02-15 2027-02-15",
            "2027-04-05 2027-04-09",
            "2027-05-31 2027-05-31");

    private Calendar() {}

    static boolean open(LocalDate day) {
        return CLOSED.stream().noneMatch(span -> within(day, span));
    }

    /** Whether the day lies in "from until", both inclusive. */
    static boolean within(LocalDate day, String span) {
        return !span.isBlank()
                && !day.isBefore(LocalDate.parse(span.substring(0, 10)))
                && !day.isAfter(LocalDate.parse(span.substring(11)));
    }

    /** Every so many weeks on one weekday. */
    static List<LocalDate> weekly(DayOfWeek weekday, int weeks, LocalDate from, LocalDate until) {
        List<LocalDate> days = new ArrayList<>();
        LocalDate day = MakeSamples.FIRST.plusDays(weekday.getValue() - 1L);
        for (; !day.isAfter(until); day = day.plusWeeks(weeks)) {
            if (!day.isBefore(from)) {
                days.add(day);
            }
        }
        return days;
    }
}

/** Planned visits and what became of them. */
final class Attendance {
    private record Visit(
            String student,
            LocalDate date,
            String minutes,
            String status,
            String kind,
            String makeUpFor,
            String reason) {}

    private final List<Visit> visits = new ArrayList<>();
    private final Map<String, TreeMap<LocalDate, String>> status = new HashMap<>();

    Attendance() {
        plan("fh-003", "direct", 30, 1, DayOfWeek.MONDAY, DayOfWeek.THURSDAY);
        plan("fh-007", "group", 30, 1, DayOfWeek.TUESDAY);
        plan("fh-011", "direct", 30, 1, DayOfWeek.WEDNESDAY);
        plan("fh-014", "direct", 30, 1, DayOfWeek.MONDAY);
        plan("fh-018", "direct", 30, 1, DayOfWeek.THURSDAY);
        plan("fh-022", "direct", 30, 1, DayOfWeek.WEDNESDAY);
        plan("fh-025", "direct", 30, 1, DayOfWeek.TUESDAY, DayOfWeek.FRIDAY);
        plan("fh-029", "group", 30, 2, DayOfWeek.TUESDAY);
        plan("fh-031", "direct", 30, 1, DayOfWeek.WEDNESDAY);
        plan("fh-036", "direct", 30, 1, DayOfWeek.THURSDAY);
        plan("fh-038", "direct", 30, 1, DayOfWeek.TUESDAY);
        plan("fh-042", "group", 30, 1, DayOfWeek.WEDNESDAY);
        plan("fh-045", "direct", 30, 1, DayOfWeek.FRIDAY);
        plan("fh-049", "direct", 30, 1, DayOfWeek.THURSDAY);
        plan("fh-052", "direct", 30, 2, DayOfWeek.FRIDAY);
        plan("fh-056", "direct", 30, 1, DayOfWeek.MONDAY);
        plan("fh-060", "direct", 30, 1, DayOfWeek.THURSDAY);
        for (LocalDate day : Calendar.weekly(DayOfWeek.TUESDAY, 4, MakeSamples.FIRST, MakeSamples.LAST)) {
            if (Calendar.open(day)) {
                add("fh-060", day, "30", "held", "consult", "", "with the class teacher");
            }
        }
        visits.sort(Comparator.comparing(Visit::date).thenComparing(Visit::student));
    }

    private void plan(String student, String kind, int minutes, int weeks, DayOfWeek... weekdays) {
        Chance chance = new Chance("visits of " + student);
        LocalDate from = student.equals("fh-031") ? LocalDate.of(2027, 1, 11) : MakeSamples.FIRST.plusDays(7);
        LocalDate until = student.equals("fh-036") ? LocalDate.of(2027, 1, 29) : MakeSamples.LAST;
        for (DayOfWeek weekday : weekdays) {
            for (LocalDate day : Calendar.weekly(weekday, weeks, from, until)) {
                boolean shorter = student.equals("fh-018") && !day.isBefore(LocalDate.of(2027, 2, 1));
                visit(student, day, shorter ? 20 : minutes, kind, chance);
            }
        }
    }

    private void visit(String student, LocalDate day, int minutes, String kind, Chance chance) {
        int draw = chance.below(100);
        if (!Calendar.open(day)) {
            add(student, day, "0", "school closed", kind, "", "");
        } else if (draw < 6) {
            add(student, day, "0", "student absent", kind, "", draw < 3 ? "ill" : "");
        } else if (draw < 10) {
            add(student, day, "0", "therapist absent", kind, "", draw < 8 ? "meeting" : "ill");
            LocalDate later = day.plusDays(day.getDayOfWeek().getValue() > 3 ? 5 : 2);
            if (draw < 8 && Calendar.open(later) && !later.isAfter(MakeSamples.LAST)) {
                add(student, later, Integer.toString(minutes), "held", kind, day.toString(), "");
            }
        } else if (draw == 10) {
            add(student, day, "5", "refused", kind, "", "stayed with the class");
        } else {
            int given = draw > 94 ? minutes - 10 : minutes;
            add(student, day, Integer.toString(given), "held", kind, "", given < minutes ? "assembly" : "");
        }
    }

    private void add(
            String student, LocalDate day, String minutes, String what, String kind, String makeUpFor, String reason) {
        visits.add(new Visit(student, day, minutes, what, kind, makeUpFor, reason));
        if (makeUpFor.isEmpty() && !kind.equals("consult")) {
            status.computeIfAbsent(student, code -> new TreeMap<>()).put(day, what);
        }
    }

    /** Days of regular visits with their status. */
    TreeMap<LocalDate, String> of(String student) {
        return status.getOrDefault(student, new TreeMap<>());
    }

    void write(Out out) {
        for (Term term : Term.values()) {
            List<List<String>> lines = new ArrayList<>();
            lines.add(List.of("student", "date", "minutes", "status", "kind", "make_up_for", "reason"));
            for (Visit visit : visits) {
                if (Term.of(visit.date) == term) {
                    lines.add(List.of(
                            visit.student,
                            visit.date.toString(),
                            visit.minutes,
                            visit.status,
                            visit.kind,
                            visit.makeUpFor,
                            visit.reason));
                }
            }
            out.csv("logs/visits-" + term.file + ".csv", ',', lines);
        }
    }
}

/** How one goal unfolds. Paths are "date level, date level": straight between the dates, flat after the last. */
final class Story {
    static final List<String> HELP = List.of(
            "independent",
            "modified independent",
            "supervision",
            "stand-by",
            "contact guard",
            "hand-held one",
            "hand-held two",
            "minimal",
            "moderate",
            "maximal",
            "dependent");

    final Goal goal;
    final Writer writer;
    final TreeMap<LocalDate, Double> path;
    TreeMap<LocalDate, Double> rightPath;
    final TreeMap<LocalDate, String> help = new TreeMap<>();
    final Map<Term, String> expected = new LinkedHashMap<>();
    int every = 1;
    int tries = 3;
    double daySpread;
    double trySpread;
    int decimals;
    String unit = "";
    double cap = Double.MAX_VALUE;
    int of;
    String prompt = "";
    double slips;
    double unable;
    double refused;
    int practice;
    String protocol = "";
    double otherProtocol;
    String activity = "";
    String blankHelp = "";
    boolean twice;
    List<LocalDate> only = List.of();
    DayOfWeek weekday;

    Story(Goal goal, Writer writer, String path) {
        this.goal = goal;
        this.writer = writer;
        this.path = levels(path);
        this.rightPath = this.path;
    }

    private static TreeMap<LocalDate, Double> levels(String path) {
        TreeMap<LocalDate, Double> levels = new TreeMap<>();
        for (String point : path.split(", ")) {
            levels.put(LocalDate.parse(point.substring(0, 10)), Double.valueOf(point.substring(11)));
        }
        return levels;
    }

    Story right(String other) {
        rightPath = levels(other);
        return this;
    }

    /** Visits between sessions, and tries (of each side). */
    Story rhythm(int everyVisit, int triesGiven) {
        every = everyVisit;
        tries = triesGiven;
        return this;
    }

    /** A day of the week of the writer's own, without regard to visits. */
    Story on(DayOfWeek day) {
        weekday = day;
        return this;
    }

    Story only(String days) {
        only = List.of(days.split(" ")).stream().map(LocalDate::parse).collect(Collectors.toList());
        return this;
    }

    Story noise(double day, double single) {
        daySpread = day;
        trySpread = single;
        return this;
    }

    Story in(String symbol, int digits) {
        unit = symbol;
        decimals = digits;
        return this;
    }

    Story cap(double most) {
        cap = most;
        return this;
    }

    /** For tries met: opportunities on one row. For amounts: the full amount. */
    Story of(int full) {
        of = full;
        return this;
    }

    /** "date word, date word"; each try needs one level more with probability {@code more}. */
    Story help(String plan, double more) {
        for (String point : plan.split(", ")) {
            help.put(LocalDate.parse(point.substring(0, 10)), point.substring(11));
        }
        slips = more;
        return this;
    }

    Story prompt(String word) {
        prompt = word;
        return this;
    }

    Story unable(double probability) {
        unable = probability;
        return this;
    }

    Story refused(double probability) {
        refused = probability;
        return this;
    }

    Story practice(int first) {
        practice = first;
        return this;
    }

    Story sometimes(String other, double probability) {
        protocol = other;
        otherProtocol = probability;
        return this;
    }

    Story during(String what) {
        activity = what;
        return this;
    }

    Story blankHelp(String span) {
        blankHelp = span;
        return this;
    }

    /** Some days hold a morning and an afternoon session. */
    Story twiceADay() {
        twice = true;
        return this;
    }

    Story winter(String judgement) {
        expected.put(Term.WINTER, judgement);
        return this;
    }

    Story spring(String judgement) {
        expected.put(Term.SPRING, judgement);
        return this;
    }

    Story autumn(String judgement) {
        expected.put(Term.AUTUMN, judgement);
        return this;
    }

    double level(TreeMap<LocalDate, Double> levels, LocalDate day) {
        Map.Entry<LocalDate, Double> before = levels.floorEntry(day);
        Map.Entry<LocalDate, Double> after = levels.ceilingEntry(day);
        if (before == null || after == null || before.getKey().equals(after.getKey())) {
            return (before == null ? after : before).getValue();
        }
        double share = (double) (day.toEpochDay() - before.getKey().toEpochDay())
                / (after.getKey().toEpochDay() - before.getKey().toEpochDay());
        return before.getValue() + share * (after.getValue() - before.getValue());
    }
}

/** Turns one story into rows. */
final class Teller {
    private final Story story;
    private final Chance chance;
    private final List<Row> rows = new ArrayList<>();

    Teller(Story story) {
        this.story = story;
        this.chance = new Chance(story.goal.id() + " by " + story.writer);
    }

    List<Row> rows(Attendance attendance) {
        TreeMap<LocalDate, String> days = days(attendance);
        int visit = 0;
        for (Map.Entry<LocalDate, String> day : days.entrySet()) {
            boolean turn = visit++ % story.every == 0;
            if (day.getKey().isBefore(story.path.firstKey()) || !turn) {
                continue;
            }
            tell(day.getKey(), day.getValue());
        }
        return rows;
    }

    private TreeMap<LocalDate, String> days(Attendance attendance) {
        TreeMap<LocalDate, String> days = new TreeMap<>();
        LocalDate last = story.path.lastKey();
        if (!story.only.isEmpty()) {
            story.only.forEach(day -> days.put(day, "held"));
        } else if (story.weekday != null) {
            for (LocalDate day : Calendar.weekly(story.weekday, 1, MakeSamples.FIRST.plusDays(7), last)) {
                if (Calendar.open(day) || story.writer == Writer.HOME) {
                    days.put(day, chance.happens(0.07) ? "student absent" : "held");
                }
            }
        } else {
            days.putAll(attendance.of(story.goal.student()).headMap(last, true));
        }
        return days;
    }

    private void tell(LocalDate day, String status) {
        if (status.equals("held") && chance.happens(story.refused)) {
            none(day, "refused");
        } else if (status.equals("held")) {
            String label = story.twice && chance.happens(0.15) ? "am" : "";
            session(day, label);
            if (!label.isEmpty()) {
                session(day, "pm");
            }
        } else if (status.equals("student absent") && story.writer != Writer.HOME && chance.happens(0.6)) {
            none(day, "absent");
        } else if (status.equals("refused")) {
            none(day, "refused");
        } else if (status.equals("therapist absent") && chance.happens(0.3)) {
            none(day, "not tested");
        }
    }

    private void none(LocalDate day, String why) {
        boolean both = story.goal.side().equals("each") || story.goal.side().equals("either");
        String side = both ? "left" : story.goal.side();
        if (story.goal.measure().equals("walk-speed")) {
            rows.add(row(day, "", "walk-time", "", why, "s", "", "", "", side, "", "", ""));
        } else {
            rows.add(row(day, "", story.goal.measure(), "", why, "", "", "", "", side, "", "", ""));
        }
    }

    private void session(LocalDate day, String label) {
        double shift = chance.normal() * story.daySpread;
        String other = chance.happens(story.otherProtocol) ? story.protocol : "";
        String side = story.goal.side();
        if (side.equals("each") || side.equals("either")) {
            tries(day, label, "left", story.level(story.path, day) + shift, other);
            tries(day, label, "right", story.level(story.rightPath, day) + shift, other);
        } else {
            tries(day, label, side, story.level(story.path, day) + shift, other);
        }
    }

    private void tries(LocalDate day, String label, String side, double level, String other) {
        int given = story.tries + story.practice;
        if (chance.happens(0.08) && story.tries > 3) {
            given--;
        }
        for (int number = 1; number <= given; number++) {
            one(day, label, side, level, other, number);
        }
    }

    private void one(LocalDate day, String label, String side, double level, String other, int number) {
        boolean practice = number <= story.practice;
        String helpWord = helpWord(day, practice);
        String promptWord = promptWord(practice);
        String use = practice ? "practice" : "";
        double value = level + chance.normal() * story.trySpread;
        String trial = Integer.toString(number);
        String note = note();
        if (story.goal.measure().equals("walk-speed")) {
            walk(day, trial, value, helpWord, promptWord);
        } else if (story.goal.measure().equals("success")) {
            int met = 0;
            for (int chanceGiven = 0; chanceGiven < story.of; chanceGiven++) {
                met += chance.happens(level) ? 1 : 0;
            }
            String full = Integer.toString(story.of);
            String text = Integer.toString(met);
            rows.add(row(day, label, "success", trial, text, "", full, helpWord, promptWord, side, other, use, note));
        } else if (chance.happens(story.unable)) {
            String measure = story.goal.measure();
            rows.add(row(day, label, measure, trial, "unable", "", "", helpWord, promptWord, side, other, use, note));
        } else {
            double most = story.unit.equals("%") ? 100 : Double.MAX_VALUE;
            double within = Math.min(most, Math.max(floor(), value));
            String text = value >= story.cap ? ">" + plain(story.cap, 0) : plain(within, story.decimals);
            String full = "";
            if (story.of > 0 && value >= story.of) {
                text = Integer.toString(story.of);
            }
            if (story.of > 0) {
                full = Integer.toString(story.of);
            }
            rows.add(row(
                    day,
                    label,
                    story.goal.measure(),
                    trial,
                    text,
                    story.unit,
                    full,
                    helpWord,
                    promptWord,
                    side,
                    other,
                    use,
                    note));
        }
    }

    /** A walk of ten metres: time and steps from the speed and a step length of a child. */
    private void walk(LocalDate day, String trial, double speed, String helpWord, String promptWord) {
        double seconds = 10 / Math.max(0.3, speed);
        double steps = 10 / (0.42 + 0.12 * (speed - 0.7) + chance.normal() * 0.01);
        rows.add(row(day, "", "walk-time", trial, plain(seconds, 1), "s", "", helpWord, promptWord, "", "", "", ""));
        rows.add(row(day, "", "walk-distance", trial, "10", "m", "", helpWord, promptWord, "", "", "", ""));
        rows.add(row(day, "", "walk-steps", trial, plain(steps, 0), "steps", "", helpWord, promptWord, "", "", "", ""));
    }

    private double floor() {
        return switch (story.goal.measure()) {
            case "step-offs", "falls", "line-share" -> 0;
            case "line-steps", "beam-steps", "tandem-steps", "side-steps", "back-steps", "hop-count", "jump-count" -> 0;
            case "turn-steps" -> 2;
            case "single-leg-stance", "single-leg-stance-closed", "tandem-stance" -> 0.3;
            default -> 1;
        };
    }

    private String helpWord(LocalDate day, boolean practice) {
        if (Calendar.within(day, story.blankHelp)) {
            return "";
        }
        Map.Entry<LocalDate, String> plan = story.help.floorEntry(day);
        String word = (plan == null ? story.help.firstEntry() : plan).getValue();
        int rank = Story.HELP.indexOf(word);
        boolean more = practice || chance.happens(story.slips);
        return Story.HELP.get(Math.min(Story.HELP.size() - 1, more ? rank + 1 : rank));
    }

    private String promptWord(boolean practice) {
        if (story.prompt.isEmpty()) {
            return "none";
        }
        return practice ? "model" : chance.happens(0.55) ? story.prompt : "none";
    }

    private String note() {
        if (!chance.happens(0.02)) {
            return "";
        }
        List<String> said = story.writer == Writer.HOME && story.goal.student().equals("fh-011")
                ? List.of("cinta del pasillo", "cansada despu\u00e9s de la escuela", "con su hermano")
                : List.of("tired after gym", "looked at the door", "new shoes", "laughed, again", "noisy hallway");
        return said.get(chance.below(said.size()));
    }

    private static String plain(double value, int digits) {
        long scale = digits == 0 ? 1 : digits == 1 ? 10 : 100;
        long whole = (long) (value * scale + 0.5);
        if (digits == 0) {
            return Long.toString(whole);
        }
        String text = Long.toString(whole % scale);
        return whole / scale + "." + "0".repeat(digits - text.length()) + text;
    }

    private Row row(
            LocalDate day,
            String label,
            String measure,
            String trial,
            String value,
            String unit,
            String full,
            String helpWord,
            String promptWord,
            String side,
            String protocol,
            String use,
            String note) {
        return new Row(
                story.writer,
                story.goal.student(),
                day,
                label,
                measure,
                trial,
                value,
                unit,
                full,
                helpWord,
                promptWord,
                side,
                protocol,
                use,
                story.activity,
                note);
    }
}

/** Every goal's story. */
final class Cast {
    private final Map<String, Goal> goals;
    private final Attendance attendance;
    private final List<Story> stories = new ArrayList<>();

    Cast(Map<String, Goal> goals, Attendance attendance) {
        this.goals = goals;
        this.attendance = attendance;
        ostlewick();
        thrumbley();
        mirrowby();
        home();
    }

    private Story story(String goal, Writer writer, String path) {
        Goal known = goals.get(goal);
        if (known == null) {
            throw new IllegalArgumentException("goals.csv has no goal " + goal);
        }
        Story story = new Story(known, writer, path);
        stories.add(story);
        return story;
    }

    private void ostlewick() {
        story("fh-003-line", Writer.PT, "2026-09-07 4, 2026-09-24 4, 2027-03-05 11, 2027-04-16 14.2, 2027-06-11 15.5")
                .rhythm(2, 5)
                .in("steps", 0)
                .noise(0.5, 0.8)
                .help("2026-09-07 stand-by, 2026-10-12 supervision", 0)
                .prompt("verbal")
                .practice(1)
                .during("hallway tape")
                .winter("on course")
                .spring("met");
        story("fh-003-stance", Writer.PT, "2026-09-07 2, 2026-09-24 2, 2027-06-11 5.6")
                .right("2026-09-07 2.9, 2026-09-24 3, 2027-06-11 9.5")
                .rhythm(4, 3)
                .in("s", 1)
                .noise(0.4, 0.9)
                .cap(10)
                .help("2026-09-07 stand-by", 0.06)
                .prompt("verbal");
        story("fh-003-stairs", Writer.PT, "2026-09-07 28, 2026-09-24 28, 2027-06-11 18.6")
                .rhythm(4, 2)
                .in("s", 1)
                .noise(0.8, 1)
                .help("2026-09-07 stand-by, 2026-11-02 supervision", 0.05)
                .practice(1)
                .during("library stairs");
        story("fh-007-jump", Writer.AIDE, "2026-09-08 62, 2026-09-24 62, 2027-01-20 92, 2027-02-26 97")
                .on(DayOfWeek.TUESDAY)
                .rhythm(1, 3)
                .in("cm", 0)
                .noise(2, 3)
                .help("2026-09-08 independent", 0);
        story("fh-007-jump-2", Writer.AIDE, "2027-03-01 95, 2027-06-11 103")
                .on(DayOfWeek.TUESDAY)
                .rhythm(1, 3)
                .in("cm", 0)
                .noise(2, 3)
                .help("2027-03-01 independent", 0)
                .winter("too few sessions");
        story("fh-007-hop", Writer.PTA, "2026-09-08 2, 2026-09-24 2, 2026-12-15 8.5, 2027-02-10 11, 2027-06-11 12")
                .right("2026-09-08 2, 2026-09-24 2, 2027-06-11 5")
                .rhythm(2, 5)
                .in("count", 0)
                .noise(0.4, 0.9)
                .help("2026-09-08 independent", 0)
                .prompt("gestural")
                .winter("met")
                .spring("met");
        story("fh-007-turn", Writer.PTA, "2026-09-08 8, 2027-06-11 7.7")
                .rhythm(2, 4)
                .in("steps", 0)
                .noise(0.3, 0.6)
                .help("2026-09-08 stand-by", 0.05)
                .prompt("verbal")
                .winter("off course")
                .spring("off course");
        story("fh-014-beam", Writer.PT, "2026-09-07 3, 2027-01-10 3.4, 2027-01-18 5.2, 2027-06-11 8")
                .rhythm(2, 5)
                .in("steps", 0)
                .noise(0.4, 0.9)
                .help("2026-09-07 contact guard, 2026-09-28 stand-by", 0.08)
                .prompt("verbal")
                .during("low beam");
        story("fh-014-tandem", Writer.PT, "2026-09-07 3, 2026-09-24 3, 2026-12-14 12.5, 2027-02-08 17, 2027-06-11 19")
                .rhythm(1, 3)
                .in("s", 1)
                .noise(0.6, 1.2)
                .cap(30)
                .help("2026-09-07 supervision", 0)
                .prompt("verbal")
                .refused(0.04)
                .winter("met")
                .spring("met");
        story("fh-014-threshold", Writer.AIDE, "2026-09-09 0.4, 2027-06-11 0.82")
                .on(DayOfWeek.WEDNESDAY)
                .rhythm(1, 1)
                .of(5)
                .help("2026-09-09 supervision", 0)
                .prompt("verbal")
                .winter("met")
                .spring("met");
        story("fh-025-walk30", Writer.AIDE, "2026-09-11 14, 2026-09-24 14, 2027-06-11 19.8")
                .on(DayOfWeek.FRIDAY)
                .rhythm(1, 2)
                .in("m", 1)
                .noise(0.5, 0.6)
                .help("2026-09-11 supervision", 0.05);
        story("fh-025-side", Writer.PT, "2026-09-08 2, 2026-09-24 2, 2027-06-11 5.4")
                .right("2026-09-08 3, 2026-09-24 3, 2027-06-11 7")
                .rhythm(4, 4)
                .in("steps", 0)
                .noise(0.3, 0.7)
                .help("2026-09-08 hand-held two, 2026-11-03 hand-held one", 0.1)
                .prompt("tactile")
                .unable(0.03);
        story("fh-036-line", Writer.PT, "2026-09-10 5, 2026-09-24 5, 2027-01-29 8")
                .rhythm(1, 5)
                .in("steps", 0)
                .noise(0.5, 1)
                .help("2026-09-10 stand-by", 0.08)
                .prompt("verbal")
                .winter("ended")
                .spring("ended");
        story("fh-036-reach", Writer.PT, "2026-09-10 14, 2026-09-24 14, 2027-01-29 17")
                .rhythm(2, 3)
                .in("cm", 1)
                .noise(0.6, 0.9)
                .help("2026-09-10 supervision", 0.03)
                .winter("ended")
                .spring("ended");
        story("fh-038-line", Writer.PTA, "2026-09-08 3, 2026-09-24 3, 2027-02-12 10, 2027-06-11 12")
                .rhythm(1, 5)
                .in("steps", 0)
                .noise(0.5, 0.9)
                .help("2026-09-08 contact guard, 2026-10-13 stand-by, 2027-01-12 supervision", 0.05);
        story("fh-038-go", Writer.PTA, "2026-09-08 11, 2027-06-11 10")
                .rhythm(3, 3)
                .in("s", 1)
                .noise(0.4, 0.5)
                .help("2026-09-08 supervision", 0);
        story("fh-038-hop", Writer.PTA, "2026-09-08 1, 2026-12-18 1.6")
                .rhythm(2, 5)
                .in("count", 0)
                .noise(0.2, 0.5)
                .help("2026-09-08 stand-by", 0.05)
                .unable(0.05)
                .winter("ended")
                .spring("ended");
        story("fh-060-line", Writer.PT, "2026-09-10 2, 2026-09-24 2, 2027-06-11 5.5")
                .rhythm(1, 5)
                .in("steps", 0)
                .noise(0.4, 0.7)
                .help("2026-09-10 hand-held two, 2027-01-14 hand-held one, 2027-04-15 contact guard", 0.05)
                .prompt("tactile")
                .autumn("not yet without help")
                .winter("not yet without help")
                .spring("not yet without help");
        story("fh-060-floor", Writer.PT, "2027-06-30 21")
                .help("2027-06-30 contact guard", 0)
                .winter("not begun")
                .spring("not begun");
        story("fh-060-walk1", Writer.PT, "2026-10-15 19, 2027-06-11 24")
                .only("2026-10-15 2027-01-21 2027-05-13")
                .rhythm(1, 2)
                .in("m", 1)
                .noise(0.5, 0.8)
                .help("2026-10-15 contact guard", 0)
                .autumn("too few sessions")
                .winter("too few sessions")
                .spring("too few sessions");
    }

    private void thrumbley() {
        story("fh-011-stepoffs", Writer.PT, "2026-09-09 6, 2026-09-24 6, 2027-05-28 2.6, 2027-06-11 2.4")
                .rhythm(1, 3)
                .in("count", 0)
                .noise(0.5, 0.9)
                .help("2026-09-09 contact guard, 2026-10-07 stand-by", 0.08)
                .prompt("model");
        story("fh-011-floor", Writer.PT, "2026-09-09 9.5, 2027-06-11 6")
                .rhythm(2, 3)
                .in("s", 1)
                .noise(0.5, 0.7)
                .help("2026-09-09 minimal, 2026-12-02 hand-held one, 2027-03-10 contact guard", 0.1)
                .prompt("verbal")
                .autumn("not yet without help")
                .winter("not yet without help")
                .spring("not yet without help");
        story("fh-011-share", Writer.PT, "2026-09-09 20, 2026-09-24 20, 2027-03-05 66, 2027-06-11 92")
                .rhythm(2, 3)
                .in("%", 0)
                .noise(3, 6)
                .help("2026-09-09 stand-by", 0.04)
                .during("gym tape");
        story("fh-018-walk6", Writer.PT, "2026-09-10 352, 2027-06-11 338")
                .only("2026-09-17 2027-01-14 2027-05-20")
                .rhythm(1, 1)
                .in("m", 0)
                .noise(5, 0)
                .help("2026-09-10 supervision", 0);
        story("fh-018-tug", Writer.PT, "2026-09-10 9, 2027-06-11 9.9")
                .rhythm(2, 3)
                .in("s", 1)
                .noise(0.3, 0.4)
                .help("2026-09-10 supervision, 2026-11-12 stand-by, 2027-01-28 contact guard", 0.12);
        story("fh-018-stairs", Writer.AIDE, "2026-09-11 44, 2026-09-24 44, 2027-06-11 66")
                .on(DayOfWeek.FRIDAY)
                .rhythm(2, 2)
                .in("s", 0)
                .noise(1.5, 2)
                .help("2026-09-11 stand-by, 2027-01-08 contact guard", 0.02)
                .prompt("verbal")
                .winter("off course")
                .spring("off course");
        story("fh-022-closed", Writer.PT, "2026-10-07 1.6, 2027-06-11 3")
                .only("2026-12-02 2027-02-03 2027-04-21")
                .rhythm(1, 3)
                .in("s", 1)
                .noise(0.3, 0.5)
                .help("2026-10-07 stand-by", 0)
                .autumn("not begun")
                .winter("too few sessions")
                .spring("too few sessions");
        story("fh-022-speed", Writer.PT, "2026-09-09 0.71, 2026-09-24 0.71, 2027-06-11 0.97")
                .rhythm(2, 3)
                .noise(0.03, 0.04)
                .help("2026-09-09 supervision", 0);
        story("fh-031-stance", Writer.PT, "2027-01-20 1, 2027-01-27 1, 2027-06-11 3.3")
                .rhythm(1, 3)
                .in("s", 1)
                .noise(0.08, 0.25)
                .help("2027-01-20 stand-by", 0)
                .prompt("model")
                .spring("on course");
        story("fh-031-line", Writer.PT, "2027-01-20 2, 2027-01-27 2, 2027-06-11 5")
                .rhythm(1, 5)
                .in("steps", 0)
                .noise(0.4, 0.9)
                .help("2027-01-20 contact guard", 0.1)
                .prompt("model")
                .unable(0.04);
        story("fh-031-back", Writer.PT, "2027-05-10 1.5, 2027-06-11 2.5")
                .only("2027-05-12 2027-05-26 2027-06-09")
                .rhythm(1, 4)
                .in("steps", 0)
                .noise(0.3, 0.6)
                .help("2027-05-10 stand-by", 0)
                .prompt("model")
                .winter("not begun")
                .spring("too few sessions");
        story("fh-042-stance", Writer.AIDE, "2026-09-09 6, 2026-09-24 6, 2026-12-10 24, 2027-01-20 29, 2027-06-11 31")
                .on(DayOfWeek.WEDNESDAY)
                .rhythm(1, 3)
                .in("s", 1)
                .noise(1, 2)
                .cap(30)
                .help("2026-09-09 independent", 0)
                .winter("met")
                .spring("met");
        story("fh-042-side", Writer.PE, "2026-09-10 4, 2027-06-11 9")
                .on(DayOfWeek.THURSDAY)
                .rhythm(2, 5)
                .in("steps", 0)
                .noise(0.5, 0.8)
                .help("2026-09-10 stand-by", 0);
        story("fh-042-falls", Writer.PT, "2026-09-09 4, 2026-09-30 4, 2027-06-11 1.2")
                .rhythm(1, 1)
                .in("count", 0)
                .noise(0.7, 0.5)
                .help("2026-09-09 independent", 0)
                .during("a week of recess");
        story("fh-049-tandem", Writer.PT, "2026-09-10 2, 2026-09-24 2, 2027-06-11 7.6")
                .rhythm(1, 4)
                .in("steps", 0)
                .noise(0.4, 0.9)
                .of(10)
                .help("2026-09-10 supervision", 0.06)
                .prompt("verbal")
                .sometimes("shoes=off", 0.2);
        story("fh-049-reach", Writer.PT, "2026-09-10 8, 2026-09-24 8, 2027-06-11 13.2")
                .right("2026-09-10 9, 2026-09-24 9, 2027-06-11 15")
                .rhythm(3, 3)
                .in("cm", 1)
                .noise(0.5, 0.8)
                .help("2026-09-10 supervision", 0.03);
        story("fh-049-back", Writer.PT, "2026-09-10 4, 2026-09-24 4, 2026-12-10 6")
                .rhythm(1, 4)
                .in("steps", 0)
                .noise(0.4, 0.8)
                .help("2026-09-10 stand-by", 0.05)
                .winter("too few sessions")
                .spring("too few sessions");
        story("fh-056-closed", Writer.PT, "2026-09-14 2, 2026-09-24 2, 2027-06-11 4.9")
                .right("2026-09-14 2.4, 2026-09-24 2.4, 2027-06-11 5.6")
                .rhythm(3, 3)
                .in("s", 1)
                .noise(0.7, 1.1)
                .cap(20)
                .help("2026-09-14 stand-by", 0.08);
        story("fh-056-turns", Writer.PT, "2026-09-14 0.3, 2026-09-24 0.3, 2027-06-11 0.66")
                .rhythm(1, 1)
                .of(10)
                .help("2026-09-14 stand-by", 0)
                .prompt("verbal");
        story("fh-056-time", Writer.PTA, "2026-09-14 14, 2026-09-24 14, 2027-06-11 9.4")
                .rhythm(2, 3)
                .in("s", 1)
                .noise(0.5, 0.7)
                .help("2026-09-14 stand-by", 0)
                .blankHelp("2026-11-23 2027-03-05");
    }

    private void mirrowby() {
        story("fh-029-shuttle", Writer.PE, "2026-09-15 11, 2027-06-11 19")
                .only("2026-09-15 2027-01-26 2027-05-18")
                .rhythm(1, 1)
                .in("count", 0)
                .noise(0.5, 0)
                .help("2026-09-15 independent", 0);
        story("fh-029-hop", Writer.PE, "2026-09-08 40, 2026-09-24 40, 2027-03-05 65, 2027-04-15 75, 2027-06-11 80")
                .on(DayOfWeek.TUESDAY)
                .rhythm(1, 3)
                .in("cm", 0)
                .noise(1, 2)
                .help("2026-09-08 independent", 0)
                .winter("on course")
                .spring("met");
        story("fh-029-leap", Writer.PE, "2026-09-08 85, 2026-09-24 85, 2027-02-10 122, 2027-06-11 131")
                .on(DayOfWeek.TUESDAY)
                .rhythm(2, 3)
                .in("cm", 0)
                .noise(3, 4)
                .help("2026-09-08 independent", 0);
        story("fh-045-balance", Writer.PT, "2026-09-11 38, 2027-06-11 45")
                .only("2026-09-18 2027-01-22 2027-05-21")
                .rhythm(1, 1)
                .in("points", 0)
                .noise(0.5, 0)
                .help("2026-09-11 supervision", 0);
        story("fh-045-walk2", Writer.PTA, "2026-09-11 92, 2026-09-24 92, 2027-06-11 117")
                .rhythm(2, 1)
                .in("m", 1)
                .noise(2, 2)
                .help("2026-09-11 supervision", 0)
                .twiceADay();
        story("fh-045-line", Writer.PT, "2026-09-11 6, 2026-09-24 6, 2027-03-12 9.4")
                .rhythm(1, 5)
                .in("steps", 0)
                .noise(0.5, 1)
                .help("2026-09-11 stand-by", 0.06)
                .prompt("verbal")
                .winter("not met by its date")
                .spring("ended");
        story("fh-045-line-2", Writer.PT, "2027-03-15 9, 2027-06-11 11")
                .rhythm(1, 5)
                .in("steps", 0)
                .noise(0.5, 1)
                .help("2027-03-15 stand-by, 2027-05-07 supervision", 0.04)
                .prompt("verbal");
        story("fh-052-stairs", Writer.PTA, "2026-09-11 24, 2026-09-24 24, 2027-03-05 15, 2027-04-02 13, 2027-06-11 12")
                .rhythm(1, 2)
                .in("s", 1)
                .noise(0.3, 0.4)
                .help("2026-09-11 supervision", 0)
                .winter("on course")
                .spring("met");
        story("fh-052-jumps", Writer.PE, "2026-09-10 3, 2027-06-11 3.4")
                .on(DayOfWeek.THURSDAY)
                .rhythm(1, 5)
                .in("count", 0)
                .noise(0.4, 0.7)
                .help("2026-09-10 independent", 0)
                .winter("off course")
                .spring("not met by its date");
        story("fh-052-line", Writer.PE, "2026-09-11 5, 2026-09-24 5, 2027-06-11 11.5")
                .on(DayOfWeek.FRIDAY)
                .rhythm(2, 5)
                .in("steps", 0)
                .noise(0.6, 1)
                .help("2026-09-11 stand-by", 0.04);
    }

    private void home() {
        story("fh-052-line", Writer.HOME, "2026-12-05 8, 2027-06-11 12.5")
                .on(DayOfWeek.SATURDAY)
                .rhythm(2, 3)
                .in("steps", 0)
                .noise(0.6, 1)
                .help("2026-12-05 supervision", 0.05);
        story("fh-003-line", Writer.HOME, "2026-12-05 9, 2027-06-11 17")
                .on(DayOfWeek.SUNDAY)
                .rhythm(2, 3)
                .in("steps", 0)
                .noise(0.8, 1)
                .help("2026-12-05 stand-by", 0.05);
        story("fh-011-share", Writer.HOME, "2026-12-05 50, 2027-06-11 95")
                .on(DayOfWeek.SATURDAY)
                .rhythm(1, 2)
                .in("%", 0)
                .noise(4, 6)
                .help("2026-12-05 stand-by", 0.05);
    }

    List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (Story story : stories) {
            rows.addAll(new Teller(story).rows(attendance));
        }
        List<String> misses =
                List.of("2026-11-04 not tested", "2027-01-06 refused", "2027-02-10 absent", "2027-05-05 not tested");
        for (String miss : misses) {
            rows.add(new Row(
                    Writer.PT,
                    "fh-022",
                    LocalDate.parse(miss.substring(0, 10)),
                    "",
                    "single-leg-stance-closed",
                    "",
                    miss.substring(11),
                    "",
                    "",
                    "",
                    "",
                    "left",
                    "",
                    "",
                    "",
                    ""));
        }
        // A stable sort: within a day, tries stay in the order in which they were given.
        rows.sort(Comparator.comparing(Row::date).thenComparing(Row::student));
        return rows;
    }

    String expected() {
        StringBuilder text = new StringBuilder("goal,period,judgement\n");
        for (Story story : stories) {
            for (Map.Entry<Term, String> entry : story.expected.entrySet()) {
                text.append(story.goal.id()).append(',').append(entry.getKey().word()).append(',');
                text.append(entry.getValue()).append('\n');
            }
        }
        return text.toString();
    }
}

/** The field logs, each in its writer's form. */
final class Logs {
    private static final Map<String, String> SHORT_HELP = Map.of(
            "independent", "Ind",
            "modified independent", "Mod I",
            "supervision", "Sup",
            "stand-by", "SBA",
            "contact guard", "CGA",
            "hand-held one", "HHA",
            "hand-held two", "2HHA",
            "minimal", "Min A");
    private static final Map<String, String> SHORT_PROMPT =
            Map.of("none", "none", "verbal", "VC", "gestural", "gesture", "model", "modeled", "tactile", "TC");
    private static final DateTimeFormatter MONTH_FIRST = DateTimeFormatter.ofPattern("M/d/uuuu", Locale.ROOT);

    private Logs() {}

    static void write(Out out, List<Row> rows) {
        for (Term term : Term.values()) {
            out.csv("logs/" + term.file + "-pt.csv", ',', canonical(only(rows, term, Writer.PT)));
            out.csv("logs/" + term.file + "-pta.csv", ',', trade(term, only(rows, term, Writer.PTA)));
            out.csv("logs/" + term.file + "-aide.csv", ',', unitsInCells(only(rows, term, Writer.AIDE)));
            out.csv("logs/" + term.file + "-gym.tsv", '\t', gym(only(rows, term, Writer.PE)));
            if (term != Term.AUTUMN) {
                out.csv("logs/" + term.file + "-home.csv", ',', atHome(only(rows, term, Writer.HOME)));
            }
        }
    }

    private static List<Row> only(List<Row> rows, Term term, Writer writer) {
        return rows.stream()
                .filter(row -> row.writer() == writer && Term.of(row.date()) == term)
                .collect(Collectors.toList());
    }

    static List<List<String>> canonical(List<Row> rows) {
        List<List<String>> lines = new ArrayList<>();
        lines.add(List.of(("student,date,session,measure,trial,value,unit,of,help,prompt,side,protocol,use,place,observer,"
                        + "activity,note")
                .split(",")));
        for (Row row : rows) {
            lines.add(List.of(
                    row.student(),
                    row.date().toString(),
                    row.session(),
                    row.measure(),
                    row.trial(),
                    row.value(),
                    row.unit(),
                    row.of(),
                    row.help(),
                    row.prompt(),
                    row.side(),
                    row.protocol(),
                    row.use(),
                    "school",
                    row.writer().observer,
                    row.activity(),
                    row.note()));
        }
        return lines;
    }

    private static List<List<String>> trade(Term term, List<Row> rows) {
        List<List<String>> lines = new ArrayList<>();
        String skill = term == Term.SPRING ? "Measure" : "Skill";
        lines.add(List.of("Student", "Date", "Session", skill, "Try", "Score", "Unit", "Assist", "Cue", "Foot", "Notes"));
        for (Row row : rows) {
            lines.add(List.of(
                    row.student(),
                    MONTH_FIRST.format(row.date()),
                    row.session(),
                    row.measure(),
                    row.trial(),
                    row.value(),
                    row.unit(),
                    SHORT_HELP.getOrDefault(row.help(), ""),
                    SHORT_PROMPT.getOrDefault(row.prompt(), ""),
                    row.side().isEmpty() ? "" : row.side().substring(0, 1).toUpperCase(Locale.ROOT),
                    row.note()));
        }
        return lines;
    }

    private static List<List<String>> unitsInCells(List<Row> rows) {
        List<List<String>> lines = new ArrayList<>();
        lines.add(List.of("student", "date", "measure", "trial", "value", "help", "prompt", "side", "place", "observer", "note"));
        for (Row row : rows) {
            lines.add(List.of(
                    row.student(),
                    row.date().toString(),
                    row.measure(),
                    row.trial(),
                    cell(row),
                    row.help(),
                    row.prompt(),
                    row.side(),
                    "school",
                    row.writer().observer,
                    row.note()));
        }
        return lines;
    }

    /** A value with its unit, as people jot it. */
    private static String cell(Row row) {
        String value = row.value();
        if (!value.matches("[0-9.]+")) {
            return value;
        }
        double number = Double.parseDouble(value);
        switch (row.measure()) {
            case "jump-distance":
                long inches = (long) (number / 2.54 + 0.5);
                return inches / 12 + " ft " + inches % 12 + " in";
            case "stairs-time":
                long seconds = (long) number;
                return seconds < 60 ? seconds + " s" : seconds / 60 + ":" + (seconds % 60 < 10 ? "0" : "") + seconds % 60;
            case "walk-30s":
                return (long) (number / 0.3048 + 0.5) + " ft";
            case "success":
                return value + "/" + row.of();
            default:
                return value + " " + row.unit();
        }
    }

    private static List<List<String>> gym(List<Row> rows) {
        List<List<String>> lines = new ArrayList<>();
        lines.add(List.of(
                "student",
                "date",
                "measure",
                "trial",
                "value",
                "unit",
                "help",
                "prompt",
                "side",
                "place",
                "observer",
                "note"));
        for (Row row : rows) {
            lines.add(List.of(
                    row.student(),
                    row.date().toString(),
                    row.measure(),
                    row.trial(),
                    row.value(),
                    row.unit(),
                    row.help(),
                    row.prompt(),
                    row.side(),
                    "school",
                    row.writer().observer,
                    row.note()));
        }
        return lines;
    }

    private static List<List<String>> atHome(List<Row> rows) {
        List<List<String>> lines = new ArrayList<>();
        lines.add(List.of("date", "student", "measure", "value", "unit", "help", "prompt", "place", "observer", "note"));
        for (Row row : rows) {
            lines.add(List.of(
                    row.date().toString(),
                    row.student(),
                    row.measure(),
                    row.value(),
                    row.unit(),
                    row.help(),
                    row.prompt(),
                    "home",
                    row.writer().observer,
                    row.note()));
        }
        return lines;
    }
}

/**
 * A second person's counts of some winter sessions of the therapist, for agreement. Kept apart from the logs: taken as
 * ordinary rows they would count twice.
 */
final class SecondObserver {
    private SecondObserver() {}

    static void write(Out out, List<Row> rows) {
        Chance chance = new Chance("second observer");
        Predicate<Row> watched = row -> row.writer() == Writer.PT
                && Term.of(row.date()) == Term.WINTER
                && row.date().getDayOfMonth() <= 12
                && row.use().isEmpty()
                && row.unit().equals("steps")
                && row.measure().equals("line-steps")
                && row.value().matches("[0-9]+");
        List<List<String>> lines = new ArrayList<>();
        lines.add(List.of("student", "date", "measure", "trial", "value", "unit", "help", "prompt", "place", "observer"));
        for (Row row : rows) {
            if (watched.test(row)) {
                int value = Integer.parseInt(row.value());
                int other = chance.happens(0.8) ? value : Math.max(0, value + (chance.happens(0.5) ? 1 : -1));
                lines.add(List.of(
                        row.student(),
                        row.date().toString(),
                        row.measure(),
                        row.trial(),
                        Integer.toString(other),
                        row.unit(),
                        row.help(),
                        row.prompt(),
                        "school",
                        "pta-1"));
            }
        }
        out.csv("second-observer/2027-winter-pta.csv", ',', lines);
    }
}

/**
 * A page of an aide with every kind of slip, and good rows between them. In file order: what is wrong, and the code.
 *
 * <pre>
 * good row (note with quotes, commas, a line break)          taken
 * good row (note that begins like a formula)                 taken
 * date "2027-02-3x"                                          DATE_UNREADABLE
 * date 2027-02-30                                            DATE_IMPOSSIBLE
 * date blank                                                 DATE_MISSING
 * date 2028-02-09                                            DATE_AHEAD
 * measure "single-leg-stence"                                MEASURE_UNKNOWN (near single-leg-stance)
 * measure blank                                              MEASURE_MISSING
 * stance in cm                                               UNIT_OF_ANOTHER_KIND
 * stance in "secs-ish"                                       UNIT_UNKNOWN
 * stance of 950 s                                            VALUE_IMPOSSIBLE
 * value "about ten"                                          VALUE_UNREADABLE
 * value blank                                                VALUE_MISSING
 * student fh-024 (near fh-042)                               STUDENT_UNKNOWN
 * student blank                                              STUDENT_MISSING
 * 5 of 4                                                     OF_TOO_SMALL
 * help "a bit"                                               HELP_UNKNOWN
 * prompt "shouted"                                           PROMPT_UNKNOWN
 * side "front"                                               SIDE_UNKNOWN
 * place "moon"                                               PLACE_UNKNOWN
 * use "maybe"                                                USE_UNKNOWN
 * trial "second"                                             TRIAL_UNREADABLE
 * protocol "shoes"                                           PROTOCOL_UNREADABLE
 * protocol "weather=fine"                                    PROTOCOL_KEY_UNKNOWN
 * a second row with trial number 1 and another value         DUPLICATE or CONFLICT
 * help blank                                                 HELP_BLANK, taken
 * side blank                                                 SIDE_MISSING, taken
 * one cell too many                                          CELLS_TOO_MANY
 * two rows that the winter log of the aide has already       known
 * </pre>
 *
 * Of 31 rows 24 are set aside, 5 are taken, 2 are known already. The rows taken are of measures without a goal of that
 * student, so that they change no judgement.
 */
final class Errors {
    private static final String HEADER = "student,date,measure,trial,value,unit,of,help,prompt,side,protocol,use,place,observer,note";

    private Errors() {}

    static void write(Out out, List<Row> rows) {
        StringBuilder text = new StringBuilder(HEADER).append('\n');
        text.append(
                """
                fh-003,2027-02-08,tandem-stance,1,4.1,s,,stand-by,verbal,left,,,school,aide-2,"said ""one more"", then sat, \
                looked up
                and tried again"
                fh-003,2027-02-08,tandem-stance,2,4.6,s,,stand-by,none,left,,,school,aide-2,"=HYPERLINK(""x"",""see"")"
                fh-003,2027-02-3x,tandem-stance,1,3.9,s,,stand-by,none,left,,,school,aide-2,
                fh-003,2027-02-30,tandem-stance,1,4.4,s,,stand-by,none,left,,,school,aide-2,
                fh-003,,tandem-stance,1,4.4,s,,stand-by,none,left,,,school,aide-2,
                fh-003,2028-02-09,tandem-stance,1,5,s,,stand-by,none,left,,,school,aide-2,
                fh-042,2027-02-10,single-leg-stence,1,8.2,s,,independent,none,right,,,school,aide-2,
                fh-042,2027-02-10,,1,8.2,s,,independent,none,right,,,school,aide-2,
                fh-042,2027-02-10,tandem-stance,1,31,cm,,independent,none,right,,,school,aide-2,
                fh-042,2027-02-10,tandem-stance,2,9.5,secs-ish,,independent,none,right,,,school,aide-2,
                fh-042,2027-02-10,tandem-stance,3,950,s,,independent,none,right,,,school,aide-2,
                fh-042,2027-02-10,tandem-stance,4,about ten,s,,independent,none,right,,,school,aide-2,
                fh-042,2027-02-10,tandem-stance,5,,s,,independent,none,right,,,school,aide-2,
                fh-024,2027-02-10,tandem-stance,1,12,s,,independent,none,right,,,school,aide-2,
                ,2027-02-10,tandem-stance,1,12,s,,independent,none,right,,,school,aide-2,
                fh-007,2027-02-09,success,1,5,,4,independent,none,,,,school,aide-2,
                fh-007,2027-02-09,back-steps,1,6,steps,,a bit,none,,,,school,aide-2,
                fh-007,2027-02-09,back-steps,2,6,steps,,independent,shouted,,,,school,aide-2,
                fh-007,2027-02-09,tandem-stance,1,6.5,s,,independent,none,front,,,school,aide-2,
                fh-007,2027-02-09,back-steps,3,7,steps,,independent,none,,,,moon,aide-2,
                fh-007,2027-02-09,back-steps,4,7,steps,,independent,none,,,maybe,school,aide-2,
                fh-007,2027-02-09,back-steps,second,7,steps,,independent,none,,,,school,aide-2,
                fh-007,2027-02-09,back-steps,6,7,steps,,independent,none,,shoes,,school,aide-2,
                fh-007,2027-02-09,back-steps,7,7,steps,,independent,none,,weather=fine,,school,aide-2,
                fh-007,2027-02-16,back-steps,1,8,steps,,independent,none,,,,school,aide-2,
                fh-007,2027-02-16,back-steps,1,5,steps,,independent,none,,,,school,aide-2,
                fh-007,2027-02-16,back-steps,2,8,steps,,,none,,,,school,aide-2,
                fh-007,2027-02-16,tandem-stance,1,7.1,s,,independent,none,,,,school,aide-2,
                fh-007,2027-02-16,back-steps,3,8,steps,,independent,none,,,,school,aide-2,,left over
                """);
        rows.stream()
                .filter(row -> row.writer() == Writer.AIDE
                        && row.measure().equals("single-leg-stance")
                        && row.date().equals(LocalDate.of(2027, 2, 17)))
                .limit(2)
                .forEach(row -> text.append(String.join(
                                ",",
                                row.student(),
                                row.date().toString(),
                                row.measure(),
                                row.trial(),
                                row.value(),
                                row.unit(),
                                "",
                                row.help(),
                                row.prompt(),
                                row.side(),
                                "",
                                "",
                                "school",
                                row.writer().observer,
                                ""))
                        .append('\n'));
        out.file("logs/2027-02-aide-errors.csv", text.toString());
    }
}

/** Two forms as people keep them: a sheet with two heading rows, and a workbook with a sheet a student. */
final class Forms {
    private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>";
    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/";
    private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

    private Forms() {}

    static void write(Out out) {
        out.csv("forms/2026-autumn-screening.csv", ',', screening());
        out.zip("forms/2026-autumn-balance.xlsx", balance());
    }

    /** Titles, two heading rows, US dates, feet and inches, a row of means. */
    private static List<List<String>> screening() {
        return List.of(
                List.of("Fallowhythe - autumn screening", "", "", "", "", "", "", ""),
                List.of("Where: gym", "", "", "", "", "", "", ""),
                List.of("", "", "", "Standing long jump", "", "Tandem stance (sec)", "", ""),
                List.of("Student", "Date", "Assist", "Try 1", "Try 2", "L", "R", "Notes"),
                List.of("fh-018", "9/15/2026", "SBA", "2 ft 4 in", "2'7\"", "6", "7.5", ""),
                List.of("fh-022", "9/15/2026", "SBA", "1 ft 11 in", "unable", "3", "", "tired, stopped"),
                List.of("fh-038", "9/16/2026", "CGA", "1'2\"", "1'4\"", "2.5", "2", ""),
                List.of("fh-052", "9/16/2026", "SBA", "3 ft", "3'1\"", "11", "9", ""),
                List.of("", "", "", "", "", "", "", ""),
                List.of("Average", "", "", "", "", "5.6", "6.2", ""));
    }

    private static Map<String, String> balance() {
        Map<String, List<List<String>>> sheets = new LinkedHashMap<>();
        sheets.put("fh-003", sheet("2026-10-06", "4.2", "5.1", "2026-10-20", "5", "6.3"));
        sheets.put("fh-007", sheet("2026-10-06", "9.5", "8", "2026-10-20", "10.2", "9.4"));
        sheets.put("fh-011", sheet("2026-10-07", "1.5", "2", "2026-10-21", "2.2", "DNT"));
        sheets.put("How to", List.of(List.of(words("One row a day; stop the watch when a foot moves."))));
        return workbook(sheets);
    }

    private static List<List<String>> sheet(
            String first, String left, String right, String second, String left2, String right2) {
        return List.of(
                List.of(words("Heel to toe stand, one sheet a student")),
                List.of(),
                List.of(words("Date"), words("Tandem stance L (s)"), words("Tandem stance R (s)"), words("Help")),
                List.of(day(first), value(left), value(right), words("SBA")),
                List.of(day(second), value(left2), value(right2), words("SBA")),
                List.of(words("Mean"), "<c @><f>AVERAGE(B4:B5)</f><v>" + mean(left, left2) + "</v></c>"));
    }

    private static String mean(String one, String other) {
        return new java.math.BigDecimal(one)
                .add(new java.math.BigDecimal(other))
                .divide(java.math.BigDecimal.valueOf(2))
                .toPlainString();
    }

    private static String words(String text) {
        return "<c @ t=\"inlineStr\"><is><t>" + text + "</t></is></c>";
    }

    private static String day(String iso) {
        return "<c @ s=\"1\"><v>" + DAY_ZERO.until(LocalDate.parse(iso), ChronoUnit.DAYS) + "</v></c>";
    }

    private static String value(String text) {
        return Character.isDigit(text.charAt(0)) ? "<c @><v>" + text + "</v></c>" : words(text);
    }

    private static Map<String, String> workbook(Map<String, List<List<String>>> sheets) {
        Map<String, String> parts = new LinkedHashMap<>();
        String type = "ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.";
        StringBuilder types = new StringBuilder(HEAD + "<Types xmlns=\"" + PACKAGE + "content-types\">"
                + "<Default Extension=\"xml\" ContentType=\"application/xml\"/><Default Extension=\"rels\""
                + " ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
                + "<Override PartName=\"/xl/workbook.xml\" " + type + "sheet.main+xml\"/>"
                + "<Override PartName=\"/xl/styles.xml\" " + type + "styles+xml\"/>");
        StringBuilder book =
                new StringBuilder(HEAD + "<workbook xmlns=\"" + MAIN + "\" xmlns:r=\"" + OFFICE + "\"><sheets>");
        StringBuilder links = new StringBuilder(HEAD + "<Relationships xmlns=\"" + PACKAGE + "relationships\">"
                + "<Relationship Id=\"rs\" Type=\"" + OFFICE + "/styles\" Target=\"styles.xml\"/>");
        int number = 0;
        for (Map.Entry<String, List<List<String>>> sheet : sheets.entrySet()) {
            number++;
            types.append("<Override PartName=\"/xl/worksheets/sheet" + number + ".xml\" " + type + "worksheet+xml\"/>");
            book.append("<sheet name=\"" + sheet.getKey() + "\" sheetId=\"" + number + "\" r:id=\"r" + number + "\"/>");
            links.append("<Relationship Id=\"r" + number + "\" Type=\"" + OFFICE
                    + "/worksheet\" Target=\"worksheets/sheet" + number + ".xml\"/>");
        }
        parts.put("[Content_Types].xml", types + "</Types>");
        parts.put(
                "_rels/.rels",
                HEAD + "<Relationships xmlns=\"" + PACKAGE + "relationships\"><Relationship Id=\"r0\" Type=\"" + OFFICE
                        + "/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>");
        parts.put("xl/workbook.xml", book + "</sheets></workbook>");
        parts.put("xl/_rels/workbook.xml.rels", links + "</Relationships>");
        // Spreadsheets expect these tables even where a book hardly uses them.
        parts.put(
                "xl/styles.xml",
                HEAD + "<styleSheet xmlns=\"" + MAIN + "\"><fonts count=\"1\"><font/></fonts><fills count=\"1\"><fill/></fills>"
                        + "<borders count=\"1\"><border/></borders><cellStyleXfs count=\"1\"><xf/></cellStyleXfs>"
                        + "<cellXfs count=\"2\"><xf numFmtId=\"0\"/><xf numFmtId=\"14\" applyNumberFormat=\"1\"/></cellXfs>"
                        + "</styleSheet>");
        number = 0;
        for (List<List<String>> rows : sheets.values()) {
            number++;
            StringBuilder xml = new StringBuilder(HEAD + "<worksheet xmlns=\"" + MAIN + "\"><sheetData>");
            for (int row = 1; row <= rows.size(); row++) {
                xml.append("<row r=\"" + row + "\">");
                List<String> cells = rows.get(row - 1);
                for (int column = 0; column < cells.size(); column++) {
                    String place = (char) ('A' + column) + Integer.toString(row);
                    xml.append(cells.get(column).replace("<c @", "<c r=\"" + place + "\""));
                }
                xml.append("</row>");
            }
            parts.put("xl/worksheets/sheet" + number + ".xml", xml + "</sheetData></worksheet>");
        }
        return parts;
    }
}

/** What a walkway, a chalk line and a plate give of fh-003, whose left step is the longer and the later one. */
final class Recordings {
    private static final int CONTACTS = 27;
    private static final int PRINTS = 7;
    private static final int SAMPLES = 500;
    private static final double INTERVAL = 0.04;

    private Recordings() {}

    static void write(Out out) {
        out.csv("recordings/fh-003-walks.csv", ',', walks());
        out.csv("recordings/fh-003-prints.csv", ',', prints());
        out.csv("recordings/fh-003-stance.csv", ',', stance());
        out.csv(
                "recordings/manifest.csv",
                ',',
                List.of(
                        List.of(
                                "file",
                                "kind",
                                "student",
                                "date",
                                "trial",
                                "protocol",
                                "rate_hz",
                                "filter",
                                "help",
                                "place"),
                        line("walks", "footfalls", "2027-03-02", "pace=comfortable;shoes=on", "", ""),
                        line("prints", "footfalls", "2027-03-09", "pace=comfortable;shoes=on;sensor=chalk", "", ""),
                        line(
                                "stance",
                                "sway",
                                "2027-03-02",
                                "stance=feet together;eyes=open;surface=floor",
                                "25",
                                "none")));
    }

    private static List<String> line(
            String what, String kind, String date, String protocol, String rate, String filter) {
        String file = "fh-003-" + what + ".csv";
        return List.of(file, kind, "fh-003", date, "1", protocol, rate, filter, "independent", "school");
    }

    /** Two walks of 27 contacts with their places, and each off of the other foot a tenth of a second later. */
    private static List<List<String>> walks() {
        List<List<String>> lines = new ArrayList<>();
        lines.add(List.of("walk", "time_s", "side", "event", "x_m", "y_m"));
        for (int walk = 1; walk <= 2; walk++) {
            Chance chance = new Chance("walk " + walk);
            double time = 0;
            double place = 0;
            for (int contact = 0; contact < CONTACTS; contact++) {
                boolean right = contact % 2 == 0;
                if (contact > 0) {
                    time += (right ? 0.455 : 0.480) + 0.014 * chance.normal();
                    place += (right ? 0.485 : 0.494) + 0.009 * chance.normal();
                }
                double across = (right ? -0.049 : 0.048) + 0.004 * chance.normal();
                double off = time + 0.101 + 0.006 * chance.normal();
                String foot = right ? "right" : "left";
                String other = right ? "left" : "right";
                lines.add(List.of("" + walk, fixed(time, 3), foot, "contact", fixed(place, 3), fixed(across, 3)));
                lines.add(List.of("" + walk, fixed(off, 3), other, "off", "", ""));
            }
        }
        return lines;
    }

    /** Chalk prints, measured with a tape: no times. */
    private static List<List<String>> prints() {
        List<List<String>> lines = new ArrayList<>();
        lines.add(List.of("walk", "side", "x_cm", "y_cm"));
        Chance chance = new Chance("prints");
        double place = 0.9;
        for (int print = 0; print < PRINTS; print++) {
            boolean right = print % 2 == 0;
            double across = (right ? -4.8 : 5.1) + 0.6 * chance.normal();
            lines.add(List.of("chalk", right ? "right" : "left", fixed(place, 1), fixed(across, 1)));
            place += (right ? 48.6 : 47.4) + 1.4 * chance.normal();
        }
        return lines;
    }

    /** Twenty seconds on a plate: pushed at random, slowed, and drawn back to the middle. */
    private static List<List<String>> stance() {
        List<List<String>> lines = new ArrayList<>();
        lines.add(List.of("time_s", "ml_mm", "ap_mm"));
        Chance chance = new Chance("stance");
        double[] middle = {12, -29};
        double[] push = {0.10, 0.15};
        double[] place = middle.clone();
        double[] speed = {0, 0};
        for (int sample = 0; sample < SAMPLES; sample++) {
            lines.add(List.of(fixed(sample * INTERVAL, 2), fixed(place[0], 2), fixed(place[1], 2)));
            for (int way = 0; way < 2; way++) {
                speed[way] = 0.92 * speed[way] + 0.004 * (middle[way] - place[way]) + push[way] * chance.normal();
                place[way] += speed[way];
            }
        }
        return lines;
    }

    /** With so many decimals, by whole numbers. */
    private static String fixed(double value, int decimals) {
        long scale = 1;
        for (int i = 0; i < decimals; i++) {
            scale *= 10;
        }
        long whole = Math.round(value * scale);
        String fraction = Long.toString(Math.abs(whole) % scale);
        String zeros = "0".repeat(decimals - fraction.length());
        return (whole < 0 ? "-" : "") + Math.abs(whole) / scale + "." + zeros + fraction;
    }
}

/** Text files of UTF-8 with line feeds. */
record Out(Path folder) {
    void csv(String name, char separator, List<List<String>> lines) {
        StringBuilder text = new StringBuilder();
        for (List<String> line : lines) {
            text.append(line.stream().map(cell -> quoted(cell, separator)).collect(Collectors.joining("" + separator)));
            text.append('\n');
        }
        file(name, text.toString());
    }

    private static String quoted(String cell, char separator) {
        boolean needed = cell.indexOf(separator) >= 0 || cell.indexOf('"') >= 0 || cell.indexOf('\n') >= 0;
        return needed ? "\"" + cell.replace("\"", "\"\"") + "\"" : cell;
    }

    /** A workbook of stored parts, so that the bytes are the same on every machine. */
    void zip(String name, Map<String, String> parts) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, String> part : parts.entrySet()) {
                byte[] content = part.getValue().getBytes(StandardCharsets.UTF_8);
                CRC32 sum = new CRC32();
                sum.update(content);
                ZipEntry entry = new ZipEntry(part.getKey());
                entry.setMethod(ZipEntry.STORED);
                entry.setSize(content.length);
                entry.setCrc(sum.getValue());
                entry.setTimeLocal(LocalDate.of(2026, 1, 1).atStartOfDay());
                zip.putNextEntry(entry);
                zip.write(content);
                zip.closeEntry();
            }
        } catch (IOException problem) {
            throw new UncheckedIOException("cannot make " + name, problem);
        }
        try {
            Path file = folder.resolve(name);
            Files.createDirectories(file.getParent());
            Files.write(file, bytes.toByteArray());
        } catch (IOException problem) {
            throw new UncheckedIOException("cannot write " + name, problem);
        }
    }

    void file(String name, String text) {
        try {
            Path file = folder.resolve(name);
            Files.createDirectories(file.getParent());
            Files.writeString(file, text);
        } catch (IOException problem) {
            throw new UncheckedIOException("cannot write " + name, problem);
        }
    }
}
