package stridetally.model;

import java.time.LocalDate;
import java.util.Optional;
import stridetally.units.Amount;

/** Body sizes on a day; lengths in centimetres, weight in kilograms. */
public record Body(
        StudentCode student,
        LocalDate date,
        Optional<Amount> heightCm,
        Optional<Amount> legLengthCm,
        Optional<Amount> weightKg,
        String how) {}
