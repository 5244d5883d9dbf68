/** Student, goal, trial, help, side, period, settings: records and enums only. No reading, no counting. */
@org.jspecify.annotations.NullMarked
package stridetally.model;
