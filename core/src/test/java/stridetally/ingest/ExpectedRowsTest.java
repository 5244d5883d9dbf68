package stridetally.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Which rows are recognized without being cut; that they say the same then is shown by the comparison of both readers. */
final class ExpectedRowsTest {
    private static final String HEADING = "student,date,place,measure,trial,value,unit,help,observer,note\n";

    /** Longer than any start, so that the rows before it lie far enough from the end of the bytes. */
    private static final String TAIL = "S9,2025-02-01,school,line-steps,1,3,,zzz,obs,x\n".repeat(8);

    private final List<String> tries = new ArrayList<>();
    private int recognized;

    @Test
    void theFurtherTriesOfASession() throws IOException {
        String rows = """
                S1,2025-01-06,school,line-steps,1,3,steps,independent,obs1,
                S1,2025-01-06,school,line-steps,2,4,steps,independent,obs1,tired
                S1,2025-01-06,school,line-steps,3,5,steps,independent,obs2,"a, b"
                """;
        // By hand: the first row teaches its task and the second one its words; the third is expected.
        read(rows);
        assertEquals(1, recognized);
        assertEquals(List.of("0 2 4 help 0", "0 3 5 help 0"), tries.subList(1, 3));
    }

    /** The cell behind the words is compared with that of the row before, with the delimiter that ends it. */
    @Test
    void anotherObserver() throws IOException {
        String start = "S1,2025-01-06,school,line-steps,";
        String rows = start + "1,3,steps,independent,obs1,\n" + start + "2,4,steps,independent,obs1,\n" + start
                + "3,5,steps,independent,obs1,\n" + start + "4,6,steps,independent,obs12,\n" + start
                + "5,7,steps,independent,obs12,x\n" + start + "6,8,steps,independent,,\n" + start
                + "7,9,steps,independent,,y\n";
        read(rows);
        assertEquals(5, recognized);
        assertEquals("0 7 9 help 0", tries.get(6));
        recognized = 0;
        read(rows + start + "8,1,steps,independent,\"o\",\n" + start + "9,2,steps,independent,obs,a,b\n");
        // A quoted cell and a cell too many are left to the others.
        assertEquals(5, recognized);
    }

    @Test
    void theSessionThatCameNextOnTheDayBefore() throws IOException {
        StringBuilder rows = new StringBuilder();
        for (int day = 1; day <= 9; day++) {
            String date = ",2025-01-0" + day + ",school,";
            for (int number = 1; number <= 2; number++) {
                rows.append("S1" + date + "line-steps," + number + "," + day + ",steps,independent,obs,\n");
            }
            for (int number = 1; number <= 2; number++) {
                rows.append("S200" + date + "walk-time," + number + "," + day + ",s,independent,obs,\n");
            }
            for (int number = 1; number <= 2; number++) {
                rows.append("S3" + date + "line-steps," + number + "," + day + ",steps,independent,obs,\n");
            }
        }
        read(rows.toString());
        // By hand: on the first day the first row of each task teaches it, the second one its words, and only the
        // second try
        // of S3 is expected; on each other day all are but the first, whose day is new.
        assertEquals(1 + 8 * 5, recognized);
        assertEquals("1 2 9 help 0", tries.get(51));
    }

    @Test
    void nothingThatIsNotJustSo() throws IOException {
        String known = "S1,2025-01-06,school,line-steps,1,3,,independent,obs,\n".repeat(3);
        for (String other : List.of(
                "S1,2025-01-06,school,line-steps,01,3,,independent,obs,\n",
                "S1,2025-01-06,school,line-steps,1234567,3,,independent,obs,\n",
                "S1,2025-01-06,school,line-steps,2,3.5,,independent,obs,\n",
                "S1,2025-01-06,school,line-steps,2,-3,,independent,obs,\n",
                "S1,2025-01-06,school,line-steps,2,9000000,,independent,obs,\n",
                "S1,2025-01-06,school,line-steps,2,3s,,independent,obs,\n",
                "S1,2025-01-06,school,line-steps,2,3,m,independent,obs,\n",
                "S1,2025-01-06,school,line-steps,2,3,,minimal,obs,\n",
                "S1,2025-01-06,school,line-steps,2,3,,independent,obs\n",
                "S1,2025-01-06,school,line-steps,2,3,,independent,obs,,\n",
                "S1,2025-01-06,school,line-steps,2,3,,independent,obs,5\" tall\n",
                "S1,2025-01-06,school,line-steps,2,3,,independent,obs,\"two\nlines\"\n",
                "S1,2025-01-06,school,line-steps,2,3,,independent,obs,a\rb,x\n",
                "S1,2025-01-07,school,line-steps,2,3,,independent,obs,\n",
                "S1,2025-01-06,school,tandem-steps,2,3,,independent,obs,\n")) {
            recognized = 0;
            read(known + other);
            assertEquals(1, recognized, other);
        }
    }

    /** Learning what never comes again would only cost: a shuffled log is cut row by row, until it is tried again. */
    @Test
    void nothingIsExpectedOfALogWithoutOrder() throws IOException {
        SplittableRandom random = new SplittableRandom(20261128);
        StringBuilder shuffled = new StringBuilder();
        for (int row = 0; row < 70_000; row++) {
            shuffled.append("S" + random.nextInt(1_000) + ",2025-01-06,school,line-steps,1,3,,independent,obs,\n");
        }
        read(shuffled.toString());
        // By chance one row in a thousand begins like the one before it, and as many like the one that came then.
        assertTrue(recognized < 500, () -> "recognized " + recognized);
        int before = recognized;
        recognized = 0;
        read(shuffled + "S1,2025-01-06,school,line-steps,1,3,,independent,obs,\n".repeat(100));
        assertEquals(before, recognized);
    }

    /** The words of a row whose value is quoted begin elsewhere, so nothing is learned of it. */
    @Test
    void aCellTooManyBehindAQuotedValue() throws IOException {
        String start = "S1,2025-01-06,school,line-steps,";
        String rows = start + "1,3,steps,independent\n" + start + "2,3,steps,independent\n" + start
                + "3,\"3\",steps,independent\n" + start + "4,3,,steps,independent\n";
        read("student,date,place,measure,trial,value,unit,help\n", rows + start.repeat(30) + "\n");
        assertEquals(0, recognized);
    }

    /** The bytes are read window by window; here each of the last bytes of a row stands once where one ends. */
    @Test
    void aWindowMayEndAnywhereBehindTheWordsOfARow() throws IOException {
        for (String row : List.of(
                "S1,2025-01-06,school,line-steps,1,3,steps,independent," + "o".repeat(230) + ",\n",
                "S" + "1".repeat(200) + ",2025-01-06,school,line-steps,1,3,steps,independent,obs,\n",
                "S" + "1".repeat(200) + ",2025-01-06,school,line-steps,1,3,,independent,the observer of today,\n")) {
            int rows = ByteWindow.SIZE / row.length() + 3;
            for (int before = 0; before < 40; before++) {
                String shift = "x".repeat((ByteWindow.SIZE + before) % row.length());
                recognized = 0;
                read(row.replace(",\n", "," + shift + "\n") + row.repeat(rows - 1));
                assertTrue(recognized >= rows - 5, "recognized " + recognized + " of " + rows);
                assertEquals(rows, tries.stream().filter("0 1 3 help 0"::equals).count(), "before " + before);
            }
        }
    }

    @Test
    void whereTheCellsDoNotStandSo() throws IOException {
        for (String heading : List.of(
                "student,measure,trial,value,date,help",
                "student,date,measure,value,of,help",
                "student,date,measure,help,trial,value",
                "student,date,measure,trial,note,value,help")) {
            String row = heading.replace("student", "S1")
                    .replace("measure", "line-steps")
                    .replace("date", "2025-01-06")
                    .replace("trial", "1")
                    .replace("value", "3")
                    .replace("of", "")
                    .replace("help", "independent");
            recognized = 0;
            read(heading + "\n", (row + "\n").repeat(30));
            assertEquals(0, recognized, heading);
        }
    }

    private void read(String rows) throws IOException {
        read(HEADING, rows + TAIL);
    }

    /** As {@link BulkPart} does it. */
    private void read(String heading, String rows) throws IOException {
        tries.clear();
        ByteSource bytes = LogBytes.of(heading + rows);
        BulkForm form =
                BulkForm.of(bytes, LogBytes.rules(), LocalDate.of(2025, 3, 1)).orElseThrow();
        SeriesNumbers numbers = new SeriesNumbers();
        TrialSink sink = (series, day, label, number, kind, value, given, help, prompt, origin) ->
                tries.add(series + " " + number + " " + value / 1_000_000_000 + " help " + help);
        PlainRows plain = new PlainRows(form, numbers, sink, StudentRange.ALL);
        OddRows odd = new OddRows(form, numbers, sink, StudentRange.ALL);
        BulkPart part = new BulkPart(form, heading.length(), bytes.size(), odd, plain);
        try (ByteRecords records = form.records(heading.length(), form.columns())) {
            while (records.nextPosition() < bytes.size()) {
                if (plain.takeExpected(records)) {
                    recognized++;
                } else {
                    part.take(records.next(), records);
                }
            }
        }
        assertTrue(part.proven());
    }
}
