/**
 * What to practise next, what may be practised at home, and blank logs: records and the rules that keep them safe. Reads no
 * file and writes no page. Neighbours: {@code logbook} and {@code ingest} before it, {@code report} after it.
 */
@org.jspecify.annotations.NullMarked
package stridetally.plan;
