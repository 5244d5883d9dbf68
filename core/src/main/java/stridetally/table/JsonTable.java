package stridetally.table;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;
import java.util.List;

/**
 * An array of objects, one a row, one row a line, with the names of the CSV columns. Numbers are {@code Double.toString},
 * whole numbers stay whole, days are ISO text, a blank is null. Text is not guarded: nothing runs it.
 */
public final class JsonTable implements TableWriter {
    private final Appendable out;
    private final List<String> headings;
    private final JsonGenerator generator;
    private final StringBuilder line = new StringBuilder();
    private boolean first = true;

    /** Opens the array. */
    public JsonTable(Appendable out, List<String> headings) {
        this.out = out;
        this.headings = List.copyOf(headings);
        try {
            generator = new JsonFactory().createGenerator(new LineWriter(line));
            generator.setRootValueSeparator(null);
            out.append('[');
        } catch (IOException cause) {
            throw Writing.refused(cause);
        }
    }

    @Override
    public void row(List<Cell> cells) {
        Writing.checkWidth(cells, headings.size());
        try {
            generator.writeStartObject();
            for (int column = 0; column < headings.size(); column++) {
                generator.writeFieldName(headings.get(column));
                write(cells.get(column));
            }
            generator.writeEndObject();
            generator.flush();
            out.append(first ? "\n" : ",\n").append(line);
            first = false;
            line.setLength(0);
        } catch (IOException cause) {
            throw Writing.refused(cause);
        }
    }

    @Override
    public void finish() {
        try {
            generator.close();
            out.append(first ? "]\n" : "\n]\n");
        } catch (IOException cause) {
            throw Writing.refused(cause);
        }
    }

    private void write(Cell cell) throws IOException {
        if (cell instanceof Cell.Decimal || cell instanceof Cell.Whole) {
            generator.writeNumber(cell.plain());
        } else if (cell instanceof Cell.Blank) {
            generator.writeNull();
        } else {
            generator.writeString(cell.plain());
        }
    }

    /** Gathers one line. */
    private static final class LineWriter extends Writer {
        private final StringBuilder line;

        LineWriter(StringBuilder line) {
            this.line = line;
        }

        @Override
        public void write(char[] text, int offset, int length) {
            line.append(text, offset, length);
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
    }
}
