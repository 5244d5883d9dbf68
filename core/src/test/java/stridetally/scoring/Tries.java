package stridetally.scoring;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import stridetally.ingest.ReadingKind;
import stridetally.ingest.SeriesNumbers;
import stridetally.ingest.TrialSink;
import stridetally.measures.Measure;
import stridetally.measures.MeasureKind;
import stridetally.measures.Range;
import stridetally.measures.Rhythm;
import stridetally.measures.Sidedness;
import stridetally.model.Direction;
import stridetally.model.Level;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.SeriesKey;
import stridetally.model.Side;
import stridetally.model.StudentCode;
import stridetally.model.Summary;
import stridetally.model.TrialPlace;
import stridetally.model.Use;
import stridetally.model.WordScale;
import stridetally.units.Amount;
import stridetally.units.Unit;

/**
 * Tries in a short notation for tests: {@code 5 >30 <2 4/5 unable refused absent untested}, each independent and without a
 * prompt unless written {@code 5@contact_guard}, {@code 5@blank}, {@code 5@independent+verbal}. {@code #3=5} is try number 3.
 */
final class Tries {
    static final MeasureId STEPS = new MeasureId("line-steps");
    static final StudentCode STUDENT = new StudentCode("S1");
    static final LocalDate DAY = LocalDate.of(2026, 1, 12);

    private Tries() {}

    static Measure measure(MeasureKind kind, Optional<Direction> better, Summary summary, Sidedness sidedness) {
        Range any = new Range(Optional.empty(), Optional.of(Amount.of("200")));
        return new Measure(
                STEPS,
                "steps on a line",
                "steps on a line",
                Unit.STEPS,
                better,
                kind,
                Rhythm.PROBE,
                3,
                summary,
                any,
                any,
                sidedness,
                java.util.List.of("surface", "eyes"),
                0,
                "",
                "a measure made up for tests");
    }

    static Measure steps() {
        return measure(MeasureKind.COUNT, Optional.of(Direction.HIGHER), Summary.BEST, Sidedness.NONE);
    }

    static Measure sided() {
        return measure(MeasureKind.DURATION, Optional.of(Direction.HIGHER), Summary.BEST, Sidedness.REQUIRED);
    }

    static SeriesKey key(Side side) {
        return new SeriesKey("", STUDENT, STEPS, side, Protocol.NONE, TrialPlace.SCHOOL, Use.PROBE);
    }

    static TrialGroup group(String tries) {
        SessionTable table = new SessionTable(new SeriesNumbers());
        feed(table, table.numbers().number(key(Side.NONE)), DAY, "", tries);
        return table.index().of(0).get(0);
    }

    static void feed(SessionTable table, SeriesKey key, String day, String tries) {
        feed(table, table.numbers().number(key), LocalDate.parse(day), "", tries);
    }

    static void feed(SessionTable sink, int series, LocalDate day, String label, String tries) {
        int labelNumber = label.isEmpty() ? 0 : sink.numbers().label(label);
        long line = day.toEpochDay() * 1000;
        for (String one : tries.split(" ", -1)) {
            feed(sink, series, (int) day.toEpochDay(), labelNumber, one, line++);
        }
    }

    private static void feed(TrialSink sink, int series, int day, int label, String one, long origin) {
        int number = 0;
        String rest = one;
        if (rest.startsWith("#")) {
            number = Integer.parseInt(rest.substring(1, rest.indexOf('=')));
            rest = rest.substring(rest.indexOf('=') + 1);
        }
        String[] parts = rest.split("[@+]", -1);
        int help = parts.length < 2 ? 0 : rank(WordScale.HELP, parts[1]);
        int prompt = parts.length < 3 ? 0 : rank(WordScale.PROMPT, parts[2]);
        String value = parts[0];
        ReadingKind kind = kind(value);
        int given = kind == ReadingKind.TRIES ? Integer.parseInt(value.substring(value.indexOf('/') + 1)) : 1;
        sink.trial(series, day, label, number, kind, amount(kind, value), given, help, prompt, origin);
    }

    private static int rank(WordScale scale, String word) {
        return word.equals("blank")
                ? Level.BLANK
                : scale.find(word).map(Level::rank).orElseThrow();
    }

    private static ReadingKind kind(String value) {
        return switch (value) {
            case "unable" -> ReadingKind.UNABLE;
            case "refused" -> ReadingKind.REFUSED;
            case "absent" -> ReadingKind.ABSENT;
            case "untested" -> ReadingKind.NOT_TESTED;
            default ->
                value.contains("/")
                        ? ReadingKind.TRIES
                        : value.startsWith(">")
                                ? ReadingKind.AT_LEAST
                                : value.startsWith("<") ? ReadingKind.AT_MOST : ReadingKind.EXACT;
        };
    }

    private static long amount(ReadingKind kind, String value) {
        return switch (kind) {
            case TRIES -> Long.parseLong(value.substring(0, value.indexOf('/')));
            case EXACT -> Amount.of(value).billionths();
            case AT_LEAST, AT_MOST -> Amount.of(value.substring(1)).billionths();
            default -> 0;
        };
    }

    /** {@code 16.9:3} for an exact sum over a count, {@code >=30:1}, or {@code -} when there is no value. */
    static String text(SessionValue value) {
        if (value instanceof SessionValue.Known known) {
            return plain(known.sum()) + ":" + known.count();
        }
        if (value instanceof SessionValue.Bounded bounded) {
            return bounded.bound().sign() + plain(bounded.sum()) + ":" + bounded.count();
        }
        return "-";
    }

    private static String plain(long billionths) {
        return new BigDecimal(new Amount(billionths).text()).toPlainString();
    }
}
