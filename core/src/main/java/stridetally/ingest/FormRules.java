package stridetally.ingest;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What holds for every row of a form, besides what its cells say.
 *
 * @param constants what stands for a column that is not there or a cell that is blank
 * @param words per column, folded words of the form to the words we know
 * @param dayCount how a date that is a count is read
 * @param year the year of dates written without one
 */
public record FormRules(
        Map<TrialColumn, String> constants,
        Map<TrialColumn, Map<String, String>> words,
        Optional<DayCount> dayCount,
        Optional<Integer> year) {

    /** Nothing beyond the cells. */
    public static final FormRules NONE = new FormRules(Map.of(), Map.of(), Optional.empty(), Optional.empty());

    /** Made for the first form whose dates are written without a year: few are. */
    private static final class WithoutYear {
        static final Pattern NUMBERS = Pattern.compile("\\d{1,2}[/.\\-]\\d{1,2}");
        static final Pattern NAMED = Pattern.compile(
                "\\d{1,2}(?:st|nd|rd|th)?[ .\\-/]+\\p{L}+\\.?|\\p{L}+\\.?[ \\-/]+\\d{1,2}(?:st|nd|rd|th)?");
    }

    public FormRules {
        constants = Map.copyOf(constants);
        Map<TrialColumn, Map<String, String>> copy = new HashMap<>();
        for (Map.Entry<TrialColumn, Map<String, String>> list : words.entrySet()) {
            copy.put(list.getKey(), Map.copyOf(list.getValue()));
        }
        words = Map.copyOf(copy);
    }

    /** These rules with constants of one column group or of the lines above the headings. */
    FormRules with(Map<TrialColumn, String> more) {
        if (more.isEmpty()) {
            return this;
        }
        Map<TrialColumn, String> all = new EnumMap<>(TrialColumn.class);
        all.putAll(constants);
        all.putAll(more);
        return new FormRules(all, words, dayCount, year);
    }

    /** These rules with a count of days. */
    FormRules with(DayCount count) {
        return new FormRules(constants, words, Optional.of(count), year);
    }

    /** Whether these are {@link #NONE}; a record's own comparison is made at run time, which takes twenty milliseconds. */
    boolean isNone() {
        return constants.isEmpty() && words.isEmpty() && dayCount.isEmpty() && year.isEmpty();
    }

    /** What a cell says in the words we know. */
    String reads(TrialColumn column, String written) {
        if (isNone()) {
            return written;
        }
        String text = words.getOrDefault(column, Map.of()).getOrDefault(fold(written), written);
        String constant = constants.getOrDefault(column, "");
        if (column == TrialColumn.PROTOCOL && !constant.isEmpty()) {
            return protocol(constant, text);
        }
        if (text.isEmpty()) {
            return constant;
        }
        return column == TrialColumn.DATE ? date(text) : text;
    }

    /** How the words of a list are compared: case and outer blanks do not matter, every sign does. */
    public static String fold(String written) {
        return written.replace("\ufeff", "")
                .strip()
                .toLowerCase(java.util.Locale.ROOT)
                .replaceAll("[\\s\u00a0]+", " ");
    }

    private String date(String text) {
        if (dayCount.isPresent()) {
            return dayCount.get().day(text).map(Object::toString).orElse(text);
        }
        if (year.isPresent() && WithoutYear.NUMBERS.matcher(text).matches()) {
            return text + "/" + year.get();
        }
        return year.isPresent() && WithoutYear.NAMED.matcher(text).matches() ? text + " " + year.get() : text;
    }

    /** The form states the usual once; a row types only departures. */
    private static String protocol(String usual, String departures) {
        StringBuilder joined = new StringBuilder(departures);
        for (String pair : usual.split(";", -1)) {
            String key = fold(pair.split("=", 2)[0]);
            boolean stated = java.util.Arrays.stream(departures.split(";", -1))
                    .anyMatch(one -> fold(one.split("=", 2)[0]).equals(key));
            if (!stated && !pair.isBlank()) {
                joined.append(joined.isEmpty() ? "" : ";").append(pair.strip());
            }
        }
        return joined.toString();
    }
}
