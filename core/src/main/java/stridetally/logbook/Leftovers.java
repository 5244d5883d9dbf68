package stridetally.logbook;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stridetally.problem.InputRefused;

/**
 * What a run that was stopped may have left: temporary files, one entry that never got its journal line, its set-aside
 * file, a torn last line. Cleared by the next writer. More than one entry without a line is not our doing but a journal
 * that lost lines: then nothing is touched.
 */
final class Leftovers {
    private static final Pattern NUMBERED = Pattern.compile("(\\d{4,9})(-[a-z-]+)?\\.csv");
    private static final List<String> TEMPORARY =
            List.of(EntryDraft.ENTRY_TEMPORARY, EntryDraft.SET_ASIDE_TEMPORARY, LogbookWriter.FILE_TEMPORARY);

    private Leftovers() {}

    static void clear(LogbookFolder folder, Journal journal) throws IOException {
        int uncommitted = journal.lastNumber() + 1;
        refuseLostLines(folder, highest(folder), uncommitted);
        clearTornLine(folder.journal());
        for (String name : TEMPORARY) {
            Files.deleteIfExists(folder.entries().resolve(name));
        }
        for (EntryKind kind : EntryKind.values()) {
            Files.deleteIfExists(folder.entry(uncommitted, kind));
        }
        Files.deleteIfExists(folder.setAside(uncommitted));
    }

    /** Refuses when files stand there that a stopped run cannot have left. */
    static void refuseLostLines(LogbookFolder folder, int highest, int mayBeThere) {
        if (highest > mayBeThere) {
            throw new InputRefused("entry " + LogbookFolder.four(highest)
                    + " is not in entries/journal.csv: the journal is missing or lost lines; restore it from a backup");
        }
    }

    /** The highest number of an entry or set-aside file that lies there, journalled or not; 0 when there is none. */
    static int highest(LogbookFolder folder) throws IOException {
        int highest = 0;
        for (Path place : List.of(folder.entries(), folder.setAsides())) {
            if (!Files.isDirectory(place)) {
                continue;
            }
            try (Stream<Path> files = Files.list(place)) {
                for (Path file : files.toList()) {
                    Matcher matcher = NUMBERED.matcher(String.valueOf(file.getFileName()));
                    if (matcher.matches()) {
                        highest = Math.max(highest, Integer.parseInt(matcher.group(1)));
                    }
                }
            }
        }
        return highest;
    }

    private static void clearTornLine(Path journal) throws IOException {
        byte[] bytes = Files.readAllBytes(journal);
        int whole = Journal.wholeLength(bytes);
        if (whole < bytes.length) {
            try (FileChannel channel = FileChannel.open(journal, StandardOpenOption.WRITE)) {
                channel.truncate(whole);
                channel.force(true);
            }
        }
    }
}
