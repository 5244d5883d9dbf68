package stridetally.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stridetally.measures.Catalogue;
import stridetally.measures.Measure;
import stridetally.model.Direction;
import stridetally.model.Level;
import stridetally.model.Precaution;
import stridetally.model.WordScale;
import stridetally.problem.Checked;
import stridetally.problem.RowProblem;
import stridetally.table.Cells;
import stridetally.units.Amount;

/**
 * The ladder file to a {@link Ladder}. One bad cell and there is no ladder, because a rung that was left out or half read
 * would say something else than its author meant; all that is wrong is told, each with its place.
 *
 * <p>Columns: {@code rung, task, measure, ready_when, ready_help, ready_sessions, least_help, not_with, home}, and for each
 * language {@code name_en, do_en, help_en, fade_en, caution_en}.
 */
public final class LadderRows {
    private static final String OR = " or ";
    private static final int MOST_SESSIONS = 20;

    private final Catalogue catalogue;
    private final WordScale help;
    private final List<String> languages;
    private final List<RowProblem> problems = new ArrayList<>();
    private final Map<String, Long> lineOf = new HashMap<>();

    private LadderRows(Catalogue catalogue, WordScale help, List<String> languages) {
        this.catalogue = catalogue;
        this.help = help;
        this.languages = languages;
    }

    /** The ladder, or all that is wrong with it. */
    public static Checked<Ladder> read(List<Cells> rows, Catalogue catalogue, WordScale help, List<String> languages) {
        LadderRows reader = new LadderRows(catalogue, help, languages);
        List<Rung> rungs = new ArrayList<>();
        rows.forEach(cells -> reader.rung(cells).ifPresent(rungs::add));
        return reader.problems.isEmpty() ? Checked.fine(new Ladder(rungs)) : Checked.setAside(reader.problems);
    }

    private Optional<Rung> rung(Cells cells) {
        PlanRow row = new PlanRow(cells);
        String id = row.needed("rung", "a short name such as line-turn");
        Long before = id.isEmpty() ? null : lineOf.putIfAbsent(id, cells.row().line());
        if (before != null) {
            row.wrong("rung", "a name of its own; line " + before + " has it too", "rename one of them");
        }
        row.needed("task", "one or more of " + String.join(", ", taskWords()));
        List<Task> tasks = row.words("task", taskWords(), Task::find);
        Optional<Measure> measure = measure(row, "measure", row.needed("measure", "the id of a measure"));
        List<Precaution> notWith = row.words("not_with", precautionWords(), LadderRows::barring);
        Optional<Ready> ready = ready(row);
        Optional<Level> least = row.text("least_help").isEmpty()
                ? Optional.empty()
                : row.word("least_help", row.text("least_help"), help.words(), help::find);
        Optional<Rung.Home> home = home(row);
        Map<String, Rung.Words> words = words(row);
        measure.ifPresent(one -> checkTasks(row, tasks, one, home, words));
        problems.addAll(row.problems());
        if (!row.isFine()) {
            return Optional.empty();
        }
        return Optional.of(new Rung(
                id,
                Set.copyOf(tasks),
                measure.orElseThrow().id(),
                ready,
                least,
                Set.copyOf(notWith),
                home.orElseThrow(),
                words));
    }

    /** What the measure and the words say is done must be said by the tasks, and must not come home if it stays at school. */
    private static void checkTasks(
            PlanRow row, List<Task> tasks, Measure measure, Optional<Rung.Home> home, Map<String, Rung.Words> words) {
        Set<Task> all = EnumSet.noneOf(Task.class);
        all.addAll(Task.of(measure.id()));
        words.values().forEach(one -> one.ofTheTask().forEach(text -> all.addAll(TaskWords.in(text))));
        for (Task task : all) {
            if (!tasks.contains(task)) {
                row.wrong(
                        "task",
                        task.word() + " as well, since the measure or the words of the rung name it",
                        "add it, or change the measure or the words");
            }
        }
        all.addAll(tasks);
        for (Task task : all) {
            if (!task.comesHome() && home.equals(Optional.of(Rung.Home.YES))) {
                row.wrong("home", "no, since " + task.word() + " never comes home", "write no");
            }
        }
    }

    private Optional<Measure> measure(PlanRow row, String column, String written) {
        if (written.isEmpty()) {
            return Optional.empty();
        }
        Optional<Measure> measure = catalogue.find(written);
        if (measure.isEmpty()) {
            row.wrong(
                    column,
                    written,
                    "the id of a measure; see the command measures",
                    catalogue
                            .nearest(written)
                            .map(near -> "did you mean " + near + "?")
                            .orElse("correct it"));
        }
        return measure;
    }

    private Optional<Ready> ready(PlanRow row) {
        if (row.text("ready_when").isEmpty()) {
            for (String column : List.of("ready_help", "ready_sessions")) {
                if (!row.text(column).isEmpty()) {
                    row.wrong(
                            column, "a blank cell where ready_when is blank", "fill in ready_when, or empty this cell");
                }
            }
            return Optional.empty();
        }
        List<Ready.Bar> bars = new ArrayList<>();
        for (String bar : Arrays.asList(row.text("ready_when").split(OR, -1))) {
            bar(row, bar.strip()).ifPresent(bars::add);
        }
        String level = row.needed("ready_help", "the most help, one of " + String.join(", ", help.words()));
        Optional<Level> most =
                level.isEmpty() ? Optional.empty() : row.word("ready_help", level, help.words(), help::find);
        int sessions = sessions(row);
        return bars.isEmpty() || most.isEmpty() || sessions < Ready.LEAST_SESSIONS
                ? Optional.empty()
                : Optional.of(new Ready(bars, most.get(), sessions));
    }

    private Optional<Ready.Bar> bar(PlanRow row, String bar) {
        int sign = Math.max(bar.indexOf(">="), bar.indexOf("<="));
        String number = sign < 0 ? "" : bar.substring(sign + 2).strip();
        if (sign <= 0 || !number.matches("\\d{1,9}(\\.\\d{1,9})?")) {
            row.wrong("ready_when", bar, "a measure and a number such as line-steps>=6", "correct it");
            return Optional.empty();
        }
        Optional<Measure> measure =
                measure(row, "ready_when", bar.substring(0, sign).strip());
        Direction way = bar.charAt(sign) == '>' ? Direction.HIGHER : Direction.LOWER;
        if (measure.isPresent() && !measure.get().better().equals(Optional.of(way))) {
            row.wrong(
                    "ready_when",
                    bar,
                    measure.get().better().isEmpty()
                            ? "a measure of which more or less is better"
                            : "the sign of the better way, " + (way == Direction.HIGHER ? "<=" : ">="),
                    "correct it");
            return Optional.empty();
        }
        return measure.map(one -> new Ready.Bar(one, way, Amount.of(new BigDecimal(number))));
    }

    private static int sessions(PlanRow row) {
        String text = row.needed("ready_sessions", "how many sessions running, 2 or more");
        int sessions = text.matches("\\d{1,2}") ? Integer.parseInt(text) : 0;
        if (!text.isEmpty() && (sessions < Ready.LEAST_SESSIONS || sessions > MOST_SESSIONS)) {
            row.wrong("ready_sessions", "a whole number from 2 to " + MOST_SESSIONS, "one session is chance");
            return 0;
        }
        return sessions;
    }

    private static Optional<Rung.Home> home(PlanRow row) {
        String text = row.needed("home", "yes or no").toLowerCase(Locale.ROOT);
        return text.isEmpty()
                ? Optional.empty()
                : row.word(
                        "home",
                        text,
                        List.of("yes", "no"),
                        word -> word.equals("yes")
                                ? Optional.of(Rung.Home.YES)
                                : word.equals("no") ? Optional.of(Rung.Home.NO) : Optional.empty());
    }

    private Map<String, Rung.Words> words(PlanRow row) {
        Map<String, Rung.Words> words = new LinkedHashMap<>();
        for (String language : languages) {
            words.put(
                    language,
                    new Rung.Words(
                            said(row, "name_", language),
                            said(row, "do_", language),
                            said(row, "help_", language),
                            said(row, "fade_", language),
                            said(row, "caution_", language)));
        }
        return words;
    }

    private static String said(PlanRow row, String column, String language) {
        return row.needed(column + language, "words in this language; those of another language are never put there");
    }

    private static Optional<Precaution> barring(String word) {
        return Precaution.find(word).filter(one -> one != Precaution.NONE && one != Precaution.OTHER);
    }

    private static List<String> taskWords() {
        return Stream.of(Task.values()).map(Task::word).toList();
    }

    private static List<String> precautionWords() {
        return Stream.of(Precaution.values())
                .filter(one -> one != Precaution.NONE && one != Precaution.OTHER)
                .map(Precaution::word)
                .toList();
    }
}
