package stridetally.logbook;

import java.util.ArrayList;
import java.util.List;
import stridetally.table.Cell;
import stridetally.table.CsvTable;

/** The tables kept by the person, with their columns. Columns are found by name in any order; absent ones are blank. */
public enum KeptKind {
    STUDENTS(
            "students",
            "student",
            "grade school from until left birth_month sex population function_level language precautions"),
    GOALS(
            "goals",
            "goal student measure",
            "side protocol statement routine baseline baseline_date baseline_how target due trials_met trials_given"
                    + " sessions_met help prompt summary places aim weight from until ended follows"),
    BODIES("bodies", "student date", "height_cm leg_length_cm weight_kg how"),
    BENCHMARKS("benchmarks", "goal by value", ""),
    ATTAINMENT("attainment", "goal level value", ""),
    CHANGES("changes", "student date change", "goal"),
    SERVICES("services", "student minutes per", "from until kind"),
    REMARKS("remarks", "goal period", "language remark next judgement why routine home family");

    private final String stem;
    private final String required;
    private final String optional;

    KeptKind(String stem, String required, String optional) {
        this.stem = stem;
        this.required = required;
        this.optional = optional;
    }

    /** The word of {@code --kind}. */
    public String word() {
        return stem;
    }

    /** The file in the logbook. */
    public String file() {
        return stem + ".csv";
    }

    /** Its columns, in the order we write them. */
    public List<String> columns() {
        List<String> columns = words(required);
        columns.addAll(words(optional));
        return columns;
    }

    /** Columns without which a row says nothing. */
    public List<String> required() {
        return words(required);
    }

    String stem() {
        return stem;
    }

    String text(List<List<String>> rows) {
        StringBuilder text = new StringBuilder();
        CsvTable table = new CsvTable(text, columns());
        rows.forEach(row -> table.row(row.stream().map(Cell::text).toList()));
        table.finish();
        return text.toString();
    }

    private static List<String> words(String list) {
        List<String> words = new ArrayList<>();
        for (String word : list.split(" ", -1)) {
            if (!word.isEmpty()) {
                words.add(word);
            }
        }
        return words;
    }
}
