package stridetally.model;

import java.time.LocalDate;
import java.util.Optional;

/** A dated change of strategy; it starts a phase. Without a goal it is about the student as a whole. */
public record Change(StudentCode student, Optional<GoalId> goal, LocalDate date, String what) {}
