package stridetally.scoring;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stridetally.ingest.ReadingKind;
import stridetally.measures.GaitFormulas;
import stridetally.measures.Measure;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.StudentCode;
import stridetally.stats.Estimate;
import stridetally.units.Amount;
import stridetally.units.Expecting;
import stridetally.units.Parsed;
import stridetally.units.Reading;
import stridetally.units.Unit;
import stridetally.units.ValueGrammar;

/** One measure of one walk, from its parts, or why it is not known. */
record WalkFigures(Function<MeasureId, Optional<Measure>> measures, LegLengths legs) {
    /** Where a walk over a marked way states its length. */
    static final String DISTANCE_KEY = "distance";

    private static final double BILLION = 1e9;

    /**
     * What came of it.
     *
     * @param why blank when there is a value, and when nothing needs to be said
     */
    record Outcome(ReadingKind kind, long value, String madeOf, String why) {
        boolean made() {
            return !madeOf.isEmpty();
        }

        static Outcome none(String why) {
            return new Outcome(ReadingKind.NOT_TESTED, 0, "", why);
        }
    }

    /** The parts that were found, in billionths of their unit; 0 where the measure does not need one. */
    private static final class Found {
        private final long[] value = new long[WalkPart.values().length];
        private final List<String> texts = new ArrayList<>();
        private ReadingKind word = ReadingKind.EXACT;

        double number(WalkPart part) {
            return Amount.toDouble(value[slot(part)]);
        }

        @SuppressWarnings("EnumOrdinal") // a place in an array that lives as long as this object
        static int slot(WalkPart part) {
            return part.ordinal();
        }
    }

    Outcome of(WalkMeasure measure, List<PartTry> walk, LocalDate day) {
        if (measure == WalkMeasure.SCALED_SPEED && !legs.has(walk.get(0).key().student())) {
            return Outcome.none("");
        }
        Found found = new Found();
        for (WalkPart part : measure.needs()) {
            Optional<String> why = look(part, walk, found);
            if (why.isPresent()) {
                return Outcome.none(why.get());
            }
        }
        if (found.word != ReadingKind.EXACT) {
            return new Outcome(found.word, 0, String.join(" / ", found.texts), "");
        }
        double figure =
                measure.of(found.number(WalkPart.DISTANCE), found.number(WalkPart.TIME), found.number(WalkPart.STEPS));
        if (measure != WalkMeasure.SCALED_SPEED) {
            return checked(measure, figure, found);
        }
        Estimate<Double> leg = legs.on(walk.get(0).key().student(), day);
        if (!leg.isEstimated()) {
            return Outcome.none(leg.reason());
        }
        found.texts.add("leg length " + leg.orElseThrow() + " m (bodies.csv)");
        return checked(measure, GaitFormulas.scaledSpeed(figure, leg.orElseThrow()), found);
    }

    /** Scaled speed from a logged speed in billionths of m/s; a word such as "unable" stays that word. */
    Outcome scaled(StudentCode student, LocalDate day, ReadingKind kind, long speed) {
        String part = WalkMeasure.SPEED.id().text();
        if (kind == ReadingKind.AT_LEAST || kind == ReadingKind.AT_MOST) {
            return Outcome.none(part + " was stopped at a limit");
        }
        if (kind != ReadingKind.EXACT) {
            return new Outcome(kind, 0, part, "");
        }
        if (speed <= 0) {
            return Outcome.none(part + " is not above 0");
        }
        Estimate<Double> leg = legs.on(student, day);
        if (!leg.isEstimated()) {
            return Outcome.none(leg.reason());
        }
        Found found = new Found();
        found.texts.add(part + " " + new Amount(speed).text() + " m/s");
        found.texts.add("leg length " + leg.orElseThrow() + " m (bodies.csv)");
        return checked(
                WalkMeasure.SCALED_SPEED, GaitFormulas.scaledSpeed(Amount.toDouble(speed), leg.orElseThrow()), found);
    }

    /** Fills in one part; or says why it cannot be used. */
    private static Optional<String> look(WalkPart part, List<PartTry> walk, Found found) {
        List<PartTry> logged = new ArrayList<>();
        for (PartTry one : walk) {
            if (one.part() == part) {
                logged.add(one);
            }
        }
        if (logged.size() > 1) {
            return Optional.of(
                    "the try has " + logged.size() + " values of " + part.id().text());
        }
        if (logged.isEmpty()) {
            return part == WalkPart.DISTANCE ? marked(walk, found) : Optional.of(missing(part));
        }
        PartTry one = logged.get(0);
        if (one.kind() == ReadingKind.EXACT && one.value() > 0) {
            found.value[Found.slot(part)] = one.value();
            found.texts.add(one.text(unit(part)));
            return Optional.empty();
        }
        if (one.kind() == ReadingKind.EXACT) {
            return Optional.of(part.id().text() + " is not above 0");
        }
        if (one.kind() == ReadingKind.AT_LEAST || one.kind() == ReadingKind.AT_MOST) {
            return Optional.of(part.id().text() + " was stopped at a limit");
        }
        found.word = one.kind();
        found.texts.add(one.text(""));
        return Optional.empty();
    }

    /** The length of a marked way, as the protocol of a part states it. */
    private static Optional<String> marked(List<PartTry> walk, Found found) {
        for (PartTry one : walk) {
            Optional<Amount> metres = distance(one.key().protocol());
            if (metres.isPresent() && metres.get().billionths() > 0) {
                found.value[Found.slot(WalkPart.DISTANCE)] = metres.get().billionths();
                found.texts.add("distance " + metres.get().text() + " m (protocol)");
                return Optional.empty();
            }
        }
        return Optional.of(missing(WalkPart.DISTANCE));
    }

    private static String missing(WalkPart part) {
        return "the try has no " + part.id().text();
    }

    /** The marked way of a protocol; a number without a unit is not taken, since feet are as common as metres. */
    static Optional<Amount> distance(Protocol protocol) {
        String written = protocol.keys().getOrDefault(DISTANCE_KEY, "");
        if (written.isEmpty() || Character.isDigit(written.charAt(written.length() - 1))) {
            return Optional.empty();
        }
        Parsed parsed = ValueGrammar.STANDARD.parse(written, "", "", Expecting.AMOUNT, Unit.METRES);
        return parsed instanceof Parsed.Taken taken && taken.reading() instanceof Reading.Exact exact
                ? Optional.of(exact.amount())
                : Optional.empty();
    }

    private Outcome checked(WalkMeasure measure, double figure, Found found) {
        Optional<Measure> known = measures.apply(measure.id());
        if (known.isEmpty() || !(Math.abs(figure) < BILLION)) {
            return Outcome.none("the value is beyond what a child can do; check the units of its parts");
        }
        long value = Math.round(figure * BILLION);
        if (!known.get().possible().holds(new Amount(value))) {
            return Outcome.none("the value " + new Amount(value).text() + " "
                    + known.get().unit().symbol() + " is beyond what a child can do; check the units of its parts");
        }
        return new Outcome(ReadingKind.EXACT, value, String.join(" / ", found.texts), "");
    }

    private static String unit(WalkPart part) {
        return switch (part) {
            case DISTANCE -> "m";
            case TIME -> "s";
            case STEPS -> "steps";
        };
    }
}
