package stridetally.ingest;

import java.util.List;
import stridetally.model.Level;
import stridetally.model.Settings;
import stridetally.model.Trial;
import stridetally.problem.ProblemTally;
import stridetally.problem.RowProblem;

/**
 * Takes the records of logs with the same headings that are provably plain, without an object a record.
 *
 * <p>What a row says is a product of its cells, and most of them repeat. {@link PlainTasks} knows what was tried from cells
 * that were understood before, and the notes that they bring ({@code PLACE_BLANK} and its like) are only counted, by
 * {@link PlainNotes}; so no rule on these cells is written twice. Only what differs from row to row is judged here: an ISO
 * date ({@link PlainDays}), a number in the measure's own unit or tries met of tries given ({@link PlainValue}), a trial number,
 * a word of help already known ({@link PlainWords}). Anything else is refused, and {@link OddRows} takes it. A row that is
 * expected ({@link ExpectedRows}) need not even be cut. Hot loop. A thread's own.
 */
final class PlainRows {
    static final int MOST_DIGITS = 6;

    private final int columns;
    private final Settings settings;
    private final int lastDay;
    private final int date;
    private final int value;
    private final int number;
    private final int of;
    private final int help;
    private final int prompt;
    private final int label;

    private final PlainTasks tasks;
    private final PlainDays days = new PlainDays();
    private final PlainWords words;
    private final PlainNotes notes = new PlainNotes();
    private PlainValue tried = new PlainValue();
    private TrialSink sink;
    private long rows;
    private long ahead;

    /** Whether the record before this one was taken, so that what its first cells say is known. */
    private boolean known;

    private int knownDay;
    private final ExpectedRows expected;

    /**
     * Of one file.
     *
     * @param rows records taken
     * @param ahead of them those of a day that is left out
     * @param point whether a value with a decimal point was seen
     */
    record Taken(long rows, long ahead, boolean point) {}

    PlainRows(BulkForm form, SeriesNumbers numbers, TrialSink sink, StudentRange students) {
        this.columns = form.columns();
        this.settings = form.rules().settings();
        this.sink = sink;
        this.lastDay = Math.toIntExact(Math.min(Integer.MAX_VALUE, form.asOf().toEpochDay()));
        this.tasks = new PlainTasks(form, numbers, students);
        this.words = new PlainWords(numbers);
        this.expected = new ExpectedRows(form);
        this.date = form.column(TrialColumn.DATE);
        this.value = form.column(TrialColumn.VALUE);
        this.number = form.column(TrialColumn.TRIAL);
        this.of = form.column(TrialColumn.OF);
        this.help = form.column(TrialColumn.HELP);
        this.prompt = form.column(TrialColumn.PROMPT);
        this.label = form.column(TrialColumn.SESSION);
    }

    /** Where the tries go from now on. */
    void into(TrialSink other) {
        sink = other;
    }

    /** Takes a record, or refuses it untouched. */
    boolean take(ByteRecords records) {
        int same = known ? records.same() : 0;
        known = false;
        if (records.cells() != columns) {
            return false;
        }
        byte[] bytes = records.bytes();
        int day = date < same ? knownDay : days.day(bytes, records.start(date), records.end(date));
        int trial = number < 0 ? 0 : number(bytes, records.start(number), records.end(number));
        // Only a row with a day is a try, whose value may prove how the file writes decimals.
        if (day == PlainDays.ODD || trial < 0 || !tasks.find(records, same)) {
            return false;
        }
        PlainTask task = tasks.task();
        if (!tried.read(task, records, value, of)) {
            return false;
        }
        int helpRank = words.help(records, help, settings.help());
        int promptRank = words.prompt(records, prompt, settings.prompt());
        int labelNumber = words.label(records, label);
        if (helpRank == PlainWords.UNREADABLE || promptRank == PlainWords.UNREADABLE || labelNumber < 0) {
            return false;
        }
        if (day > lastDay) {
            ahead++;
            rows++;
            return true;
        }
        if (!notes.count(task.brings() | (helpRank == Level.BLANK ? PlainNotes.HELP_BLANK : 0))) {
            return false;
        }
        rows++;
        int series = tasks.series(records);
        knownDay = day;
        passOn(series, labelNumber, trial, helpRank, promptRank);
        known = true;
        expected.learn(records, tasks.pair(), labelNumber, helpRank, promptRank);
        return true;
    }

    /** Takes the record that follows without cutting it, when it is one that was expected. */
    boolean takeExpected(ByteRecords records) {
        if (!known || !expected.begins(records)) {
            return false;
        }
        PlainTask task = tasks.task(expected.pair());
        int end = expected.end(records, task, tried);
        if (end < 0 || !notes.countTold(task.brings() | (expected.help() == Level.BLANK ? PlainNotes.HELP_BLANK : 0))) {
            return false;
        }
        expected.take(records);
        rows++;
        passOn(tasks.goTo(expected.pair()), expected.label(), expected.number(), expected.help(), expected.prompt());
        records.goOver(end);
        return true;
    }

    private void passOn(int series, int label, int trial, int helpRank, int promptRank) {
        if (series != PlainTasks.SKIPPED) {
            sink.trial(
                    series,
                    knownDay,
                    label,
                    trial,
                    tried.kind(),
                    tried.number(),
                    tried.given(),
                    helpRank,
                    promptRank,
                    0);
        }
    }

    /** A checked trial and the notes on it, see {@link PlainTasks#learn}. */
    void learn(ByteRecords records, Trial trial, List<RowProblem> problems) {
        tasks.learn(records, trial, problems);
    }

    /** A trial number; 0 when the cell is blank, below 0 when it is none. */
    private static int number(byte[] bytes, int start, int end) {
        if (end - start > MOST_DIGITS || (start < end && bytes[start] == '0')) {
            return -1;
        }
        return PlainDays.number(bytes, start, end);
    }

    /** What was taken since this was last asked. */
    Taken taken() {
        Taken taken = new Taken(rows, ahead, tried.point());
        rows = 0;
        ahead = 0;
        tried = new PlainValue();
        return taken;
    }

    /** Adds the notes that were only counted. */
    void addCounted(ProblemTally problems) {
        notes.addTo(problems);
    }
}
