/** The logbook folder: hand-kept files, immutable entries, the journal, the lock. With the command line's file layer the only place that touches the disk. Knows nothing of scoring. */
@org.jspecify.annotations.NullMarked
package stridetally.logbook;
