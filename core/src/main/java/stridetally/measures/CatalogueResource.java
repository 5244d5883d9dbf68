package stridetally.measures;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stridetally.problem.Checked;
import stridetally.table.Cells;
import stridetally.table.Dialect;
import stridetally.table.Header;
import stridetally.table.Row;
import stridetally.table.TableReader;

/**
 * Opens the files that come with the program: {@code measures.csv} and {@code sources.csv}. The only place that does. They
 * are our own, so a fault in them is a defect and throws.
 */
final class CatalogueResource {

    private CatalogueResource() {}

    /** The records of a file, each with its headings. */
    static List<Map<String, String>> records(String file) {
        List<Map<String, String>> records = new ArrayList<>();
        for (Cells cells : rows(file)) {
            Map<String, String> record = new LinkedHashMap<>();
            for (String heading : cells.header().headings()) {
                record.put(heading, cells.text(heading));
            }
            records.add(record);
        }
        return records;
    }

    /** The records of a file, each with its place. */
    static List<Cells> rows(String file) {
        try (InputStream bytes = CatalogueResource.class.getResourceAsStream(file)) {
            if (bytes == null) {
                throw new IllegalStateException("the program was packed without " + file);
            }
            InputStreamReader text = new InputStreamReader(bytes, StandardCharsets.UTF_8);
            return rows(file, new TableReader(text, file, Dialect.COMMA));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static List<Cells> rows(String file, TableReader table) {
        Header header = Header.of(file, row(file, table.next().orElseThrow()), heading -> heading);
        List<Cells> rows = new ArrayList<>();
        for (Optional<Checked<Row>> next = table.next(); next.isPresent(); next = table.next()) {
            Row row = row(file, next.get());
            if (row.cells().size() != header.headings().size()) {
                throw new IllegalStateException(file + ":" + row.line() + ": not as many cells as headings");
            }
            rows.add(header.cells(row));
        }
        return rows;
    }

    private static Row row(String file, Checked<Row> read) {
        return read.value().orElseThrow(() -> new IllegalStateException(file + ": " + read.problems()));
    }
}
