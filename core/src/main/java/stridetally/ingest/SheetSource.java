package stridetally.ingest;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * One sheet of a workbook as a table of text: a line a row, so that places are the sheet's own. Its name ends as {@code
 * book.xlsx[Sheet1]!}, see {@link stridetally.problem.At}.
 */
final class SheetSource implements ByteSource {
    private final String name;
    private final String shortName;
    private final byte[] bytes;

    SheetSource(ByteSource book, String sheet, List<List<String>> rows) {
        this.name = book.name() + "[" + sheet + "]!";
        this.shortName = book.shortName() + "[" + sheet + "]!";
        this.bytes = text(rows).getBytes(StandardCharsets.UTF_8);
    }

    /** The sheet of such a name. */
    static Optional<String> sheetOf(String name) {
        int open = name.lastIndexOf('[');
        return name.endsWith("]!") && open >= 0
                ? Optional.of(name.substring(open + 1, name.length() - 2))
                : Optional.empty();
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String shortName() {
        return shortName;
    }

    @Override
    public long size() {
        return bytes.length;
    }

    @Override
    public InputStream open() {
        return new ByteArrayInputStream(bytes);
    }

    private static String text(List<List<String>> rows) {
        int width = rows.stream().mapToInt(List::size).max().orElse(0);
        StringBuilder text = new StringBuilder();
        for (List<String> row : rows) {
            for (int column = 0; column < width; column++) {
                text.append(column == 0 ? "" : ",").append(column < row.size() ? quoted(row.get(column)) : "");
            }
            text.append('\n');
        }
        return text.toString();
    }

    /** A line break inside a cell would move every row below it; it is read as a space. */
    private static String quoted(String cell) {
        String line = cell.replaceAll("\\s*[\\r\\n\\u2028\\u2029]+\\s*", " ");
        return line.indexOf(',') >= 0 || line.indexOf('"') >= 0 ? '"' + line.replace("\"", "\"\"") + '"' : line;
    }
}
