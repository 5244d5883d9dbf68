package stridetally.scoring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import stridetally.ingest.BulkLog;
import stridetally.ingest.BulkWatch;
import stridetally.ingest.LogBytes;
import stridetally.ingest.LogFile;
import stridetally.ingest.MadeLog;
import stridetally.ingest.SeriesNumbers;
import stridetally.ingest.StudentRange;
import stridetally.ingest.TrialFeed;
import stridetally.ingest.UsualFile;
import stridetally.ingest.WhichReader;
import stridetally.model.Settings;
import stridetally.problem.InputRefused;
import stridetally.problem.ProblemTally;
import stridetally.problem.Severity;

/**
 * The fast reader and the usual one on random and damaged logs: whatever the fast one takes must be the same to the last
 * try, problem and place. The usual reader is the authority, so its answer is the expected one.
 */
final class BothReadersTest {
    private static final LocalDate AS_OF = LocalDate.of(2025, 3, 1);
    private static final int LOGS = 1_500;

    private static final String[] HEADINGS = {
        "student,date,activity,measure,trial,value,unit,help,observer,note",
        "source,student,date,session,measure,side,trial,value,help,prompt,place,note",
        "date,student,measure,value,note",
        "note,protocol,source,session,help,student,date,measure,side,trial,value",
        "Student Code,Date,Measure,Try,Value,Unit,Of,Help,Side,Protocol,Use,Place,Comments"
    };

    private static final String[] NOTES = {
        "", "", "tired", "\"busy, moved\"", "\"said \"\"no\"\"\"", "\"two\nlines\"", "\"two\r\nlines\"", "caf\u00e9",
        "\"\u65e5\u672c, x\"", "5\" tall", "\"closed\" ", "\"closed\"x", "\"open", "\ud83d\ude00", "=1+1", "tab\there"
    };

    private final SplittableRandom random = new SplittableRandom(20261125);
    private String[] measures = {};
    private String[] students = {};

    @Test
    void giveTheSameOfEveryLog() {
        int fast = 0;
        for (int log = 0; log < LOGS; log++) {
            byte[] bytes = log % 2 == 0 ? written() : damaged(written());
            for (int parts = 1; parts <= 4; parts += 3) {
                Optional<String> bulk = bulk(bytes, parts);
                if (bulk.isPresent()) {
                    fast++;
                    assertEquals(usual(bytes), bulk.get(), () -> new String(bytes, StandardCharsets.UTF_8));
                }
            }
        }
        // Common practice, no source: a test of a fast path that is never taken would prove nothing.
        assertTrue(fast > LOGS / 2, "taken by the fast reader: " + fast);
    }

    @Test
    void giveTheSameOfEveryCaseload() {
        int fast = 0;
        for (int log = 0; log < LOGS; log++) {
            byte[] made = MadeLog.of(random, log % 3 == 0 ? 2_000 : 200);
            byte[] bytes = log % 4 == 0 ? damaged(made) : made;
            for (int parts = 1; parts <= 3; parts += 2) {
                Optional<String> bulk = bulk(bytes, parts);
                if (bulk.isPresent()) {
                    fast++;
                    assertEquals(usual(bytes), bulk.get(), () -> new String(bytes, StandardCharsets.UTF_8));
                }
            }
        }
        // Common practice, no source: see above.
        assertTrue(fast > LOGS, "taken by the fast reader: " + fast);
    }

    @Test
    void manyPartsGuessWronglyWithinQuotes() {
        String row = "S1,2025-01-07,line-steps,4,\"a\n\nS2,2025-01-08,line-steps,5,x\n\"\n";
        byte[] bytes = ("student,date,measure,value,note\nS1,2025-01-06,line-steps,3,\n" + row.repeat(50))
                .getBytes(StandardCharsets.UTF_8);
        Optional<String> bulk = bulk(bytes, 7);
        assertTrue(bulk.isPresent());
        assertEquals(usual(bytes), bulk.get());
        // 51 rows by hand: one plain, fifty that each hold four lines.
        assertTrue(bulk.get().startsWith("rows 51 "), bulk.get());
    }

    @Test
    void whatOneCellDecidesForTheWholeFileIsLeftToTheOther() {
        String head = "student,date,measure,value\n";
        String plain = "S1,2025-01-06,line-steps,3\n".repeat(20);
        assertTrue(bulk((head + plain).getBytes(StandardCharsets.UTF_8), 1).isPresent());
        for (String odd : List.of(
                "S1,3/4/2025,line-steps,3\n",
                "S1,13/4/2025,line-steps,3\n",
                "S1,2025-01-06,single-leg-stance,\"2,5\"\n",
                "\nstudent,date,measure,score\n",
                "S1,2025-01-06,line-steps,3\0\n")) {
            assertTrue(
                    bulk((head + plain + odd).getBytes(StandardCharsets.UTF_8), 1)
                            .isEmpty(),
                    odd);
        }
        byte[] western = (head + plain + "S\u00e9,2025-01-06,line-steps,3\n").getBytes(StandardCharsets.ISO_8859_1);
        assertTrue(bulk(western, 1).isEmpty());
    }

    @Test
    void aPointInARowOfTotalsProvesNoDecimalPoint() {
        String rows = "S1,2025-01-06,single-leg-stance,3\n".repeat(20);
        byte[] bytes = ("student,date,measure,value\n" + rows
                        + "S1,2025-01-07,single-leg-stance,\"2,5\"\nTotal,,single-leg-stance,62.5\n")
                .getBytes(StandardCharsets.UTF_8);
        assertTrue(bulk(bytes, 1).isEmpty());
    }

    @Test
    void aRowLongerThanTheBufferKeepsItsPlace() {
        String head = "student,date,measure,value,note\n";
        String plain = "S1,2025-01-06,line-steps,3,\n";
        String longRow = "S1,2025-01-07,line-steps,4,\"" + "\u00e9 word\n".repeat(60_000) + "\"\n";
        String wrong = "S1,2025-01-08,line-steps,minus,\n";
        byte[] bytes = (head + plain.repeat(20) + longRow + plain + wrong).getBytes(StandardCharsets.UTF_8);
        Optional<String> bulk = bulk(bytes, 2);
        assertTrue(bulk.isPresent());
        assertEquals(usual(bytes), bulk.get());
    }

    private byte[] written() {
        String heading = HEADINGS[random.nextInt(HEADINGS.length)];
        String[] columns = heading.split(",", -1);
        String end = one("\n", "\n", "\n", "\r\n", "\r");
        String delimiter = one(",", ",", ",", ";", "\t", "|");
        StringBuilder log = new StringBuilder(random.nextInt(10) == 0 ? "\ufeff" : "");
        log.append(heading.replace(",", delimiter)).append(end);
        int rows = 1 + random.nextInt(150);
        int clean = random.nextInt(4);
        measures = new String[] {usualMeasure(), usualMeasure()};
        students = new String[] {usualStudent(), usualStudent()};
        String[] cells = new String[columns.length];
        for (int row = 0; row < rows; row++) {
            // Rows of a session repeat their first cells, which the fast reader then does not look for again.
            int repeated = row == 0 || random.nextBoolean() ? 0 : random.nextInt(columns.length + 1);
            for (int column = 0; column < columns.length; column++) {
                cells[column] = column < repeated
                        ? cells[column]
                        : cell(columns[column].toLowerCase(java.util.Locale.ROOT), clean);
                log.append(column == 0 ? "" : delimiter).append(cells[column]);
            }
            log.append(row == rows - 1 && random.nextInt(4) == 0 ? "" : end);
        }
        return log.toString().getBytes(StandardCharsets.UTF_8);
    }

    private String cell(String column, int clean) {
        String usual = usualCell(column, clean);
        if (clean == 0 || random.nextInt(60 * clean) != 0) {
            return usual;
        }
        return one(
                "",
                " " + usual,
                usual + " ",
                usual.contains("\"") ? usual : "\"" + usual + "\"",
                usual.toUpperCase(java.util.Locale.ROOT),
                "'" + usual,
                "?",
                "zzz",
                "0",
                "-1",
                "\"" + usual.replace("\"", "") + "\"\"\"",
                usual + "\u00a0",
                "total",
                "x".repeat(300));
    }

    private String usualCell(String column, int clean) {
        return switch (column) {
            case "student", "student code" -> one(students);
            case "source" -> one("A", "A", "B", "", "\"A\"", "\"A\"\"s\"");
            case "date" -> one("2025-01-06", "2025-01-13", "2025-02-03", "2025-04-01", "2025-01-06");
            case "measure" -> one(measures);
            case "value" ->
                clean == 3
                        ? one("3", "12", "0.5")
                        : one(
                                "3", "4", "5.5", "0.82", "12", "7.0", ">30", "unable", "refused", "4/5", "8 s", "0.8",
                                "0", "1", "5/5", "0/4", "4/0", "6/5", "1.5", "12/100", "900000");
            case "unit" -> clean == 3 ? "" : one("", "", "", "s", "steps", "m/s", "min");
            case "of" -> one("", "", "", "", "8");
            case "help" -> one("independent", "supervision", "contact guard", "minimal", "CGA", "", " ");
            case "prompt" -> one("", "none", "verbal", "verbal ");
            case "side" -> one("left", "right", "L", "", "left");
            case "place" -> one("school", "home", "", "gym");
            case "use" -> one("", "probe", "practice");
            case "protocol" -> one("", "", "surface=floor", "shoes=on;surface=floor");
            case "session" -> one("", "", "am", "pm", "\"am\"", "\"a\"\"m\"");
            case "trial", "try" -> one("1", "2", "3", "4", "", "10");
            case "note", "comments" -> clean == 3 ? one("", "fine", "\"a, b\"") : one(NOTES);
            default -> one("", "x", "obs01");
        };
    }

    private String usualStudent() {
        return one("S1", "S2", "s1", "007", "7", "S\u00e9");
    }

    private String usualMeasure() {
        return one("line-steps", "single-leg-stance", "walk-speed", "success", "Line Steps", "cadence", "line-share");
    }

    /** Some bytes changed, taken out or put in; sometimes the end is torn off. */
    private byte[] damaged(byte[] log) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int rate = 20 + random.nextInt(2_000);
        int length = random.nextInt(5) == 0 ? random.nextInt(log.length) : log.length;
        for (int i = 0; i < length; i++) {
            if (random.nextInt(rate) != 0) {
                out.write(log[i]);
                continue;
            }
            switch (random.nextInt(4)) {
                case 0 ->
                    out.write(one("\"", ",", "\n", "\r", " ", "\t", "9", "/", "'", ".")
                            .charAt(0));
                case 1 -> {
                    out.write(log[i]);
                    out.write(one("\"", ",", "\n", "\r", "\"", "\"").charAt(0));
                }
                case 2 -> out.write(random.nextInt(40) == 0 ? random.nextInt(256) : '"');
                default -> {
                    // Taken out.
                }
            }
        }
        return out.toByteArray();
    }

    private String one(String... choices) {
        return choices[random.nextInt(choices.length)];
    }

    /** What the fast reader gives; empty when it leaves the log to the usual one. */
    private static Optional<String> bulk(byte[] bytes, int parts) {
        BulkLog.How<TrialRuns> how = new BulkLog.How<>(
                any -> LogBytes.rules(),
                AS_OF,
                parts,
                64,
                StudentRange.ALL,
                before -> before.isEmpty()
                        ? new TrialRuns()
                        : before.get(before.size() - 1).next(),
                any -> true,
                BulkWatch.NONE);
        BulkLog<TrialRuns> log = BulkLog.read(List.of(new LogBytes(bytes)), how);
        LogFile file = log.files().get(0);
        return file.by() == WhichReader.FAST
                ? Optional.of(all(file, log.problems(), new LogRuns(log.parts())))
                : Optional.empty();
    }

    private static String usual(byte[] bytes) {
        SeriesNumbers numbers = new SeriesNumbers();
        SessionTable table = new SessionTable(numbers);
        UsualFile file = new UsualFile(
                new TrialFeed(numbers, Settings.usual(""), table), AS_OF, StudentRange.ALL, 0, () -> true);
        try {
            return all(file.read(new LogBytes(bytes), LogBytes.rules()), file.problems(), table.index());
        } catch (InputRefused refused) {
            return "refused: " + refused.getMessage();
        }
    }

    private static String all(LogFile file, ProblemTally problems, SeriesSessions sessions) {
        StringBuilder text = new StringBuilder("rows " + file.rows() + " blank " + file.blank() + " set aside "
                + file.setAside() + " ahead " + file.ahead() + "\n" + String.join("\n", file.notes()) + "\n");
        for (Severity severity : Severity.values()) {
            text.append(String.join("\n", problems.sentences(severity))).append('\n');
        }
        TreeMap<String, String> series = new TreeMap<>();
        for (int one = 0; one < sessions.seriesCount(); one++) {
            var key = sessions.numbers().key(one);
            series.put(
                    String.join(
                            "|",
                            List.of(
                                    key.source(),
                                    key.student().text(),
                                    key.measure().text(),
                                    key.side().word(),
                                    key.protocol().text(),
                                    key.place().word(),
                                    key.use().word())),
                    tries(sessions.joined(List.of(one))));
        }
        return text.append(series).toString();
    }

    private static String tries(List<TrialGroup> groups) {
        List<String> tries = new ArrayList<>();
        for (TrialGroup group : groups) {
            for (int row = 0; row < group.size(); row++) {
                tries.add(group.date() + " " + group.label() + " " + group.number(row) + " " + group.kind(row) + " "
                        + group.value(row) + " " + group.given(row) + " " + group.help(row) + " " + group.prompt(row));
            }
        }
        return String.join("\n", tries);
    }
}
