package stridetally.model;

import java.time.LocalDate;
import stridetally.units.Amount;

/** A short-term step towards a goal: this value by this day. */
public record Benchmark(GoalId goal, LocalDate by, Amount value) {}
