/** The catalogue of measures: what each one is, in which unit, which way is better, how tries are summarised, with sources. Knows nothing of logs or students. */
@org.jspecify.annotations.NullMarked
package stridetally.measures;
