/**
 * Numeric kernels on primitive arrays: descriptive figures, straight lines, rank trends, proportions. Knows the scale of
 * exact amounts from {@code units} and nothing of students, goals or dates: an axis is numbers, and its unit is the
 * caller's. What cannot be computed is {@link stridetally.stats.Estimate.NotEstimable} with a reason, never NaN.
 */
@org.jspecify.annotations.NullMarked
package stridetally.stats;
