package stridetally.logbook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import stridetally.problem.OutputRefused;

/** The beginning of a logbook. */
final class NewLogbook {
    private NewLogbook() {}

    /** Makes the folder and what an empty logbook holds. Refuses a folder that holds something. */
    static void create(Path root, String id) {
        LogbookFolder folder = new LogbookFolder(root);
        refuseUnlessNew(root);
        try {
            DurableFiles.folder(root);
            DurableFiles.folder(folder.entries());
            DurableFiles.folder(folder.setAsides());
            DurableFiles.folder(folder.history());
            DurableFiles.create(folder.journal(), JournalText.header().getBytes(StandardCharsets.UTF_8));
            String quoted = id.replace("\\", "\\\\").replace("\"", "\\\"");
            String text = "id = \"" + quoted + "\"\nversion = " + SettingsFile.VERSION + "\n";
            DurableFiles.create(folder.settings(), text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException refused) {
            throw new OutputRefused(root + " cannot be made a logbook; check disk and permissions", refused);
        }
    }

    /** Refuses a folder that holds something. */
    static void refuseUnlessNew(Path root) {
        boolean free = !Files.exists(root);
        if (Files.isDirectory(root)) {
            try (Stream<Path> files = Files.list(root)) {
                free = files.findAny().isEmpty();
            } catch (IOException unreadable) {
                throw new OutputRefused(root + " cannot be read; check the disk and its permissions", unreadable);
            }
        }
        if (!free) {
            throw new OutputRefused(root + " exists and is not empty; name a new folder for the new logbook");
        }
    }
}
