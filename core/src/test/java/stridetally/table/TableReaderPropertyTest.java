package stridetally.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Commons CSV over the whole text is the outside source of what a table means. */
class TableReaderPropertyTest {
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("stridetally.table.Generators#seeds")
    void agreesWithCommonsCsvOnEveryTextItReads(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 60; round++) {
            String text = Generators.text(random, "ab,,\"\"\n\r ", 24);
            Collected ours = Collected.from(text);
            Optional<List<List<String>>> theirs = commons(text);
            if (theirs.isPresent()) {
                assertEquals(theirs.get(), ours.cells(), () -> "text " + text);
                assertEquals(List.of(), ours.problems, () -> "text " + text);
            } else {
                assertFalse(ours.problems.isEmpty(), () -> "text " + text);
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("stridetally.table.Generators#seeds")
    void readsEveryGoodRowAfterABrokenOneThatHoldsNoLineBreak(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        StringBuilder text = new StringBuilder();
        List<Long> good = new ArrayList<>();
        List<Long> bad = new ArrayList<>();
        for (long line = 1; line <= 40; line++) {
            if (random.nextInt(5) == 0) {
                text.append("x,\"a\"b\n");
                bad.add(line);
            } else {
                text.append("x,\"a \"\"b\"\"\"\n");
                good.add(line);
            }
        }
        Collected collected = Collected.from(text.toString());
        assertEquals(good, collected.lines());
        assertEquals(
                bad, collected.problems.stream().map(one -> one.at().line()).toList());
    }

    private static Optional<List<List<String>>> commons(String text) {
        List<List<String>> rows = new ArrayList<>();
        try (CSVParser parser = CSVFormat.RFC4180.parse(new StringReader(text))) {
            for (CSVRecord row : parser) {
                if (!row.stream().allMatch(String::isBlank)) {
                    rows.add(row.toList());
                }
            }
            return Optional.of(rows);
        } catch (IOException | UncheckedIOException broken) {
            return Optional.empty();
        }
    }
}
