/**
 * One thin class for each command: load, compute, render, return a code. Holds no formula, no unit conversion and no
 * try/catch; touches the disk only through {@code stridetally.cli.files} and the logbook.
 */
@org.jspecify.annotations.NullMarked
package stridetally.cli.commands;
