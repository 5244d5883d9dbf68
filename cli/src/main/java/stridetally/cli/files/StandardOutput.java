package stridetally.cli.files;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import stridetally.problem.OutputRefused;

/**
 * Standard output that does not swallow a failed write, as {@code System.out} would: a full disk is {@link OutputRefused}, a
 * reader that went away is {@link ClosedPipe}. Both are unchecked, so they pass through a {@code PrintWriter} too.
 */
public final class StandardOutput extends OutputStream {
    private static final Path LINK_OF_STANDARD_OUTPUT = Path.of("/proc/self/fd/1");

    private final OutputStream target;

    StandardOutput(OutputStream target) {
        this.target = target;
    }

    /** That of the process, not buffered. */
    public static OutputStream ofProcess() {
        return new StandardOutput(new FileOutputStream(FileDescriptor.out));
    }

    /** Writes and flushes the content. */
    public static void write(OutputStream out, Content content) {
        try {
            content.writeTo(out);
            out.flush();
        } catch (IOException failure) {
            throw brokenPipe(failure) ? new ClosedPipe(failure) : refused(failure);
        }
    }

    @Override
    public void write(int oneByte) {
        try {
            target.write(oneByte);
        } catch (IOException failure) {
            throw failed(failure);
        }
    }

    @Override
    public void write(byte[] bytes, int from, int length) {
        try {
            target.write(bytes, from, length);
        } catch (IOException failure) {
            throw failed(failure);
        }
    }

    @Override
    public void flush() {
        try {
            target.flush();
        } catch (IOException failure) {
            throw failed(failure);
        }
    }

    private static RuntimeException failed(IOException failure) {
        return brokenPipe(failure) || joinedToPipe() ? new ClosedPipe(failure) : refused(failure);
    }

    private static OutputRefused refused(IOException failure) {
        return new OutputRefused(
                "standard output could not be written (" + Reason.of(failure) + "); what arrived there is not complete",
                failure);
    }

    private static boolean brokenPipe(IOException failure) {
        String message = failure.getMessage();
        return message != null && message.contains("Broken pipe");
    }

    /** The message may be in the person's language; a pipe can only fail by its reader, so ask the system what it is. */
    private static boolean joinedToPipe() {
        try {
            String joinedTo = Files.readSymbolicLink(LINK_OF_STANDARD_OUTPUT).toString();
            return joinedTo.startsWith("pipe:") || joinedTo.startsWith("socket:");
        } catch (IOException cannotTell) {
            return false;
        }
    }
}
