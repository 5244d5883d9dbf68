package stridetally.scoring;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stridetally.model.Body;
import stridetally.model.Caseload;
import stridetally.model.Period;
import stridetally.model.StudentCode;
import stridetally.stats.Estimate;

/**
 * The leg length that holds for a walk: measured in the same reporting period, or, where no period is written, at most 92
 * days from it, because a child grows. One that cannot be in centimetres is refused and never converted. Our rules.
 *
 * @source ours
 */
public final class LegLengths {
    /** Where no period is written: a quarter of a year. */
    private static final long NEAR_DAYS = 92;

    private static final double LOWEST_CM = 30;
    private static final double HIGHEST_CM = 120;

    /** Of standing height; a leg in inches beside a height in centimetres lies far below. */
    private static final double LOWEST_PART = 0.38;

    private static final double HIGHEST_PART = 0.62;

    private final Map<StudentCode, List<Body>> bodies = new HashMap<>();
    private final List<Period> periods;

    private LegLengths(List<Period> periods) {
        this.periods = periods;
    }

    /** Of a caseload. */
    public static LegLengths of(Caseload caseload) {
        LegLengths legs = new LegLengths(caseload.settings().periods());
        for (Body body : caseload.bodies()) {
            if (body.legLengthCm().isPresent()) {
                legs.bodies
                        .computeIfAbsent(body.student(), any -> new ArrayList<>())
                        .add(body);
            }
        }
        return legs;
    }

    /** No leg length at all, as beside a bare log. */
    public static LegLengths none() {
        return new LegLengths(List.of());
    }

    /** Whether any leg length of a student is written. */
    public boolean has(StudentCode student) {
        return bodies.containsKey(student);
    }

    /** The leg length in metres for a walk on a day, the nearest in time; or why there is none. */
    public Estimate<Double> on(StudentCode student, LocalDate day) {
        List<Body> written = bodies.getOrDefault(student, List.of());
        if (written.isEmpty()) {
            return Estimate.notEstimable("no leg length in bodies.csv");
        }
        Body near = null;
        LocalDate last = written.get(0).date();
        for (Body body : written) {
            if (holds(body.date(), day)
                    && (near == null || daysApart(body.date(), day) < daysApart(near.date(), day))) {
                near = body;
            }
            last = body.date().isAfter(last) ? body.date() : last;
        }
        return near == null
                ? Estimate.notEstimable("no leg length of the same period: the last is of " + last)
                : inMetres(near);
    }

    private boolean holds(LocalDate measured, LocalDate walked) {
        boolean noPeriod = true;
        for (Period period : periods) {
            if (period.days().holds(walked)) {
                noPeriod = false;
                if (period.days().holds(measured)) {
                    return true;
                }
            }
        }
        return noPeriod && daysApart(measured, walked) <= NEAR_DAYS;
    }

    private static long daysApart(LocalDate one, LocalDate other) {
        return Math.abs(ChronoUnit.DAYS.between(one, other));
    }

    private static Estimate<Double> inMetres(Body body) {
        double leg = body.legLengthCm().orElseThrow().value();
        double part = body.heightCm().isPresent() ? leg / body.heightCm().get().value() : 0.5;
        boolean likely = leg >= LOWEST_CM && leg <= HIGHEST_CM && part >= LOWEST_PART && part <= HIGHEST_PART;
        return likely
                ? Estimate.finite(leg / 100)
                : Estimate.notEstimable("the leg length of " + body.date() + " is unlikely in centimetres ("
                        + body.legLengthCm().orElseThrow().text()
                        + "); were inches or metres meant?");
    }
}
