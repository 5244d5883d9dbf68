package stridetally.ingest;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stridetally.measures.Catalogue;
import stridetally.model.StudentCode;
import stridetally.problem.InputRefused;
import stridetally.problem.Spelling;
import stridetally.table.Row;

/**
 * Finds the headings of a file among its first rows, past titles, in one row or two, and what each column holds. Titles
 * that say something for the whole form ({@code Student: S014}) are used and told. Nothing is guessed from the data.
 */
public final class FormFinder {
    /** Headings stand within so many rows that are not blank; our choice. */
    static final int FIRST_ROWS = 30;

    private static final Set<TrialColumn> REQUIRED =
            EnumSet.of(TrialColumn.STUDENT, TrialColumn.DATE, TrialColumn.MEASURE, TrialColumn.VALUE);
    private static final Set<TrialColumn> FROM_TITLES = EnumSet.of(
            TrialColumn.STUDENT,
            TrialColumn.DATE,
            TrialColumn.MEASURE,
            TrialColumn.SESSION,
            TrialColumn.PLACE,
            TrialColumn.OBSERVER,
            TrialColumn.PROTOCOL,
            TrialColumn.SIDE);
    private static final Set<TrialColumn> MAY_BE_NAMES = EnumSet.of(TrialColumn.STUDENT, TrialColumn.OBSERVER);

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

    /** The form; refuses a file whose first rows name no student, date, measure and value. */
    public TrialForm find(List<Row> firstRows) {
        if (firstRows.isEmpty()) {
            throw new InputRefused(
                    file + ": no heading row; expected the first row to name student, date, measure and value");
        }
        return findIn(firstRows).orElseThrow(() -> refusal(firstRows));
    }

    /** The form, when the first rows have one. */
    public Optional<TrialForm> findIn(List<Row> firstRows) {
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
        Attempt attempt = new Attempt(rows, above);
        return attempt.missing().isEmpty() ? Optional.of(attempt.form()) : Optional.empty();
    }

    private InputRefused refusal(List<Row> firstRows) {
        Attempt best = new Attempt(HeadingRows.one(firstRows.get(0)), List.of());
        for (Row row : firstRows) {
            Attempt attempt = new Attempt(HeadingRows.one(row), List.of());
            if (attempt.found() > best.found()) {
                best = attempt;
            }
        }
        return best.refusal(file);
    }

    /** One reading of one or two rows as headings. */
    private final class Attempt {
        private final HeadingRows rows;
        private final List<ColumnMeaning> columns;
        private final List<String> notes = new ArrayList<>();
        private final Map<TrialColumn, String> titles;
        private final List<String> unknown = new ArrayList<>();

        Attempt(HeadingRows rows, List<Row> above) {
            this.rows = rows;
            this.columns = meanings();
            this.titles = titles(above);
        }

        private List<ColumnMeaning> meanings() {
            List<ColumnMeaning> read = new ArrayList<>();
            long numbers =
                    rows.headings().stream().filter(HeadingReader::isNumber).count();
            for (String heading : rows.headings()) {
                read.add(mapping.of(heading)
                        .or(() -> numbers < 2 && HeadingReader.isNumber(heading)
                                ? Optional.empty()
                                : reader.read(heading))
                        .orElseGet(() -> new ColumnMeaning(
                                Optional.empty(), Map.of(), "", heading.isEmpty() ? "no heading" : "not known")));
            }
            boolean headings = read.stream().anyMatch(one -> one.column().isPresent());
            if (headings && read.stream().noneMatch(one -> one.column().equals(Optional.of(TrialColumn.VALUE)))) {
                unitsAsValues(read);
            }
            for (int column = 0; column < read.size(); column++) {
                String heading = rows.headings().get(column);
                boolean told = read.get(column).why().equals("not known");
                if (told && !OurColumns.isExtra(heading)) {
                    unknown.add(heading);
                }
            }
            return read;
        }

        /** {@code Seconds} or {@code Time} over a column, where nothing else is a value. */
        private void unitsAsValues(List<ColumnMeaning> read) {
            for (int column = 0; column < read.size(); column++) {
                String heading = rows.headings().get(column);
                boolean unit = HeadingReader.isUnit(heading);
                String bare = TrialColumn.fold(heading.replaceFirst("\\s*[(\\[].*$", ""));
                if (read.get(column).column().isEmpty() && (unit || bare.equals("time") || bare.equals("tiempo"))) {
                    String named = unit
                            ? heading
                            : heading.replaceFirst("^[^(\\[]*[(\\[]?", "").replaceAll("[)\\]]", "");
                    read.set(
                            column,
                            ColumnMeaning.plain(
                                    TrialColumn.VALUE, named.strip(), "the only heading that names a unit"));
                }
            }
        }

        private Map<TrialColumn, String> titles(List<Row> above) {
            Map<TrialColumn, String> said = new EnumMap<>(TrialColumn.class);
            for (Row row : above) {
                List<String> cells = row.cells().stream()
                        .map(String::strip)
                        .filter(cell -> !cell.isEmpty())
                        .toList();
                for (int place = 0; place < cells.size(); place++) {
                    String cell = cells.get(place);
                    int colon = cell.indexOf(':');
                    String label = colon < 0 ? cell : cell.substring(0, colon);
                    String inside = colon < 0 ? "" : cell.substring(colon + 1).strip();
                    String value = inside.isEmpty() && place + 1 < cells.size() ? cells.get(place + 1) : inside;
                    TrialColumn.named(label)
                            .filter(FROM_TITLES::contains)
                            .filter(column -> !value.isEmpty() && !isThere(column))
                            .ifPresent(column -> said.putIfAbsent(column, value));
                }
            }
            sheetAsStudent(said);
            return said;
        }

        /** One sheet a student: its name is the code, when the roster knows it or the mapping says so. */
        private void sheetAsStudent(Map<TrialColumn, String> said) {
            Optional<String> sheet = SheetSource.sheetOf(file);
            boolean declared = "{sheet}".equals(mapping.rules().constants().get(TrialColumn.STUDENT));
            if (sheet.isEmpty() || isThere(TrialColumn.STUDENT) || said.containsKey(TrialColumn.STUDENT)) {
                return;
            }
            boolean known = roster.map(
                            codes -> codes.contains(new StudentCode(sheet.get().strip())))
                    .orElse(false);
            if (declared || known) {
                said.put(TrialColumn.STUDENT, sheet.get().strip());
            }
        }

        private boolean isThere(TrialColumn column) {
            return columns.stream().anyMatch(one -> one.column().equals(Optional.of(column)));
        }

        int found() {
            return (int)
                    columns.stream().filter(one -> one.column().isPresent()).count();
        }

        private boolean sideBySide() {
            return columns.stream().anyMatch(ColumnMeaning::ofTries);
        }

        /** What the headings, the titles and the mapping leave unsaid. */
        Set<TrialColumn> missing() {
            Set<TrialColumn> missing = EnumSet.copyOf(REQUIRED);
            columns.stream()
                    .filter(one -> one.ofTries() || one.ofTheRow())
                    .forEach(one -> missing.remove(one.column().orElseThrow()));
            missing.removeAll(titles.keySet());
            mapping.rules().constants().forEach((column, value) -> {
                if (!value.equals("{sheet}")) {
                    missing.remove(column);
                }
            });
            boolean everyTrySays = sideBySide()
                    && columns.stream()
                            .filter(ColumnMeaning::ofTries)
                            .allMatch(one -> one.sets().containsKey(TrialColumn.MEASURE));
            if (everyTrySays) {
                missing.remove(TrialColumn.MEASURE);
            }
            return missing;
        }

        TrialForm form() {
            FormRules rules = mapping.rules().with(titles);
            Map<TrialColumn, Integer> row = rowIndex();
            List<TrialLayout> tries = new ArrayList<>();
            for (int column = 0; column < columns.size(); column++) {
                if (columns.get(column).ofTries()) {
                    tries.add(layout(column, row, rules));
                }
            }
            boolean sideBySide = !tries.isEmpty();
            if (!sideBySide) {
                int value = row.getOrDefault(TrialColumn.VALUE, -1);
                String unit = value < 0 ? "" : columns.get(value).unit();
                tries.add(new TrialLayout(row, rows.headings(), unit, unknown, rules, Set.of()));
            }
            tell(sideBySide, tries.size());
            return new TrialForm(
                    rows.lastLine(), rows.headings(), rows.lastCells(), columns, tries, sideBySide, titles, notes);
        }

        private void tell(boolean sideBySide, int tries) {
            titles.forEach((column, value) -> notes.add("no column for " + column.heading() + "; taken from the "
                    + (SheetSource.sheetOf(file).equals(Optional.of(value))
                            ? "name of the sheet"
                            : "lines above the headings")
                    + (MAY_BE_NAMES.contains(column) ? "" : ": " + value)));
            if (sideBySide) {
                String many = tries == 1
                        ? "the heading of a value says its measure"
                        : "tries stand side by side, up to " + tries + " in a row";
                notes.add(many + "; what is counted is tries, and a blank cell is a try not made");
            }
            List<String> slips = mapping.missingFrom(rows.headings());
            if (!slips.isEmpty()) {
                notes.add(mapping.name() + " names headings that are not in the file: " + String.join(", ", slips));
            }
        }

        /** The columns that hold for the whole row. Refuses two for one. */
        private Map<TrialColumn, Integer> rowIndex() {
            Map<TrialColumn, Integer> index = new EnumMap<>(TrialColumn.class);
            for (int column = 0; column < columns.size(); column++) {
                ColumnMeaning meaning = columns.get(column);
                if (!meaning.ofTheRow()) {
                    continue;
                }
                TrialColumn named = meaning.column().orElseThrow();
                Integer before = index.putIfAbsent(named, column);
                if (before != null) {
                    throw new InputRefused(file + ":" + rows.lastLine() + ": columns " + (before + 1) + " and "
                            + (column + 1) + " are both taken for \"" + named.heading()
                            + "\"; rename one of them, or say with --columns which one it is, and import again");
                }
            }
            return index;
        }

        /** The layout of the try in one value column: its own columns, and those of the row that it does not set. */
        private TrialLayout layout(int value, Map<TrialColumn, Integer> row, FormRules rules) {
            ColumnMeaning own = columns.get(value);
            Map<TrialColumn, Integer> index = new EnumMap<>(TrialColumn.class);
            index.putAll(row);
            own.sets().keySet().forEach(index::remove);
            index.put(TrialColumn.VALUE, value);
            Set<Integer> others = new java.util.HashSet<>();
            for (int column = 0; column < columns.size(); column++) {
                ColumnMeaning meaning = columns.get(column);
                boolean beside = meaning.besideTries();
                if (beside && own.sets().entrySet().containsAll(meaning.sets().entrySet())) {
                    index.put(meaning.column().orElseThrow(), column);
                } else if (beside || (meaning.ofTries() && column != value)) {
                    others.add(column);
                }
            }
            return new TrialLayout(index, rows.headings(), own.unit(), unknown, rules.with(own.sets()), others);
        }

        InputRefused refusal(String name) {
            List<String> words = new ArrayList<>();
            Set<TrialColumn> missing = missing();
            if (missing.contains(TrialColumn.STUDENT) && missing.contains(TrialColumn.DATE) && sideBySide()) {
                // The name of a measure in a row that names neither is a cell of data, not the heading of a value.
                missing.add(TrialColumn.VALUE);
            }
            for (TrialColumn column : missing) {
                String near = Spelling.nearest(column.heading(), unknown)
                        .map(heading -> " (did you mean the column \"" + heading + "\"?)")
                        .orElse("");
                words.add(column.heading() + near);
            }
            int width = rows.headings().size();
            String seen = found() == 0 && width <= 1
                    ? "one column only; is it separated by something other than a comma, semicolon, tab or |?"
                    : width + " columns";
            return new InputRefused(name + ":" + rows.lastLine() + ": no heading for " + String.join(", ", words)
                    + "; expected a row that names student, date, measure and value, or tries side by side; found "
                    + seen
                    + ". Add the heading row or rename the columns, or say with --columns FILE which is which or what holds for the"
                    + " whole form, and import again");
        }
    }
}
