package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The record of a student holds every row about that student and none about anybody else. */
class RecordTest {
    @TempDir
    Path folder;

    /** The records of all students together are the logbook: every row of every file is in exactly one of them. */
    @Test
    void togetherTheRecordsAreTheLogbook() throws IOException {
        SampleLogbook book = SampleLogbook.ofTheYear(folder.resolve("book"));
        book.run("report", "--period", "winter", "--out", folder.resolve("team").toString(), "-q");
        Csv students = file(book.folder().resolve("students.csv"));
        List<String> arguments = new ArrayList<>(
                List.of("--for", "record", "--out", folder.resolve("out").toString(), "-q"));
        students.rows().forEach(row -> arguments.addAll(List.of("--student", Csv.cell(row, "student"))));
        book.run("report", arguments.toArray(String[]::new));
        Map<String, Integer> rows = new HashMap<>();
        for (Map<String, String> student : students.rows()) {
            String code = Csv.cell(student, "student");
            Path record = folder.resolve("out").resolve(code + "-record");
            String page = Files.readString(record.resolve("record.md"));
            for (Path file : SampleLogbook.list(record, "")) {
                String name = file.getFileName().toString();
                if (name.endsWith(".csv")) {
                    Csv table = file(file);
                    rows.merge(name, table.rows().size(), Integer::sum);
                    assertTrue(page.contains(name), name);
                    onlyOf(code, table);
                }
            }
        }
        for (String kept : List.of(
                "students.csv",
                "goals.csv",
                "bodies.csv",
                "changes.csv",
                "services.csv",
                "remarks.csv",
                "benchmarks.csv",
                "attainment.csv")) {
            assertEquals(file(book.folder().resolve(kept)).rows().size(), rows.get(kept), kept);
        }
        assertEquals(rowsOf(book.folder().resolve("entries"), "-trials.csv"), rows.get("trials.csv"));
        assertEquals(rowsOf(book.folder().resolve("entries"), "-visits.csv"), rows.get("visits.csv"));
        assertEquals(file(book.folder().resolve("reports.csv")).rows().size(), rows.get("told.csv"));
        int setAside = 0;
        int nobodys = 0;
        for (Path file : SampleLogbook.list(book.folder().resolve("set-aside"), "")) {
            for (Map<String, String> row : file(file).rows()) {
                setAside += Csv.cell(row, "who").isEmpty() ? 0 : 1;
                nobodys += Csv.cell(row, "who").isEmpty() ? 1 : 0;
            }
        }
        assertEquals(setAside, rows.get("set-aside.csv"));
        String any = Files.readString(folder.resolve("out/fh-003-record/record.md"));
        assertTrue(any.contains("- " + nobodys + " rows set aside without a student that could be read"), any);
    }

    /** What was taken back, replaced or closed is there, and says so; names are not there unless they are asked for. */
    @Test
    void whatDoesNotStandAnyMoreIsThereAndSaysSo() throws IOException {
        Desk desk = Desk.withLogbook(folder);
        desk.file("a.csv", Desk.HEAD + Desk.row() + Desk.row(",1,6,", ",2,7,") + Desk.row("S01", "S02"));
        desk.file("b.csv", Desk.HEAD + Desk.row(",1,6,", ",1,8,"));
        desk.file("c.csv", Desk.HEAD + Desk.row("2026-01-05", "2026-01-06") + Desk.row("2026-01-05", "soon"));
        assertEquals(0, desk.imported("@a.csv").exitCode());
        assertEquals(0, desk.imported("@b.csv --replace").exitCode());
        assertEquals(1, desk.imported("@c.csv").exitCode());
        assertEquals(0, desk.imported("--undo 0003 --why wrong_class").exitCode());
        desk.file("book/names.csv", "student,name\nS01,Quillo\n");
        Run run = desk.run("report @book --for record --student S01 --out @out -q");
        assertEquals(0, run.exitCode(), run.err());
        Csv trials = Csv.of(desk.text("out/S01-record/trials.csv"));
        assertEquals(
                List.of(
                        "0001 6 no: replaced by a later entry",
                        "0001 7 yes",
                        "0002 8 yes",
                        "0003 6 no: the import was taken back"),
                trials.rows().stream()
                        .map(row ->
                                Csv.cell(row, "entry") + " " + Csv.cell(row, "value") + " " + Csv.cell(row, "stands"))
                        .toList());
        Csv setAside = Csv.of(desk.text("out/S01-record/set-aside.csv"));
        assertEquals(1, setAside.rows().size());
        assertEquals("the import was taken back", Csv.cell(setAside.rows().get(0), "state"));
        assertTrue(Csv.cell(setAside.rows().get(0), "cells").contains("date: soon"));
        assertFalse(desk.text("out/S01-record/record.md").contains("Quillo"));
        assertEquals(
                0,
                desk.run("report @book --for record --student S01 --out @out --names --format html -q")
                        .exitCode());
        assertTrue(desk.text("out/S01-record/record.html").contains("Quillo"));
        // The students file was imported once; a second import keeps the first as an earlier version.
        desk.file("students.csv", "student,grade\nS01,3\nS02,3\n");
        assertEquals(0, desk.imported("@students.csv").exitCode());
        assertEquals(
                0,
                desk.run("report @book --for record --student S01 --out @out -q")
                        .exitCode());
        assertEquals(
                "2",
                Csv.cell(
                        Csv.of(desk.text("out/S01-record/students-2026-01-16-2.csv"))
                                .rows()
                                .get(0),
                        "grade"));
    }

    @Test
    void aRecordNeedsAStudentAndAFolder() {
        Desk desk = Desk.withLogbook(folder);
        Run nobody = desk.run("report @book --for record --out @out");
        assertEquals(ExitCodes.INPUT_REFUSED, nobody.exitCode());
        assertTrue(nobody.err().contains("add --student CODE and --out DIR"), nobody.err());
        assertEquals(
                ExitCodes.INPUT_REFUSED,
                desk.run("report @book --for record --student S01").exitCode());
        Run unknown = desk.run("report @book --for record --student S99 --out @out");
        assertEquals(ExitCodes.INPUT_REFUSED, unknown.exitCode());
        assertTrue(unknown.err().contains("the logbook holds nothing of a student with the code S99"));
    }

    private static void onlyOf(String code, Csv table) {
        if (table.headings().contains("student")) {
            Set<String> students = new TreeSet<>();
            table.rows().forEach(row -> students.add(Csv.cell(row, "student")));
            assertEquals(Set.of(code), students);
        }
    }

    private static Csv file(Path path) throws IOException {
        return Csv.of(Files.readString(path));
    }

    /** Rows of all entries of a kind. */
    private static int rowsOf(Path entries, String suffix) throws IOException {
        int rows = 0;
        try (Stream<Path> files = Files.list(entries)) {
            for (Path file :
                    files.filter(one -> one.toString().endsWith(suffix)).toList()) {
                rows += file(file).rows().size();
            }
        }
        return rows;
    }
}
