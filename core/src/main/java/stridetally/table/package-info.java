/** CSV in and out: framing of records, quoting, headings, the formula guard, and the table writers. Works on readers and appendables, never on files; knows nothing of students. */
@org.jspecify.annotations.NullMarked
package stridetally.table;
