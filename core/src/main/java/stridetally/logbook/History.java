package stridetally.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Earlier versions of the hand-kept files, named by the day they were replaced ({@code goals-2025-10-02.csv}, a second one
 * of the day {@code goals-2025-10-02-2.csv}). An empty file says that there was none before. A change made by hand leaves
 * no version behind: only an import does.
 */
final class History {
    /** Replaced on a day, as the n-th version of that day. */
    private record Version(LocalDate day, int number) implements Comparable<Version> {
        @Override
        public int compareTo(Version other) {
            int byDay = day.compareTo(other.day);
            return byDay != 0 ? byDay : Integer.compare(number, other.number);
        }
    }

    private final LogbookFolder folder;
    private final DurableFiles disk;

    History(LogbookFolder folder, DurableFiles disk) {
        this.folder = folder;
        this.disk = disk;
    }

    /** The file as it was at the end of a day; empty when there was none. */
    static Optional<Path> asKnown(LogbookFolder folder, KeptKind kind, LocalDate day) throws IOException {
        NavigableMap<Version, Path> versions = versions(folder, kind);
        for (var version : versions.entrySet()) {
            if (version.getKey().day().isAfter(day)) {
                Path file = version.getValue();
                return Files.size(file) == 0 ? Optional.empty() : Optional.of(file);
            }
        }
        Path now = folder.root().resolve(kind.file());
        return Files.exists(now) ? Optional.of(now) : Optional.empty();
    }

    /** The versions that were replaced up to a day, oldest first; an empty one is none. */
    static List<Path> replaced(LogbookFolder folder, KeptKind kind, Optional<LocalDate> upTo) throws IOException {
        List<Path> files = new ArrayList<>();
        for (var version : versions(folder, kind).entrySet()) {
            boolean known =
                    upTo.map(day -> !version.getKey().day().isAfter(day)).orElse(true);
            if (known && Files.size(version.getValue()) > 0) {
                files.add(version.getValue());
            }
        }
        return files;
    }

    /** Keeps the present version before it is replaced; false when there is nothing to replace. */
    boolean keep(KeptKind kind, byte[] replacement, LocalDate day) throws IOException {
        Path now = folder.root().resolve(kind.file());
        byte[] old = Files.exists(now) ? Files.readAllBytes(now) : new byte[0];
        if (Arrays.equals(old, replacement)) {
            return false;
        }
        NavigableMap<Version, Path> versions = versions(folder, kind);
        // What was known on a day must stay what was known on it, whatever day is typed later.
        LocalDate stamp = versions.isEmpty() || versions.lastKey().day().isBefore(day)
                ? day
                : versions.lastKey().day();
        int number = 1;
        if (!versions.isEmpty() && versions.lastKey().day().equals(stamp)) {
            number = versions.lastKey().number() + 1;
            // A run that was stopped between keeping and replacing has kept it already.
            if (Arrays.equals(old, Files.readAllBytes(versions.lastEntry().getValue()))) {
                return true;
            }
        }
        String name = kind.stem() + "-" + stamp + (number == 1 ? "" : "-" + number) + ".csv";
        Path temporary = folder.entries().resolve(LogbookWriter.FILE_TEMPORARY);
        Files.deleteIfExists(temporary);
        DurableFiles.create(temporary, old);
        disk.name(temporary, folder.history().resolve(name), WriteStep.OLD_FILE_KEPT);
        disk.forceFolder(folder.history(), WriteStep.FILE_FOLDER_FORCED);
        return true;
    }

    private static NavigableMap<Version, Path> versions(LogbookFolder folder, KeptKind kind) throws IOException {
        Pattern pattern = Pattern.compile(kind.stem() + "-(\\d{4}-\\d{2}-\\d{2})(?:-(\\d{1,6}))?\\.csv");
        NavigableMap<Version, Path> versions = new TreeMap<>();
        if (!Files.isDirectory(folder.history())) {
            return versions;
        }
        try (Stream<Path> files = Files.list(folder.history())) {
            for (Path file : List.copyOf(files.toList())) {
                Matcher matcher = pattern.matcher(String.valueOf(file.getFileName()));
                if (matcher.matches()) {
                    int number = matcher.group(2) == null ? 1 : Integer.parseInt(matcher.group(2));
                    versions.put(new Version(LocalDate.parse(matcher.group(1)), number), file);
                }
            }
        }
        return versions;
    }
}
