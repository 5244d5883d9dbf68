package stridetally.recordings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import stridetally.ingest.TextSource;
import stridetally.measures.Catalogue;
import stridetally.problem.InputRefused;
import stridetally.table.CsvTable;

/** A manifest says whose recordings are; what they give becomes a log of trials. Numbers as of the made-up walk. */
class ManifestTest {
    private final StringBuilder log = new StringBuilder();

    private ManifestRun run(String manifest) {
        ManifestRun run = new ManifestRun(file -> {
            if (file.equals("lost.csv")) {
                throw new InputRefused(file + " does not exist");
            }
            return MadeRecording.source(file, FootfallsReferenceTest.walk(9));
        });
        CsvTable table = new CsvTable(log, RecordingTrials.HEADINGS, CsvTable.Guard.OFF);
        RecordingTrials trials = new RecordingTrials(table, Catalogue.standard()::find);
        run.read(TextSource.of(MadeRecording.source("manifest.csv", manifest)), trials::add);
        return run;
    }

    @Test
    void everyMeasureOfARecordingBecomesATry() {
        ManifestRun run = run(
                "file,kind,student,date,trial,protocol,help\na.csv,footfalls,S1,2026-10-05,3,shoes=on,independent\n");
        assertTrue(!run.leftOut(), () -> run.problems().sentences().toString());
        List<String> lines = log.toString().lines().toList();
        assertEquals(
                ",S1,2026-10-05,,3,cadence,117.647058824,steps/min,,shoes=on,independent,,,,,recording of line 2 of the"
                        + " manifest n = 9",
                lines.get(1));
        assertTrue(lines.stream().noneMatch(line -> line.contains("\"")), "a quoted row is slow to read back");
        assertTrue(lines.stream().anyMatch(line -> line.contains(",stride-time,1.025,s,right,")), log::toString);
        assertTrue(
                lines.stream().noneMatch(line -> line.contains("step-time-robinson")), "no measure of the catalogue");
        assertTrue(lines.stream().noneMatch(line -> line.contains("variability")), "four strides are too few");
    }

    @Test
    void aRecordingThatIsLostIsSaidAndTheOthersGoOn() {
        ManifestRun run = run("""
                file,kind,student,date
                lost.csv,footfalls,S1,2026-10-05
                a.csv,footfalls,S2,2026-10-05
                a.csv,gait,S3,2026-10-05
                """);
        assertTrue(run.leftOut());
        String told = String.join("\n", run.problems().sentences());
        assertTrue(told.contains("manifest.csv:2: RECORDING_REFUSED; lost.csv does not exist"), told);
        assertTrue(
                told.contains("manifest.csv:4: RECORDING_REFUSED: found \"gait\"; expected footfalls or sway"), told);
        assertTrue(log.toString().contains(",S2,2026-10-05,,,cadence,117.647058824,"), log::toString);
        assertTrue(!log.toString().contains("S1,"), log::toString);
    }

    @Test
    void aManifestWithoutStudentsIsRefused() {
        assertThrows(InputRefused.class, () -> run("file,kind,date\na.csv,footfalls,2026-10-05\n"));
    }

    @Test
    void theProtocolOfTheManifestStandsAndTheRecordingAddsItsOwn() {
        Recorded.Walk walk = new Recorded.Walk(
                "",
                List.of(),
                List.of(new Recorded.ProtocolKey("rate", "100 Hz"), new Recorded.ProtocolKey("filter", "none")));
        assertEquals("filter=lowpass;eyes=open;rate=100 Hz", walk.over("filter=lowpass;eyes=open"));
        assertEquals("rate=100 Hz", walk.over("", key -> key.equals("rate")));
    }
}
