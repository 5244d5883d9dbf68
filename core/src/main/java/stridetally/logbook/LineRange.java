package stridetally.logbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lines of one entry, from the first to the last, both inclusive: {@code 0003:14} or {@code 0003:14-20}. */
public record LineRange(int entry, long first, long last) {
    private static final Pattern TEXT = Pattern.compile("(\\d{1,9}):(\\d{1,9})(?:-(\\d{1,9}))?");

    public LineRange {
        if (entry < 1 || first < 1 || last < first) {
            throw new IllegalArgumentException("entry " + entry + ", lines " + first + " to " + last);
        }
    }

    /** One line. */
    public static LineRange line(int entry, long line) {
        return new LineRange(entry, line, line);
    }

    /** Reads the text form; empty when it is none. */
    public static Optional<LineRange> parse(String text) {
        Matcher matcher = TEXT.matcher(text);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        int entry = Integer.parseInt(matcher.group(1));
        long first = Long.parseLong(matcher.group(2));
        long last = matcher.group(3) == null ? first : Long.parseLong(matcher.group(3));
        return entry < 1 || first < 1 || last < first
                ? Optional.empty()
                : Optional.of(new LineRange(entry, first, last));
    }

    /** The text form. */
    public String text() {
        String start = LogbookFolder.four(entry) + ":" + first;
        return first == last ? start : start + "-" + last;
    }

    /** How many lines there are in some ranges. */
    static long lines(List<LineRange> ranges) {
        return ranges.stream().mapToLong(range -> range.last - range.first + 1).sum();
    }

    /** Neighbouring ranges, in the order given, as one. */
    static List<LineRange> joined(List<LineRange> ranges) {
        List<LineRange> joined = new ArrayList<>();
        for (LineRange range : ranges) {
            LineRange before = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (before != null && before.entry == range.entry && before.last + 1 == range.first) {
                joined.set(joined.size() - 1, new LineRange(range.entry, before.first, range.last));
            } else {
                joined.add(range);
            }
        }
        return joined;
    }
}
