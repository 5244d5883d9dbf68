package stridetally.ingest;

import java.util.Optional;
import stridetally.problem.InputRefused;
import stridetally.table.Row;

/**
 * Proves from a whole date column in which order {@code a/b/yyyy} is written: a part over 12 is a day, and no cell may
 * say otherwise. Nothing is guessed from a place or a language.
 */
final class DateOrderProof {
    private final String file;
    private final TrialLayout layout;
    private Optional<String> dayFirst = Optional.empty();
    private Optional<String> monthFirst = Optional.empty();
    private Optional<String> open = Optional.empty();

    DateOrderProof(String file, TrialLayout layout) {
        this.file = file;
        this.layout = layout;
    }

    void look(Row row) {
        String written = layout.text(row.cells(), TrialColumn.DATE);
        switch (DayText.proves(written)) {
            case DAY_FIRST -> dayFirst = dayFirst.or(() -> Optional.of(place(row, written)));
            case MONTH_FIRST -> monthFirst = monthFirst.or(() -> Optional.of(place(row, written)));
            case UNPROVEN -> {
                if (open.isEmpty() && DayText.needsOrder(written)) {
                    open = Optional.of(place(row, written));
                }
            }
        }
    }

    private String place(Row row, String written) {
        return file + ":" + row.line() + ":" + layout.column(TrialColumn.DATE) + " \"" + written + "\"";
    }

    /** The order, declared or proven. Refuses a column that contradicts itself, or whose order stays uncertain. */
    DateOrder order(DateOrder declared) {
        if (declared != DateOrder.UNPROVEN) {
            return declared;
        }
        if (dayFirst.isPresent() && monthFirst.isPresent()) {
            throw new InputRefused("dates in two orders: " + dayFirst.get() + " has the day first, " + monthFirst.get()
                    + " the month; say --date-order day-first or --date-order month-first, and what does not fit is set"
                    + " aside");
        }
        if (dayFirst.isPresent()) {
            return DateOrder.DAY_FIRST;
        }
        if (monthFirst.isPresent()) {
            return DateOrder.MONTH_FIRST;
        }
        if (open.isPresent()) {
            throw new InputRefused(open.get()
                    + " could be day or month first, and no date of the file proves which; say --date-order day-first"
                    + " or --date-order month-first");
        }
        return DateOrder.UNPROVEN;
    }
}
