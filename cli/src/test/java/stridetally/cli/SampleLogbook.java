package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The invented caseload of {@code samples}, brought into a logbook term by term as {@code scripts/quarterly} brings it. */
record SampleLogbook(Path folder) {
    static final Path SAMPLES = Path.of("../samples");
    static final Path LOGS = SAMPLES.resolve("logs");

    /** The terms of the school year: their name in {@code logbook.toml}, their last day, and the logs that end with them. */
    enum Term {
        AUTUMN("autumn", "2026-11-20", "2026-autumn-"),
        WINTER("winter", "2027-03-05", "2027-winter-"),
        SPRING("spring", "2027-06-11", "2027-spring-");

        final String period;
        final String lastDay;
        final String logs;

        Term(String period, String lastDay, String logs) {
            this.period = period;
            this.lastDay = lastDay;
            this.logs = logs;
        }

        static Term of(String period) {
            return Stream.of(values())
                    .filter(term -> term.period.equals(period))
                    .findFirst()
                    .orElseThrow();
        }
    }

    /** The hand-kept files only. */
    static SampleLogbook begin(Path folder) throws IOException {
        Files.createDirectories(folder);
        for (Path file : list(SAMPLES.resolve("caseload"), "")) {
            Files.copy(file, folder.resolve(file.getFileName().toString()));
        }
        return new SampleLogbook(folder);
    }

    /** The whole school year. */
    static SampleLogbook ofTheYear(Path folder) throws IOException {
        SampleLogbook book = begin(folder);
        for (Term term : Term.values()) {
            book.bring(term, LOGS);
        }
        return book;
    }

    /** Imports the logs of a term from a folder; the errors of the aide come with winter and set rows aside. */
    void bring(Term term, Path logs) throws IOException {
        List<Path> files = list(logs, term.logs);
        assertTrue(files.size() >= 4, () -> "logs of " + term + ": " + files);
        files.add(logs.resolve("visits-" + term.logs.substring(0, term.logs.length() - 1) + ".csv"));
        assertEquals(0, bring(files, term).exitCode());
        if (term == Term.WINTER) {
            assertEquals(
                    1,
                    bring(List.of(logs.resolve("2027-02-aide-errors.csv")), term)
                            .exitCode());
        }
    }

    private Run bring(List<Path> files, Term term) {
        List<String> arguments = new ArrayList<>(List.of("import", "--logbook", folder.toString()));
        files.forEach(file -> arguments.add(file.toString()));
        arguments.addAll(List.of("--as-of", term.lastDay));
        return Run.of(arguments.toArray(String[]::new));
    }

    /** Runs a command on this logbook; it must succeed. */
    Run run(String command, String... more) {
        List<String> arguments = new ArrayList<>(List.of(command, folder.toString()));
        arguments.addAll(List.of(more));
        Run run = Run.of(arguments.toArray(String[]::new));
        assertEquals(0, run.exitCode(), () -> arguments + ": " + run.err());
        return run;
    }

    /** The table that a command writes. */
    Csv table(String command, String... more) {
        return Csv.of(run(command, more).out());
    }

    /** Files of a folder whose names begin so, by name; the list may be added to. */
    static List<Path> list(Path folder, String prefix) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return new ArrayList<>(
                    files.filter(file -> file.getFileName().toString().startsWith(prefix))
                            .sorted()
                            .toList());
        }
    }
}
