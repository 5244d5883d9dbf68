package stridetally.cli.files;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** Why the machine refused, in a few plain words. */
final class Reason {
    private Reason() {}

    static String of(IOException failure) {
        if (failure instanceof AccessDeniedException) {
            return "permission denied";
        }
        if (failure instanceof NoSuchFileException) {
            return "it is not there any more";
        }
        String words = failure instanceof FileSystemException system ? system.getReason() : failure.getMessage();
        return words == null || words.isBlank() ? failure.getClass().getSimpleName() : words;
    }
}
