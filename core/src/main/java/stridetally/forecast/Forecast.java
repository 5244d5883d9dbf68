package stridetally.forecast;

import java.util.List;

/** What can be said of a goal's side on its due date. */
public sealed interface Forecast {

    /**
     * A forecast.
     *
     * @param value of the line on the due date, in the measure's unit
     * @param low80 lower end of the line's 80 % interval there
     * @param high80 upper end
     * @param chanceLine chance that the line on the due date is at or beyond the target, 0 to 1
     * @param chance chance that the written criterion is satisfied on some date up to the due date, 0 to 1
     * @param notes what a reader must know of these figures
     */
    record Outlook(double value, double low80, double high80, double chanceLine, double chance, List<String> notes)
            implements Forecast {

        public Outlook {
            requireShare("chanceLine", chanceLine);
            requireShare("chance", chance);
            if (!(Double.isFinite(value) && low80 <= value && value <= high80)) {
                throw new IllegalArgumentException("value " + value + " outside " + low80 + " to " + high80);
            }
            notes = notes instanceof NotesWhenRead ? notes : List.copyOf(notes);
        }

        private static void requireShare(String name, double share) {
            if (!(share >= 0 && share <= 1)) {
                throw new IllegalArgumentException(name + " " + share);
            }
        }
    }

    /** No forecast, and why; the series still tells a pooled model something. */
    record NoOutlook(String reason) implements Forecast {

        public NoOutlook {
            if (reason.isBlank()) {
                throw new IllegalArgumentException("reason is blank");
            }
        }
    }
}
