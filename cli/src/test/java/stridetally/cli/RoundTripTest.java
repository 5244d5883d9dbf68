package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stridetally.logbook.Logbook;
import stridetally.measures.Catalogue;
import stridetally.measures.Measure;
import stridetally.measures.MeasureKind;
import stridetally.measures.Sidedness;
import stridetally.units.Amount;

/** {@code score --by trial} out and {@code import} in again give the same trials, whatever their notes hold. */
class RoundTripTest {
    private static final String HEAD =
            "source,student,date,session,measure,trial,value,unit,of,help,prompt,side,protocol,use,place,observer,activity,note\n";
    private static final List<String> PIECES = List.of(
            "\"",
            "\"\"",
            ",",
            ";",
            "\n",
            "\r",
            "\r\n",
            "=",
            "+1",
            "-",
            "@",
            "'",
            "''",
            "\t",
            " ",
            "\u00a0",
            "\uff1d",
            "|",
            "one more",
            "Zo\u00eb",
            "\ud83d\ude00",
            "=HYPERLINK(\"http://x\",\"see\")",
            "\u0001",
            "\u2028",
            "#",
            "\\");

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    static LongStream seeds() {
        return LongStream.range(1, 41);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void notesOfEveryKindComeBack(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        StringBuilder log = new StringBuilder(HEAD);
        for (int trial = 1; trial <= 12; trial++) {
            log.append(String.join(
                            ",",
                            quoted(random.nextBoolean() ? "" : "s" + text(random)),
                            quoted("S" + trial + text(random).replaceAll("\\s", "")),
                            "2026-01-05",
                            quoted(text(random)),
                            "line-steps",
                            Integer.toString(trial),
                            "6",
                            "steps",
                            "",
                            "independent",
                            "none",
                            "",
                            "",
                            "probe",
                            "school",
                            quoted(text(random)),
                            quoted(text(random)),
                            quoted(text(random))))
                    .append('\n');
        }
        comesBack(log.toString(), 12);
    }

    @Test
    void everyMeasureAndEveryReadingComesBack() {
        StringBuilder log = new StringBuilder(HEAD);
        int rows = 0;
        for (Measure measure : Catalogue.standard().all()) {
            for (String value : values(measure)) {
                rows++;
                String[] parts = value.split(" of ", -1);
                String side = measure.sidedness() == Sidedness.NONE ? "" : "left";
                log.append("north,S01,2026-01-05,,")
                        .append(measure.id().text())
                        .append(',')
                        .append(rows)
                        .append(',')
                        .append(parts[0])
                        .append(",,")
                        .append(parts.length > 1 ? parts[1] : "")
                        .append(",contact guard,verbal,")
                        .append(side)
                        .append(",,practice,home,pt-1,,\n");
            }
        }
        assertTrue(rows > 150, rows + " rows");
        comesBack(log.toString(), rows);
    }

    private static List<String> values(Measure measure) {
        if (measure.kind() == MeasureKind.TRIES) {
            return List.of("0 of 5", "4 of 5", "1", "0", "refused", "absent", "not tested", "unable");
        }
        if (measure.kind() == MeasureKind.SHARE && measure.possible().holds(Amount.of("1"))) {
            return List.of("0.4", "80%", "4 of 5", "3.4 m of 5 m", "0", "1", ">0.5", "unable");
        }
        String most = Stream.of("30", "12", "8.41", "1.25", "0.5", "0.4", "0.3")
                .filter(value -> measure.possible().holds(Amount.of(value)))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no value here is possible for " + measure.id()));
        return List.of(most, ">" + most, "<" + most, "unable", "absent");
    }

    /** Takes a log into one logbook, and what {@code score --by trial} says of it into another. */
    private void comesBack(String log, int rows) {
        Desk desk = new Desk(folder).file("a.csv", log);
        Run first = desk.run("import @a.csv --logbook @book --new");
        assertEquals(0, first.exitCode(), first.err());
        assertEquals(0, desk.run("score @book --by trial -o @out.csv").exitCode());
        Run second = desk.run("import @out.csv --logbook @copy --new");
        assertEquals(0, second.exitCode(), second.err());
        List<String> before = trials("book");
        assertEquals(rows, before.size());
        assertEquals(String.join("\n", before), String.join("\n", trials("copy")));
        // The logbooks have different ids, so a trial without a source got its logbook's, which came along.
        assertEquals(
                List.of(Integer.toString(rows), "0", Integer.toString(rows)),
                desk.counts(desk.run("import @out.csv --logbook @book"), "out.csv")
                        .subList(0, 3));
    }

    /** Every cell of every trial that stands, but for where it stood and how it was written. */
    private List<String> trials(String book) {
        List<String> trials = new ArrayList<>();
        Logbook.open(folder.resolve(book), Optional.empty())
                .trials()
                .forEach((entry, line, cells) -> trials.add(String.join("\u241f", cells.subList(0, 18))));
        return trials;
    }

    private static String text(SplittableRandom random) {
        return random.ints(random.nextInt(5), 0, PIECES.size())
                .mapToObj(PIECES::get)
                .collect(Collectors.joining());
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\"", "\"\"") + "\"";
    }
}
