/** The core of stridetally: from trials to judged goals. See the packages below, in the order of the data's way. */
@org.jspecify.annotations.NullMarked
package stridetally;
