/** From series to the chance that a goal is reached by its date, and the judgement with its fixed sentences. Knows nothing of documents, files or tables. Neighbours: {@code trend} before it, {@code report} and the commands after it. */
@org.jspecify.annotations.NullMarked
package stridetally.forecast;
