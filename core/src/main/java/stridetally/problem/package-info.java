/** What is wrong with a row or a file, as data. Knows nothing of students, files on disk or text layout; everybody may use it. */
@org.jspecify.annotations.NullMarked
package stridetally.problem;
