package stridetally.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import stridetally.measures.Measure;
import stridetally.measures.MeasureKind;
import stridetally.measures.Reference;
import stridetally.measures.ReferenceSearch;
import stridetally.model.Body;
import stridetally.model.Direction;
import stridetally.model.Level;
import stridetally.model.Summary;
import stridetally.model.WordScale;
import stridetally.scoring.Session;
import stridetally.scoring.SessionValue;
import stridetally.stats.Estimate;
import stridetally.stats.StandardScore;
import stridetally.units.Amount;

/**
 * One session beside one published value of children with typical development.
 *
 * @param reference the published value
 * @param value of the session, by the source's summary when it states one
 * @param expected mean of the source, or what its equation gives for this child
 * @param score standard deviations from the mean, better is positive
 * @param centile percent of those children; only of measures that are not times
 */
public record BesideReference(
        Reference reference,
        Estimate<Double> value,
        Estimate<Double> expected,
        Estimate<StandardScore> score,
        Estimate<Double> centile) {
    /** Body sizes older than this are not the child's of today. Ours. */
    static final int BODY_DAYS = 183;

    /** The most help with which a test stands beside children who had none: an adult within reach and no touch. */
    private static final String NO_TOUCH = "stand-by";

    private static final double SHORTEST_CM = 60;
    private static final double TALLEST_CM = 220;
    private static final double LIGHTEST_KG = 7;
    private static final double HEAVIEST_KG = 200;

    /**
     * The comparison.
     *
     * @param search that the reference serves in
     * @param bodies of the student
     * @param help the scale on which the session's most help is named
     */
    static BesideReference of(
            ReferenceSearch search,
            Reference reference,
            Measure measure,
            Session session,
            List<Body> bodies,
            WordScale help) {
        Estimate<Double> value = value(reference, session, help);
        Estimate<Double> expected = expected(reference, search.months(), bodies, session.date());
        Estimate<StandardScore> score = reference.sd().isEmpty()
                ? Estimate.notEstimable("the source prints no spread")
                : value.flatMap(one -> expected.flatMap(mean -> measure.better()
                        .map(way -> Estimate.of(
                                StandardScore.of(one, mean, reference.sd().get(), better(way))))
                        .orElse(Estimate.notEstimable("neither way of this measure is better by itself"))));
        Estimate<Double> centile = measure.kind() == MeasureKind.DURATION
                ? Estimate.notEstimable("times are skewed, and a normal centile would mislead")
                : score.flatMap(StandardScore::centile);
        return new BesideReference(reference, value, expected, score, centile);
    }

    private static StandardScore.Better better(Direction way) {
        return way == Direction.LOWER ? StandardScore.Better.LOWER : StandardScore.Better.HIGHER;
    }

    private static Estimate<Double> value(Reference reference, Session session, WordScale help) {
        OptionalInt most = session.mostHelp();
        int noTouch = help.find(NO_TOUCH).map(Level::rank).orElse(0);
        if (most.isPresent() && most.getAsInt() > noTouch) {
            return Estimate.notEstimable("a try needed help ("
                    + help.level(most.getAsInt()).word() + "): the children of the source had none");
        }
        SessionValue value = reference.summary().map(how -> by(how, session)).orElse(session.value());
        return Measured.of(value)
                .flatMap(one -> one.bound().isPresent()
                        ? Estimate.notEstimable("the value is capped")
                        : Estimate.of(one.value()));
    }

    private static SessionValue by(Summary summary, Session session) {
        return switch (summary) {
            case BEST -> session.best();
            case MEAN -> session.mean();
            case MEDIAN -> session.median();
            case LAST -> session.last();
            default -> session.value();
        };
    }

    private static Estimate<Double> expected(Reference reference, long months, List<Body> bodies, LocalDate on) {
        if (!reference.needsBody()) {
            return Estimate.of(reference.expected(months, 0, 0));
        }
        Optional<Body> latest = bodies.stream()
                .filter(body -> !body.date().isAfter(on) && !body.date().isBefore(on.minusDays(BODY_DAYS)))
                .filter(body -> body.heightCm().isPresent() && body.weightKg().isPresent())
                .max(Comparator.comparing(Body::date));
        if (latest.isEmpty()) {
            return Estimate.notEstimable(
                    "bodies.csv has no height_cm and weight_kg of the " + BODY_DAYS + " days up to " + on);
        }
        double height = latest.get().heightCm().map(Amount::value).orElseThrow();
        double weight = latest.get().weightKg().map(Amount::value).orElseThrow();
        List<String> wrong = new ArrayList<>();
        if (height < SHORTEST_CM || height > TALLEST_CM) {
            wrong.add("height_cm is no child's in centimetres (inches, metres or millimetres?)");
        }
        if (weight < LIGHTEST_KG || weight > HEAVIEST_KG) {
            wrong.add("weight_kg is no child's in kilograms");
        }
        return wrong.isEmpty()
                ? Estimate.finite(reference.expected(months, height, weight))
                : Estimate.notEstimable("bodies.csv, " + latest.get().date() + ": " + String.join("; ", wrong));
    }
}
