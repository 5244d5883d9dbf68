package stridetally.recordings;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stridetally.ingest.ByteSource;
import stridetally.model.Side;
import stridetally.problem.ProblemCode;
import stridetally.problem.ProblemTally;

/** A recording made up in a test, and what came of it. */
final class MadeRecording {
    final ProblemTally problems = new ProblemTally();
    final Recorded recorded;

    private MadeRecording(String text, RecordingKind kind, Recordings.How how) {
        this.recorded = Recordings.read(source("made.csv", text), kind, how, problems);
    }

    static MadeRecording footfalls(String text) {
        return new MadeRecording(text, RecordingKind.FOOTFALLS, Recordings.How.UNKNOWN);
    }

    static MadeRecording sway(String text) {
        return new MadeRecording(text, RecordingKind.SWAY, Recordings.How.UNKNOWN);
    }

    static MadeRecording sway(String text, double rate) {
        return new MadeRecording(
                text, RecordingKind.SWAY, new Recordings.How(OptionalDouble.of(rate), Detrend.MEAN, ""));
    }

    static ByteSource source(String name, String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        return new ByteSource() {
            @Override
            public String name() {
                return name;
            }

            @Override
            public long size() {
                return bytes.length;
            }

            @Override
            public InputStream open() {
                return new ByteArrayInputStream(bytes);
            }
        };
    }

    Figure figure(String quantity, Side side) {
        List<Figure> figures = recorded.walks().get(0).figures();
        Optional<Figure> found = figures.stream()
                .filter(one -> one.quantity().equals(quantity) && one.side() == side)
                .findFirst();
        return found.orElseThrow(() -> new AssertionError(quantity + " is not there"));
    }

    double value(String quantity, Side side) {
        return figure(quantity, side).value().orElseThrow();
    }

    double value(String quantity) {
        return value(quantity, Side.NONE);
    }

    String reason(String quantity) {
        return figure(quantity, Side.NONE).value().reason();
    }

    long count(ProblemCode code) {
        return problems.count(code);
    }

    String told() {
        return String.join("\n", problems.sentences());
    }
}
