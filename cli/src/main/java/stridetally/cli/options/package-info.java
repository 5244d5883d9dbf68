/** Options that several commands share, as mixins. Knows no command. */
@org.jspecify.annotations.NullMarked
package stridetally.cli.options;
