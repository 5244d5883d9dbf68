package stridetally.ingest;

import java.util.Optional;
import java.util.regex.Pattern;
import stridetally.table.Row;
import stridetally.units.DecimalMark;
import stridetally.units.Folding;

/**
 * Proves from the whole of the value columns that a file writes a decimal comma: a cell such as {@code 12,5} cannot hold
 * a thousands mark, and no cell holds a point. {@code 1,234} by itself proves nothing.
 */
final class DecimalProof {
    /** Made when the first value comes that is no plain decimal. */
    private static final class Shapes {
        static final Pattern COMMA = Pattern.compile("\\D*\\d*,(?:\\d{1,2}|\\d{4,})(?:\\D.*)?");
        static final Pattern POINT = Pattern.compile(".*(?:\\d\\.\\d|(?:^|[^\\d])\\.\\d).*");
    }

    private Optional<Long> commaLine = Optional.empty();
    private boolean point;

    void look(Row row, TrialLayout layout) {
        String written = layout.written(row.cells(), TrialColumn.VALUE);
        if (written.indexOf(',') < 0 && written.indexOf('.') < 0) {
            return;
        }
        if (isPlainDecimal(written)) {
            point = true;
            return;
        }
        point = point || Shapes.POINT.matcher(written).matches();
        if (commaLine.isEmpty() && Shapes.COMMA.matcher(written).matches()) {
            commaLine = Optional.of(row.line());
        }
    }

    /** {@code 8.41}, as most are written. */
    private static boolean isPlainDecimal(String written) {
        int mark = written.indexOf('.');
        return mark > 0
                && Folding.isDigits(written.substring(0, mark), written.length())
                && Folding.isDigits(written.substring(mark + 1), written.length());
    }

    /** Takes over what other cells of the file prove; only whether there was one counts, not where. */
    void add(DecimalProof other) {
        point = point || other.point;
        commaLine = commaLine.or(() -> other.commaLine);
    }

    /** A value with a point was seen elsewhere. */
    void pointSeen() {
        point = true;
    }

    /** The line that proves a decimal comma, when one does and no other speaks against it. */
    Optional<Long> comma(DecimalMark declared) {
        return declared == DecimalMark.POINT && !point ? commaLine : Optional.empty();
    }
}
