package stridetally.cli.output;

import stridetally.cli.files.Content;
import stridetally.cli.input.ObservedTries;
import stridetally.cli.options.Format;
import stridetally.report.AgreementRows;
import stridetally.table.TableWriter;

/** The table of {@code score --agreement}. */
public final class AgreementOutput {
    private AgreementOutput() {}

    /** The figures of every measure and every two observers who saw the same tries of it. */
    public static Content of(ObservedTries observed, Format format) {
        return Content.text(out -> {
            TableWriter table = Tables.open(format, out, AgreementRows.HEADINGS);
            AgreementRows rows = new AgreementRows(
                    observed.settings().help(), observed.settings().prompt());
            observed.pairs()
                    .byMeasure()
                    .forEach((id, both) -> observed.catalogue()
                            .find(id)
                            .ifPresent(measure ->
                                    both.forEach(two -> rows.rows(measure, two).forEach(table::row))));
            table.finish();
        });
    }
}
