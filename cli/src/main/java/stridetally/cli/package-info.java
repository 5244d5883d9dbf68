/**
 * The command line over the core: arguments in, exit codes out. Holds the entry, the exit codes, the one error handler and
 * what all commands share; knows no formula and no file layout.
 */
@org.jspecify.annotations.NullMarked
package stridetally.cli;
