package stridetally.stats;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;

/**
 * One case of numbers from outside: the input {@code case.csv}, the long-form {@code case.expected.csv} with the columns
 * {@code fixture,quantity,value}, and {@code case.origin.txt}, which says where they are from and how closely they bind:
 * {@code source}, {@code tool}, {@code command}, {@code digits}, {@code tolerance} (relative), {@code why} and, near
 * zero, {@code floor} (absolute). A case without an origin is refused.
 */
public final class ReferenceCases {

    private static final List<String> ORIGIN_KEYS = List.of("source", "tool", "command", "digits", "tolerance", "why");

    private final String name;
    private final Map<String, String> origin;
    private final List<Map<String, String>> input;
    private final List<Expected> expected;

    private ReferenceCases(
            String name, Map<String, String> origin, List<Map<String, String>> input, List<Expected> expected) {
        this.name = name;
        this.origin = origin;
        this.input = input;
        this.expected = expected;
    }

    /** One row of the expected file. */
    public record Expected(String fixture, String quantity, String value) {}

    /** A case of {@code reference/topic}. */
    public static ReferenceCases of(String topic, String name) {
        return of(root().resolve(topic), name);
    }

    static ReferenceCases of(Path topic, String name) {
        return new ReferenceCases(
                name,
                origin(topic, name),
                rows(topic.resolve(name + ".csv")),
                rows(topic.resolve(name + ".expected.csv")).stream()
                        .map(row -> new Expected(cell(row, "fixture"), cell(row, "quantity"), cell(row, "value")))
                        .toList());
    }

    static Path root() {
        try {
            return Path.of(ReferenceCases.class.getResource("/reference").toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    static Map<String, String> origin(Path topic, String name) {
        Path file = topic.resolve(name + ".origin.txt");
        assertTrue(Files.exists(file), () -> "a case without an origin: " + file.getFileName());
        Map<String, String> origin = new LinkedHashMap<>();
        for (String line : lines(file)) {
            String[] parts = line.split(": ", 2);
            assertEquals(2, parts.length, () -> file.getFileName() + ": not 'key: text': " + line);
            origin.put(parts[0], parts[1]);
        }
        for (String key : ORIGIN_KEYS) {
            assertTrue(origin.containsKey(key), () -> file.getFileName() + " lacks " + key);
        }
        return origin;
    }

    /** The input rows, by column name. */
    public List<Map<String, String>> input() {
        return input;
    }

    /** The expected rows. */
    public List<Expected> expected() {
        return expected;
    }

    /** The numbers of one input column, over the rows whose key column holds the key, in file order. */
    public double[] numbers(String column, String keyColumn, String key) {
        return texts(column, keyColumn, key).mapToDouble(Double::parseDouble).toArray();
    }

    /** The cells of one input column, over the rows whose key column holds the key, in file order. */
    public Stream<String> texts(String column, String keyColumn, String key) {
        List<Map<String, String>> rows =
                input.stream().filter(row -> key.equals(row.get(keyColumn))).toList();
        assertFalse(rows.isEmpty(), () -> name + ".csv has no " + keyColumn + " " + key);
        return rows.stream().map(row -> cell(row, column));
    }

    /**
     * One test per expected row: our figure against it. A row for which {@code ours} has nothing is not a figure of ours
     * and gives no test; {@code ours} fails on a quantity it doesn't know.
     */
    public Stream<DynamicTest> checks(Function<Expected, Optional<Estimate<Double>>> ours) {
        List<DynamicTest> tests = new ArrayList<>();
        for (Expected row : expected) {
            ours.apply(row)
                    .ifPresent(figure -> tests.add(
                            DynamicTest.dynamicTest(row.fixture() + " " + row.quantity(), () -> check(row, figure))));
        }
        assertFalse(tests.isEmpty(), () -> name + " checks nothing");
        return tests.stream();
    }

    private void check(Expected row, Estimate<Double> ours) {
        if (row.value().equals("NA")) {
            assertFalse(ours.isEstimated(), () -> row + ": should not be estimable, was " + ours);
            return;
        }
        double outside = Double.parseDouble(row.value());
        double figure = ours.value().orElseGet(() -> fail(row + ": not estimable: " + ours.reason()));
        double tolerance = Double.parseDouble(cell(origin, "tolerance")) * Math.abs(outside)
                + Double.parseDouble(origin.getOrDefault("floor", "0"));
        assertTrue(
                Math.abs(figure - outside) <= tolerance,
                () -> row + ": ours is " + figure + ", off by " + Math.abs(figure - outside) + " where " + tolerance
                        + " is allowed; the outside value comes from: " + origin.get("command"));
    }

    private static String cell(Map<String, String> row, String column) {
        return requireNonNull(row.get(column), column);
    }

    private static List<Map<String, String>> rows(Path file) {
        List<String> lines = lines(file);
        String[] header = lines.get(0).split(",", -1);
        return lines.stream()
                .skip(1)
                .map(line -> {
                    String[] cells = line.split(",", -1);
                    assertEquals(header.length, cells.length, () -> file.getFileName() + ": " + line);
                    Map<String, String> row = new LinkedHashMap<>();
                    for (int i = 0; i < header.length; i++) {
                        row.put(header[i], cells[i]);
                    }
                    return row;
                })
                .toList();
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
