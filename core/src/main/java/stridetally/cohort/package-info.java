/**
 * Roll-ups over many students: groups of sessions and goals, counted and summed. The only home of Tablesaw, whose first use
 * costs half a second: its classes are reached through one method, {@link stridetally.cohort.RollUp#of}, which takes our records and
 * gives our records. Knows nothing of documents.
 */
@NullMarked
package stridetally.cohort;

import org.jspecify.annotations.NullMarked;
