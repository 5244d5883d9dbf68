/** From series to the chance that a goal is reached by its date, and the judgement. Knows nothing of documents. */
@org.jspecify.annotations.NullMarked
package stridetally.forecast;
