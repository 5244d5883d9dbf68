package stridetally.plan;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stridetally.model.Level;
import stridetally.model.MeasureId;
import stridetally.model.Precaution;

/**
 * One rung of the ladder of line and balance tasks. None can be made that brings a task home which must stay at school, and
 * the precautions that bar its tasks are in {@code notWith} whatever was typed.
 *
 * @param tasks all that is done on it; those of its measure are added
 * @param ready when a child is ready for it; empty = from the start
 * @param leastHelp the least help that it is meant for; empty = none
 * @param notWith the precautions with which it is never practised
 * @param words its texts by language code
 */
public record Rung(
        String id,
        Set<Task> tasks,
        MeasureId measure,
        Optional<Ready> ready,
        Optional<Level> leastHelp,
        Set<Precaution> notWith,
        Home home,
        Map<String, Words> words) {

    /** Whether it may be practised at home, once approved. */
    public enum Home {
        YES,
        NO
    }

    /**
     * The texts of a rung in one language.
     *
     * @param task what to do
     * @param help how to help
     * @param fade how the help gets less
     * @param caution what to take care of
     */
    public record Words(String name, String task, String help, String fade, String caution) {
        /** All but the caution, which may name what must not be done. */
        List<String> ofTheTask() {
            return List.of(name, task, help, fade);
        }
    }

    public Rung {
        Set<Task> all = EnumSet.noneOf(Task.class);
        all.addAll(tasks);
        all.addAll(Task.of(measure));
        words.values().forEach(one -> one.ofTheTask().forEach(text -> all.addAll(TaskWords.in(text))));
        Set<Precaution> barred = Task.barring(all);
        barred.addAll(notWith);
        tasks = Set.copyOf(all);
        notWith = Set.copyOf(barred);
        words = Map.copyOf(words);
        if (all.isEmpty()) {
            throw new IllegalArgumentException("rung " + id + " without a task");
        }
        if (home == Home.YES && !all.stream().allMatch(Task::comesHome)) {
            throw new IllegalArgumentException("rung " + id + " holds a task that stays at school");
        }
    }

    /** Whether a level is as much help as the rung is meant for; with less it would be another rung. */
    public boolean isMeantFor(Level help) {
        return leastHelp.map(least -> help.rank() >= least.rank()).orElse(true);
    }

    /** Which of a child's precautions bar it. */
    public Set<Precaution> barredBy(Set<Precaution> precautions) {
        Set<Precaution> both = EnumSet.noneOf(Precaution.class);
        both.addAll(precautions);
        both.retainAll(notWith);
        return both;
    }
}
