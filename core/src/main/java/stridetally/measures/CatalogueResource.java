package stridetally.measures;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
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
 * Opens the files that come with the program, such as {@code measures.tsv} and {@code sources.csv}. The only place that
 * does. They are our own, so a fault in them is a defect and throws. The measures are separated by tabs because their
 * cautions hold commas: a file without quotes needs no parser, and every run reads them.
 */
final class CatalogueResource {

    private CatalogueResource() {}

    /** The lines of a file of ours that is separated by tabs and has no quotes; the first holds the headings. */
    static List<List<String>> tabbed(String file) {
        List<List<String>> rows = new ArrayList<>();
        try (BufferedReader lines = new BufferedReader(open(file))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                List<String> cells = new ArrayList<>();
                int from = 0;
                for (int tab = line.indexOf('\t'); tab >= 0; tab = line.indexOf('\t', from)) {
                    cells.add(line.substring(from, tab));
                    from = tab + 1;
                }
                cells.add(line.substring(from));
                rows.add(cells);
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return rows;
    }

    private static Reader open(String file) {
        InputStream bytes = CatalogueResource.class.getResourceAsStream(file);
        if (bytes == null) {
            throw new IllegalStateException("the program was packed without " + file);
        }
        return new InputStreamReader(bytes, StandardCharsets.UTF_8);
    }

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
        try (Reader text = open(file)) {
            return rows(file, new TableReader(text, file, file.endsWith(".tsv") ? Dialect.of('\t') : Dialect.COMMA));
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
