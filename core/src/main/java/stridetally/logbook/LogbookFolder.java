package stridetally.logbook;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import stridetally.ingest.FormRules;

/** Where everything lies in a logbook. */
record LogbookFolder(Path root) {
    static final String SETTINGS = "logbook.toml";
    static final String CONTACT = "contact.toml";
    static final String NAMES = "names.csv";
    static final String REPORTS = "reports.csv";

    Path settings() {
        return root.resolve(SETTINGS);
    }

    Path entries() {
        return root.resolve("entries");
    }

    Path setAsides() {
        return root.resolve("set-aside");
    }

    Path history() {
        return root.resolve("history");
    }

    /** How forms are read. */
    Path forms() {
        return root.resolve("forms");
    }

    /** The mapping of the forms with these headings. */
    Path form(List<String> headings) {
        String joined =
                String.join("\u0001", headings.stream().map(FormRules::fold).toList());
        return forms().resolve(Hash.of(joined).substring(0, 12) + ".toml");
    }

    Path journal() {
        return entries().resolve("journal.csv");
    }

    Path lock() {
        return root.resolve(".lock");
    }

    Path entry(int number, EntryKind kind) {
        return entries().resolve(four(number) + "-" + kind.word() + ".csv");
    }

    Path setAside(int number) {
        return setAsides().resolve(four(number) + ".csv");
    }

    boolean isLogbook() {
        return Files.isRegularFile(settings()) || Files.isRegularFile(journal());
    }

    /** The file as a person names it: from the logbook on, with slashes. */
    String name(Path file) {
        return root.relativize(file).toString().replace('\\', '/');
    }

    /** {@code 0007}. */
    static String four(int number) {
        String digits = Integer.toString(number);
        return "0".repeat(Math.max(0, 4 - digits.length())) + digits;
    }
}
