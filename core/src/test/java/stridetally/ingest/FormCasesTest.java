package stridetally.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stridetally.problem.Checked;
import stridetally.problem.InputRefused;
import stridetally.problem.Severity;
import stridetally.table.Row;
import stridetally.table.TableReader;

/**
 * Logs as people keep them, one file a pitfall, listed in {@code forms/manifest.csv} with the tries that must come out and
 * why. Each runs through the door for text and, where it can be a sheet of texts, through that for workbooks. The expected
 * tries are written by hand from the files; conversions by the definitions 1 in = 2.54 cm, 1 ft = 12 in.
 */
final class FormCasesTest {

    /** One line of the manifest. */
    record Case(String id, String file, String expected, String reason, boolean asSheet) {
        byte[] bytes() {
            try (InputStream in = open(file)) {
                return in.readAllBytes();
            } catch (IOException impossible) {
                throw new java.io.UncheckedIOException(impossible);
            }
        }

        @Override
        public String toString() {
            return id + ": " + reason;
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void readsTheTextAsExpected(Case one) {
        check(one, () -> ReadLog.bytes(one.file(), one.bytes(), FormMapping.NONE));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void readsTheSheetAsExpected(Case one) {
        ByteSource book = new MadeWorkbook().sheet("Log", sheetRows(one)).source("book.xlsx");
        check(one, () -> ReadLog.of(InputTables.of(book, Optional.empty()).only(), FormMapping.NONE));
    }

    private static void check(Case one, java.util.function.Supplier<ReadLog> reading) {
        if (one.expected().startsWith("REFUSED: ")) {
            InputRefused refused = assertThrows(InputRefused.class, reading::get);
            String words = one.expected().substring("REFUSED: ".length());
            assertTrue(String.valueOf(refused.getMessage()).contains(words), refused.getMessage());
            return;
        }
        ReadLog log = reading.get();
        List<String> trials = new ArrayList<>();
        TreeSet<String> aside = new TreeSet<>();
        TreeSet<String> notes = new TreeSet<>();
        for (String part : one.expected().split(" ; ", -1)) {
            if (part.startsWith("aside ")) {
                aside.add(part.substring(6));
            } else if (part.startsWith("note ")) {
                notes.add(part.substring(5));
            } else {
                trials.add(part.strip());
            }
        }
        assertEquals(trials, log.lines().stream().map(String::strip).toList());
        TreeSet<String> found = new TreeSet<>();
        log.problems.stream()
                .filter(problem -> problem.severity() == Severity.SET_ASIDE)
                .forEach(problem -> found.add(problem.code().name()));
        assertTrue(found.containsAll(aside), "set aside for " + found + ", expected " + aside);
        assertEquals(aside.isEmpty(), log.setAside.isEmpty(), "set aside for " + found);
        assertTrue(log.codes().containsAll(notes), "told " + log.codes() + ", expected " + notes);
        assertTrue(log.adds(), "every row is taken, set aside or blank");
    }

    static Stream<Case> all() throws IOException {
        List<Case> cases = new ArrayList<>();
        try (Reader reader = new InputStreamReader(open("manifest.csv"), StandardCharsets.UTF_8)) {
            TableReader table = TableReader.sniffing(reader, "manifest.csv", "reason"::equals);
            table.next();
            for (Optional<Checked<Row>> next = table.next(); next.isPresent(); next = table.next()) {
                List<String> cells = next.get().value().orElseThrow().cells();
                cases.add(new Case(
                        cells.get(0),
                        cells.get(1),
                        cells.get(2),
                        cells.get(3),
                        cells.get(4).equals("yes")));
            }
        }
        return cases.stream();
    }

    static Stream<Case> sheets() throws IOException {
        return all().filter(Case::asSheet);
    }

    private static InputStream open(String file) {
        InputStream in = FormCasesTest.class.getResourceAsStream("/forms/" + file);
        if (in == null) {
            throw new IllegalStateException("no file forms/" + file);
        }
        return in;
    }

    /** The cells of the file as texts of a sheet, each in its row. */
    private static List<List<String>> sheetRows(Case one) {
        TextSource text = TextSource.of(MadeWorkbook.source(one.file(), one.bytes()));
        List<List<String>> rows = new ArrayList<>();
        try (Reader reader = text.open()) {
            TableReader table = TableReader.sniffing(reader, one.file(), TrialLayout::isKnown);
            for (Optional<Checked<Row>> next = table.next(); next.isPresent(); next = table.next()) {
                Row row = next.get().value().orElseThrow();
                while (rows.size() < row.line() - 1) {
                    rows.add(List.of());
                }
                rows.add(row.cells().stream().map(MadeWorkbook::text).toList());
            }
            return rows;
        } catch (IOException impossible) {
            throw new java.io.UncheckedIOException(impossible);
        }
    }
}
