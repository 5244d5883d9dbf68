package stridetally.ingest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What each heading of a row means: as the mapping says, else by its own words, and last by what the others leave open. */
final class ColumnMeanings {
    private static final Set<String> NAME_HEADINGS = Set.of("name", "nombre", "kid");

    private final List<String> headings;
    private final List<ColumnMeaning> read = new ArrayList<>();

    private ColumnMeanings(List<String> headings) {
        this.headings = headings;
    }

    /** One meaning a heading, in their order. */
    static List<ColumnMeaning> of(List<String> headings, FormMapping mapping, HeadingReader reader) {
        ColumnMeanings meanings = new ColumnMeanings(headings);
        int numbers = 0;
        for (String heading : headings) {
            numbers += HeadingReader.isNumber(heading) ? 1 : 0;
        }
        for (String heading : headings) {
            Optional<ColumnMeaning> said = mapping.of(heading);
            // A heading that is only a number says the number of a try, where several do.
            boolean silent = said.isPresent() || (numbers < 2 && HeadingReader.isNumber(heading));
            Optional<ColumnMeaning> meaning = silent ? said : reader.read(heading);
            meanings.read.add(meaning.orElse(heading.isEmpty() ? ColumnMeaning.NO_HEADING : ColumnMeaning.NOT_KNOWN));
        }
        meanings.namesBesideCodes();
        meanings.unitsAsValues();
        return meanings.read;
    }

    /** How many headings name anything. */
    static int found(List<ColumnMeaning> columns) {
        int found = 0;
        for (ColumnMeaning one : columns) {
            found += one.column().isPresent() ? 1 : 0;
        }
        return found;
    }

    /** Whether a heading names this column. */
    static boolean name(TrialColumn column, List<ColumnMeaning> columns) {
        for (ColumnMeaning one : columns) {
            if (one.column().isPresent() && one.column().get() == column) {
                return true;
            }
        }
        return false;
    }

    /** A column of names beside one of codes is passed over, since names never go into a logbook. */
    private void namesBesideCodes() {
        for (int column = 0; column < read.size(); column++) {
            boolean name = NAME_HEADINGS.contains(TrialColumn.fold(headings.get(column)));
            if (name && read.get(column).why().equals(HeadingReader.BY_HEADING) && students() > 1) {
                read.set(column, ColumnMeaning.NOT_KNOWN);
            }
        }
    }

    private long students() {
        long students = 0;
        for (ColumnMeaning one : read) {
            students += one.ofTheRow() && one.column().orElseThrow() == TrialColumn.STUDENT ? 1 : 0;
        }
        return students;
    }

    /** {@code Seconds} or {@code Time} over a column, where nothing else is a value. */
    private void unitsAsValues() {
        if (found(read) == 0 || name(TrialColumn.VALUE, read)) {
            return;
        }
        for (int column = 0; column < read.size(); column++) {
            String heading = headings.get(column);
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
}
