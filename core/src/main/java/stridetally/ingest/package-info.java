/** Logs into checked trials, row by row, and the one interface through which trials flow on. Knows nothing of goals or of what the trials are for. */
@org.jspecify.annotations.NullMarked
package stridetally.ingest;
