package stridetally.table;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * A pipe table for people: columns aligned, numbers to the right and rounded half up on their decimal text to the decimals
 * of the cell. Holds its rows until it is finished, since the widths depend on all of them.
 */
public final class MarkdownTable implements TableWriter {
    private final Appendable out;
    private final int columns;
    private final int[] widths;
    private final boolean[] words;
    private final List<List<String>> lines = new ArrayList<>();

    /** A table with these headings. */
    public MarkdownTable(Appendable out, List<String> headings) {
        this.out = out;
        this.columns = headings.size();
        this.widths = new int[columns];
        this.words = new boolean[columns];
        List<String> line = new ArrayList<>();
        for (String heading : headings) {
            line.add(MarkdownText.escape(heading));
        }
        keep(line);
    }

    @Override
    public void row(List<Cell> cells) {
        Writing.checkWidth(cells, columns);
        List<String> line = new ArrayList<>();
        for (int column = 0; column < columns; column++) {
            Cell cell = cells.get(column);
            line.add(shown(cell));
            words[column] |=
                    !(cell instanceof Cell.Decimal || cell instanceof Cell.Whole || cell instanceof Cell.Blank);
        }
        keep(line);
    }

    @Override
    public void finish() {
        try {
            writeLine(lines.get(0));
            writeRule();
            for (List<String> line : lines.subList(1, lines.size())) {
                writeLine(line);
            }
        } catch (IOException cause) {
            throw Writing.refused(cause);
        }
    }

    /** How a cell reads to a person. */
    static String shown(Cell cell) {
        if (cell instanceof Cell.Decimal number) {
            BigDecimal exact = new BigDecimal(Double.toString(number.value()));
            if (number.decimals().isPresent()) {
                return exact.setScale(number.decimals().getAsInt(), RoundingMode.HALF_UP)
                        .toPlainString();
            }
            BigDecimal plain = exact.stripTrailingZeros();
            return plain.scale() < 0 ? plain.setScale(0).toPlainString() : plain.toPlainString();
        }
        return cell instanceof Cell.Whole ? cell.plain() : MarkdownText.escape(cell.plain());
    }

    private void keep(List<String> line) {
        for (int column = 0; column < columns; column++) {
            widths[column] = Math.max(Math.max(3, widths[column]), width(line.get(column)));
        }
        lines.add(line);
    }

    private void writeLine(List<String> line) throws IOException {
        for (int column = 0; column < columns; column++) {
            String text = line.get(column);
            String gap = " ".repeat(widths[column] - width(text));
            out.append("| ").append(isRight(column) ? gap + text : text + gap).append(' ');
        }
        out.append("|\n");
    }

    private void writeRule() throws IOException {
        for (int column = 0; column < columns; column++) {
            String dashes = "-".repeat(widths[column] - 1);
            out.append("| ")
                    .append(isRight(column) ? dashes + ":" : dashes + "-")
                    .append(' ');
        }
        out.append("|\n");
    }

    private boolean isRight(int column) {
        return !words[column] && lines.size() > 1;
    }

    private static int width(String text) {
        return text.codePointCount(0, text.length());
    }
}
