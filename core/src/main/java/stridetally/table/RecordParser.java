package stridetally.table;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/**
 * One framed record to its cells. Commons CSV's RFC 4180 format defines what a quoted record means; a record without a
 * quoted cell is split at the delimiter, which is the same and costs no parser. A parser is never used after it has
 * thrown: its next call would return an invented record.
 */
public final class RecordParser {
    private final char delimiter;
    private @Nullable CSVFormat format;

    /** For one delimiter. */
    public RecordParser(char delimiter) {
        this.delimiter = delimiter;
    }

    /** The cells of one record without its line end; empty when its quotes do not work out. */
    public Optional<List<String>> cells(String record) {
        if (record.indexOf('"') < 0) {
            char[] text = record.toCharArray();
            return Optional.of(split(text, 0, text.length));
        }
        return parse(record);
    }

    /** The cells of a record without a quoted cell. */
    List<String> split(char[] text, int start, int length) {
        List<String> cells = new ArrayList<>(16);
        int cellStart = start;
        for (int place = start; place < start + length; place++) {
            if (text[place] == delimiter) {
                cells.add(new String(text, cellStart, place - cellStart));
                cellStart = place + 1;
            }
        }
        cells.add(new String(text, cellStart, start + length - cellStart));
        return cells;
    }

    /** Made for the first quoted record; many logs have none. */
    private CSVFormat format() {
        CSVFormat known = format;
        if (known == null) {
            known = CSVFormat.RFC4180.builder().setDelimiter(delimiter).get();
            format = known;
        }
        return known;
    }

    Optional<List<String>> parse(String record) {
        CSVFormat format = format();
        try (CSVParser parser = CSVParser.parse(record, format)) {
            Iterator<CSVRecord> records = parser.iterator();
            if (!records.hasNext()) {
                return Optional.empty();
            }
            List<String> cells = List.of(records.next().values());
            return records.hasNext() ? Optional.empty() : Optional.of(cells);
        } catch (IOException | UncheckedIOException quotesBroken) {
            return Optional.empty();
        }
    }
}
