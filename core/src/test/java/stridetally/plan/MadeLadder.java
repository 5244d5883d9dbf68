package stridetally.plan;

import java.io.StringReader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.measures.Catalogue;
import stridetally.measures.FamilyWords;
import stridetally.measures.ShippedLadder;
import stridetally.model.Level;
import stridetally.model.Student;
import stridetally.model.StudentCode;
import stridetally.model.WordScale;
import stridetally.problem.Checked;
import stridetally.table.Cells;
import stridetally.table.Dialect;
import stridetally.table.Header;
import stridetally.table.Row;
import stridetally.table.TableReader;

/** Ladders, students and approvals for the tests. */
final class MadeLadder {
    static final LocalDate DAY = LocalDate.of(2027, 3, 5);
    static final StudentCode STUDENT = new StudentCode("S01");

    static final String HEAD = "rung,task,measure,ready_when,ready_help,ready_sessions,least_help,not_with,home,"
            + "name_en,do_en,help_en,fade_en,caution_en,name_es,do_es,help_es,fade_es,caution_es\n";
    static final String WORDS = ",Walk,Walk on.,Walk along.,Less.,Slowly.,Andar,Andar.,Al lado.,Menos.,Despacio.\n";

    private MadeLadder() {}

    static Ladder shipped() {
        return read(ShippedLadder.rows()).value().orElseThrow();
    }

    static Checked<Ladder> read(List<Cells> rows) {
        return LadderRows.read(rows, Catalogue.standard(), WordScale.HELP, FamilyWords.languages());
    }

    /** A ladder file whose rows begin so; the words of each are harmless. */
    static Checked<Ladder> of(String... rows) {
        StringBuilder file = new StringBuilder(HEAD);
        for (String row : rows) {
            file.append(row).append(WORDS);
        }
        return read(cells("ladder.csv", file.toString()));
    }

    static List<Cells> cells(String name, String file) {
        TableReader table = new TableReader(new StringReader(file), name, Dialect.COMMA);
        Header header = Header.of(name, table.next().orElseThrow().value().orElseThrow(), heading -> heading);
        List<Cells> rows = new ArrayList<>();
        for (Optional<Checked<Row>> next = table.next(); next.isPresent(); next = table.next()) {
            rows.add(header.cells(next.get().value().orElseThrow()));
        }
        return rows;
    }

    static Student student(List<String> precautions) {
        return new Student(
                STUDENT, "2", "Invented", Optional.empty(), Optional.empty(), "", "", "", "", "", "en", precautions);
    }

    static Approval approval(Rung rung, LocalDate from, Optional<LocalDate> until, Level help) {
        return new Approval(STUDENT, rung.id(), from, until, help);
    }

    static Level help(String word) {
        return WordScale.HELP.find(word).orElseThrow();
    }
}
