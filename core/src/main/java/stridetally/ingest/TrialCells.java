package stridetally.ingest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import stridetally.measures.Measure;
import stridetally.model.Level;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.SeriesKey;
import stridetally.model.Settings;
import stridetally.model.Side;
import stridetally.model.StudentCode;
import stridetally.model.Trial;
import stridetally.model.TrialPlace;
import stridetally.model.Use;
import stridetally.model.WordScale;
import stridetally.problem.InputRefused;
import stridetally.units.Amount;
import stridetally.units.IsoDay;
import stridetally.units.Reading;

/** A trial as the cells of an entry, and back: the canonical columns, then where it stood and how it was written. */
public final class TrialCells {

    /** The headings of an entry of trials. */
    public static final List<String> HEADINGS = Stream.concat(
                    Stream.of(TrialColumn.values()).map(TrialColumn::heading), Stream.of("at", "as_written"))
            .toList();

    static final int AT = TrialColumn.values().length;
    static final int AS_WRITTEN = AT + 1;

    private TrialCells() {}

    /** The cells of a trial; {@code measure} is its own. Text is not yet guarded against spreadsheet formulas. */
    public static List<String> of(Trial trial, Measure measure) {
        List<String> cells = new ArrayList<>(HEADINGS.size());
        SeriesKey key = trial.key();
        cells.add(key.source());
        cells.add(key.student().text());
        cells.add(trial.date().toString());
        cells.add(trial.session());
        cells.add(key.measure().text());
        cells.add(trial.number() == 0 ? "" : Integer.toString(trial.number()));
        cells.add(valueText(trial.reading()));
        cells.add(
                trial.reading() instanceof Reading.NotObtained
                        ? ""
                        : measure.unit().symbol());
        cells.add(trial.reading() instanceof Reading.Tries tries ? Integer.toString(tries.given()) : "");
        cells.add(trial.help().map(Level::word).orElse(""));
        cells.add(trial.prompt().map(Level::word).orElse(""));
        cells.add(key.side().word());
        cells.add(key.protocol().text());
        cells.add(key.use().word());
        cells.add(key.place().word());
        cells.add(trial.observer());
        cells.add(trial.activity());
        cells.add(trial.note());
        cells.add(trial.at());
        cells.add(trial.asWritten());
        return cells;
    }

    /** A trial from the cells of an entry. Refuses an entry that this program did not write. */
    public static Trial read(List<String> cells, Settings settings, String place) {
        if (cells.size() < AS_WRITTEN) {
            throw new InputRefused(place + ": expected " + HEADINGS.size() + " cells, found " + cells.size()
                    + "; the entry was edited or cut short");
        }
        try {
            SeriesKey key = new SeriesKey(
                    cell(cells, TrialColumn.SOURCE),
                    new StudentCode(cell(cells, TrialColumn.STUDENT)),
                    new MeasureId(cell(cells, TrialColumn.MEASURE)),
                    side(cell(cells, TrialColumn.SIDE)),
                    protocol(cell(cells, TrialColumn.PROTOCOL)),
                    place(cell(cells, TrialColumn.PLACE)),
                    use(cell(cells, TrialColumn.USE)));
            return new Trial(
                    key,
                    IsoDay.of(cell(cells, TrialColumn.DATE)),
                    cell(cells, TrialColumn.SESSION),
                    wholeOrZero(cell(cells, TrialColumn.TRIAL)),
                    reading(cell(cells, TrialColumn.VALUE), cell(cells, TrialColumn.OF)),
                    level(settings.help(), cell(cells, TrialColumn.HELP), place),
                    level(settings.prompt(), cell(cells, TrialColumn.PROMPT), place),
                    cell(cells, TrialColumn.OBSERVER),
                    cell(cells, TrialColumn.ACTIVITY),
                    cell(cells, TrialColumn.NOTE),
                    cells.get(AT),
                    cells.size() > AS_WRITTEN ? cells.get(AS_WRITTEN) : "");
        } catch (java.time.DateTimeException | IllegalArgumentException unreadable) {
            throw new InputRefused(
                    place + ": the entry does not read as it was written; it was edited by hand", unreadable);
        }
    }

    /** A reading as canonical text, see {@link #reading}. */
    public static String valueText(Reading reading) {
        if (reading instanceof Reading.Exact exact) {
            return exact.amount().text();
        }
        if (reading instanceof Reading.AtLeast least) {
            return ">" + least.amount().text();
        }
        if (reading instanceof Reading.AtMost most) {
            return "<" + most.amount().text();
        }
        if (reading instanceof Reading.Tries tries) {
            return Integer.toString(tries.met());
        }
        if (reading instanceof Reading.NotObtained none) {
            return none.why().word();
        }
        throw new IllegalStateException("a reading of an unknown kind");
    }

    /** Canonical text to a reading: {@code 8.4}, {@code >30}, {@code <5}, tries with {@code of}, or one of the four words. */
    public static Reading reading(String value, String of) {
        for (Reading.Why why : Reading.Why.values()) {
            if (why.word().equals(value)) {
                return new Reading.NotObtained(why);
            }
        }
        if (!of.isEmpty()) {
            return new Reading.Tries(Integer.parseInt(value), Integer.parseInt(of));
        }
        if (value.startsWith(">")) {
            return new Reading.AtLeast(Amount.of(value.substring(1)));
        }
        if (value.startsWith("<")) {
            return new Reading.AtMost(Amount.of(value.substring(1)));
        }
        return new Reading.Exact(Amount.of(value));
    }

    static String cell(List<String> cells, TrialColumn column) {
        return cells.get(column.position());
    }

    static Side side(String word) {
        return word.isEmpty() ? Side.NONE : Side.valueOf(word.toUpperCase(java.util.Locale.ROOT));
    }

    static TrialPlace place(String word) {
        return TrialPlace.valueOf(word.toUpperCase(java.util.Locale.ROOT));
    }

    static Use use(String word) {
        return Use.valueOf(word.toUpperCase(java.util.Locale.ROOT));
    }

    static Protocol protocol(String text) {
        if (text.isEmpty()) {
            return Protocol.NONE;
        }
        SortedMap<String, String> keys = new TreeMap<>();
        for (String pair : text.split(";", 0)) {
            String[] parts = pair.split("=", 2);
            keys.put(parts[0], parts.length > 1 ? parts[1] : "");
        }
        return new Protocol(keys);
    }

    static int wholeOrZero(String text) {
        return text.isEmpty() ? 0 : Integer.parseInt(text);
    }

    static Optional<Level> level(WordScale scale, String word, String place) {
        if (word.isEmpty()) {
            return Optional.empty();
        }
        Optional<Level> level = scale.find(word);
        if (level.isEmpty()) {
            throw new InputRefused(
                    place + ": the " + scale.name() + " word \"" + word
                            + "\" is no longer on the scale of logbook.toml; put it back, or give it as another way of writing");
        }
        return level;
    }
}
