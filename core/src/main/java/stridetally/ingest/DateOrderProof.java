package stridetally.ingest;

import java.util.Optional;
import stridetally.problem.At;
import stridetally.problem.InputRefused;
import stridetally.table.Row;
import stridetally.units.Folding;

/**
 * Proves from a whole date column in which order {@code a/b/yyyy} is written: a part over 12 is a day, and no cell may
 * say otherwise. Nothing is guessed from a place or a language.
 */
final class DateOrderProof {
    private final String file;
    private final TrialLayout layout;
    /** A spreadsheet's day numbers of 1954 to 2119; our choice. */
    private static final int FIRST_NUMBER = 20_000;

    private static final int LAST_NUMBER = 80_000;

    private long dates;
    private long dayNumbers;
    private Optional<String> dayFirst = Optional.empty();
    private Optional<String> monthFirst = Optional.empty();
    private Optional<String> open = Optional.empty();

    DateOrderProof(String file, TrialLayout layout) {
        this.file = file;
        this.layout = layout;
    }

    void look(Row row) {
        String written = layout.text(row.cells(), TrialColumn.DATE);
        dates += written.isEmpty() ? 0 : 1;
        dayNumbers += isDayNumber(written) ? 1 : 0;
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
        return new At(file, row.line(), layout.column(TrialColumn.DATE), "").text() + " \"" + written + "\"";
    }

    /** Whether every date of the file is a spreadsheet's day number. */
    boolean countsDays() {
        return dates > 0 && dayNumbers == dates;
    }

    private static boolean isDayNumber(String written) {
        if (written.length() != 5 || !Folding.isDigits(written, 5)) {
            return false;
        }
        int number = Integer.parseInt(written);
        return number >= FIRST_NUMBER && number <= LAST_NUMBER;
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
