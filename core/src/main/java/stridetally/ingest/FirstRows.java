package stridetally.ingest;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.problem.Checked;
import stridetally.table.Row;
import stridetally.table.TableReader;

/** The first rows of a table that are not blank, among which its headings stand. */
public final class FirstRows {
    private FirstRows() {}

    /** The rows, with their lines. */
    public static List<Row> of(TextSource text) {
        String name = text.bytes().name();
        try (Reader reader = text.open()) {
            TableReader table = TableReader.sniffing(reader, name, TrialLayout::isKnown);
            List<Row> rows = new ArrayList<>();
            Optional<Checked<Row>> next = table.next();
            while (next.isPresent() && rows.size() < FormFinder.FIRST_ROWS) {
                if (next.get().value().isPresent()) {
                    rows.add(next.get().value().get());
                }
                next = table.next();
            }
            return rows;
        } catch (IOException failed) {
            throw TrialLog.unreadable(name, failed);
        }
    }
}
