package stridetally.logbook;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stridetally.ingest.FormMapping;
import stridetally.model.Caseload;
import stridetally.model.Contact;
import stridetally.model.Settings;
import stridetally.model.StudentCode;
import stridetally.model.Visit;
import stridetally.problem.Checked;
import stridetally.problem.InputRefused;
import stridetally.problem.OutputRefused;
import stridetally.table.Cells;
import stridetally.table.Header;
import stridetally.table.Row;

/**
 * A logbook as of its opening; never waits for a writer, never writes. With a day given, as it was known at the end of
 * that day: journal lines up to it, and hand-kept files in the version of that day as far as an import replaced them
 * since. {@code names.csv} is opened by {@link #names()} alone.
 */
public final class Logbook {
    private final LogbookFolder folder;
    private final Optional<LocalDate> knownOn;
    private final Journal journal;
    private final Settings settings;
    private final Map<KeptKind, KeptTable> planned;

    private Logbook(
            LogbookFolder folder,
            Optional<LocalDate> knownOn,
            Journal journal,
            Settings settings,
            Map<KeptKind, KeptTable> planned) {
        this.folder = folder;
        this.knownOn = knownOn;
        this.journal = journal;
        this.settings = settings;
        this.planned = planned;
    }

    /** Opens a folder. Refuses one that is no logbook, or from a newer version, or whose journal lost lines. */
    public static Logbook open(Path root, Optional<LocalDate> knownOn) {
        LogbookFolder folder = checked(root);
        try {
            // Listed before the journal is read, so that an entry committed meanwhile is not taken for a lost line.
            int highest = Leftovers.highest(folder);
            Journal journal = Journal.read(folder.journal(), folder.name(folder.journal()));
            Leftovers.refuseLostLines(folder, highest, journal.lastNumber() + 1);
            Settings settings = SettingsFile.read(folder);
            return new Logbook(folder, knownOn, knownOn.map(journal::knownOn).orElse(journal), settings, Map.of());
        } catch (IOException unreadable) {
            throw unreadable(root.toString(), unreadable);
        }
    }

    /** The saved mappings of forms, by name of their files. */
    public List<FormMapping> forms() {
        return FormFile.all(folder);
    }

    /** Makes an empty logbook. Refuses a folder that holds something. */
    public static Logbook create(Path root, String id) {
        NewLogbook.create(root, id);
        return open(root, Optional.empty());
    }

    /** The logbook that {@link #create} would make; nothing is written. Refuses a folder that holds something. */
    public static Logbook plan(Path root, String id) {
        NewLogbook.refuseUnlessNew(root);
        return new Logbook(
                new LogbookFolder(root), Optional.empty(), new Journal(List.of()), Settings.usual(id), Map.of());
    }

    /** This logbook as if a hand-kept file had these rows, a cell for each column of the kind; nothing is written. */
    Logbook with(KeptKind kind, List<List<String>> rows) {
        Map<KeptKind, KeptTable> more = new EnumMap<>(KeptKind.class);
        more.putAll(planned);
        more.put(kind, KeptTable.read(new StringReader(kind.text(rows)), kind.file(), kind.columns()));
        return new Logbook(folder, knownOn, journal, settings, more);
    }

    /** What {@code logbook.toml} says. */
    public Settings settings() {
        return settings;
    }

    /** Everything hand-kept, and the visits; with what is wrong or odd in it. There always is a caseload. */
    public Checked<Caseload> caseload() {
        List<Visit> visits = new ArrayList<>();
        Header header = Header.of("entries", new Row(1, EntryKind.VISIT_COLUMNS), heading -> heading);
        visits().forEach((entry, line, cells) -> {
            Cells row = new Cells(header, new Row(line, cells));
            visits.add(KeptRows.visit(row)
                    .value()
                    .orElseThrow(() -> new InputRefused(
                            "entry " + LogbookFolder.four(entry) + ", line " + line + ": not a visit that we wrote")));
        });
        return new CaseloadReader(settings, this::table).read(visits);
    }

    /** Whom to reach. */
    public Contact contact() {
        return ContactFile.read(folder);
    }

    /** The names of the students: the one place they come from, to be asked for only when the person asked for names. */
    public Map<StudentCode, String> names() {
        Map<StudentCode, String> names = new LinkedHashMap<>();
        KeptTable table = KeptTable.read(
                folder.root().resolve(LogbookFolder.NAMES), LogbookFolder.NAMES, List.of("student", "name"));
        for (Cells cells : table.requiring(List.of("student", "name")).rows()) {
            if (!cells.text("student").isEmpty() && !cells.text("name").isEmpty()) {
                names.putIfAbsent(new StudentCode(cells.text("student")), cells.text("name"));
            }
        }
        return names;
    }

    /** The rows of {@code measures.csv}, {@code ladder.csv} or {@code approved.csv}, for those who know what they mean. */
    public List<Cells> rows(ExtraTable table) {
        return KeptTable.read(folder.root().resolve(table.file()), table.file(), List.of())
                .rows();
    }

    /** The same with what is wrong in the file; empty when there is no such file. */
    public Optional<Checked<List<Cells>>> table(ExtraTable table) {
        KeptTable kept = KeptTable.read(folder.root().resolve(table.file()), table.file(), table.columns());
        return kept.present()
                ? Optional.of(new Checked<>(Optional.of(kept.rows()), kept.problems()))
                : Optional.empty();
    }

    /** Whether there is a file of the kind. */
    public boolean has(KeptKind kind) {
        return table(kind).present();
    }

    /** The trials that stand. */
    public EntryReader trials() {
        return new EntryReader(folder, journal, EntryKind.TRIALS);
    }

    /** The second observer's trials that stand: for agreement only, never counted. */
    public EntryReader secondObserver() {
        return new EntryReader(folder, journal, EntryKind.SECOND_OBSERVER);
    }

    /** The visits that stand. */
    public EntryReader visits() {
        return new EntryReader(folder, journal, EntryKind.VISITS);
    }

    /** All entries of the journal, those taken back too. */
    public List<Entry> entries() {
        return journal.entries();
    }

    /** The entries that were not taken back. */
    List<Entry> liveEntries() {
        return journal.live();
    }

    /** An entry by its number. */
    public Optional<Entry> entry(int number) {
        return journal.entry(number);
    }

    /** The entry that was made of a source with this hash and not taken back, if any. */
    Optional<Entry> liveEntry(String sourceHash) {
        return journal.live().stream()
                .filter(entry -> entry.sourceHash().equals(sourceHash))
                .findFirst();
    }

    /** Whether an import was taken back. */
    boolean isTakenBack(int entry) {
        return journal.isUndone(entry);
    }

    /** Whether a set-aside row was mended or dismissed. */
    boolean isClosed(LineRange row) {
        return journal.isDismissed(row.entry(), row.first())
                || journal.mendedBy(row.entry(), row.first()).isPresent();
    }

    /** The rows that an entry set aside, closed ones too. */
    List<SetAsideRecord> setAside(int entry) {
        return journal.entry(entry)
                .filter(one -> one.counts().setAside() > 0)
                .map(one -> SetAsideFile.read(folder, one))
                .orElse(List.of());
    }

    /** Set-aside rows of live entries that nobody mended or dismissed, in journal order. */
    public List<SetAsideRecord> openSetAside() {
        List<SetAsideRecord> open = new ArrayList<>();
        LineSet mended = journal.mended();
        for (Entry entry : journal.live()) {
            if (entry.counts().setAside() > 0) {
                for (SetAsideRecord one : SetAsideFile.read(folder, entry)) {
                    if (!journal.isDismissed(one.entry(), one.number()) && !mended.holds(one.entry(), one.number())) {
                        open.add(one);
                    }
                }
            }
        }
        return open;
    }

    /** What was told so far. */
    public List<ReportLine> reports() {
        return ReportsFile.read(folder);
    }

    /** Everything of one student. */
    public StudentRecord record(StudentCode code) {
        return new RecordReader(folder, journal, knownOn, code).read(this::table, reports());
    }

    /** How the logbook stands. */
    public LogbookStatus status() {
        return LogbookStatus.of(folder, journal, openSetAside());
    }

    static LogbookFolder checked(Path root) {
        LogbookFolder folder = new LogbookFolder(root);
        if (!Files.isDirectory(root)) {
            throw new InputRefused(root + " is not a folder; expected a logbook, a folder with logbook.toml in it");
        }
        if (!folder.isLogbook()) {
            throw new InputRefused(root + " is not a logbook: there is neither logbook.toml nor entries/journal.csv in"
                    + " it; name another folder, or begin a logbook with import --new");
        }
        return folder;
    }

    private KeptTable table(KeptKind kind) {
        KeptTable plan = planned.get(kind);
        if (plan != null) {
            return plan;
        }
        try {
            Optional<Path> file = knownOn.isPresent()
                    ? History.asKnown(folder, kind, knownOn.get())
                    : Optional.of(folder.root().resolve(kind.file()));
            return file.isPresent()
                    ? KeptTable.read(file.get(), folder.name(file.get()), kind.columns())
                    : KeptTable.none(kind.file());
        } catch (IOException unreadable) {
            throw unreadable(kind.file(), unreadable);
        }
    }

    private static OutputRefused unreadable(String name, IOException cause) {
        return new OutputRefused(name + " cannot be read; check the disk and its permissions", cause);
    }
}
