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
    private static final Set<String> NAME_HEADINGS = Set.of("name", "nombre", "kid");
    private static final Set<TrialColumn> MAY_BE_NAMES = EnumSet.of(TrialColumn.STUDENT, TrialColumn.OBSERVER);

    private final String file;
    private final FormMapping mapping;
    private final HeadingReader reader;
    private final HeadingRows rows;
    private final List<ColumnMeaning> columns;
    private final List<String> notes = new ArrayList<>();
    private final Map<TrialColumn, String> titles;
    private final List<String> unknown = new ArrayList<>();

    FormAttempt(FormFinder finder, HeadingRows rows, List<Row> above) {
        this.file = finder.file();
        this.mapping = finder.mapping();
        this.reader = finder.reader();
        this.rows = rows;
        this.columns = meanings();
        this.titles = new FormTitles(file, mapping, finder.roster(), this::isThere).said(above);
    }

    private List<ColumnMeaning> meanings() {
        List<ColumnMeaning> read = new ArrayList<>();
        int numbers = 0;
        for (String heading : rows.headings()) {
            numbers += HeadingReader.isNumber(heading) ? 1 : 0;
        }
        for (String heading : rows.headings()) {
            read.add(meaning(heading, numbers > 1));
        }
        if (named(read, TrialColumn.STUDENT) > 1) {
            namesBesideCodes(read);
        }
        if (found(read) > 0 && !names(read, TrialColumn.VALUE)) {
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

    /** A heading that is only a number says the number of a try, where several do. */
    private ColumnMeaning meaning(String heading, boolean numbered) {
        Optional<ColumnMeaning> said = mapping.of(heading);
        if (said.isPresent()) {
            return said.get();
        }
        Optional<ColumnMeaning> found =
                HeadingReader.isNumber(heading) && !numbered ? Optional.empty() : reader.read(heading);
        return found.isPresent()
                ? found.get()
                : new ColumnMeaning(Optional.empty(), Map.of(), "", heading.isEmpty() ? "no heading" : "not known");
    }

    private static int found(List<ColumnMeaning> columns) {
        int found = 0;
        for (ColumnMeaning one : columns) {
            found += one.column().isPresent() ? 1 : 0;
        }
        return found;
    }

    private static boolean names(List<ColumnMeaning> columns, TrialColumn column) {
        for (ColumnMeaning one : columns) {
            if (one.column().isPresent() && one.column().get() == column) {
                return true;
            }
        }
        return false;
    }

    /** A column of names beside one of codes is passed over, since names never go into a logbook. */
    private void namesBesideCodes(List<ColumnMeaning> read) {
        for (int column = 0; column < read.size(); column++) {
            boolean name =
                    NAME_HEADINGS.contains(TrialColumn.fold(rows.headings().get(column)));
            if (name
                    && read.get(column).why().equals(HeadingReader.BY_HEADING)
                    && named(read, TrialColumn.STUDENT) > 1) {
                read.set(column, new ColumnMeaning(Optional.empty(), Map.of(), "", "not known"));
            }
        }
    }

    private static long named(List<ColumnMeaning> columns, TrialColumn column) {
        long named = 0;
        for (ColumnMeaning one : columns) {
            named += one.ofTheRow() && one.column().orElseThrow() == column ? 1 : 0;
        }
        return named;
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
                        ColumnMeaning.plain(TrialColumn.VALUE, named.strip(), "the only heading that names a unit"));
            }
        }
    }

    private boolean isThere(TrialColumn column) {
        return names(columns, column);
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
        return found(columns);
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
