/** Units, amounts and the value grammar: one cell of text to one reading. Knows nothing of measures or students. */
@org.jspecify.annotations.NullMarked
package stridetally.units;
