package stridetally.logbook;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import stridetally.problem.At;
import stridetally.problem.Checked;
import stridetally.problem.InputRefused;
import stridetally.problem.OutputRefused;
import stridetally.problem.ProblemCode;
import stridetally.problem.RowProblem;
import stridetally.problem.Spelling;
import stridetally.table.Cells;
import stridetally.table.Header;
import stridetally.table.Row;
import stridetally.table.TableReader;

/**
 * A hand-kept table as it stands: its rows by column names, and what is odd about it. UTF-8, any of the usual delimiters.
 * A missing file has no rows. An unknown column is told with the name that was probably meant. Small: held whole.
 *
 * @param file the name for messages
 * @param present whether there is such a file
 */
record KeptTable(String file, boolean present, List<Cells> rows, List<RowProblem> problems) {
    KeptTable {
        rows = List.copyOf(rows);
        problems = List.copyOf(problems);
    }

    static KeptTable none(String file) {
        return new KeptTable(file, false, List.of(), List.of());
    }

    static KeptTable read(Path path, String file, List<String> columns) {
        if (!Files.exists(path)) {
            return none(file);
        }
        try (Reader reader = new InputStreamReader(Files.newInputStream(path), StandardCharsets.UTF_8.newDecoder())) {
            return read(reader, file, columns);
        } catch (IOException unreadable) {
            throw new OutputRefused(file + " cannot be read; check the disk and its permissions", unreadable);
        }
    }

    /** Every column is kept when {@code columns} is empty. */
    static KeptTable read(Reader reader, String file, List<String> columns) {
        Set<String> known = new HashSet<>(columns);
        TableReader table = TableReader.sniffing(reader, file, heading -> known.contains(fold(heading)));
        Optional<Checked<Row>> first = table.next();
        if (first.isEmpty()) {
            return new KeptTable(file, true, List.of(), List.of());
        }
        Row heading = first.get()
                .value()
                .orElseThrow(
                        () -> new InputRefused(first.get().problems().get(0).sentence()));
        Header header = Header.of(file, heading, KeptTable::fold).withoutTwice();
        List<RowProblem> problems = new ArrayList<>(unknown(header, columns));
        List<Cells> rows = new ArrayList<>();
        for (Optional<Checked<Row>> next = table.next(); next.isPresent(); next = table.next()) {
            problems.addAll(next.get().problems());
            if (next.get().value().isPresent()) {
                add(header, next.get().value().get(), rows, problems);
            }
        }
        return new KeptTable(file, true, rows, problems);
    }

    /** The heading as a column name: lower case, every run of signs and blanks as one underscore. */
    static String fold(String heading) {
        String lower = heading.strip().toLowerCase(Locale.ROOT);
        StringBuilder folded = new StringBuilder(lower.length());
        boolean gap = false;
        for (int place = 0; place < lower.length(); ) {
            int letter = lower.codePointAt(place);
            place += Character.charCount(letter);
            if (!isWord(letter)) {
                gap = true;
                continue;
            }
            if (gap && folded.length() > 0) {
                folded.append('_');
            }
            gap = false;
            folded.appendCodePoint(letter);
        }
        return folded.toString();
    }

    /** A letter or a number of any script. */
    private static boolean isWord(int letter) {
        int type = Character.getType(letter);
        return Character.isLetter(letter)
                || type == Character.DECIMAL_DIGIT_NUMBER
                || type == Character.LETTER_NUMBER
                || type == Character.OTHER_NUMBER;
    }

    /** Refuses the file when a column is missing without which no row says anything. */
    KeptTable requiring(Collection<String> required) {
        if (!rows.isEmpty()) {
            Header header = rows.get(0).header();
            for (String column : required.stream().sorted().toList()) {
                if (!header.has(column)) {
                    throw new InputRefused(file + ":" + header.line() + ": there is no column \"" + column
                            + "\"; found " + String.join(", ", header.headings()) + "; add it or correct its heading");
                }
            }
        }
        return this;
    }

    private static void add(Header header, Row row, List<Cells> rows, List<RowProblem> problems) {
        int width = header.headings().size();
        List<String> beyond = row.cells()
                .subList(Math.min(width, row.cells().size()), row.cells().size());
        if (String.join("", beyond).isBlank()) {
            rows.add(header.cells(row));
            return;
        }
        problems.add(new RowProblem(
                ProblemCode.CELLS_TOO_MANY,
                At.row(header.file(), row.line()),
                "",
                width + " cells, found " + row.cells().size(),
                "put quote marks around a cell that holds the delimiter"));
    }

    private static List<RowProblem> unknown(Header header, List<String> columns) {
        List<RowProblem> problems = new ArrayList<>();
        for (String name :
                columns.isEmpty() ? Set.<String>of() : header.columns().keySet()) {
            if (!columns.contains(name)) {
                int column = header.column(name).orElseThrow();
                String heading = header.headings().get(column);
                problems.add(new RowProblem(
                        ProblemCode.COLUMN_UNKNOWN,
                        new At(header.file(), header.line(), column + 1, heading),
                        heading,
                        "one of " + String.join(", ", columns),
                        Spelling.nearest(name, columns)
                                .map(near -> "did you mean " + near + "? The column is not read")
                                .orElse("the column is not read")));
            }
        }
        return problems;
    }
}
