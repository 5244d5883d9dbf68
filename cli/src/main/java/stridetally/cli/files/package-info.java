/**
 * Paths, whole outputs and standard streams: besides the logbook the only place that touches the disk. Knows no command, no
 * option and nothing of what is written.
 */
@org.jspecify.annotations.NullMarked
package stridetally.cli.files;
