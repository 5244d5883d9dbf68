package stridetally.cli.options;

import java.util.Optional;
import stridetally.logbook.EntryKind;
import stridetally.logbook.KeptKind;

/** What an imported file holds. */
public enum ImportKind {
    TRIALS,
    VISITS,
    STUDENTS,
    GOALS,
    BODIES,
    BENCHMARKS,
    ATTAINMENT,
    CHANGES,
    SERVICES,
    REMARKS,
    /** A list of recordings; what follows from them are trials. */
    MANIFEST;

    /** As typed. */
    @Override
    public String toString() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    /** The hand-kept table of the same name; none for the kinds that become entries. */
    public Optional<KeptKind> kept() {
        return entry().isPresent() ? Optional.empty() : Optional.of(KeptKind.valueOf(name()));
    }

    /** The entry it becomes; none for hand-kept tables. */
    public Optional<EntryKind> entry() {
        return switch (this) {
            case TRIALS, MANIFEST -> Optional.of(EntryKind.TRIALS);
            case VISITS -> Optional.of(EntryKind.VISITS);
            default -> Optional.empty();
        };
    }
}
