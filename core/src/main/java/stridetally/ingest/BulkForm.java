package stridetally.ingest;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Optional;
import stridetally.table.Dialect;
import stridetally.table.TableReader;
import stridetally.units.DecimalMark;

/**
 * What the parts of one log share: where it lies, how it is laid out and by which rules it is read.
 *
 * @param asOf tries of a later day are left out and counted
 */
record BulkForm(ByteSource bytes, Dialect dialect, TrialForm form, LogRules rules, LocalDate asOf) {

    /**
     * The form of a log that the fast reader may take: one heading row on the first line, one try a row, and
     * nothing said beyond the cells. Empty when it is another.
     */
    static Optional<BulkForm> of(ByteSource bytes, LogRules rules, LocalDate asOf) throws IOException {
        TextSource text = new TextSource(bytes, StandardCharsets.UTF_8, "");
        Dialect dialect = dialect(text);
        if (dialect.sepLine() || rules.decimals() != DecimalMark.POINT) {
            return Optional.empty();
        }
        FormFinder finder = new FormFinder(bytes.name(), FormMapping.NONE, rules.catalogue(), rules.roster());
        TrialForm form = finder.find(FirstRows.of(text));
        TrialLayout layout = form.first();
        boolean plain = form.lastHeadingLine() == 1
                && form.tries().size() == 1
                && !form.sideBySide()
                && form.said().isEmpty()
                && layout.form().isNone()
                && layout.otherTries().isEmpty()
                && layout.unitOfHeading().isEmpty()
                && form.headings().stream().noneMatch(String::isEmpty)
                && rules.roster().isEmpty()
                && rules.blankHelp().isEmpty();
        return plain ? Optional.of(new BulkForm(bytes, dialect, form, rules, asOf)) : Optional.empty();
    }

    private static Dialect dialect(TextSource text) throws IOException {
        try (Reader reader = text.open()) {
            return TableReader.sniffing(reader, text.bytes().name(), TrialLayout::isKnown)
                    .dialect();
        }
    }

    String name() {
        return bytes.name();
    }

    TrialLayout layout() {
        return form.first();
    }

    int columns() {
        return form.headings().size();
    }

    /** Where a column stands, from 0; below 0 when it is not there. */
    int column(TrialColumn column) {
        return form.first().column(column) - 1;
    }

    /** The records from a place of the file on, of each so many cells at most. */
    ByteRecords records(long position, int cells) throws IOException {
        return new ByteRecords(openAt(position), position, cells, dialect.delimiter());
    }

    /** The bytes from a place of the file on. */
    InputStream openAt(long position) throws IOException {
        InputStream in = bytes.open();
        in.skipNBytes(position);
        return in;
    }
}
