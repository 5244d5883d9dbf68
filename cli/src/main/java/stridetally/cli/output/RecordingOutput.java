package stridetally.cli.output;

import java.nio.file.Path;
import stridetally.cli.files.Content;
import stridetally.cli.files.FileSource;
import stridetally.cli.input.RecordingFiles;
import stridetally.cli.options.Format;
import stridetally.ingest.TextSource;
import stridetally.problem.ProblemTally;
import stridetally.problem.Severity;
import stridetally.recordings.ManifestRun;
import stridetally.recordings.Recorded;
import stridetally.recordings.RecordingKind;
import stridetally.recordings.Recordings;
import stridetally.report.RecordingRows;
import stridetally.table.TableWriter;

/** The table of {@code score} of recordings, written while they are read. */
public final class RecordingOutput {
    private ProblemTally problems = new ProblemTally();
    private boolean leftOut;

    /** The figures of one recording. */
    public Content file(FileSource source, RecordingKind kind, Recordings.How how, Format format) {
        Recorded recorded = Recordings.read(source, kind, how, problems);
        leftOut = recorded.refused() > 0
                || !problems.sentences(Severity.SET_ASIDE).isEmpty();
        return Content.text(out -> {
            TableWriter table = Tables.open(format, out, RecordingRows.HEADINGS);
            RecordingRows.rows(source.shortName(), recorded).forEach(table::row);
            table.finish();
        });
    }

    /** The figures of every recording of a manifest. */
    public Content manifest(Path manifest, Format format) {
        return Content.text(out -> {
            TableWriter table = Tables.open(format, out, RecordingRows.HEADINGS);
            ManifestRun run = RecordingFiles.ofManifest(manifest);
            run.read(
                    TextSource.of(new FileSource(manifest)),
                    (row, recorded) -> RecordingRows.rows(row, recorded).forEach(table::row));
            problems = run.problems();
            leftOut = run.leftOut();
            table.finish();
        });
    }

    /** What was told; complete once the content is written. */
    public ProblemTally problems() {
        return problems;
    }

    /** Whether anything was set aside. */
    public boolean leftOut() {
        return leftOut;
    }
}
