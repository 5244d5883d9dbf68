package stridetally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

class ReferenceCasesTest {

    private static final String ORIGIN = "source: s\ntool: t\ncommand: run it\ndigits: 3\ntolerance: 0.01\nwhy: w\n";

    @TestFactory
    Stream<DynamicTest> everyReferenceFileHasAnOrigin() throws IOException {
        List<Path> tables;
        try (Stream<Path> all = Files.walk(ReferenceCases.root())) {
            tables = all.filter(file -> file.toString().endsWith(".csv"))
                    .sorted()
                    .toList();
        }
        assertFalse(tables.isEmpty());
        return tables.stream()
                .map(file -> DynamicTest.dynamicTest(
                        ReferenceCases.root().relativize(file).toString(),
                        () -> ReferenceCases.origin(
                                file.resolveSibling("."),
                                file.getFileName().toString().replaceAll("(\\.expected)?\\.csv$", ""))));
    }

    @Test
    void refusesACaseWithoutOrigin(@TempDir Path topic) throws IOException {
        write(topic, "3.00");
        Files.delete(topic.resolve("case.origin.txt"));
        AssertionError refused = assertThrows(AssertionError.class, () -> ReferenceCases.of(topic, "case"));
        assertTrue(refused.toString().contains("case.origin.txt"), refused.toString());
    }

    @Test
    void refusesAnOriginThatDoesNotSayHow(@TempDir Path topic) throws IOException {
        write(topic, "3.00");
        Files.writeString(topic.resolve("case.origin.txt"), ORIGIN.replace("command: run it\n", ""));
        assertThrows(AssertionError.class, () -> ReferenceCases.of(topic, "case"));
    }

    @Test
    void holdsAFigureToItsToleranceAndNamesTheCommandWhenItFails(@TempDir Path topic) throws Throwable {
        write(topic, "3.00");
        run(topic, Estimate.finite(3.02));
        AssertionError off = assertThrows(AssertionError.class, () -> run(topic, Estimate.finite(3.04)));
        assertTrue(off.toString().contains("run it"), off.toString());
        assertThrows(AssertionError.class, () -> run(topic, Estimate.notEstimable("no reason")));
    }

    @Test
    void takesNaAsNotEstimable(@TempDir Path topic) throws Throwable {
        write(topic, "NA");
        run(topic, Estimate.notEstimable("too few"));
        assertThrows(AssertionError.class, () -> run(topic, Estimate.finite(0)));
    }

    private static void write(Path topic, String value) throws IOException {
        Files.writeString(topic.resolve("case.csv"), "x\n1\n");
        Files.writeString(topic.resolve("case.expected.csv"), "fixture,quantity,value\na,mean," + value + "\n");
        Files.writeString(topic.resolve("case.origin.txt"), ORIGIN);
    }

    private static void run(Path topic, Estimate<Double> ours) throws Throwable {
        List<DynamicTest> tests = ReferenceCases.of(topic, "case")
                .checks(row -> Optional.of(ours))
                .toList();
        assertEquals(1, tests.size());
        tests.get(0).getExecutable().execute();
    }
}
