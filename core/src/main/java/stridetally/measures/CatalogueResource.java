package stridetally.measures;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Opens the files that come with the program: {@code measures.csv} and {@code sources.csv}. The only place that does. They
 * are our own, one record a line, quoted where a comma needs it; a fault in them is a defect and throws.
 */
final class CatalogueResource {

    private CatalogueResource() {}

    /** The records of a file, each with its headings. */
    static List<Map<String, String>> records(String file) {
        try (InputStream bytes = CatalogueResource.class.getResourceAsStream(file)) {
            if (bytes == null) {
                throw new IllegalStateException("the program was packed without " + file);
            }
            return records(file, new BufferedReader(new InputStreamReader(bytes, StandardCharsets.UTF_8)));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static List<Map<String, String>> records(String file, BufferedReader lines) throws IOException {
        List<Map<String, String>> records = new ArrayList<>();
        List<String> headings = null;
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            List<String> cells = cells(line);
            if (headings == null) {
                headings = cells;
                continue;
            }
            if (cells.size() != headings.size()) {
                throw new IllegalStateException(file + ": " + cells.size() + " cells in the row of " + cells.get(0));
            }
            Map<String, String> record = new LinkedHashMap<>();
            for (int i = 0; i < cells.size(); i++) {
                record.put(headings.get(i), cells.get(i));
            }
            records.add(record);
        }
        return records;
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char letter = line.charAt(i);
            if (letter == '"' && quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                cell.append(letter);
                i++;
            } else if (letter == '"') {
                quoted = !quoted;
            } else if (letter == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(letter);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
