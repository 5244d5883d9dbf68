package stridetally.ingest;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stridetally.model.Level;
import stridetally.model.SeriesKey;
import stridetally.model.Settings;
import stridetally.model.Trial;
import stridetally.model.WordScale;
import stridetally.units.IsoDay;
import stridetally.units.Reading;

/**
 * Pushes trials into a {@link TrialSink}: from checked trials (a bare log) or straight from the cells of an entry. Words
 * that repeat on thousands of rows (student, measure, protocol, help) are looked up, not parsed again.
 */
public final class TrialFeed {
    private static final char BETWEEN = '\u0001';
    private static final List<TrialColumn> KEY = List.of(
            TrialColumn.SOURCE,
            TrialColumn.STUDENT,
            TrialColumn.MEASURE,
            TrialColumn.SIDE,
            TrialColumn.PROTOCOL,
            TrialColumn.USE,
            TrialColumn.PLACE);

    private static final int MOST_READINGS = 1 << 14;

    private final SeriesNumbers numbers;
    private final Settings settings;
    private final TrialSink sink;
    private final Map<String, Integer> numberOfCells = new HashMap<>();
    private final Map<String, Integer> helpRank = new HashMap<>();
    private final Map<String, Integer> promptRank = new HashMap<>();
    private final Map<String, Integer> dayOf = new HashMap<>();
    private final Map<String, Reading> readings = new HashMap<>();
    private List<String> last = List.of();
    private int lastSeries;

    public TrialFeed(SeriesNumbers numbers, Settings settings, TrialSink sink) {
        this.numbers = numbers;
        this.settings = settings;
        this.sink = sink;
    }

    /** One checked trial; {@code line} is its place in a bare log. */
    public void push(Trial trial, long line) {
        push(
                numbers.number(trial.key()),
                Math.toIntExact(trial.date().toEpochDay()),
                numbers.label(trial.session()),
                trial.number(),
                trial.reading(),
                rank(trial.help()),
                rank(trial.prompt()),
                line);
    }

    /** One row of an entry. Refuses a row that this program did not write, with its place. */
    public void push(List<String> cells, int entry, long line) {
        int series = isLast(cells) ? lastSeries : series(cells, entry, line);
        last = cells;
        lastSeries = series;
        push(
                series,
                day(TrialCells.cell(cells, TrialColumn.DATE), entry, line),
                numbers.label(TrialCells.cell(cells, TrialColumn.SESSION)),
                TrialCells.wholeOrZero(TrialCells.cell(cells, TrialColumn.TRIAL)),
                reading(TrialCells.cell(cells, TrialColumn.VALUE), TrialCells.cell(cells, TrialColumn.OF)),
                rank(helpRank, settings.help(), TrialCells.cell(cells, TrialColumn.HELP), entry, line),
                rank(promptRank, settings.prompt(), TrialCells.cell(cells, TrialColumn.PROMPT), entry, line),
                origin(entry, line));
    }

    /** Whether the row is of the series of the row before, as the tries of a session are. */
    private boolean isLast(List<String> cells) {
        if (last.isEmpty()) {
            return false;
        }
        for (TrialColumn column : KEY) {
            if (!TrialCells.cell(cells, column).equals(TrialCells.cell(last, column))) {
                return false;
            }
        }
        return true;
    }

    private int series(List<String> cells, int entry, long line) {
        StringBuilder joined = new StringBuilder();
        for (TrialColumn column : KEY) {
            joined.append(TrialCells.cell(cells, column)).append(BETWEEN);
        }
        Integer known = numberOfCells.get(joined.toString());
        if (known != null) {
            return known;
        }
        SeriesKey key = TrialCells.read(cells, settings, place(entry, line)).key();
        int series = numbers.number(key);
        numberOfCells.put(joined.toString(), series);
        return series;
    }

    /** Entry and line as one number, for {@link TrialSink}. */
    public static long origin(int entry, long line) {
        return ((long) entry << 32) | line;
    }

    /** The entry of an origin; 0 for a bare log. */
    public static int entry(long origin) {
        return (int) (origin >>> 32);
    }

    /** The line of an origin. */
    public static long line(long origin) {
        return origin & 0xffff_ffffL;
    }

    private void push(int series, int day, int label, int number, Reading reading, int help, int prompt, long origin) {
        if (reading instanceof Reading.Exact exact) {
            long value = exact.amount().billionths();
            sink.trial(series, day, label, number, ReadingKind.EXACT, value, 1, help, prompt, origin);
        } else if (reading instanceof Reading.AtLeast least) {
            long value = least.amount().billionths();
            sink.trial(series, day, label, number, ReadingKind.AT_LEAST, value, 1, help, prompt, origin);
        } else if (reading instanceof Reading.AtMost most) {
            long value = most.amount().billionths();
            sink.trial(series, day, label, number, ReadingKind.AT_MOST, value, 1, help, prompt, origin);
        } else if (reading instanceof Reading.Tries tries) {
            sink.trial(series, day, label, number, ReadingKind.TRIES, tries.met(), tries.given(), help, prompt, origin);
        } else if (reading instanceof Reading.NotObtained none) {
            sink.trial(series, day, label, number, kind(none.why()), 0, 1, help, prompt, origin);
        }
    }

    private static ReadingKind kind(Reading.Why why) {
        return switch (why) {
            case NOT_TESTED -> ReadingKind.NOT_TESTED;
            case REFUSED -> ReadingKind.REFUSED;
            case ABSENT -> ReadingKind.ABSENT;
            case UNABLE -> ReadingKind.UNABLE;
        };
    }

    private int day(String text, int entry, long line) {
        Integer known = dayOf.get(text);
        if (known != null) {
            return known;
        }
        try {
            int day = Math.toIntExact(IsoDay.of(text).toEpochDay());
            dayOf.put(text, day);
            return day;
        } catch (java.time.DateTimeException unreadable) {
            throw new stridetally.problem.InputRefused(
                    place(entry, line) + ": the entry does not read as it was written; it was edited by hand",
                    unreadable);
        }
    }

    private static String place(int entry, long line) {
        return "entry " + entry + ", line " + line;
    }

    /** Values repeat, too; no more of them are remembered than a logbook has. */
    private Reading reading(String value, String of) {
        if (!of.isEmpty()) {
            return TrialCells.reading(value, of);
        }
        Reading known = readings.get(value);
        if (known != null) {
            return known;
        }
        Reading reading = TrialCells.reading(value, of);
        if (readings.size() < MOST_READINGS) {
            readings.put(value, reading);
        }
        return reading;
    }

    private static int rank(Optional<Level> level) {
        return level.isPresent() ? level.get().rank() : Level.BLANK;
    }

    private static int rank(Map<String, Integer> ranks, WordScale scale, String word, int entry, long line) {
        if (word.isEmpty()) {
            return Level.BLANK;
        }
        Integer known = ranks.get(word);
        if (known != null) {
            return known;
        }
        Optional<Level> level = TrialCells.level(scale, word, place(entry, line));
        int rank = level.isPresent() ? level.get().rank() : Level.BLANK;
        ranks.put(word, rank);
        return rank;
    }
}
