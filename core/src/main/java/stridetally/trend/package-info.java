/** Sessions into series: points, own lines, aim line, rank statistics. Knows nothing of judgements or documents. */
@org.jspecify.annotations.NullMarked
package stridetally.trend;
