package stridetally.logbook;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stridetally.ingest.ByteSource;
import stridetally.ingest.ColumnSamples;
import stridetally.ingest.DateOrder;
import stridetally.ingest.KnownTrials;
import stridetally.ingest.LogRules;
import stridetally.ingest.TextSource;
import stridetally.ingest.TrialLog;
import stridetally.measures.Catalogue;
import stridetally.model.Settings;
import stridetally.model.StudentCode;
import stridetally.units.DecimalMark;

/** One log read through the import without a disk: what became of it, and the rows that an entry would get. */
record ReadLog(TrialImport.Outcome outcome, List<List<String>> rows, List<SetAsideRow> setAside) {
    static final LocalDate AS_OF = LocalDate.of(2026, 11, 20);

    static ReadLog of(String text) {
        return of(text, new KnownTrials(), 1, TrialImport.Clash.SET_ASIDE);
    }

    static ReadLog of(String text, KnownTrials known, int entry, TrialImport.Clash clash) {
        return of(text.getBytes(StandardCharsets.UTF_8), rules(), known, entry, clash);
    }

    static ReadLog of(byte[] bytes, LogRules rules, KnownTrials known, int entry, TrialImport.Clash clash) {
        List<List<String>> rows = new ArrayList<>();
        List<SetAsideRow> setAside = new ArrayList<>();
        TrialLog log = TrialLog.open(TextSource.of(new Bytes("log.csv", bytes)), rules);
        TrialImport.Destination destination = new TrialImport.Destination() {
            @Override
            public void row(List<String> cells) {
                rows.add(List.copyOf(cells));
            }

            @Override
            public void setAside(SetAsideRow row) {
                setAside.add(row);
            }
        };
        TrialImport.Outcome outcome = new TrialImport(log, known, clash, entry, destination, new ColumnSamples()).run();
        return new ReadLog(outcome, rows, setAside);
    }

    /** Students S01 and S02, the usual settings, the program's catalogue. */
    static LogRules rules() {
        return new LogRules(
                Settings.usual("north"),
                Catalogue.standard(),
                Optional.of(Set.of(new StudentCode("S01"), new StudentCode("S02"))),
                AS_OF,
                DateOrder.UNPROVEN,
                DecimalMark.POINT,
                Optional.empty(),
                "north");
    }

    long read() {
        return outcome.taken() + outcome.known() + outcome.setAside() + outcome.blank();
    }

    /** Bytes in memory. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Bytes(String name, byte[] content) implements ByteSource {
        @Override
        public long size() {
            return content.length;
        }

        @Override
        public InputStream open() {
            return new ByteArrayInputStream(content);
        }
    }
}
