package stridetally.cli.commands;

import java.util.Optional;
import stridetally.cli.Console;
import stridetally.cli.ExitCodes;
import stridetally.cli.files.FileSource;
import stridetally.cli.input.RecordingFiles;
import stridetally.cli.options.Format;
import stridetally.cli.options.OutputOptions;
import stridetally.cli.options.RecordingOptions;
import stridetally.cli.options.SourceOption;
import stridetally.cli.output.RecordingOutput;
import stridetally.recordings.RecordingKind;

/** The steps of {@code score} on a recording or a manifest. */
final class ScoringRecordings {
    private final Console console;
    private final OutputOptions output;

    ScoringRecordings(Console console, OutputOptions output) {
        this.console = console;
        this.output = output;
    }

    /** What the source is a recording of; empty for logs, logbooks and standard input. */
    static Optional<RecordingKind> kind(SourceOption source, RecordingOptions typed) {
        if (typed.kind().isPresent() || source.logs().size() > 1 || source.isFolder() || source.isStandardInput()) {
            return typed.kind();
        }
        return RecordingFiles.guess(new FileSource(source.path()));
    }

    int run(SourceOption source, RecordingKind kind, RecordingOptions typed) {
        RecordingOutput recordings = new RecordingOutput();
        Format format = output.format(Format.CSV);
        output.write(
                console,
                kind == RecordingKind.MANIFEST
                        ? recordings.manifest(source.path(), format)
                        : recordings.file(new FileSource(source.path()), kind, typed.how(), format));
        console.tell(recordings.problems());
        return recordings.leftOut() ? ExitCodes.SET_ASIDE : ExitCodes.DONE;
    }
}
