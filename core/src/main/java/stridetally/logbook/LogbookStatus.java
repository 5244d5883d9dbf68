package stridetally.logbook;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How a logbook stands.
 *
 * @param entries every entry of the journal
 * @param openSetAside open set-aside rows by student code; blank for rows whose student could not be read
 * @param gaps numbers the journal skips, and files that are missing, in words
 */
public record LogbookStatus(List<Standing> entries, Map<String, Long> openSetAside, List<String> gaps) {

    /** Whether the rows of an entry count. */
    public enum State {
        LIVE,
        UNDONE
    }

    /**
     * One entry, and what became of it since.
     *
     * @param superseded its lines that were replaced by later ones
     * @param mended rows it set aside that later entries closed
     * @param dismissed rows it set aside that were closed with a reason
     */
    public record Standing(Entry entry, State state, long superseded, long mended, long dismissed) {}

    public LogbookStatus {
        entries = List.copyOf(entries);
        openSetAside = java.util.Collections.unmodifiableMap(new TreeMap<>(openSetAside));
        gaps = List.copyOf(gaps);
    }

    static LogbookStatus of(LogbookFolder folder, Journal journal, List<SetAsideRecord> open) {
        LineSet superseded = journal.superseded();
        LineSet mended = journal.mended();
        List<Standing> entries = new ArrayList<>();
        for (Entry entry : journal.entries()) {
            State state = journal.isUndone(entry.number()) ? State.UNDONE : State.LIVE;
            entries.add(new Standing(
                    entry,
                    state,
                    superseded.count(entry.number()),
                    mended.count(entry.number()),
                    journal.dismissed(entry.number())));
        }
        Map<String, Long> byStudent = new TreeMap<>();
        open.forEach(one -> byStudent.merge(one.row().student(), 1L, Long::sum));
        return new LogbookStatus(entries, byStudent, gaps(folder, journal));
    }

    private static List<String> gaps(LogbookFolder folder, Journal journal) {
        List<String> gaps = new ArrayList<>();
        int expected = 1;
        for (Entry entry : journal.entries()) {
            while (expected < entry.number()) {
                gaps.add("entry " + LogbookFolder.four(expected) + " is not in the journal");
                expected++;
            }
            expected = entry.number() + 1;
            var file = folder.entry(entry.number(), entry.kind());
            if (!Files.exists(file)) {
                gaps.add(folder.name(file) + " is missing");
            }
        }
        return gaps;
    }
}
