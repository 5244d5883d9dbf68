package stridetally.logbook;

import java.io.IOException;
import java.io.Reader;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stridetally.ingest.FirstRows;
import stridetally.ingest.FormFinder;
import stridetally.ingest.FormMapping;
import stridetally.ingest.LogRules;
import stridetally.ingest.TextSource;
import stridetally.ingest.TrialLayout;
import stridetally.model.StudentCode;
import stridetally.problem.At;
import stridetally.problem.Checked;
import stridetally.problem.InputRefused;
import stridetally.table.Row;
import stridetally.table.TableReader;

/** What a file holds, told from its headings. */
public final class TableGuess {
    private TableGuess() {}

    /**
     * The word of {@code --kind}; empty when the headings fit no kind.
     *
     * @param rules by which a log of trials would be read
     * @param forms mappings that say how one is laid out
     */
    public static Optional<String> of(TextSource text, LogRules rules, Forms forms) {
        List<Row> firstRows = original(FirstRows.of(text));
        FormMapping mapping = forms.of(firstRows, rules.catalogue());
        Optional<String> first = mapping.name().isEmpty() ? firstRow(text) : Optional.empty();
        return first.or(
                () -> finder(text, firstRows, rules, forms).findIn(firstRows).map(form -> EntryKind.TRIALS.word()));
    }

    /** Of a corrected set-aside file, the rows of the log that it came from. */
    private static List<Row> original(List<Row> firstRows) {
        if (firstRows.isEmpty()
                || SetAsideText.original(firstRows.get(0).cells()).isEmpty()) {
            return firstRows;
        }
        List<String> headings = firstRows.get(0).cells();
        return firstRows.stream()
                .map(row -> new Row(row.line(), SetAsideText.original(headings, row.cells())))
                .toList();
    }

    /** Whether a log of trials is understood as it stands, without a table that may come in beside it. */
    public static boolean isUnderstood(TextSource text, LogRules rules, Forms forms) {
        List<Row> firstRows = original(FirstRows.of(text));
        FormMapping mapping = forms.of(firstRows, rules.catalogue());
        return new FormFinder(text.bytes().name(), mapping, rules.catalogue(), rules.roster())
                .findIn(firstRows)
                .isPresent();
    }

    /** A mapping of a file whose headings fit no kind, to be filled in; empty when it has no row. */
    public static Optional<FormMapping> draft(TextSource text, LogRules rules, Forms forms) {
        List<Row> firstRows = original(FirstRows.of(text));
        return firstRows.isEmpty()
                ? Optional.empty()
                : Optional.of(finder(text, firstRows, rules, forms).draft(firstRows));
    }

    /** Refuses a file whose headings fit no kind, with what a log of trials would need. */
    public static InputRefused refusal(TextSource text, LogRules rules, Forms forms) {
        String name = text.bytes().name();
        List<Row> firstRows = original(FirstRows.of(text));
        if (firstRows.isEmpty()) {
            return new InputRefused(name + ": no heading row; expected headings and rows below them");
        }
        Row first = firstRows.get(0);
        Optional<String> byHand = keptByHand(first.cells());
        if (byHand.isPresent()) {
            return new InputRefused(At.row(name, first.line()).text() + ": these are the headings of " + byHand.get()
                    + ", which is kept by hand and not imported; save it in the folder of the logbook under that name");
        }
        boolean mapped = !forms.of(firstRows, rules.catalogue()).name().isEmpty();
        FormFinder finder = finder(text, firstRows, rules, forms);
        boolean laidOut = mapped || text.sheet().isPresent() || FormFinder.liesOnItsSide(firstRows);
        if (laidOut || finder.headedBelow(firstRows) || finder.holdsTwoStudents(firstRows)) {
            return finder.refusal(firstRows);
        }
        return new InputRefused(At.row(name, first.line()).text()
                + ": the headings do not say what the file holds. As a log of trials: "
                + TrialLayout.lacks(first.cells())
                + ". Add or correct the heading row, or say with --columns what each column is"
                + FormFinder.HOW_TO_DRAFT
                + "; if it is something else, say so with --kind");
    }

    private static Optional<String> keptByHand(List<String> headings) {
        Set<String> names = headings.stream().map(KeptTable::fold).collect(Collectors.toSet());
        return names.equals(Set.of("student", "name"))
                ? Optional.of(LogbookFolder.NAMES)
                : ExtraTable.of(names).map(ExtraTable::file);
    }

    private static FormFinder finder(TextSource text, List<Row> firstRows, LogRules rules, Forms forms) {
        FormMapping mapping = forms.of(firstRows, rules.catalogue());
        // A sheet may be named after a student whose table comes in beside it, so its name counts as known here.
        Optional<Set<StudentCode>> roster = text.sheet().map(sheet -> Set.of(new StudentCode(sheet.strip())));
        return new FormFinder(text.bytes().name(), mapping, rules.catalogue(), roster.or(rules::roster));
    }

    private static Optional<String> firstRow(TextSource text) {
        String name = text.bytes().name();
        try (Reader reader = text.open()) {
            TableReader table = TableReader.sniffing(reader, name, TableGuess::isKnown);
            List<String> headings = table.next()
                    .flatMap(Checked::value)
                    .map(Row::cells)
                    .orElseThrow(
                            () -> new InputRefused(name + ": no heading row; expected headings and rows below them"));
            return ofHeadings(headings);
        } catch (IOException failed) {
            throw new InputRefused(name + ": could not be read; check the disk and try again", failed);
        }
    }

    private static Optional<String> ofHeadings(List<String> headings) {
        if (TrialLayout.fits(headings)) {
            return Optional.of(EntryKind.TRIALS.word());
        }
        Set<String> names = headings.stream().map(KeptTable::fold).collect(Collectors.toSet());
        if (names.containsAll(Set.of("student", "date", "status"))) {
            return Optional.of(EntryKind.VISITS.word());
        }
        return kept(names).map(KeptKind::word);
    }

    /** The order matters: a goal file also has a student column. */
    private static Optional<KeptKind> kept(Set<String> names) {
        if (fits(names, KeptKind.GOALS, "target")) {
            return Optional.of(KeptKind.GOALS);
        }
        if (fits(names, KeptKind.BODIES, "leg_length_cm") || fits(names, KeptKind.BODIES, "height_cm")) {
            return Optional.of(KeptKind.BODIES);
        }
        for (KeptKind kind : List.of(KeptKind.BENCHMARKS, KeptKind.ATTAINMENT, KeptKind.CHANGES, KeptKind.SERVICES)) {
            if (names.containsAll(kind.required())) {
                return Optional.of(kind);
            }
        }
        if (fits(names, KeptKind.REMARKS, "remark")) {
            return Optional.of(KeptKind.REMARKS);
        }
        return fits(names, KeptKind.STUDENTS, "grade") || fits(names, KeptKind.STUDENTS, "school")
                ? Optional.of(KeptKind.STUDENTS)
                : Optional.empty();
    }

    private static boolean fits(Set<String> names, KeptKind kind, String telling) {
        return names.contains(telling) && names.containsAll(kind.required());
    }

    private static boolean isKnown(String heading) {
        String name = KeptTable.fold(heading);
        return TrialLayout.isKnown(heading)
                || EntryKind.VISIT_COLUMNS.contains(name)
                || List.of(KeptKind.values()).stream()
                        .anyMatch(kind -> kind.columns().contains(name));
    }
}
