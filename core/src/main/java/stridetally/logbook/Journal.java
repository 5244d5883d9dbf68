package stridetally.logbook;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stridetally.problem.Checked;
import stridetally.problem.InputRefused;
import stridetally.problem.OutputRefused;
import stridetally.table.Dialect;
import stridetally.table.Header;
import stridetally.table.Row;
import stridetally.table.TableReader;

/**
 * What was committed, in order; the state as of reading. A last line without its line end was never committed and does
 * not exist.
 */
final class Journal {
    private final List<JournalLine> lines;
    private final Set<Integer> undone = new HashSet<>();
    private final Set<LineRange> dismissed = new HashSet<>();

    Journal(List<JournalLine> lines) {
        this.lines = List.copyOf(lines);
        for (JournalLine line : lines) {
            if (line instanceof JournalLine.Undone undo) {
                undone.add(undo.entry());
            } else if (line instanceof JournalLine.Dismissed one) {
                dismissed.add(LineRange.line(one.entry(), one.number()));
            }
        }
    }

    /** Reads the file; a missing one is an empty journal. {@code name} is for messages. */
    static Journal read(Path file, String name) {
        try {
            byte[] bytes = Files.readAllBytes(file);
            return parse(new String(bytes, 0, wholeLength(bytes), StandardCharsets.UTF_8), name);
        } catch (NoSuchFileException none) {
            return new Journal(List.of());
        } catch (IOException unreadable) {
            throw new OutputRefused(name + " cannot be read; check the disk and its permissions", unreadable);
        }
    }

    /** Bytes up to the last line end; the rest was torn off while writing. */
    static int wholeLength(byte[] bytes) {
        int length = bytes.length;
        while (length > 0 && bytes[length - 1] != '\n') {
            length--;
        }
        return length;
    }

    /** What it said at the end of a day. */
    Journal knownOn(LocalDate day) {
        return new Journal(lines.stream()
                .filter(line -> !line.when().toLocalDate().isAfter(day))
                .toList());
    }

    List<JournalLine> lines() {
        return lines;
    }

    /** All entries, undone ones too, in journal order. */
    List<Entry> entries() {
        List<Entry> entries = new ArrayList<>();
        for (JournalLine line : lines) {
            if (line instanceof JournalLine.Entered entered) {
                entries.add(entered.entry());
            }
        }
        return entries;
    }

    /** Entries that were not taken back, in journal order. */
    List<Entry> live() {
        List<Entry> live = new ArrayList<>();
        for (Entry entry : entries()) {
            if (!isUndone(entry.number())) {
                live.add(entry);
            }
        }
        return live;
    }

    Optional<Entry> entry(int number) {
        for (Entry entry : entries()) {
            if (entry.number() == number) {
                return Optional.of(entry);
            }
        }
        return Optional.empty();
    }

    boolean isUndone(int entry) {
        return undone.contains(entry);
    }

    boolean isDismissed(int entry, long number) {
        return dismissed.contains(LineRange.line(entry, number));
    }

    /** The live entry that closed a set-aside row, if any. */
    Optional<Entry> mendedBy(int entry, long number) {
        return live().stream()
                .filter(later -> later.mended().stream()
                        .anyMatch(range -> range.entry() == entry && range.first() <= number && number <= range.last()))
                .findFirst();
    }

    /** Set-aside rows that a live entry mended. */
    LineSet mended() {
        LineSet set = new LineSet();
        for (Entry entry : live()) {
            for (LineRange range : entry.mended()) {
                set.add(range);
            }
        }
        return set;
    }

    /** How many set-aside rows of an entry were dismissed. */
    long dismissed(int entry) {
        return dismissed.stream().filter(row -> row.entry() == entry).count();
    }

    /** Lines that a live entry replaces. */
    LineSet superseded() {
        LineSet set = new LineSet();
        for (Entry entry : live()) {
            for (LineRange range : entry.superseded()) {
                set.add(range);
            }
        }
        return set;
    }

    int lastNumber() {
        int last = 0;
        for (Entry entry : entries()) {
            last = Math.max(last, entry.number());
        }
        return last;
    }

    private static Journal parse(String text, String name) {
        TableReader reader = new TableReader(new StringReader(text), name, Dialect.COMMA);
        Optional<Checked<Row>> first = reader.next();
        if (first.isEmpty()) {
            return new Journal(List.of());
        }
        Header header = Header.of(name, row(first.get(), name), heading -> heading);
        if (!header.columns().keySet().containsAll(JournalText.COLUMNS)) {
            throw new InputRefused(name + ": the first line is not the heading that we write; it was edited or comes"
                    + " from a newer version; restore it from a backup");
        }
        List<JournalLine> lines = new ArrayList<>();
        for (Optional<Checked<Row>> next = reader.next(); next.isPresent(); next = reader.next()) {
            Row row = row(next.get(), name);
            lines.add(JournalText.read(header.cells(row)).orElseThrow(() -> edited(name, row.line())));
        }
        return new Journal(lines);
    }

    private static Row row(Checked<Row> checked, String name) {
        return checked.value()
                .orElseThrow(() -> edited(name, checked.problems().get(0).at().line()));
    }

    private static InputRefused edited(String name, long line) {
        return new InputRefused(
                name + ":" + line + ": not a line that we write; it was edited; restore the file from a backup");
    }
}
