package stridetally.ingest;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import stridetally.model.StudentCode;
import stridetally.table.Row;

/** What the lines above the headings say for the whole form, as in {@code Student: S014}. */
final class FormTitles {
    private static final Set<TrialColumn> FROM_TITLES = EnumSet.of(
            TrialColumn.STUDENT,
            TrialColumn.DATE,
            TrialColumn.MEASURE,
            TrialColumn.SESSION,
            TrialColumn.PLACE,
            TrialColumn.OBSERVER,
            TrialColumn.PROTOCOL,
            TrialColumn.SIDE);

    private final String file;
    private final FormMapping mapping;
    private final Optional<Set<StudentCode>> roster;
    private final Predicate<TrialColumn> isThere;

    FormTitles(String file, FormMapping mapping, Optional<Set<StudentCode>> roster, Predicate<TrialColumn> isThere) {
        this.file = file;
        this.mapping = mapping;
        this.roster = roster;
        this.isThere = isThere;
    }

    /** What they say, and the name of the sheet when it is a student; only what no column says. */
    Map<TrialColumn, String> said(List<Row> above) {
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
                        .filter(column -> !value.isEmpty() && !isThere.test(column))
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
        if (sheet.isEmpty() || isThere.test(TrialColumn.STUDENT) || said.containsKey(TrialColumn.STUDENT)) {
            return;
        }
        boolean known = roster.map(
                        codes -> codes.contains(new StudentCode(sheet.get().strip())))
                .orElse(false);
        if (declared || known) {
            said.put(TrialColumn.STUDENT, sheet.get().strip());
        }
    }
}
