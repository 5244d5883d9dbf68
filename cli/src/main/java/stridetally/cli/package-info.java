/** The command line over the core: arguments in, exit codes out. */
@org.jspecify.annotations.NullMarked
package stridetally.cli;
