package stridetally.recordings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import stridetally.problem.InputRefused;
import stridetally.problem.ProblemCode;
import stridetally.problem.ProblemTally;
import stridetally.problem.RowProblem;

/**
 * Reads {@code walk,time_s,side,event,x_m,y_m}. Without {@code walk} the file is one walk; without {@code event} every row
 * is a contact; without {@code time_s} the rows are footprints in their order. Positions may be {@code x_cm} or {@code x_mm}.
 * A row that cannot be read is set aside with its place, and the rest is read.
 */
final class FootfallReader {
    private static final String EXPECTED = "side with left or right, and time_s or x_m and y_m";

    private final SampleTable table;
    private final ProblemTally problems;
    private final int walk;
    private final int time;
    private final int side;
    private final int event;
    private final int x;
    private final int y;
    private final double scaleX;
    private final double scaleY;
    private final Map<String, Rows> walks = new LinkedHashMap<>();
    private String lastName = "\u0000";
    private Rows lastRows = new Rows(0);

    private FootfallReader(SampleTable table, ProblemTally problems) {
        this.table = table;
        this.problems = problems;
        walk = table.column("walk");
        time = table.column("time_s");
        side = table.column("side");
        event = table.column("event");
        LengthColumn along = LengthColumn.of(table, "x");
        LengthColumn across = LengthColumn.of(table, "y");
        x = along.column();
        y = across.column();
        scaleX = along.metres();
        scaleY = across.metres();
        if (side < 0 || (time < 0 && (x < 0 || y < 0))) {
            throw new InputRefused(table.name() + ": no footfalls; expected the columns " + EXPECTED + ", found "
                    + String.join(", ", table.headings()));
        }
    }

    static List<Footfalls> read(SampleTable table, ProblemTally problems) {
        return new FootfallReader(table, problems).run();
    }

    private List<Footfalls> run() {
        while (table.next()) {
            row();
        }
        List<Footfalls> all = new ArrayList<>();
        walks.forEach((name, rows) -> all.add(rows.ordered(name)));
        return all;
    }

    private void row() {
        int foot = foot();
        boolean contact = isContact();
        double seconds = time < 0 ? 0 : table.number(time);
        if (foot == 0) {
            aside(ProblemCode.SAMPLE_UNREADABLE, side, "left or right", "a walk has two feet; correct the side");
        } else if (event >= 0 && !contact && !isOff()) {
            aside(ProblemCode.SAMPLE_UNREADABLE, event, "contact or off", "correct the event");
        } else if (Double.isNaN(seconds)) {
            aside(ProblemCode.SAMPLE_UNREADABLE, time, "seconds, such as 1.02", "write the time of the event");
        } else {
            Rows rows = rows(table.text(walk));
            double along = contact ? table.number(x) * scaleX : Double.NaN;
            double across = contact ? table.number(y) * scaleY : Double.NaN;
            if (contact && (isBad(x, along) || isBad(y, across))) {
                aside(
                        ProblemCode.SAMPLE_UNREADABLE,
                        isBad(x, along) ? x : y,
                        "a length",
                        "the contact is taken without its position");
                along = Double.NaN;
                across = Double.NaN;
            }
            rows.add(seconds, foot > 0, contact, along, across, table.line());
        }
    }

    private boolean isBad(int column, double value) {
        return Double.isNaN(value) && !table.isBlank(column);
    }

    private Rows rows(String name) {
        if (!name.equals(lastName)) {
            lastRows = walks.computeIfAbsent(name, any -> new Rows(walks.isEmpty() ? table.rowsAtMost() : 64));
            lastName = name;
        }
        return lastRows;
    }

    /** 1 for right, -1 for left, 0 for anything else. */
    private int foot() {
        String word = table.text(side).toLowerCase(Locale.ROOT);
        return switch (word) {
            case "right", "r" -> 1;
            case "left", "l" -> -1;
            default -> 0;
        };
    }

    private boolean isContact() {
        return event < 0 || table.text(event).equalsIgnoreCase("contact");
    }

    private boolean isOff() {
        return table.text(event).equalsIgnoreCase("off");
    }

    private void aside(ProblemCode code, int column, String expected, String mend) {
        problems.add(new RowProblem(code, table.at(column), table.text(column), expected, mend));
    }

    /** The rows of one walk as they come. */
    private final class Rows {
        private int count;
        private double[] times;
        private boolean[] rights;
        private boolean[] contacts;
        private double[] xs;
        private double[] ys;
        private long[] lines;
        private boolean anyOff;
        private boolean anyPlace;

        Rows(int size) {
            times = new double[size];
            rights = new boolean[size];
            contacts = new boolean[size];
            xs = new double[size];
            ys = new double[size];
            lines = new long[size];
        }

        void add(double seconds, boolean right, boolean contact, double along, double across, long line) {
            if (count == times.length) {
                int size = Math.max(64, count * 2);
                times = Arrays.copyOf(times, size);
                rights = Arrays.copyOf(rights, size);
                contacts = Arrays.copyOf(contacts, size);
                xs = Arrays.copyOf(xs, size);
                ys = Arrays.copyOf(ys, size);
                lines = Arrays.copyOf(lines, size);
            }
            times[count] = seconds;
            rights[count] = right;
            contacts[count] = contact;
            xs[count] = along;
            ys[count] = across;
            lines[count] = line;
            anyOff |= !contact;
            anyPlace |= !Double.isNaN(along) && !Double.isNaN(across);
            count++;
        }

        /** In the order of time, without a second event of the same foot and kind at one time. */
        Footfalls ordered(String name) {
            int[] order = time < 0 ? null : sorted();
            Rows to = this;
            if (order != null) {
                to = new Rows(count);
                for (int i : order) {
                    to.add(times[i], rights[i], contacts[i], xs[i], ys[i], lines[i]);
                }
            }
            if (time >= 0) {
                to.dropRepeated();
            }
            return new Footfalls(
                    name,
                    to.count,
                    to.times,
                    to.rights,
                    to.contacts,
                    to.xs,
                    to.ys,
                    to.lines,
                    time >= 0,
                    to.anyPlace,
                    to.anyOff);
        }

        /** The order of the times; null when the rows have it already. Contacts stand before offs of the same time. */
        private int @org.jspecify.annotations.Nullable [] sorted() {
            int back = -1;
            for (int i = 1; i < count && back < 0; i++) {
                back = before(i, i - 1) ? i : -1;
            }
            if (back < 0) {
                return null;
            }
            if (times[back] < times[back - 1]) {
                problems.add(new RowProblem(
                        ProblemCode.RECORDING_DOUBTFUL,
                        new stridetally.problem.At(table.name(), lines[back], time + 1, "time_s"),
                        "",
                        "times that go on",
                        "here they go back; the events were put in the order of time"));
            }
            Integer[] order = new Integer[count];
            Arrays.setAll(order, i -> i);
            Arrays.sort(order, (one, other) -> before(one, other) ? -1 : before(other, one) ? 1 : 0);
            return Arrays.stream(order).mapToInt(Integer::intValue).toArray();
        }

        private boolean before(int one, int other) {
            return times[one] < times[other] || (times[one] == times[other] && contacts[one] && !contacts[other]);
        }

        private void dropRepeated() {
            int kept = 0;
            for (int i = 0; i < count; i++) {
                if (isRepeated(i, kept)) {
                    problems.add(new RowProblem(
                            ProblemCode.SAMPLE_TIME,
                            new stridetally.problem.At(table.name(), lines[i], time + 1, "time_s"),
                            Double.toString(times[i]),
                            "one event of a foot at a time",
                            "the same event stands there twice; the second was left out"));
                } else {
                    times[kept] = times[i];
                    rights[kept] = rights[i];
                    contacts[kept] = contacts[i];
                    xs[kept] = xs[i];
                    ys[kept] = ys[i];
                    lines[kept] = lines[i];
                    kept++;
                }
            }
            count = kept;
        }

        private boolean isRepeated(int i, int kept) {
            for (int k = kept - 1; k >= 0 && times[k] == times[i]; k--) {
                if (rights[k] == rights[i] && contacts[k] == contacts[i]) {
                    return true;
                }
            }
            return false;
        }
    }
}
