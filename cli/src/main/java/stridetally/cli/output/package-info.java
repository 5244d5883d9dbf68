/** Tables of results in the format that was asked for. Knows no command. */
@org.jspecify.annotations.NullMarked
package stridetally.cli.output;
