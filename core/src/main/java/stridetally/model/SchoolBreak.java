package stridetally.model;

/** Days without school, such as the summer. {@code school} is blank when it holds for all schools. */
public record SchoolBreak(String name, DateRange days, String school) {}
