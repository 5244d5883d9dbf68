package stridetally.ingest;

import java.util.Optional;
import stridetally.problem.RowProblem;
import stridetally.table.Row;
import stridetally.table.RowSink;
import stridetally.units.DecimalMark;

/** The first pass: what the whole file proves. */
final class FileProof implements RowSink {
    private final TrialForm form;
    private final DateOrderProof dates;
    private final DecimalProof decimals = new DecimalProof();
    private final RowEnds ends;
    private boolean any;

    FileProof(String name, TrialForm form) {
        this.form = form;
        this.dates = new DateOrderProof(name, form.first());
        this.ends = new RowEnds(name, form);
    }

    @Override
    public void row(Row row) {
        if (row.line() <= form.lastHeadingLine()) {
            return;
        }
        any = true;
        if (ends.isNoTry(row)) {
            return;
        }
        dates.look(row);
        for (TrialLayout layout : form.tries()) {
            decimals.look(row, layout);
        }
    }

    @Override
    public void problem(RowProblem problem, String written) {
        any = any || problem.at().line() > form.lastHeadingLine();
    }

    @Override
    public void blank(long line) {
        ends.blank();
    }

    /** Whether there is any row. */
    boolean any() {
        return any;
    }

    /** The rules with the date order and the decimal mark that are proven. */
    LogRules rules(LogRules said) {
        LogRules proven = dayNumbers() ? said : said.with(dates.order(said.order()));
        return decimals.comma(said.decimals()).isPresent() ? proven.with(DecimalMark.COMMA) : proven;
    }

    /** The form with what was proven of it. */
    TrialForm form(LogRules said) {
        TrialForm known = form;
        if (dayNumbers()) {
            known = known.with(
                    DayCount.SPREADSHEET,
                    "every date is a spreadsheet's day number, read in the usual system (45717 is 2025-03-01); if the"
                            + " dates are four years early, format the column as a date and save again");
        }
        Optional<Long> comma = decimals.comma(said.decimals());
        return comma.isPresent()
                ? known.noting("read with a decimal comma, which line " + comma.get() + " proves")
                : known;
    }

    private boolean dayNumbers() {
        return dates.countsDays() && form.first().form().dayCount().isEmpty();
    }
}
