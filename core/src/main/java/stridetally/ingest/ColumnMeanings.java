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
        long numbers = headings.stream().filter(HeadingReader::isNumber).count();
        for (String heading : headings) {
            meanings.read.add(mapping.of(heading)
                    .or(() -> numbers < 2 && HeadingReader.isNumber(heading) ? Optional.empty() : reader.read(heading))
                    .orElseGet(() -> heading.isEmpty() ? ColumnMeaning.NO_HEADING : ColumnMeaning.NOT_KNOWN));
        }
        meanings.namesBesideCodes();
        meanings.unitsAsValues();
        return meanings.read;
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
        return read.stream()
                .filter(one -> one.ofTheRow() && one.column().equals(Optional.of(TrialColumn.STUDENT)))
                .count();
    }

    /** {@code Seconds} or {@code Time} over a column, where nothing else is a value. */
    private void unitsAsValues() {
        boolean headed = read.stream().anyMatch(one -> one.column().isPresent());
        if (!headed || read.stream().anyMatch(one -> one.column().equals(Optional.of(TrialColumn.VALUE)))) {
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
