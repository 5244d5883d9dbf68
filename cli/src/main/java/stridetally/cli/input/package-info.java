/** What a command works on: a logbook or a bare log, opened and ready. Knows no command and writes nothing. */
@org.jspecify.annotations.NullMarked
package stridetally.cli.input;
