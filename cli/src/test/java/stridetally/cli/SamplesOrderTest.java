package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stridetally.cli.SampleLogbook.Term;

/** The order of the rows of a log means nothing where each try has its number. */
final class SamplesOrderTest {
    @TempDir
    Path folder;

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {20260908, 7})
    void shuffledLogsGiveTheSameTrend(long seed) throws IOException {
        Path logs = Files.createDirectory(folder.resolve("logs"));
        Random random = new Random(seed);
        int changed = 0;
        for (Path log : SampleLogbook.list(SampleLogbook.LOGS, "")) {
            List<String> lines = Files.readAllLines(log);
            String name = log.getFileName().toString();
            List<String> shuffled = name.equals("2027-02-aide-errors.csv") ? lines : shuffled(lines, random);
            changed += shuffled.equals(lines) ? 0 : 1;
            Files.write(logs.resolve(name), shuffled);
        }
        // All but the log of errors, where the first of two equal tries is taken and the second is the duplicate.
        assertEquals(17, changed);
        SampleLogbook asWritten = SampleLogbook.ofTheYear(folder.resolve("as-written"));
        SampleLogbook shuffled = SampleLogbook.begin(folder.resolve("shuffled"));
        for (Term term : Term.values()) {
            shuffled.bring(term, logs);
        }
        assertNotEquals(
                asWritten
                        .run("score", "--by", "trial", "--as-of", Term.SPRING.lastDay)
                        .out(),
                shuffled.run("score", "--by", "trial", "--as-of", Term.SPRING.lastDay)
                        .out());
        for (List<String> command : List.of(List.of("trend"), List.of("score"), List.of("score", "--by", "goal"))) {
            String[] more = command.subList(1, command.size()).toArray(String[]::new);
            String[] dated = Arrays.copyOf(more, more.length + 2);
            dated[more.length] = "--as-of";
            dated[more.length + 1] = Term.SPRING.lastDay;
            assertEquals(
                    asWritten.run(command.get(0), dated).out(),
                    shuffled.run(command.get(0), dated).out(),
                    command.toString());
        }
    }

    /**
     * The rows of one child and day stay together in their order when one of them has no try number, because its order is
     * then its number; all others are shuffled one by one.
     */
    private static List<String> shuffled(List<String> lines, Random random) {
        List<String> headings = List.of(cells(lines.get(0)));
        int student = position(headings, "student");
        int date = position(headings, "date");
        int trial = Math.max(position(headings, "trial"), position(headings, "try"));
        Map<String, List<String>> days = new LinkedHashMap<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = cells(line);
            days.computeIfAbsent(cells[student] + " " + cells[date], any -> new ArrayList<>())
                    .add(line);
        }
        List<List<String>> blocks = new ArrayList<>();
        for (List<String> day : days.values()) {
            boolean numbered = trial >= 0 && day.stream().noneMatch(line -> cells(line)[trial].isBlank());
            if (numbered) {
                day.forEach(line -> blocks.add(List.of(line)));
            } else {
                blocks.add(day);
            }
        }
        Collections.shuffle(blocks, random);
        List<String> shuffled = new ArrayList<>(List.of(lines.get(0)));
        blocks.forEach(shuffled::addAll);
        return shuffled;
    }

    /** The first cells of these logs hold no quoted separator: free text stands in their last columns. */
    private static String[] cells(String line) {
        return line.split("[,\t]", -1);
    }

    private static int position(List<String> headings, String name) {
        for (int column = 0; column < headings.size(); column++) {
            if (headings.get(column).equalsIgnoreCase(name)) {
                return column;
            }
        }
        return -1;
    }
}
