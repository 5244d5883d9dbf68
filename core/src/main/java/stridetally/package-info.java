/**
 * The core of stridetally: from trials to judged goals. See the packages below, in the order of the data's way. Holds only
 * the annotation that excuses a class from a rule; knows nothing.
 */
@org.jspecify.annotations.NullMarked
package stridetally;
