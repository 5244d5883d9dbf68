package stridetally.recordings;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import stridetally.problem.At;
import stridetally.problem.InputRefused;
import stridetally.problem.ProblemCode;
import stridetally.problem.ProblemTally;
import stridetally.problem.RowProblem;

/**
 * Reads {@code time_s,ml_mm,ap_mm} (also {@code _cm}, {@code _m}), or {@code time_s,ml_m_s2,ap_m_s2} of a sensor on the
 * trunk. A sample without numbers, or whose time does not go on, is set aside with its place. Refused: fewer than 5 s or 100
 * samples, more than one sample in twenty set aside, a unit of time or length that is another by a thousand.
 *
 * @source ours
 */
final class SwayReader {
    private static final int LEAST_SAMPLES = 100;
    private static final double LEAST_SECONDS = 5;
    private static final double LEAST_RATE = 20;
    private static final double ALLOWED_RATE_DIFFERENCE = 0.02;
    private static final double SLOWEST_RATE = 2;
    private static final double FASTEST_RATE = 20_000;
    private static final int ONE_IN = 20;

    private final SampleTable table;
    private final ProblemTally problems;
    private final OptionalDouble rate;
    private final int timeColumn;
    private final SwayUnit unit;
    private final int ml;
    private final int ap;
    private final double scaleMl;
    private final double scaleAp;
    private double[] time;
    private double[] sideways;
    private double[] forward;
    private long[] lines;
    private int count;
    private int aside;

    private SwayReader(SampleTable table, ProblemTally problems, OptionalDouble rate) {
        this.table = table;
        this.problems = problems;
        this.rate = rate;
        timeColumn = table.column("time_s");
        boolean acceleration = table.column("ap_m_s2") >= 0;
        unit = acceleration ? SwayUnit.ACCELERATION : SwayUnit.PRESSURE;
        LengthColumn across = LengthColumn.of(table, "ml");
        LengthColumn along = LengthColumn.of(table, "ap");
        ml = acceleration ? table.column("ml_m_s2") : across.column();
        ap = acceleration ? table.column("ap_m_s2") : along.column();
        scaleMl = acceleration ? 1 : across.metres() * 1000;
        scaleAp = acceleration ? 1 : along.metres() * 1000;
        if (timeColumn < 0 || ml < 0 || ap < 0) {
            throw new InputRefused(table.name()
                    + ": no sway; expected the columns time_s, ml_mm and ap_mm, or ml_m_s2 and ap_m_s2 of a sensor, found "
                    + String.join(", ", table.headings()));
        }
        int rows = table.rowsAtMost();
        time = new double[rows];
        sideways = new double[rows];
        forward = new double[rows];
        lines = new long[rows];
    }

    /** The samples; empty when they cannot be used, which is told. */
    static Optional<SwaySamples> read(SampleTable table, ProblemTally problems, OptionalDouble rate) {
        return new SwayReader(table, problems, rate).run();
    }

    private Optional<SwaySamples> run() {
        while (table.next()) {
            sample();
        }
        Optional<String> few = tooFew();
        if (few.isPresent()) {
            return refuse(few.get());
        }
        double interval = interval();
        Optional<String> unlikely = unlikely(1 / interval);
        if (unlikely.isPresent()) {
            return refuse(unlikely.get());
        }
        SwaySamples samples = gaps(interval);
        warn(samples);
        return Optional.of(samples);
    }

    private void sample() {
        double at = table.number(timeColumn);
        double across = table.number(ml);
        double along = table.number(ap);
        if (Double.isNaN(at + across + along)) {
            int column = Double.isNaN(at) ? timeColumn : Double.isNaN(across) ? ml : ap;
            aside(ProblemCode.SAMPLE_UNREADABLE, column, "a number", "the sample was left out");
        } else if (count > 0 && at <= time[count - 1]) {
            aside(
                    ProblemCode.SAMPLE_TIME,
                    timeColumn,
                    "a time after " + time[count - 1],
                    "times go on from row to row; the sample was left out");
        } else {
            time[count] = at;
            sideways[count] = across * scaleMl;
            forward[count] = along * scaleAp;
            lines[count] = table.line();
            count++;
        }
    }

    private void aside(ProblemCode code, int column, String expected, String mend) {
        aside++;
        problems.add(new RowProblem(code, table.at(column), table.text(column), expected, mend));
    }

    private Optional<String> tooFew() {
        if (aside * ONE_IN > count + aside) {
            return Optional.of(aside + " of " + (count + aside) + " samples cannot be used");
        }
        if (count < LEAST_SAMPLES) {
            return Optional.of(count + " samples; it needs " + LEAST_SAMPLES);
        }
        double seconds = time[count - 1] - time[0];
        return seconds < LEAST_SECONDS
                ? Optional.of("it lasts " + seconds + " s; it needs " + LEAST_SECONDS)
                : Optional.empty();
    }

    private double interval() {
        double[] steps = new double[count - 1];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = time[i + 1] - time[i];
        }
        Arrays.sort(steps);
        // The mean of the middle half: the digits of the times are few, so neighbours differ by a digit.
        double sum = 0;
        int from = steps.length / 4;
        int to = steps.length - from;
        for (int i = from; i < to; i++) {
            sum += steps[i];
        }
        return sum / (to - from);
    }

    private Optional<String> unlikely(double found) {
        boolean otherUnit = found < SLOWEST_RATE || found > FASTEST_RATE;
        if (rate.isPresent()) {
            double times = Math.max(found / rate.getAsDouble(), rate.getAsDouble() / found);
            otherUnit |= times > 500;
        }
        if (otherUnit) {
            return Optional.of("its times give a rate of " + found + " Hz; is time_s in milliseconds?");
        }
        if (unit == SwayUnit.ACCELERATION) {
            return Optional.empty();
        }
        double spread = Math.sqrt(SwayFigures.meanSquare(sideways, count) + SwayFigures.meanSquare(forward, count));
        return spread > 200 || spread < 0.05
                ? Optional.of("its distance from the mean is " + spread + " mm; check the unit of ml and ap")
                : Optional.empty();
    }

    private SwaySamples gaps(double interval) {
        int gaps = 0;
        long first = 0;
        for (int i = 1; i < count; i++) {
            if (time[i] - time[i - 1] > SwaySamples.GAP * interval) {
                gaps++;
                first = first == 0 ? lines[i] : first;
            }
        }
        return new SwaySamples(unit, count, time, sideways, forward, interval, gaps, first);
    }

    private void warn(SwaySamples samples) {
        double found = 1 / samples.interval();
        if (samples.gaps() > 0) {
            doubt(
                    samples.firstGap(),
                    samples.gapWords()
                            + " of more than two samples, the first before this line; the path is not known, and"
                            + " the velocity is that of the pieces");
        }
        if (rate.isPresent() && Math.abs(found / rate.getAsDouble() - 1) > ALLOWED_RATE_DIFFERENCE) {
            doubt(
                    lines[0],
                    "the times give " + Math.round(found) + " Hz where " + rate.getAsDouble()
                            + " Hz was written; the times were taken");
        }
        if (found < LEAST_RATE) {
            doubt(lines[0], "a rate of " + found + " Hz is low for sway; path, velocity and jerk come out small");
        }
    }

    private void doubt(long line, String words) {
        problems.add(new RowProblem(ProblemCode.RECORDING_DOUBTFUL, At.row(table.name(), line), "", "", words));
    }

    private Optional<SwaySamples> refuse(String why) {
        problems.add(new RowProblem(
                ProblemCode.RECORDING_REFUSED,
                At.row(table.name(), count > 0 ? lines[0] : 1),
                "",
                "",
                why + "; the recording was left out"));
        return Optional.empty();
    }
}
