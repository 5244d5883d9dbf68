package stridetally.recordings;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import stridetally.ingest.TextSource;
import stridetally.problem.At;
import stridetally.problem.Checked;
import stridetally.problem.InputRefused;
import stridetally.problem.ProblemCode;
import stridetally.problem.ProblemTally;
import stridetally.problem.RowProblem;
import stridetally.table.Cells;
import stridetally.table.Header;
import stridetally.table.Row;
import stridetally.table.TableReader;

/**
 * The list {@code file,kind,student,date,trial,protocol,rate_hz} that says whose recordings are. Also taken: {@code session},
 * {@code help}, {@code prompt}, {@code use}, {@code place}, {@code observer}, {@code source} as in a log of trials, and
 * {@code filter}, {@code detrend} of sway.
 */
public final class Manifest {
    private static final List<String> NEEDED = List.of("file", "kind", "student", "date");
    private static final List<String> OWN = List.of("file", "kind", "rate_hz", "filter", "detrend");

    private Manifest() {}

    /** Its rows; one that cannot be read is told with its place and left out. */
    public static List<ManifestRow> read(TextSource text, ProblemTally problems) {
        String name = text.bytes().name();
        try (Reader reader = text.open()) {
            TableReader table = TableReader.sniffing(reader, name, Manifest::isKnown);
            Row first = table.next()
                    .flatMap(Checked::value)
                    .orElseThrow(() -> new InputRefused(name + ": the manifest is empty"));
            Header header = Header.of(name, first, SampleTable::fold);
            for (String heading : NEEDED) {
                if (!header.columns().containsKey(heading)) {
                    throw new InputRefused(name + ": a manifest needs the columns " + String.join(", ", NEEDED) + "; "
                            + heading + " is missing");
                }
            }
            List<ManifestRow> rows = new ArrayList<>();
            for (Optional<Checked<Row>> next = table.next(); next.isPresent(); next = table.next()) {
                next.get().problems().forEach(problems::add);
                next.get()
                        .value()
                        .flatMap(row -> row(header.cells(row), problems))
                        .ifPresent(rows::add);
            }
            return rows;
        } catch (IOException failed) {
            throw new InputRefused(name + ": could not be read; check the disk and try again", failed);
        }
    }

    private static boolean isKnown(String heading) {
        String name = SampleTable.fold(heading);
        return OWN.contains(name) || ManifestRow.CARRIED.contains(name);
    }

    private static Optional<ManifestRow> row(Cells cells, ProblemTally problems) {
        Optional<RecordingKind> kind =
                RecordingKind.of(cells.text("kind")).filter(one -> one != RecordingKind.MANIFEST);
        String detrend = cells.text("detrend").toUpperCase(Locale.ROOT);
        OptionalDouble rate = rate(cells.text("rate_hz"));
        if (cells.text("file").isEmpty()) {
            problems.add(refused(cells.at(), "", "the file of the recording", "write its path"));
        } else if (kind.isEmpty()) {
            problems.add(refused(cells.at(), cells.text("kind"), "footfalls or sway", "correct the kind"));
        } else if (!List.of("", "MEAN", "LINE").contains(detrend)) {
            problems.add(refused(cells.at(), cells.text("detrend"), "mean or line", "correct detrend"));
        } else if (rate.isEmpty() && !cells.text("rate_hz").isEmpty()) {
            problems.add(refused(cells.at(), cells.text("rate_hz"), "samples in a second", "correct rate_hz"));
        } else {
            Map<String, String> carried = new HashMap<>();
            ManifestRow.CARRIED.forEach(heading -> carried.put(heading, cells.text(heading)));
            Detrend taken = detrend.isEmpty() ? Detrend.MEAN : Detrend.valueOf(detrend);
            return Optional.of(new ManifestRow(
                    cells.at(),
                    cells.text("file"),
                    kind.get(),
                    new Recordings.How(rate, taken, cells.text("filter")),
                    carried));
        }
        return Optional.empty();
    }

    private static RowProblem refused(At at, String found, String expected, String mend) {
        return new RowProblem(ProblemCode.RECORDING_REFUSED, at, found, expected, mend);
    }

    private static OptionalDouble rate(String written) {
        try {
            double rate = written.isEmpty() ? Double.NaN : Double.parseDouble(written);
            return rate > 0 && rate < Double.POSITIVE_INFINITY ? OptionalDouble.of(rate) : OptionalDouble.empty();
        } catch (NumberFormatException unreadable) {
            return OptionalDouble.empty();
        }
    }
}
