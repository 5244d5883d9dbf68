package stridetally.recordings;

import java.util.Optional;

/** What a recording is of. */
public enum RecordingKind {
    /** Contacts and offs of the feet, with or without positions; positions alone are footprints. */
    FOOTFALLS,
    /** Centre of pressure, or acceleration of the trunk, in quiet standing. */
    SWAY,
    /** A list of recordings that says whose they are. */
    MANIFEST;

    /** As typed. */
    @Override
    public String toString() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    /** The kind of a word; empty when it is none. */
    static Optional<RecordingKind> of(String word) {
        for (RecordingKind kind : values()) {
            if (kind.toString().equalsIgnoreCase(word.strip())) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }

    /** What the headings of a table say; empty when they are none of ours. */
    public static Optional<RecordingKind> guess(java.util.Collection<String> headings) {
        java.util.Set<String> names = new java.util.HashSet<>();
        for (String heading : headings) {
            names.add(SampleTable.fold(heading));
        }
        if (names.contains("file") && names.contains("kind")) {
            return Optional.of(MANIFEST);
        }
        if (names.contains("value")) {
            return Optional.empty();
        }
        if (names.contains("side") && (names.contains("event") || hasPlace(names, "x"))) {
            return Optional.of(FOOTFALLS);
        }
        if (names.contains("time_s") && hasPlace(names, "ap")) {
            return Optional.of(SWAY);
        }
        return names.contains("side") && names.contains("time_s") ? Optional.of(FOOTFALLS) : Optional.empty();
    }

    private static boolean hasPlace(java.util.Set<String> names, String axis) {
        for (String name : names) {
            if (name.startsWith(axis + "_")) {
                return true;
            }
        }
        return false;
    }
}
