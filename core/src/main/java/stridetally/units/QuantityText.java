package stridetally.units;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A folded cell into a number with its unit: {@code 12}, {@code 12 sec}, {@code 74in}, {@code 6 ft 2 in}, {@code 6'2"},
 * {@code 1:05}, {@code 1:02:03.5}. A clock time is minutes and seconds, or with three parts hours, minutes and seconds.
 */
final class QuantityText {
    /** Made when the first cell comes that is no bare number. */
    private static final class Shapes {
        static final String UNIT = "[a-z%'\"](?:[a-z/%'\" -]|\\.(?![0-9]))*";
        static final Pattern PART = Pattern.compile("(" + NumberText.SHAPE + ") ?(" + UNIT + ")?,? ?");
        /** As on a tape: halves, quarters and eighths of an inch, each of which has a finite decimal. */
        static final Pattern TAPE =
                Pattern.compile("(?<![0-9/.,])([0-9]{1,3})[ -]([1-7])/([248]) ?(?=(?:in|ins|inch|inches|\")\\.?$)");

        static final Pattern CLOCK =
                Pattern.compile("([0-9]{1,5}):([0-5][0-9])(?::([0-5][0-9]))?([.,][0-9]+)? ?(" + UNIT + ")?");
    }

    /** Units written in two or three parts: each with the next smaller one and how many make one. */
    private static final Map<Unit, Unit> SMALLER = Map.of(
            Unit.FEET, Unit.INCHES,
            Unit.HOURS, Unit.MINUTES,
            Unit.MINUTES, Unit.SECONDS,
            Unit.METRES, Unit.CENTIMETRES);

    private QuantityText() {}

    /** Reads the folded text; the measure's unit tells whether a double quote is seconds or inches. */
    static Step<Quantity> parse(String written, Unit target, DecimalMark decimal) {
        String text = written.indexOf('/') < 0 ? written : withoutTapeFraction(written, decimal);
        if (NumberText.isBare(text, decimal)) {
            return part(text, null, target, decimal).then(part -> Step.of(part.quantity()));
        }
        Matcher clock = Shapes.CLOCK.matcher(text);
        if (clock.matches()) {
            return clock(clock, target, decimal);
        }
        Optional<Refusal> known = NumberSlip.in(text);
        if (known.isPresent()) {
            return new Step.Stopped<>(known.get());
        }
        List<Part> parts = new ArrayList<>();
        Matcher matcher = Shapes.PART.matcher(text);
        int from = 0;
        while (from < text.length()) {
            if (!matcher.region(from, text.length()).lookingAt()) {
                return Step.stop(Reason.UNREADABLE, "write one number with its unit");
            }
            Step<Part> part = part(matcher.group(1), matcher.group(2), target, decimal);
            if (part instanceof Step.Stopped<Part> stopped) {
                return new Step.Stopped<>(stopped.refusal());
            }
            parts.add(((Step.Went<Part>) part).value());
            from = matcher.end();
        }
        if (parts.isEmpty()) {
            return Step.stop(Reason.UNREADABLE, "write a number");
        }
        return parts.size() == 1 ? Step.of(parts.get(0).quantity()) : joined(parts);
    }

    /** {@code 11 1/2 in} as {@code 11.5 in}. */
    private static String withoutTapeFraction(String text, DecimalMark decimal) {
        Matcher tape = Shapes.TAPE.matcher(text);
        if (!tape.find()) {
            return text;
        }
        int eighths = Integer.parseInt(tape.group(2)) * (8 / Integer.parseInt(tape.group(3)));
        if (eighths >= 8) {
            return text;
        }
        String thousandths = Integer.toString(1000 + 125 * eighths).substring(1);
        return text.substring(0, tape.start()) + tape.group(1) + decimal.mark() + thousandths + " "
                + text.substring(tape.end());
    }

    /** One number with the unit directly behind it. */
    private record Part(BigDecimal number, Optional<Unit> unit, boolean pointFirst) {
        Quantity quantity() {
            return new Quantity(number, unit, unit.map(Set::of).orElse(Set.of()));
        }
    }

    private static Step<Part> part(String number, @Nullable String unit, Unit target, DecimalMark decimal) {
        boolean pointFirst = !Character.isDigit(number.charAt(0));
        return NumberText.parse(number, decimal).then(value -> {
            if (unit == null) {
                return Step.of(new Part(value, Optional.empty(), pointFirst));
            }
            Optional<Unit> named = UnitNames.find(unit, target);
            return named.isPresent() ? Step.of(new Part(value, named, pointFirst)) : unknownUnit(unit);
        });
    }

    static <T> Step<T> unknownUnit(String unit) {
        return Step.stop(
                Reason.UNIT_UNKNOWN,
                UnitNames.nearest(unit)
                        .map(name -> "did you mean " + name + "?")
                        .orElse("write the number and its unit only; words belong in the note"));
    }

    private static Step<Quantity> joined(List<Part> parts) {
        BigDecimal total = parts.get(0).number();
        for (int i = 1; i < parts.size(); i++) {
            Part large = parts.get(i - 1);
            Part small = parts.get(i);
            Unit next = large.unit().map(SMALLER::get).orElse(null);
            if (next == null || small.unit().orElse(null) != next || small.pointFirst()) {
                return Step.stop(Reason.UNREADABLE, "write each part with its unit: 6 ft 2 in, 2 min 30 s, 1 m 20 cm");
            }
            BigDecimal ratio = BigDecimal.valueOf(
                    large.unit().orElseThrow().convert(BigDecimal.ONE, next).billionths(), 9);
            if (!Quantity.whole(large.number()) || small.number().compareTo(ratio) >= 0) {
                return Step.stop(
                        Reason.UNREADABLE,
                        "every part but the last is whole, and each is less than one of the next larger");
            }
            total = total.multiply(ratio).add(small.number());
        }
        Set<Unit> units =
                Set.copyOf(parts.stream().map(part -> part.unit().orElseThrow()).toList());
        return Step.of(new Quantity(total, parts.get(parts.size() - 1).unit(), units));
    }

    private static Step<Quantity> clock(Matcher clock, Unit target, DecimalMark decimal) {
        String fraction = clock.group(4) == null ? "" : clock.group(4);
        boolean hours = clock.group(3) != null;
        if (clock.group(5) != null) {
            Unit last = hours ? Unit.HOURS : Unit.MINUTES;
            if (UnitNames.find(clock.group(5), target).orElse(null) != last) {
                return Step.stop(Reason.UNITS_DISAGREE, "a clock time is minutes:seconds; write it without a unit");
            }
        }
        BigDecimal sixty = BigDecimal.valueOf(60);
        BigDecimal first = new BigDecimal(clock.group(1)).multiply(sixty);
        BigDecimal whole = hours ? first.add(new BigDecimal(clock.group(2))).multiply(sixty) : first;
        String seconds = (hours ? clock.group(3) : clock.group(2)) + fraction;
        return NumberText.parse(seconds, decimal)
                .then(value -> Step.of(new Quantity(
                        whole.add(value), Optional.of(Unit.SECONDS), Set.of(Unit.SECONDS, Unit.MINUTES, Unit.HOURS))));
    }
}
