package stridetally.model;

/** A reporting period. {@code school} is blank when it holds for all schools. */
public record Period(String name, DateRange days, String school) {}
