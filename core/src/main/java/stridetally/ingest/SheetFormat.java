package stridetally.ingest;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What a cell's number format says of the number: a date, a time of so many seconds, or a plain number. */
final class SheetFormat {
    private SheetFormat() {}

    /** The first section of a format in lower case, without quoted text, escapes, colours and languages. */
    static String plain(@Nullable String format) {
        if (format == null) {
            return "";
        }
        String text = format.toLowerCase(Locale.ROOT)
                .replaceAll("\"[^\"]*\"", "")
                .replaceAll("[\\\\_*].", "")
                .replaceAll("\\[(?!h+\\]|m+\\]|s+\\])[^\\]]*\\]", "");
        int end = text.indexOf(';');
        String first = (end < 0 ? text : text.substring(0, end)).strip();
        return first.equals("general") || first.equals("@") ? "" : first;
    }

    static boolean isDate(String plain) {
        return plain.indexOf('y') >= 0 || (plain.indexOf('d') >= 0 && plain.indexOf('#') < 0);
    }

    static boolean isTime(String plain) {
        return !isDate(plain) && (plain.indexOf('h') >= 0 || plain.indexOf('s') >= 0);
    }
}
