package stridetally.ingest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stridetally.measures.Catalogue;
import stridetally.model.StudentCode;
import stridetally.problem.InputRefused;
import stridetally.table.Row;

/**
 * Finds the headings of a file among its first rows, past titles, in one row or two, and what each column holds. Titles
 * that say something for the whole form ({@code Student: S014}) are used and told. Nothing is guessed from the data.
 */
public final class FormFinder {
    /** Headings stand within so many rows that are not blank; our choice. */
    static final int FIRST_ROWS = 30;

    /** How a person gets a mapping to fill in, to be put behind a refusal that speaks of one. */
    public static final String HOW_TO_DRAFT =
            " (import --dry-run -o form.toml writes a mapping with the headings found, to be filled in)";

    /** As many as a sheet of a workbook has; a wider row is no log, and looking for its headings would take for ever. */
    private static final int MOST_COLUMNS = 16_384;

    private final String file;
    private final FormMapping mapping;
    private final Optional<Set<StudentCode>> roster;
    private final HeadingReader reader;

    public FormFinder(String file, FormMapping mapping, Catalogue catalogue, Optional<Set<StudentCode>> roster) {
        this.file = file;
        this.mapping = mapping;
        this.roster = roster;
        this.reader = new HeadingReader(catalogue);
    }

    String file() {
        return file;
    }

    FormMapping mapping() {
        return mapping;
    }

    Optional<Set<StudentCode>> roster() {
        return roster;
    }

    HeadingReader reader() {
        return reader;
    }

    /** The form; refuses a file whose first rows name no student, date, measure and value. */
    public TrialForm find(List<Row> firstRows) {
        if (firstRows.isEmpty()) {
            throw new InputRefused(
                    file + ": no heading row; expected the first row to name student, date, measure and value");
        }
        Optional<TrialForm> found = findIn(firstRows);
        if (found.isEmpty()) {
            throw refusal(firstRows);
        }
        return found.get();
    }

    /** The form, when the first rows have one. */
    public Optional<TrialForm> findIn(List<Row> firstRows) {
        for (Row row : firstRows) {
            if (row.cells().size() > MOST_COLUMNS) {
                throw new InputRefused(file + ":" + row.line() + ": "
                        + row.cells().size() + " columns; expected at most " + MOST_COLUMNS
                        + ", as a sheet has; is this a log of trials, and is the delimiter right?");
            }
        }
        for (int place = 0; place < firstRows.size(); place++) {
            Row row = firstRows.get(place);
            if (mapping.headingRow() > 0 && row.line() != mapping.headingRow()) {
                continue;
            }
            List<Row> above = firstRows.subList(0, place);
            Optional<Row> next =
                    place + 1 < firstRows.size() ? Optional.of(firstRows.get(place + 1)) : Optional.empty();
            Optional<TrialForm> found = at(row, next, above);
            if (found.isPresent()) {
                return found;
            }
            if (new FormAttempt(this, HeadingRows.one(row), above).missing().equals(Set.of(TrialColumn.VALUE))) {
                // Headings of a log without its value: a measure's name in a row below is a cell, not the heading of
                // one.
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    private Optional<TrialForm> at(Row row, Optional<Row> next, List<Row> above) {
        boolean oneOnly = mapping.headingLines() == 1;
        boolean two = next.isPresent() && !oneOnly;
        boolean mustBeTwo =
                two && (mapping.headingLines() == 2 || HeadingRows.qualifies(row, next.orElseThrow(), reader));
        if (mustBeTwo) {
            Optional<TrialForm> joined = form(HeadingRows.two(row, next.orElseThrow(), reader), above);
            if (joined.isPresent()) {
                return joined;
            }
        }
        Optional<TrialForm> alone = form(HeadingRows.one(row), above);
        if (alone.isPresent() || !two) {
            return alone;
        }
        List<Row> withThis = new ArrayList<>(above);
        withThis.add(row);
        boolean nextAlone = form(HeadingRows.one(next.orElseThrow()), withThis).isPresent();
        return nextAlone ? Optional.empty() : form(HeadingRows.two(row, next.orElseThrow(), reader), above);
    }

    private Optional<TrialForm> form(HeadingRows rows, List<Row> above) {
        FormAttempt attempt = new FormAttempt(this, rows, above);
        return attempt.missing().isEmpty() ? Optional.of(attempt.form()) : Optional.empty();
    }

    /** What a person is to be told of a file that has no form: the sentence on its most likely headings. */
    public InputRefused refusal(List<Row> firstRows) {
        return DaysAcross.in(firstRows)
                .map(row -> DaysAcross.refusal(file, row))
                .orElseGet(() -> likely(firstRows).refusal(file));
    }

    /** Whether the most likely headings stand below the first row, under titles. */
    public boolean headedBelow(List<Row> firstRows) {
        FormAttempt likely = likely(firstRows);
        return likely.plain() > 1 && likely.line() > firstRows.get(0).line();
    }

    /** Whether the most likely headings name two students a row. */
    public boolean holdsTwoStudents(List<Row> firstRows) {
        return likely(firstRows).twoStudents().isPresent();
    }

    /** Whether the days stand in one row. */
    public static boolean liesOnItsSide(List<Row> firstRows) {
        return DaysAcross.in(firstRows).isPresent();
    }

    /** A mapping of the most likely headings, to be filled in by hand. */
    public FormMapping draft(List<Row> firstRows) {
        if (liesOnItsSide(firstRows)) {
            return mapping;
        }
        FormAttempt best = new FormAttempt(this, HeadingRows.one(firstRows.get(0)), List.of());
        for (Row row : firstRows) {
            FormAttempt attempt = new FormAttempt(this, HeadingRows.one(row), List.of());
            boolean wider = attempt.plain() == best.plain() && attempt.filled() > best.filled();
            if (attempt.plain() > best.plain() || wider) {
                best = attempt;
            }
        }
        return best.draft();
    }

    private FormAttempt likely(List<Row> firstRows) {
        FormAttempt best = new FormAttempt(this, HeadingRows.one(firstRows.get(0)), List.of());
        for (Row row : firstRows) {
            FormAttempt attempt = new FormAttempt(this, HeadingRows.one(row), List.of());
            if (attempt.found() > best.found()) {
                best = attempt;
            }
        }
        return best;
    }
}
