package stridetally.logbook;

import java.util.List;
import java.util.Optional;

/** Where checked rows go. */
final class Destinations {
    private Destinations() {}

    /** Into a draft, or nowhere in a dry run; without names when they are turned into codes. */
    static TrialImport.Destination of(Optional<EntryDraft> draft, Optional<Nameless> nameless) {
        return new TrialImport.Destination() {
            @Override
            public void row(List<String> cells) {
                draft.ifPresent(rows -> rows.row(cells));
            }

            @Override
            public void setAside(SetAsideRow row) {
                draft.ifPresent(rows ->
                        rows.setAside(nameless.map(without -> without.row(row)).orElse(row)));
            }
        };
    }
}
