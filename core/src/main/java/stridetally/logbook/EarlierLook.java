package stridetally.logbook;

import java.io.IOException;
import java.io.Reader;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import stridetally.ingest.LogRow;
import stridetally.ingest.TextSource;
import stridetally.ingest.TrialLog;
import stridetally.model.Trial;
import stridetally.model.Visit;
import stridetally.problem.At;
import stridetally.problem.RowProblem;
import stridetally.table.Row;

/** A first look through a log for rows that were set aside before. */
final class EarlierLook {
    private EarlierLook() {}

    /** Rows of the same file that were set aside before are the same rows. */
    static void begin(
            MendedFile file,
            EntryKind kind,
            TextSource text,
            String sourceHash,
            List<String> headings,
            Optional<Nameless> nameless) {
        if (!file.mends().mendedFile()) {
            UnaryOperator<List<String>> kept = cells -> nameless.map(without -> without.cells(cells, headings.size()))
                    .orElse(cells);
            file.mends().ofSource(kind, sourceHash, text.bytes().shortName(), headings, kept);
        }
    }

    /** Looks at every row. */
    static void at(TrialLog log, Mends mends) {
        if (!mends.mayHoldEarlierRows()) {
            return;
        }
        log.read(new TrialLog.Taker() {
            @Override
            public void taken(Trial trial, LogRow row, List<RowProblem> notes) {
                mends.look(Stand.of(row));
            }

            @Override
            public void setAside(LogRow row, List<RowProblem> problems) {
                mends.look(Stand.of(row));
            }
        });
        mends.settle();
    }

    /** Looks at every row of an attendance log. */
    static void at(TextSource visits, String shortName, Mends mends) {
        if (!mends.mayHoldEarlierRows()) {
            return;
        }
        through(visits, new VisitLog.Taker() {
            @Override
            public void taken(Visit visit, Row row) {
                mends.look(new Stand(At.row(shortName, row.line()), row.cells()));
            }

            @Override
            public void setAside(Row row, List<RowProblem> problems) {
                mends.look(new Stand(At.row(shortName, row.line()), row.cells()));
            }
        });
        mends.settle();
    }

    /** Reads an attendance log to its end. */
    static void through(TextSource visits, VisitLog.Taker taker) {
        String name = visits.bytes().name();
        try (Reader reader = visits.open()) {
            VisitLog.read(reader, name, taker);
        } catch (IOException failed) {
            throw ImportedEntries.unreadable(name, failed);
        }
    }
}
