/**
 * Documents as records (team, caseload) and the flat tables of scores and trends, then their renderers: Markdown, HTML, CSV, JSON, and charts in plain
 * text and SVG. The only place that rounds. Computes no line, no forecast and no judgement; reads no file. Neighbours: {@code forecast} and
 * {@code scoring} before it, the commands after it.
 */
@org.jspecify.annotations.NullMarked
package stridetally.report;
