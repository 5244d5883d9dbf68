package stridetally.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stridetally.model.DateRange;
import stridetally.model.Goal;
import stridetally.model.Level;
import stridetally.model.Use;
import stridetally.model.WordScale;
import stridetally.scoring.HelpCounts;
import stridetally.table.Cell;

/**
 * The rows of {@code score --by help}: recorded tries of one goal and period at one level of help or of prompt, probe and
 * practice side by side, with their shares of the tries whose level was written. A scale of words: counts and shares, never
 * a mean of places on it.
 *
 * @param help the scale of help words
 * @param prompt the scale of prompt words
 */
public record HelpRows(WordScale help, WordScale prompt) {
    /** The columns, in order. */
    public static final List<String> HEADINGS = List.of(
            "student",
            "goal",
            "measure",
            "period",
            "from",
            "to",
            "scale",
            "level",
            "probe",
            "probe_share",
            "probe_share_up_to",
            "practice",
            "practice_share",
            "practice_share_up_to",
            "probe_share_before",
            "practice_share_before",
            "reason");

    /**
     * The tries of one goal in one period.
     *
     * @param probe counts of the probes
     * @param practice counts of the practice
     */
    public record Tries(HelpCounts probe, HelpCounts practice) {
        HelpCounts of(Use use) {
            return use == Use.PROBE ? probe : practice;
        }
    }

    private enum Scale {
        HELP,
        PROMPT;

        List<HelpCounts.AtLevel> levels(HelpCounts counts) {
            return this == HELP ? counts.help() : counts.prompt();
        }

        int notWritten(HelpCounts counts) {
            return this == HELP ? counts.helpNotWritten() : counts.promptNotWritten();
        }

        String word() {
            return this == HELP ? "help" : "prompt";
        }
    }

    /** Tries at each level by its rank, and all whose level was written. */
    private record Levels(Map<Integer, Integer> at, int written) {
        static Levels of(Scale scale, HelpCounts counts) {
            Map<Integer, Integer> at = new HashMap<>();
            int written = 0;
            for (HelpCounts.AtLevel one : scale.levels(counts)) {
                at.merge(one.level().rank(), one.tries(), Integer::sum);
                written += one.tries();
            }
            return new Levels(at, written);
        }

        int tries(int rank) {
            return at.getOrDefault(rank, 0);
        }

        Cell share(int tries) {
            return written == 0 ? Cell.blank() : Cell.number(tries / (double) written, 2);
        }

        Cell share(Level level) {
            return share(tries(level.rank()));
        }

        Cell shareUpTo(Level level) {
            return share(at.entrySet().stream()
                    .filter(one -> one.getKey() <= level.rank())
                    .mapToInt(Map.Entry::getValue)
                    .sum());
        }
    }

    /** The rows of both scales; levels that occur in neither period are left out. */
    public List<List<Cell>> rows(Goal goal, String period, DateRange days, Tries now, Tries before) {
        List<List<Cell>> rows = new ArrayList<>();
        List<Cell> start = List.of(
                Cell.text(goal.student().text()),
                Cell.text(goal.id().text()),
                Cell.text(goal.measure().text()),
                Cell.text(period),
                Cell.date(days.first()),
                Cell.date(days.last()));
        rows.addAll(rows(start, Scale.HELP, help, now, before));
        rows.addAll(rows(start, Scale.PROMPT, prompt, now, before));
        return rows;
    }

    private static List<List<Cell>> rows(List<Cell> start, Scale scale, WordScale words, Tries now, Tries before) {
        Levels probe = Levels.of(scale, now.of(Use.PROBE));
        Levels practice = Levels.of(scale, now.of(Use.PRACTICE));
        Levels probeBefore = Levels.of(scale, before.of(Use.PROBE));
        Levels practiceBefore = Levels.of(scale, before.of(Use.PRACTICE));
        int most = probe.at().keySet().stream().mapToInt(rank -> rank).max().orElse(-1);
        int mostPractice =
                practice.at().keySet().stream().mapToInt(rank -> rank).max().orElse(-1);
        List<List<Cell>> rows = new ArrayList<>();
        for (int rank = 0; rank < words.words().size(); rank++) {
            Level level = words.level(rank);
            boolean occurs =
                    probe.tries(rank) + practice.tries(rank) + probeBefore.tries(rank) + practiceBefore.tries(rank) > 0;
            if (occurs) {
                List<Cell> cells = new ArrayList<>(start);
                cells.addAll(List.of(
                        Cell.code(scale.word()),
                        Cell.text(level.word()),
                        Cell.whole(probe.tries(rank)),
                        probe.share(level),
                        probe.shareUpTo(level),
                        Cell.whole(practice.tries(rank)),
                        practice.share(level),
                        practice.shareUpTo(level),
                        probeBefore.share(level),
                        practiceBefore.share(level),
                        FigureCells.reasons(List.of(
                                rank == most ? "most " + scale.word() + " of a probe" : "",
                                probeBefore.written() + practiceBefore.written() == 0
                                        ? "no try with its " + scale.word() + " written in a period before"
                                        : "",
                                rank == mostPractice ? "most " + scale.word() + " of a practice try" : ""))));
                rows.add(cells);
            }
        }
        notWritten(start, scale, now).ifPresent(rows::add);
        return rows;
    }

    private static java.util.Optional<List<Cell>> notWritten(List<Cell> start, Scale scale, Tries now) {
        int probe = scale.notWritten(now.of(Use.PROBE));
        int practice = scale.notWritten(now.of(Use.PRACTICE));
        if (probe + practice == 0) {
            return java.util.Optional.empty();
        }
        List<Cell> cells = new ArrayList<>(start);
        cells.addAll(List.of(Cell.code(scale.word()), Cell.blank(), Cell.whole(probe)));
        cells.addAll(FigureCells.blanks(2));
        cells.add(Cell.whole(practice));
        cells.addAll(FigureCells.blanks(4));
        cells.add(Cell.text(scale.word() + " was not written; in no share"));
        return java.util.Optional.of(cells);
    }
}
