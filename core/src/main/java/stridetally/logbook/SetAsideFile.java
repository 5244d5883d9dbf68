package stridetally.logbook;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.problem.Checked;
import stridetally.problem.OutputRefused;
import stridetally.table.Dialect;
import stridetally.table.Row;
import stridetally.table.TableReader;

/** The file of the rows that an entry set aside. */
final class SetAsideFile {
    private SetAsideFile() {}

    /** All its rows, closed ones too. Refuses one that was changed since. */
    static List<SetAsideRecord> read(LogbookFolder folder, Entry entry) {
        Path file = folder.setAside(entry.number());
        String name = folder.name(file);
        EntryReader.EntryFiles.verify(file, name, entry.setAsideHash());
        List<SetAsideRecord> records = new ArrayList<>();
        try (Reader reader = new InputStreamReader(Files.newInputStream(file), StandardCharsets.UTF_8.newDecoder())) {
            TableReader table = new TableReader(reader, name, Dialect.COMMA);
            Row heading = row(table.next().orElseThrow(() -> EntryReader.EntryFiles.changed(name)), name);
            for (Optional<Checked<Row>> next = table.next(); next.isPresent(); next = table.next()) {
                records.add(SetAsideText.read(entry.number(), heading, row(next.get(), name)));
            }
        } catch (IOException unreadable) {
            throw new OutputRefused(name + " cannot be read; check the disk and its permissions", unreadable);
        }
        return records;
    }

    private static Row row(Checked<Row> checked, String name) {
        return checked.value().orElseThrow(() -> EntryReader.EntryFiles.changed(name));
    }
}
