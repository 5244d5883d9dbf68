package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stridetally.cli.Csv.cell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import stridetally.cli.SampleLogbook.Term;

/**
 * The tables of a school year of field logs, through the command line. The expected judgements are those that the writer of
 * the samples meant each child's story to show; the columns are those of the design, typed here once more by hand.
 */
final class SamplesTest {
    private static final String SESSION_COLUMNS = "source,student,goal,measure,side,protocol,place,date,session,trials,"
            + "counted,value,unit,best,mean,median,last,sd,independent_share,permitted_share,most_help,met,streak,reason";
    private static final String TRIAL_COLUMNS =
            "source,student,date,session,measure,trial,value,unit,of,help,prompt,side,protocol,use,place,observer,"
                    + "activity,note,goal,counted,meets,why,entry,line,at,as_written";
    private static final String GOAL_COLUMNS = "student,goal,measure,side,baseline,target,due,latest,latest_date,"
            + "share_of_way,met_on,streak,level,weight,reason";
    private static final String TREND_COLUMNS =
            "source,student,goal,measure,side,protocol,place,unit,sessions,first,last,baseline,target,due,latest,"
                    + "slope_per_week,slope_se,slope_low95,slope_high95,intercept,r_squared,robust_slope,robust_low95,"
                    + "robust_high95,kendall_s,kendall_tau,kendall_p,lag1,needed_per_week,aim_today,latest_minus_aim,"
                    + "forecast,forecast_low80,forecast_high80,chance_line,chance,judgement,reason,beyond_error,"
                    + "error_limit95,error_df,error_source";

    /** Cells that are text, or that are rightly blank: a day not met yet, a weight or side that nobody wrote. */
    private static final Set<String> NO_FIGURES = Set.of(
            "source",
            "student",
            "goal",
            "measure",
            "side",
            "protocol",
            "place",
            "unit",
            "date",
            "session",
            "due",
            "met",
            "met_on",
            "weight",
            "most_help",
            "judgement",
            "reason",
            "latest_date",
            "first",
            "last_date");

    private static final List<List<String>> COMMANDS = List.of(
            List.of("score", "--by", "session"),
            List.of("score", "--by", "trial"),
            List.of("score", "--by", "goal"),
            List.of("score", "--by", "period"),
            List.of("score", "--by", "student"),
            List.of("trend"));

    @TempDir
    private static Path folder;

    private static SampleLogbook book = new SampleLogbook(Path.of(""));

    @BeforeAll
    static void bringTheYear() throws IOException {
        book = SampleLogbook.ofTheYear(folder.resolve("logbook"));
    }

    @TestFactory
    Stream<DynamicTest> judgesAsTheStoryOfEachGoalMeans() throws IOException {
        Csv expected = Csv.of(Files.readString(SampleLogbook.SAMPLES.resolve("expected-judgements.csv")));
        assertTrue(expected.rows().size() > 40, "the list of expected judgements has been read");
        return Stream.of(Term.values()).flatMap(term -> {
            Csv trend = book.table("trend", "--as-of", term.lastDay);
            return expected.where("period", term.period).stream()
                    .map(row -> DynamicTest.dynamicTest(term.period + " " + cell(row, "goal"), () -> {
                        List<String> judgements = trend.where("goal", cell(row, "goal")).stream()
                                .map(one -> cell(one, "judgement"))
                                .distinct()
                                .toList();
                        assertEquals(List.of(cell(row, "judgement")), judgements);
                    }));
        });
    }

    @Test
    void theTablesHaveTheirColumnsInOrder() {
        assertEquals(SESSION_COLUMNS, columns("score", "--by", "session"));
        assertEquals(SESSION_COLUMNS, columns("score"));
        assertEquals(TRIAL_COLUMNS, columns("score", "--by", "trial"));
        assertEquals(GOAL_COLUMNS, columns("score", "--by", "goal"));
        assertEquals(TREND_COLUMNS, columns("trend"));
    }

    /** No number that is none, no figure missing without its reason, and no more tries counted than there were. */
    @TestFactory
    Stream<DynamicTest> everyTableOfEveryTermIsSound() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Term term : Term.values()) {
            for (List<String> command : COMMANDS) {
                String name = String.join(" ", command);
                tests.add(DynamicTest.dynamicTest(name + " " + term.period, () -> {
                    Csv table = table(command, term);
                    assertFalse(table.rows().isEmpty(), name);
                    table.rows().forEach(row -> check(name, row));
                }));
            }
        }
        return tests.stream();
    }

    private static void check(String name, Map<String, String> row) {
        List<String> empty = new ArrayList<>();
        row.forEach((column, text) -> {
            for (String slip : List.of("NaN", "Infinity", "null", "Optional")) {
                assertFalse(text.contains(slip), () -> column + ": " + text);
            }
            if (text.isEmpty() && isFigure(name, column, row)) {
                empty.add(column);
            }
        });
        boolean unexplained =
                cell(row, row.containsKey("reason") ? "reason" : "why").isBlank();
        assertFalse(!empty.isEmpty() && unexplained, () -> empty + " of " + row);
        if (row.containsKey("counted") && row.containsKey("trials")) {
            assertTrue(Csv.number(row, "counted") <= Csv.number(row, "trials"), row::toString);
        }
    }

    /** Counted by hand in the logs: each row of each log, without its heading row, and the two that are there already. */
    @Test
    void everyTryOfTheLogsIsThereOnce() throws IOException {
        long rows = 0;
        for (Term term : Term.values()) {
            for (Path log : SampleLogbook.list(SampleLogbook.LOGS, term.logs)) {
                rows += Files.readAllLines(log).size() - 1;
            }
        }
        Csv trials = book.table("score", "--by", "trial", "--as-of", Term.SPRING.lastDay);
        List<Map<String, String>> ofTheErrors = trials.rows().stream()
                .filter(row -> cell(row, "at").startsWith("2027-02-aide-errors.csv"))
                .toList();
        assertEquals(5, ofTheErrors.size(), "31 rows, 24 of them set aside and 2 known already");
        long derived = trials.rows().stream()
                .filter(row -> cell(row, "at").equals("derived"))
                .count();
        assertEquals(rows, trials.rows().size() - ofTheErrors.size() - derived);
    }

    @Test
    void showingOneStudentChangesNoNumber() {
        for (List<String> command : COMMANDS) {
            Csv all = table(command, Term.WINTER);
            List<String> more = new ArrayList<>(command);
            more.addAll(List.of("--student", "fh-052", "--student", "fh-003"));
            List<Map<String, String>> two = all.rows().stream()
                    .filter(row -> Set.of("fh-003", "fh-052").contains(cell(row, "student")))
                    .toList();
            assertFalse(two.isEmpty(), command::toString);
            assertEquals(two, table(more, Term.WINTER).rows(), command::toString);
        }
    }

    @Test
    void aStudentWhomNobodyKnowsIsSaid() {
        Run run = book.run("trend", "--student", "fh-03", "--as-of", Term.WINTER.lastDay);
        assertEquals(List.of(), Csv.of(run.out()).rows());
        assertTrue(run.err().contains("nothing is known of a student with the code fh-03\n"), run.err());
    }

    @Test
    void theSameBytesTwice() {
        for (String command : List.of("score", "trend")) {
            String[] more = {"--as-of", Term.SPRING.lastDay, "--format", command.equals("score") ? "markdown" : "json"};
            assertEquals(book.run(command, more), book.run(command, more));
        }
    }

    /** The codes on a page are all of the roster. */
    @Test
    void noTryIsOfAStudentOutsideTheRoster() throws IOException {
        Set<String> roster =
                Csv.of(Files.readString(SampleLogbook.SAMPLES.resolve("caseload/students.csv"))).rows().stream()
                        .map(row -> cell(row, "student"))
                        .collect(Collectors.toSet());
        book.table("score", "--as-of", Term.SPRING.lastDay)
                .rows()
                .forEach(row -> assertTrue(roster.contains(cell(row, "student")), row::toString));
    }

    private static boolean isFigure(String table, String column, Map<String, String> row) {
        if (table.startsWith("score --by trial")) {
            return column.equals("meets");
        }
        if (column.equals("streak") && cell(row, "goal").isEmpty()) {
            return false;
        }
        if (column.equals("last") && table.startsWith("trend")) {
            return false;
        }
        return !NO_FIGURES.contains(column) && !column.equals("unrated");
    }

    private static Csv table(List<String> command, Term term) {
        List<String> more = new ArrayList<>(command.subList(1, command.size()));
        more.addAll(List.of("--as-of", term.lastDay));
        return book.table(command.get(0), more.toArray(String[]::new));
    }

    private static String columns(String... command) {
        return String.join(",", table(List.of(command), Term.WINTER).headings());
    }
}
