package stridetally.logbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A logbook in a test's own folder, with short ways to fill it. */
final class Notebook {
    static final OffsetDateTime MONDAY = OffsetDateTime.parse("2025-10-06T15:30:00-05:00");
    static final List<String> COLUMNS = List.of("student", "date", "value", "note");
    static final List<String> HEADINGS = List.of("Student", "Value");

    final Path root;

    private Notebook(Path root) {
        this.root = root;
    }

    static Notebook create(Path folder) {
        Path root = folder.resolve("logbook");
        Logbook.create(root, "north");
        return new Notebook(root);
    }

    LogbookWriter writer(OffsetDateTime when) {
        return LogbookWriter.open(root, when);
    }

    /** Commits rows of one value each. */
    Entry commit(OffsetDateTime when, List<LineRange> superseded, String... values) {
        try (LogbookWriter writer = writer(when)) {
            return commit(writer, superseded, values);
        }
    }

    static Entry commit(LogbookWriter writer, List<LineRange> superseded, String... values) {
        EntryDraft draft = writer.draft(EntryKind.TRIALS, COLUMNS, HEADINGS);
        for (String value : values) {
            draft.row(row(value));
        }
        draft.setAside(new SetAsideRow("S01", "9", "DATE_MISSING", "no date", "fill it in", List.of("S01", "=4")));
        String source = "hash of " + String.join(" ", values);
        return writer.commit(draft, new NewEntry("from the aide", source, values.length + 2, 0, 1, superseded));
    }

    static List<String> row(String value) {
        return List.of("S01", "2025-10-06", value, "");
    }

    Logbook open() {
        return Logbook.open(root, Optional.empty());
    }

    /** {@code entry:line value} of every trial that stands. */
    static List<String> standing(Logbook logbook) {
        List<String> rows = new ArrayList<>();
        logbook.trials().forEach((entry, line, cells) -> rows.add(entry + ":" + line + " " + cells.get(2)));
        return rows;
    }

    List<String> standing() {
        return standing(open());
    }

    void write(String file, String text) {
        try {
            Files.writeString(root.resolve(file), text);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** Every file with its content, but for the lock. */
    Map<String, String> content() {
        Map<String, String> content = new TreeMap<>();
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                if (!file.endsWith(".lock")) {
                    content.put(root.relativize(file).toString(), Files.readString(file));
                }
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return content;
    }
}
