package stridetally.plan;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Finds the tasks that stay at school in the words of a rung, English and Spanish, so that "jump over the tape" is not taken
 * for walking because its task column says so. A fence and no more: it knows these words only (our choice).
 */
final class TaskWords {
    private TaskWords() {}

    static Set<Task> in(String text) {
        String folded = text.toLowerCase(Locale.ROOT);
        List<String> words = Arrays.asList(folded.split("[^\\p{L}]+", -1));
        String spaced = " " + String.join(" ", words) + " ";
        Set<Task> tasks = EnumSet.noneOf(Task.class);
        add(tasks, Task.JUMP, begins(words, "jump", "leap", "salt", "brinc") || holds(spaced, " hop", " skip "));
        add(
                tasks,
                Task.BACKWARD,
                begins(words, "backward", "espaldas")
                        || holds(spaced, " step back ", " steps back ", " walk back ", " hacia atr", " para atr"));
        add(tasks, Task.BEAM, begins(words, "beam", "viga", "barra"));
        add(tasks, Task.STAIRS, begins(words, "stair", "escal"));
        boolean closed = begins(words, "eye", "ojo") && begins(words, "clos", "shut", "cerr", "cierr", "cier");
        add(tasks, Task.EYES_CLOSED, closed || begins(words, "blindfold", "vendad"));
        return tasks;
    }

    private static void add(Set<Task> tasks, Task task, boolean named) {
        if (named) {
            tasks.add(task);
        }
    }

    private static boolean begins(List<String> words, String... stems) {
        return words.stream().anyMatch(word -> Arrays.stream(stems).anyMatch(word::startsWith));
    }

    private static boolean holds(String text, String... phrases) {
        return Arrays.stream(phrases).anyMatch(text::contains);
    }
}
