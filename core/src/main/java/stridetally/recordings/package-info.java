/**
 * Recordings of walking (footfalls) and standing (sway) into measures. Holds the numeric tables of recordings, their checks
 * and formulas, and the manifest that says whose they are. Must not know sessions, goals or the command line.
 */
@org.jspecify.annotations.NullMarked
package stridetally.recordings;
