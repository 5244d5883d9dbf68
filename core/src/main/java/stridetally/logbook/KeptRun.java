package stridetally.logbook;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stridetally.ingest.NamesToCodes;
import stridetally.ingest.TextSource;
import stridetally.model.StudentCode;
import stridetally.problem.InputRefused;
import stridetally.problem.ProblemTally;
import stridetally.problem.RowProblem;
import stridetally.problem.Severity;

/**
 * Brings hand-kept tables into a logbook. Each replaces the one that is there whole; the old one stays under
 * {@code history/}. A row that cannot be read stays in the table as it was written, is not read until it is mended there,
 * and is told each time. Without a writer it is a dry run: all is read and told, and nothing is written.
 */
public final class KeptRun {
    private final Optional<LogbookWriter> writer;
    private final Optional<NamesToCodes> names;
    private Logbook book;

    /** Over a logbook; {@code writer} is empty for a dry run, {@code names} unless they are to be turned into codes. */
    public KeptRun(Optional<LogbookWriter> writer, Logbook book, Optional<NamesToCodes> names) {
        this.writer = writer;
        this.names = names;
        this.book = book;
    }

    /** The logbook with the tables taken so far, also when nothing is written. */
    public Logbook book() {
        return book;
    }

    /** Takes a table. */
    public ImportedFile take(KeptKind kind, TextSource written) {
        TextSource text = coded(written);
        KeptImport table = read(kind, text);
        ProblemTally problems = new ProblemTally();
        table.problems().forEach(problems::add);
        writer.ifPresent(one -> one.replaceFile(kind, table.rows()));
        book = book.with(kind, table.rows());
        long rows = table.rows().size();
        long unread = table.problems().stream()
                .filter(problem -> problem.severity() == Severity.SET_ASIDE)
                .map(problem -> problem.at().line())
                .distinct()
                .count();
        String name = text.bytes().name();
        return new ImportedFile(
                name,
                kind.word(),
                rows,
                rows - unread,
                0,
                unread,
                0,
                0,
                Optional.empty(),
                problems,
                notes(kind, text, unread),
                Optional.empty());
    }

    private List<String> notes(KeptKind kind, TextSource text, long unread) {
        List<String> notes = new ArrayList<>();
        if (!text.note().isEmpty()) {
            notes.add(text.note());
        }
        if (writer.isPresent()) {
            notes.add(kind.file() + " was written anew; what it said before is in history/");
        }
        if (unread > 0) {
            notes.add(Plural.rows(unread) + (unread == 1 ? " stays" : " stay") + " in " + kind.file()
                    + " as written and cannot be read until mended there");
        }
        return notes;
    }

    private KeptImport read(KeptKind kind, TextSource text) {
        String name = text.bytes().name();
        try (Reader reader = text.open()) {
            KeptImport table = KeptImport.read(reader, name, kind, book.settings());
            names.ifPresent(one -> refuseNames(one, kind, name, table));
            return table;
        } catch (IOException failed) {
            throw new InputRefused(name + ": could not be read to its end; check the disk and try again", failed);
        }
    }

    private TextSource coded(TextSource text) {
        return names.map(one -> one.coded(text)).orElse(text);
    }

    /** A hand-kept table has no place to set a row aside, so one with a student that is no code is not taken. */
    private void refuseNames(NamesToCodes coding, KeptKind kind, String file, KeptImport table) {
        int column = kind.columns().indexOf("student");
        Set<StudentCode> codes = new HashSet<>(coding.students());
        book.caseload().value().ifPresent(now -> now.students().forEach(student -> codes.add(student.code())));
        Nameless nameless = new Nameless(codes, column);
        for (int row = 0; column >= 0 && row < table.rows().size(); row++) {
            if (!nameless.maySay(table.rows().get(row).get(column))) {
                throw new InputRefused(file + ": in row " + (row + 1)
                        + " below the headings the student is neither a code nor a name of names.csv; write the code,"
                        + " or add the name there");
            }
        }
    }

    /** What is wrong with the hand-kept files taken together and is not a matter of one row alone. */
    public static List<RowProblem> across(List<RowProblem> problems) {
        return problems.stream().filter(KeptRun::isAcross).toList();
    }

    private static boolean isAcross(RowProblem problem) {
        return switch (problem.code()) {
            case GOAL_STUDENT_UNKNOWN, DUPLICATE -> true;
            case GOAL_UNCLEAR ->
                problem.at().column() == 0
                        || KeptTable.fold(problem.at().heading()).equals("goal");
            default -> false;
        };
    }
}
