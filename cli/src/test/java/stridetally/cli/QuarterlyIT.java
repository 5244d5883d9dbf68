package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stridetally.cli.Csv.cell;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stridetally.cli.SampleLogbook.Term;

/** The therapist's own script, with the packaged command. */
final class QuarterlyIT {
    private static final Path SCRIPT =
            Path.of("../scripts/quarterly").toAbsolutePath().normalize();

    @TempDir
    Path folder;

    @Test
    void writesThePagesOfTwoTermsAndASecondRunChangesNoByte() throws Exception {
        Path out = folder.resolve("out");
        assertEquals(0, quarterly(out), () -> said(out));
        Map<String, String> first = files(out);
        for (Map<String, String> student : Csv.of(
                        Files.readString(SampleLogbook.SAMPLES.resolve("caseload/students.csv")))
                .rows()) {
            for (String term : List.of("winter", "spring")) {
                String page = first.get("reports/" + term + "/" + cell(student, "student") + ".md");
                assertTrue(page != null && page.contains(cell(student, "student")), () -> term + " " + student);
            }
        }
        for (String name : List.of(
                "import.txt",
                "status.md",
                "sessions-winter.csv",
                "trend-winter.csv",
                "reports/winter/caseload.md",
                "reports/winter/fh-011-family-es.md",
                "reports/spring/caseload.md",
                "practice/fh-003-home.html",
                "practice/fh-014-next.md",
                "practice/log-Ostlewick-monday.csv",
                "practice/log-Ostlewick-monday.html",
                "practice/log-Ostlewick-monday.xlsx",
                "logbook/reports.csv")) {
            assertFalse(first.getOrDefault(name, "").isBlank(), name);
        }
        assertEquals(sameInProcess(), first.get("trend-winter.csv"));
        assertEquals(0, quarterly(out), () -> said(out));
        Map<String, String> second = files(out);
        List<String> pages = first.keySet().stream()
                .filter(name -> name.matches("reports/.*\\.md"))
                .toList();
        // A page a student and the caseload's, twice; letters to 17 families in winter and to 16 in spring, as one
        // moved away; the year's review of each student, and the groups.
        assertEquals(2 * 18 + 17 + 16 + 18, pages.size());
        // The second run starts from a logbook that knows spring already.
        for (String page : pages) {
            assertEquals(first.get(page), second.get(page), page);
        }
        first.forEach((name, text) -> {
            if (name.startsWith("logbook/entries/") || name.startsWith("logbook/set-aside/")) {
                assertEquals(text, second.get(name), name);
            }
        });
    }

    /** The tests inside the process bring the samples in as the script does, or they would test something else. */
    private String sameInProcess() throws IOException {
        SampleLogbook book = SampleLogbook.begin(folder.resolve("in-process"));
        book.bring(Term.AUTUMN, SampleLogbook.LOGS);
        List<String> forms =
                new ArrayList<>(List.of("import", "--logbook", book.folder().toString()));
        SampleLogbook.list(SampleLogbook.SAMPLES.resolve("forms"), Term.AUTUMN.logs)
                .forEach(form -> forms.add(form.toString()));
        forms.addAll(List.of("--as-of", Term.AUTUMN.lastDay));
        assertEquals(0, Run.of(forms.toArray(String[]::new)).exitCode());
        book.bring(Term.WINTER, SampleLogbook.LOGS);
        return book.run("trend", "--as-of", Term.WINTER.lastDay).out();
    }

    private int quarterly(Path out) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(new ArrayList<>(List.of(SCRIPT.toString())))
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said.txt").toFile());
        builder.environment().put("OUT", out.toString());
        return builder.start().waitFor();
    }

    private String said(Path out) {
        try {
            return Files.readString(folder.resolve("said.txt")) + Files.readString(out.resolve("import-notes.txt"));
        } catch (IOException unreadable) {
            return unreadable.toString();
        }
    }

    private static Map<String, String> files(Path folder) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile)
                    .sorted(Comparator.naturalOrder())
                    .toList()) {
                // A workbook is no text; read so, no byte of it is lost.
                Charset set = file.toString().endsWith(".xlsx") ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8;
                texts.put(folder.relativize(file).toString(), Files.readString(file, set));
            }
        }
        return texts;
    }
}
