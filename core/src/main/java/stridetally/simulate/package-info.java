/** Caseloads with known truth, and how well a way of forecasting does on them. Knows nothing of files or commands. Neighbours: {@code forecast} before it, the commands after it. */
@org.jspecify.annotations.NullMarked
package stridetally.simulate;
