/** Trials into sessions: what counts, what a session is worth, whether it meets the criterion, how many in a row. Knows nothing of lines, forecasts or documents. */
@org.jspecify.annotations.NullMarked
package stridetally.scoring;
