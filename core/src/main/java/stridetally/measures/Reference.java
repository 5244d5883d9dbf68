package stridetally.measures;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stridetally.model.MeasureId;
import stridetally.model.Summary;

/**
 * A published value of children with typical development: a mean with its spread, or an equation of age and body size.
 * Values are in the measure's unit.
 *
 * @param group who was measured, in a few words
 * @param sex {@code f} or {@code m}; blank when the source finds or makes no difference
 * @param monthsFrom youngest age in months
 * @param monthsTo oldest age in months
 * @param protocol keys that the source states, which a test must have written and equal
 * @param summary how the source values a session; empty when it does not say
 * @param mean the printed mean; of an equation its constant
 * @param sd the printed standard deviation between children; empty when none is printed
 * @param perYear added for each year of age
 * @param perCm added for each centimetre of height
 * @param perKg added for each kilogram of weight
 * @param source id of the citation
 * @param note what must be said beside it; blank as a rule
 */
public record Reference(
        MeasureId measure,
        String group,
        String sex,
        int monthsFrom,
        int monthsTo,
        Map<String, String> protocol,
        Optional<Summary> summary,
        double mean,
        Optional<Double> sd,
        double perYear,
        double perCm,
        double perKg,
        String source,
        String note) {
    private static final double MONTHS = 12;

    private static final List<Reference> ALL = ReferenceRow.all();

    public Reference {
        protocol = Map.copyOf(protocol);
    }

    /** Every value that comes with the program. */
    public static List<Reference> all() {
        return ALL;
    }

    /** Whether height and weight are needed. */
    public boolean needsBody() {
        return perCm != 0 || perKg != 0;
    }

    /**
     * The value that is expected of a child.
     *
     * @param months age
     * @param heightCm height in centimetres; plays no part unless {@link #needsBody}
     * @param weightKg weight in kilograms; likewise
     */
    public double expected(long months, double heightCm, double weightKg) {
        return mean + perYear * (months / MONTHS) + perCm * heightCm + perKg * weightKg;
    }
}
