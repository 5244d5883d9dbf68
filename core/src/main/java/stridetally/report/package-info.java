/**
 * Documents as records (team, caseload) and the flat tables of scores and trends, then their renderers: Markdown, CSV, JSON, and a chart in plain
 * text. The only place that rounds. Computes no line, no forecast and no judgement; reads no file. Neighbours: {@code forecast} and
 * {@code scoring} before it, the commands after it.
 */
@org.jspecify.annotations.NullMarked
package stridetally.report;
