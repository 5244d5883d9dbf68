package stridetally.report;

import java.time.LocalDate;
import java.util.Optional;
import stridetally.measures.FamilyWords;
import stridetally.model.DateRange;
import stridetally.scoring.Bound;
import stridetally.units.Amount;

/** Dates, numbers and units as a family reads them, in the language of the letter. */
final class LetterNumbers {
    private final FamilyWords words;
    private final Optional<ShownUnit> unit;

    LetterNumbers(FamilyWords words, Optional<ShownUnit> unit) {
        this.words = words;
        this.unit = unit;
    }

    /** {@code March 5, 2027}. */
    String day(LocalDate day) {
        return words.text(
                "date",
                Integer.toString(day.getDayOfMonth()),
                words.text("month." + day.getMonthValue()),
                Integer.toString(day.getYear()));
    }

    /** From the first day to the last. */
    String days(DateRange days) {
        return words.text("between", day(days.first()), day(days.last()));
    }

    /** A value with its unit, apart from the target; one stopped at a limit says so. */
    String amount(Measured value, Optional<Amount> target) {
        String amount = amount(value.value(), target.map(Amount::value).orElse(value.value()));
        return value.bound()
                .map(bound -> words.text(bound == Bound.AT_LEAST ? "atleast" : "atmost", amount))
                .orElse(amount);
    }

    /** A value with its unit; as it was written when the unit is not known. */
    String amount(double value) {
        return amount(value, value);
    }

    private String amount(double value, double apartFrom) {
        String number = unit.orElse(ShownUnit.AS_WRITTEN).plainly(value, apartFrom);
        String unitWord = unit.map(
                        shown -> words.text("unit." + shown.unit().name() + (number.equals("1") ? ".one" : ".many")))
                .orElse("");
        String shown = number.replace(".", words.text("decimal"));
        return unitWord.isEmpty() ? shown : shown + " " + unitWord;
    }
}
