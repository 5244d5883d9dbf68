package stridetally.units;

import java.util.regex.Pattern;

/** Recognises dates in value cells: a spreadsheet turns {@code 4/5} into one without asking. */
final class DateText {
    private static final String MONTH =
            "(jan|feb|mar|apr|may|jun|jul|aug|sep|sept|oct|nov|dec|january|february|march|april|june|july|august|september"
                    + "|october|november|december)";
    private static final Pattern DATE = Pattern.compile("[0-9]{4}-[0-9]{1,2}-[0-9]{1,2}([ t][0-9:.]+z?)?"
            + "|[0-9]{1,2}[/.-][0-9]{1,2}[/.-]([0-9]{4}|[0-9]{2})( [0-9:]+)?"
            + "|[0-9]{1,2}[. /-]{1,2}" + MONTH + "[. /-]?([. /-]?([0-9]{4}|[0-9]{2}))?"
            + "|" + MONTH + "[. /-]{1,2}[0-9]{1,4}(,? [0-9]{4})?");

    private DateText() {}

    static boolean looksLikeOne(String folded) {
        return DATE.matcher(folded).matches();
    }
}
