package stridetally.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import stridetally.cli.input.LogRead;
import stridetally.cli.options.Format;
import stridetally.cli.options.NarrowOptions;
import stridetally.cli.output.SessionOutput;
import stridetally.ingest.ByteSource;
import stridetally.ingest.DateOrder;
import stridetally.units.DecimalMark;

/**
 * Scores four made-up rows on a second processor while the first reads the command line, so that the catalogue is read and
 * the code of a small run is linked when its turn comes: that is most of the time of a small run. Its result is thrown away
 * and nothing depends on it; a fault in it would come again, and be told, in the run itself.
 */
final class Rehearsal implements Runnable {
    private static final byte[] LOG = """
            student,date,session,measure,trial,value,unit,of,help,prompt,side,protocol,note
            x-1,2026-01-05,,line-steps,1,4,steps,,stand-by,none,,line_length=8 ft,
            x-1,2026-01-05,,line-share,1,3/4,,,independent,verbal,,,a
            x-1,2026-01-06,,single-leg-stance,1,>10,s,,independent,none,left,,
            x-1,2026-01-06,,walk-time,1,6.4,s,,independent,none,,distance=5 m,
            """.getBytes(StandardCharsets.UTF_8);

    private static final LocalDate LATER = LocalDate.of(2026, 2, 1);

    private Rehearsal() {}

    /** Reads the rows. Every one of them must be taken: a refused row would link the code of refusals. */
    static LogRead read() {
        return LogRead.usual(List.of(new Rows()), new LogRead.How(LATER, DateOrder.UNPROVEN, DecimalMark.POINT, false));
    }

    /** Runs it as a command would and waits, for the build's archive, which so holds every class of it. */
    static void once() throws InterruptedException {
        Thread beside = beside();
        beside.start();
        beside.join();
    }

    /** Starts it beside the run, when the run is one that reads tries. */
    static void startFor(String[] arguments) {
        boolean reads = arguments.length > 1 && ("score".equals(arguments[0]) || "trend".equals(arguments[0]));
        if (reads && Runtime.getRuntime().availableProcessors() > 1) {
            beside().start();
        }
    }

    private static Thread beside() {
        Thread beside = new Thread(new Rehearsal(), "rehearsal");
        beside.setDaemon(true);
        beside.setUncaughtExceptionHandler(new Hushed());
        return beside;
    }

    @Override
    public void run() {
        LogRead log = read();
        try {
            SessionOutput.log(log, new NarrowOptions(), Format.CSV).writeTo(OutputStream.nullOutputStream());
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private record Rows() implements ByteSource {
        @Override
        public String name() {
            return "rehearsal";
        }

        @Override
        public long size() {
            return LOG.length;
        }

        @Override
        public InputStream open() {
            return new ByteArrayInputStream(LOG);
        }
    }

    private record Hushed() implements Thread.UncaughtExceptionHandler {
        @Override
        public void uncaughtException(Thread thread, Throwable fault) {
            // See above: the run itself will tell.
        }
    }
}
