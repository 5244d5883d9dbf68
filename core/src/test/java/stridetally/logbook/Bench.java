package stridetally.logbook;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Optional;
import stridetally.ingest.ByteSource;
import stridetally.ingest.DateOrder;
import stridetally.ingest.KnownTrials;
import stridetally.ingest.LogRules;
import stridetally.ingest.TextSource;
import stridetally.ingest.TrialCells;
import stridetally.ingest.TrialFeed;
import stridetally.measures.Catalogue;
import stridetally.units.DecimalMark;

/** Whole imports into a test's logbook, as the command makes them. */
final class Bench {
    private Bench() {}

    /** A file in memory. */
    record Text(String name, String content) implements ByteSource {
        @Override
        public long size() {
            return content.length();
        }

        @Override
        public InputStream open() {
            return new ByteArrayInputStream(content.getBytes(StandardCharsets.UTF_8));
        }
    }

    /** One import of trials by a writer that is watched. */
    static ImportedFile trials(Notebook book, StepWatch watch, String name, String content) {
        try (LogbookWriter writer = LogbookWriter.open(book.root, Notebook.MONDAY, watch)) {
            return run(book, Optional.of(writer)).trials(TextSource.of(new Text(name, content)));
        }
    }

    static ImportRun run(Notebook book, Optional<LogbookWriter> writer) {
        Logbook open = book.open();
        LogRules rules = new LogRules(
                open.settings(),
                Catalogue.standard(),
                Optional.empty(),
                LocalDate.parse("2025-10-06"),
                DateOrder.UNPROVEN,
                DecimalMark.POINT,
                Optional.empty(),
                "north");
        return new ImportRun(
                writer,
                open,
                kind -> known(open, kind),
                rules,
                TrialImport.Clash.SET_ASIDE,
                "",
                new Forms(Optional.empty(), open.forms()),
                Optional.empty());
    }

    private static KnownTrials known(Logbook open, EntryKind kind) {
        KnownTrials known = new KnownTrials();
        (kind == EntryKind.SECOND_OBSERVER ? open.secondObserver() : open.trials())
                .forEach((entry, line, cells) ->
                        known.add(TrialCells.read(cells, open.settings(), "here"), TrialFeed.origin(entry, line)));
        return known;
    }
}
