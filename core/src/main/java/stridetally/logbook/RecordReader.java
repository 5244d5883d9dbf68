package stridetally.logbook;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import stridetally.ingest.TrialCells;
import stridetally.model.StudentCode;
import stridetally.problem.OutputRefused;
import stridetally.table.Cells;
import stridetally.table.FormulaGuard;

/** Gathers the record of one student from all that lies in a logbook. */
final class RecordReader {
    private static final Map<KeptKind, String> HOLDS = new LinkedHashMap<>();

    static {
        HOLDS.put(KeptKind.STUDENTS, "who the student is to the logbook");
        HOLDS.put(KeptKind.GOALS, "every goal, closed ones too; a raised goal names the one it follows");
        HOLDS.put(KeptKind.BENCHMARKS, "short-term steps towards the goals");
        HOLDS.put(KeptKind.ATTAINMENT, "written levels of the goals");
        HOLDS.put(KeptKind.CHANGES, "dated changes of strategy");
        HOLDS.put(KeptKind.SERVICES, "planned services");
        HOLDS.put(KeptKind.BODIES, "body sizes");
        HOLDS.put(KeptKind.REMARKS, "the therapist's own words and judgements");
    }

    private final LogbookFolder folder;
    private final Journal journal;
    private final Optional<LocalDate> knownOn;
    private final StudentCode code;
    private final Set<String> goals = new LinkedHashSet<>();
    private final Set<Integer> entries = new TreeSet<>();
    private final List<StudentRecord.Part> parts = new ArrayList<>();
    private int nobodys;

    RecordReader(LogbookFolder folder, Journal journal, Optional<LocalDate> knownOn, StudentCode code) {
        this.folder = folder;
        this.journal = journal;
        this.knownOn = knownOn;
        this.code = code;
    }

    StudentRecord read(Function<KeptKind, KeptTable> tables, List<ReportLine> told) {
        Map<KeptKind, List<KeptTable>> earlier = earlier();
        Map<KeptKind, KeptTable> now = new LinkedHashMap<>();
        HOLDS.keySet().forEach(kind -> now.put(kind, tables.apply(kind)));
        goalsOf(tables.apply(KeptKind.GOALS));
        earlier.getOrDefault(KeptKind.GOALS, List.of()).forEach(this::goalsOf);
        now.forEach((kind, table) -> kept(kind.stem(), HOLDS.getOrDefault(kind, ""), kind, table));
        earlier.forEach((kind, versions) -> versions.forEach(version -> kept(
                version.file().substring(version.file().lastIndexOf('/') + 1).replace(".csv", ""),
                "the same file before an import replaced it on the day of its name",
                kind,
                version)));
        KeptTable approved = KeptTable.read(
                folder.root().resolve(ExtraTable.APPROVED.file()), ExtraTable.APPROVED.file(), List.of());
        part("approved", "practice tasks that the therapist allowed", approved, cells -> isOurs(cells.text("student")));
        entries(
                EntryKind.TRIALS,
                "trials",
                "every try, with entry, line and the place it came from",
                TrialCells.HEADINGS);
        entries(
                EntryKind.SECOND_OBSERVER,
                "second-observer",
                "tries as a second observer wrote them",
                TrialCells.HEADINGS);
        entries(EntryKind.VISITS, "visits", "visits held and missed", EntryKind.VISIT_COLUMNS);
        setAside();
        told(told);
        journal();
        return new StudentRecord(code, parts, nobodys);
    }

    private Map<KeptKind, List<KeptTable>> earlier() {
        Map<KeptKind, List<KeptTable>> earlier = new LinkedHashMap<>();
        try {
            for (KeptKind kind : HOLDS.keySet()) {
                for (Path file : History.replaced(folder, kind, knownOn)) {
                    earlier.computeIfAbsent(kind, any -> new ArrayList<>())
                            .add(KeptTable.read(file, folder.name(file), kind.columns()));
                }
            }
        } catch (IOException unreadable) {
            throw new OutputRefused("history cannot be read; check the disk and its permissions", unreadable);
        }
        return earlier;
    }

    private void goalsOf(KeptTable table) {
        for (Cells cells : table.rows()) {
            if (isOurs(cells.text("student"))) {
                goals.add(cells.text("goal"));
            }
        }
    }

    private boolean isOurs(String student) {
        return student.equals(code.text());
    }

    private void kept(String name, String holds, KeptKind kind, KeptTable table) {
        boolean byStudent = kind.required().contains("student");
        part(
                name,
                holds,
                table,
                cells -> byStudent ? isOurs(cells.text("student")) : goals.contains(cells.text("goal")));
    }

    private interface Mine {
        boolean is(Cells cells);
    }

    private void part(String name, String holds, KeptTable table, Mine mine) {
        List<List<String>> rows = new ArrayList<>();
        List<String> headings = table.rows().isEmpty()
                ? List.of("student")
                : table.rows().get(0).header().headings();
        for (Cells cells : table.rows()) {
            if (mine.is(cells)) {
                List<String> row = new ArrayList<>(cells.row().cells());
                row.replaceAll(FormulaGuard::unguard);
                while (row.size() < headings.size()) {
                    row.add("");
                }
                rows.add(row.subList(0, headings.size()));
            }
        }
        parts.add(new StudentRecord.Part(name, holds, headings, rows));
    }

    private void entries(EntryKind kind, String name, String holds, List<String> columns) {
        List<String> headings = new ArrayList<>(List.of("entry", "line", "stands"));
        headings.addAll(columns);
        int student = columns.indexOf("student");
        LineSet replaced = journal.superseded();
        List<List<String>> rows = new ArrayList<>();
        EntryReader.everything(folder, journal, kind).forEach((entry, line, cells) -> {
            if (isOurs(cells.get(student))) {
                entries.add(entry);
                List<String> row = new ArrayList<>(List.of(
                        LogbookFolder.four(entry),
                        Long.toString(line),
                        journal.isUndone(entry)
                                ? "no: the import was taken back"
                                : replaced.holds(entry, line) ? "no: replaced by a later entry" : "yes"));
                row.addAll(cells);
                rows.add(row);
            }
        });
        parts.add(new StudentRecord.Part(name, holds, headings, rows));
    }

    private void setAside() {
        List<List<String>> rows = new ArrayList<>();
        for (Entry entry : journal.entries()) {
            if (entry.counts().setAside() > 0) {
                for (SetAsideRecord record : SetAsideFile.read(folder, entry)) {
                    if (isOurs(record.row().student())) {
                        entries.add(entry.number());
                        rows.add(row(record));
                    } else if (record.row().student().isBlank()) {
                        nobodys++;
                    }
                }
            }
        }
        parts.add(new StudentRecord.Part(
                "set-aside",
                "rows that were not taken, with their reason and their cells",
                List.of("row", "state", "at", "codes", "reasons", "mend", "cells"),
                rows));
    }

    private List<String> row(SetAsideRecord record) {
        SetAsideRow row = record.row();
        List<String> cells = new ArrayList<>();
        for (int column = 0; column < row.cells().size(); column++) {
            String heading =
                    column < record.headings().size() ? record.headings().get(column) : "column " + (column + 1);
            cells.add(heading + ": " + row.cells().get(column));
        }
        return List.of(
                record.id(),
                state(record),
                row.at(),
                row.codes(),
                row.reasons(),
                row.mend(),
                String.join(" | ", cells));
    }

    private String state(SetAsideRecord record) {
        if (journal.isUndone(record.entry())) {
            return "the import was taken back";
        }
        if (journal.isDismissed(record.entry(), record.number())) {
            return "closed without taking it";
        }
        return journal.mendedBy(record.entry(), record.number())
                .map(later -> "mended by entry " + later.text())
                .orElse("open");
    }

    private void told(List<ReportLine> told) {
        List<List<String>> rows = new ArrayList<>();
        for (ReportLine line : told) {
            boolean known = knownOn.map(day -> !line.asOf().isAfter(day)).orElse(true);
            if (known && goals.contains(line.goal().text())) {
                rows.add(List.of(
                        line.goal().text(),
                        line.period(),
                        line.asOf().toString(),
                        line.value(),
                        line.judgement(),
                        Integer.toString(line.lastEntry())));
            }
        }
        parts.add(new StudentRecord.Part("told", "what reports told the team of each goal", ReportsFile.COLUMNS, rows));
    }

    private void journal() {
        List<List<String>> rows = new ArrayList<>();
        for (Entry entry : journal.entries()) {
            if (entries.contains(entry.number())) {
                rows.add(List.of(
                        entry.text(),
                        entry.kind().word(),
                        entry.label(),
                        entry.when().toString(),
                        entry.sourceHash(),
                        journal.isUndone(entry.number()) ? "taken back" : "stands"));
            }
        }
        parts.add(new StudentRecord.Part(
                "entries",
                "the imports in which something of the student lies",
                List.of("entry", "kind", "label", "when", "source_sha256", "state"),
                rows));
    }
}
