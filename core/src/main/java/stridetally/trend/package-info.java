/** Sessions into series: points, own lines, aim line, rank statistics. Fits nothing by itself ({@code stats} does) and knows nothing of judgements or documents. Neighbours: {@code scoring} before it, {@code forecast} after it. */
@org.jspecify.annotations.NullMarked
package stridetally.trend;
