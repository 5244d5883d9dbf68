package stridetally.table;

import java.io.BufferedReader;
import java.io.CharArrayReader;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import stridetally.problem.At;
import stridetally.problem.Checked;
import stridetally.problem.ProblemCode;
import stridetally.problem.RowProblem;

/**
 * Reads a table record by record; nothing is collected. A record with broken quotes is told with its line and reading
 * goes on at the next physical line. Blank lines are counted. Cells come as written, blanks and all.
 */
public final class TableReader {
    private static final int SNIFFED_CHARACTERS = 1 << 16;
    private static final int SNIFFED_LINES = 20;

    private final LineFraming framing;
    private final RecordParser parser;
    private final String file;
    private final Dialect dialect;
    private long blankLines;

    /** Over a stream whose dialect is known; {@code file} is the name for messages. */
    public TableReader(Reader reader, String file, Dialect dialect) {
        this(new LineFraming(reader, file, dialect.delimiter()), file, dialect);
    }

    TableReader(LineFraming framing, String file, Dialect dialect) {
        this.framing = framing;
        this.parser = new RecordParser(dialect.delimiter());
        this.file = file;
        this.dialect = dialect;
        if (dialect.sepLine()) {
            framing.next();
        }
    }

    /** Chooses the dialect by the first lines and the headings known, see {@link Dialect#sniff}. */
    public static TableReader sniffing(Reader reader, String file, Predicate<String> knownHeading) {
        BufferedReader buffered = new BufferedReader(reader, SNIFFED_CHARACTERS);
        return new TableReader(buffered, file, Dialect.sniff(firstLines(buffered, file), knownHeading));
    }

    /**
     * Over a stream that begins within a file, at the start of a record on the given line; so many characters are expected
     * to be needed.
     */
    public static TableReader within(Reader reader, String file, Dialect dialect, long line, int size) {
        LineFraming framing = LineFraming.within(reader, file, dialect.delimiter(), line, size);
        return new TableReader(framing, file, Dialect.of(dialect.delimiter()));
    }

    /**
     * Pushes one record.
     *
     * @return characters of the stream up to the start of the next record
     */
    public long one(RowSink sink) {
        step(sink);
        return framing.behind();
    }

    /** The line on which the next record begins. */
    public long nextLine() {
        return framing.followingLine();
    }

    /** A problem of a part of a file that was counted from its own first line, so many lines further down. */
    public static RowProblem moved(RowProblem problem, long lines) {
        At at = problem.at();
        return new RowProblem(
                problem.code(),
                new At(at.file(), at.line() + lines, at.column(), at.heading()),
                problem.found(),
                problem.expected(),
                problem.mend().replace(goesOn(at.line()), goesOn(at.line() + lines)));
    }

    private static String goesOn(long line) {
        return "; reading went on at line " + (line + 1);
    }

    /** The dialect in use. */
    public Dialect dialect() {
        return dialect;
    }

    /** Blank lines and rows of blank cells so far. */
    public long blankLines() {
        return blankLines;
    }

    /** The next row that is not blank, or what is wrong with it; empty at the end. */
    public Optional<Checked<Row>> next() {
        One one = new One();
        while (one.found.isEmpty() && step(one)) {
            // Blank rows are counted on the way.
        }
        return one.found;
    }

    /** Pushes all that is left. */
    public void forEach(RowSink sink) {
        while (step(sink)) {
            // One record each.
        }
    }

    private boolean step(RowSink sink) {
        LineFraming.Found found = framing.next();
        if (found == LineFraming.Found.END) {
            return false;
        }
        if (found == LineFraming.Found.RECORD) {
            give(sink);
        } else {
            sink.problem(problem(found), framing.written());
        }
        return true;
    }

    private void give(RowSink sink) {
        long line = framing.startLine();
        Optional<List<String>> cells = framing.quoted()
                ? parser.parse(framing.text())
                : Optional.of(parser.split(framing.buffer(), framing.start(), framing.length()));
        if (cells.isEmpty()) {
            sink.problem(problem(LineFraming.Found.BROKEN_QUOTE), framing.text());
            return;
        }
        Row row = new Row(line, cells.get());
        if (row.blank()) {
            blankLines++;
            sink.blank(line);
        } else {
            sink.row(row);
        }
    }

    private RowProblem problem(LineFraming.Found found) {
        At at = new At(file, framing.startLine(), framing.column(), "");
        String goesOn = goesOn(framing.startLine());
        if (found == LineFraming.Found.TOO_LONG) {
            return new RowProblem(
                    ProblemCode.ROW_TOO_LONG,
                    At.row(file, framing.startLine()),
                    "",
                    "at most " + LineFraming.LONGEST_RECORD + " characters in a row",
                    "check that the file is a table" + goesOn);
        }
        if (found == LineFraming.Found.UNCLOSED_QUOTE) {
            return new RowProblem(
                    ProblemCode.QUOTE_BROKEN,
                    at,
                    "",
                    "a closing quote mark for the cell that opens with one here",
                    "close it or take the quote mark out" + goesOn);
        }
        return new RowProblem(
                ProblemCode.QUOTE_BROKEN,
                at,
                "",
                "nothing between a closing quote mark and the next column",
                "close the cell or double the quote marks inside it" + goesOn);
    }

    private static List<String> firstLines(BufferedReader buffered, String file) {
        try {
            buffered.mark(SNIFFED_CHARACTERS);
            char[] text = new char[SNIFFED_CHARACTERS];
            int length = 0;
            int count = 0;
            while (count >= 0 && length < text.length) {
                length += count;
                count = length < text.length ? buffered.read(text, length, text.length - length) : -1;
            }
            buffered.reset();
            BufferedReader start = new BufferedReader(new CharArrayReader(text, 0, length));
            List<String> lines = new ArrayList<>();
            String line = start.readLine();
            while (line != null && lines.size() < SNIFFED_LINES) {
                lines.add(line);
                line = start.readLine();
            }
            return lines;
        } catch (IOException unreadable) {
            throw CharWindow.refusal(unreadable, file, 1);
        }
    }

    /** Holds the one record that {@link #next()} asks for. */
    private static final class One implements RowSink {
        private Optional<Checked<Row>> found = Optional.empty();

        @Override
        public void row(Row row) {
            found = Optional.of(Checked.fine(row));
        }

        @Override
        public void problem(RowProblem problem, String written) {
            found = Optional.of(Checked.setAside(List.of(problem)));
        }
    }
}
