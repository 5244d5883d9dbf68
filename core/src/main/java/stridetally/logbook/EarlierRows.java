package stridetally.logbook;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The rows that were set aside before, found again in a log that comes in anew. First by place and cells, in a file of any
 * name with these headings; then, in a file of the same name or the same bytes, by the cells alone, since a row put in
 * above moves all below it; last, the row that stands where one of a file of this name stood, most of its cells the same,
 * is that row corrected. Two passes: all rows are looked at before the first is asked for.
 */
final class EarlierRows {
    private static final Pattern PLACE = Pattern.compile("(?:\\]!(?<cell>[A-Z]*\\d+)|(?<line>(?::\\d+){1,2}))$");

    /** An earlier row, and whether it stands there with other cells. */
    record Match(SetAsideRecord record, Change change) {}

    /** Whether the cells are those that were set aside. */
    enum Change {
        NONE,
        CORRECTED
    }

    /** A row that may be an earlier one. */
    private record Candidate(String place, List<String> cells) {}

    private final int width;
    private final UnaryOperator<List<String>> kept;
    private final Map<List<String>, SetAsideRecord> byPlace = new HashMap<>();
    private final Map<List<String>, Deque<SetAsideRecord>> byCells = new HashMap<>();
    private final Map<String, SetAsideRecord> ofName = new HashMap<>();
    private final Set<SetAsideRecord> found = new HashSet<>();
    private final List<Candidate> candidates = new ArrayList<>();
    private final Map<String, Match> matches = new HashMap<>();

    /**
     * For a log with {@code width} headings.
     *
     * @param kept the cells of a row as they would be set aside
     */
    EarlierRows(int width, UnaryOperator<List<String>> kept) {
        this.width = width;
        this.kept = kept;
    }

    /** A row of a file of this name, or of the same bytes. */
    void ofThisFile(SetAsideRecord record, String shortName) {
        ofAnyFile(record);
        byCells.computeIfAbsent(key("", record.row().cells()), any -> new ArrayDeque<>())
                .add(record);
        String at = record.row().at();
        if (at.startsWith(shortName)) {
            ofName.put(at.substring(shortName.length()), record);
        }
    }

    /** A row of a file with the same headings. */
    void ofAnyFile(SetAsideRecord record) {
        byPlace.putIfAbsent(key(place(record.row().at()), record.row().cells()), record);
    }

    /** Whether there is anything to look for. */
    boolean any() {
        return !byPlace.isEmpty();
    }

    /** A row of the log, in the first pass. */
    void look(Stand row) {
        List<String> cells = kept.apply(row.cells());
        SetAsideRecord same = byPlace.get(key(row.place(), cells));
        if (same != null) {
            match(row.place(), same, Change.NONE);
        } else if (byCells.containsKey(key("", cells)) || ofName.containsKey(row.place())) {
            candidates.add(new Candidate(row.place(), cells));
        }
    }

    /** The first pass is over. */
    void settle() {
        candidates.removeIf(this::isMoved);
        for (Candidate row : candidates) {
            SetAsideRecord before = ofName.get(row.place());
            if (before != null
                    && !found.contains(before)
                    && mostlySame(before.row().cells(), row.cells())) {
                match(row.place(), before, Change.CORRECTED);
            }
        }
        candidates.clear();
    }

    /** The earlier row that a row is. */
    Optional<Match> find(Stand row) {
        return Optional.ofNullable(matches.get(row.place()));
    }

    private boolean isMoved(Candidate row) {
        Deque<SetAsideRecord> same = byCells.getOrDefault(key("", row.cells()), new ArrayDeque<>());
        same.removeIf(found::contains);
        Optional<SetAsideRecord> next = Optional.ofNullable(same.poll());
        next.ifPresent(record -> match(row.place(), record, Change.NONE));
        return next.isPresent();
    }

    private void match(String place, SetAsideRecord record, Change change) {
        matches.put(place, new Match(record, change));
        found.add(record);
    }

    static boolean hasOneOf(SetAsideRecord record, Set<String> codes) {
        return List.of(record.row().codes().split(" ", -1)).stream().anyMatch(codes::contains);
    }

    private static boolean mostlySame(List<String> before, List<String> now) {
        int filled = 0;
        int same = 0;
        for (int column = 0; column < Math.max(before.size(), now.size()); column++) {
            String one = cell(before, column);
            String other = cell(now, column);
            filled += one.isEmpty() && other.isEmpty() ? 0 : 1;
            same += !one.isEmpty() && one.equals(other) ? 1 : 0;
        }
        return 2 * same > filled;
    }

    private static String cell(List<String> cells, int column) {
        return column < cells.size() ? cells.get(column).strip() : "";
    }

    private static String place(String at) {
        Matcher matcher = PLACE.matcher(at);
        if (!matcher.find()) {
            return "?";
        }
        String cell = matcher.group("cell");
        return cell == null ? String.valueOf(matcher.group("line")) : cell;
    }

    /** The place, and the cells as a set-aside file holds them. */
    private List<String> key(String place, List<String> cells) {
        List<String> key = new ArrayList<>();
        key.add(place);
        for (int column = 0; column < width; column++) {
            key.add(column < cells.size() ? cells.get(column) : "");
        }
        key.add(SetAsideText.further(cells, width));
        return key;
    }
}
