package stridetally.ingest;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stridetally.problem.InputRefused;
import stridetally.problem.Spelling;
import stridetally.table.Row;

/** One reading of one or two rows as headings. */
final class FormAttempt {
    private static final Set<TrialColumn> REQUIRED =
            EnumSet.of(TrialColumn.STUDENT, TrialColumn.DATE, TrialColumn.MEASURE, TrialColumn.VALUE);
    private static final String SHEET_MAY_SAY =
            " (where each sheet is one student's, say student = \"{sheet}\" under [constants] of a mapping)";
    private static final Set<TrialColumn> MAY_BE_NAMES = EnumSet.of(TrialColumn.STUDENT, TrialColumn.OBSERVER);

    private final String file;
    private final FormMapping mapping;
    private final HeadingRows rows;
    private final List<ColumnMeaning> columns;
    private final List<String> notes = new ArrayList<>();
    private final Map<TrialColumn, String> titles;
    private final List<String> unknown = new ArrayList<>();

    FormAttempt(FormFinder finder, HeadingRows rows, List<Row> above) {
        this.file = finder.file();
        this.mapping = finder.mapping();
        this.rows = rows;
        this.columns = ColumnMeanings.of(rows.headings(), mapping, finder.reader());
        noteUnknown();
        this.titles = new FormTitles(file, mapping, finder.roster(), this::isThere).said(above);
    }

    private void noteUnknown() {
        for (int column = 0; column < columns.size(); column++) {
            String heading = rows.headings().get(column);
            if (columns.get(column).notKnown() && !OurColumns.isExtra(heading)) {
                unknown.add(heading);
            }
        }
    }

    private boolean isThere(TrialColumn column) {
        return ColumnMeanings.name(column, columns);
    }

    /** How many columns a heading of their own names, which a row of data hardly does. */
    int plain() {
        int plain = 0;
        for (ColumnMeaning one : columns) {
            plain += one.ofTheRow() ? 1 : 0;
        }
        return plain;
    }

    /** How many cells say anything. */
    int filled() {
        return (int) rows.headings().stream().filter(one -> !one.isEmpty()).count();
    }

    FormMapping draft() {
        return FormDraft.of(rows.headings(), columns, missing(), mapping);
    }

    int found() {
        return ColumnMeanings.found(columns);
    }

    private boolean sideBySide() {
        for (ColumnMeaning one : columns) {
            if (one.ofTries()) {
                return true;
            }
        }
        return false;
    }

    /** What the headings, the titles and the mapping leave unsaid. */
    Set<TrialColumn> missing() {
        Set<TrialColumn> missing = EnumSet.copyOf(REQUIRED);
        boolean everyTrySays = sideBySide();
        for (ColumnMeaning one : columns) {
            if (one.ofTries() || one.ofTheRow()) {
                missing.remove(one.column().orElseThrow());
            }
            everyTrySays &= !one.ofTries() || one.sets().containsKey(TrialColumn.MEASURE);
        }
        missing.removeAll(titles.keySet());
        for (Map.Entry<TrialColumn, String> said : mapping.rules().constants().entrySet()) {
            if (!said.getValue().equals("{sheet}")) {
                missing.remove(said.getKey());
            }
        }
        if (everyTrySays) {
            missing.remove(TrialColumn.MEASURE);
        }
        return missing;
    }

    TrialForm form() {
        Optional<InputRefused> two = twoStudents();
        if (two.isPresent()) {
            throw two.get();
        }
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
        for (Map.Entry<TrialColumn, String> title : titles.entrySet()) {
            boolean sheet = SheetSource.sheetOf(file).equals(Optional.of(title.getValue()));
            notes.add("no column for " + title.getKey().heading() + "; taken from the "
                    + (sheet ? "name of the sheet" : "lines above the headings")
                    + (MAY_BE_NAMES.contains(title.getKey()) ? "" : ": " + title.getValue()));
        }
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
                throw new InputRefused(bothTaken(before, column, named)
                        + "; rename one of them, or say with --columns which one it is," + " and import again");
            }
        }
        return index;
    }

    private String bothTaken(int one, int other, TrialColumn column) {
        return file + ":" + rows.lastLine() + ": columns " + (one + 1) + " and " + (other + 1)
                + " are both taken for \"" + column.heading() + "\"";
    }

    /** Two students in a row: one of them would be given the tries of the other. */
    Optional<InputRefused> twoStudents() {
        List<Integer> places = new ArrayList<>();
        for (int column = 0; column < columns.size(); column++) {
            if (columns.get(column).column().equals(Optional.of(TrialColumn.STUDENT))) {
                places.add(column);
            }
        }
        return places.size() < 2
                ? Optional.empty()
                : Optional.of(new InputRefused(bothTaken(places.get(0), places.get(1), TrialColumn.STUDENT)
                        + "; where a row holds two students, give each a row of its own: put the second one's cells, with"
                        + " the date, below the first one's. Where both mean one student, rename one of them, or say with"
                        + " --columns which one it is, and import again"));
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

    long line() {
        return rows.lastLine();
    }

    InputRefused refusal(String name) {
        return twoStudents().orElseGet(() -> lacking(name));
    }

    private InputRefused lacking(String name) {
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
            boolean sheet =
                    column == TrialColumn.STUDENT && SheetSource.sheetOf(file).isPresent();
            words.add(column.heading() + (sheet ? SHEET_MAY_SAY : near));
        }
        int width = rows.headings().size();
        String seen = found() == 0 && width <= 1
                ? "one column only; is it separated by something other than a comma, semicolon, tab or |?"
                : width + " columns";
        return new InputRefused(name + ":" + rows.lastLine() + ": no heading for " + String.join(", ", words)
                + "; expected a row that names student, date, measure and value, or tries side by side; found "
                + seen
                + ". Add the heading row or rename the columns, or say with --columns FILE which is which or what holds for the"
                + " whole form, and import again" + FormFinder.HOW_TO_DRAFT);
    }
}
