package stridetally.cli;

import java.util.ArrayList;
import java.util.List;

/**
 * A command that a page shows in a block marked {@code console}, and what it prints: the lines after {@code $ command} up to
 * the next one. A line of three full stops stands for one line or more that the page leaves out.
 */
record ConsoleBlock(String command, List<String> printed) {
    private static final String LEFT_OUT = "...";

    ConsoleBlock {
        printed = List.copyOf(printed);
    }

    /** Every command of a Markdown page, in order. */
    static List<ConsoleBlock> of(String page) {
        List<ConsoleBlock> blocks = new ArrayList<>();
        boolean inside = false;
        String command = "";
        List<String> printed = new ArrayList<>();
        for (String line : page.lines().toList()) {
            boolean fence = line.startsWith("```");
            if (inside && (fence || line.startsWith("$ "))) {
                if (!command.isEmpty()) {
                    blocks.add(new ConsoleBlock(command, printed));
                }
                command = "";
                printed.clear();
            }
            if (fence) {
                inside = !inside && line.equals("```console");
            } else if (inside && line.startsWith("$ ")) {
                command = line.substring(2);
            } else if (inside) {
                printed.add(line);
            }
        }
        return blocks;
    }

    /** The words of the command line, split at blanks; double quotes hold a word together. */
    List<String> words() {
        List<String> words = new ArrayList<>();
        StringBuilder word = new StringBuilder();
        boolean quoted = false;
        for (char letter : (command + " ").toCharArray()) {
            if (letter == '"') {
                quoted = !quoted;
            } else if (letter == ' ' && !quoted) {
                if (!word.isEmpty()) {
                    words.add(word.toString());
                    word.setLength(0);
                }
            } else {
                word.append(letter);
            }
        }
        return words;
    }

    /** Whether the command printed what the page shows. */
    boolean shows(List<String> actual) {
        List<List<String>> parts = parts();
        List<String> first = parts.get(0);
        if (parts.size() == 1) {
            return actual.equals(first);
        }
        List<String> last = parts.get(parts.size() - 1);
        int from = first.size();
        int until = actual.size() - last.size();
        if (from >= until
                || !actual.subList(0, from).equals(first)
                || !actual.subList(until, actual.size()).equals(last)) {
            return false;
        }
        for (List<String> part : parts.subList(1, parts.size() - 1)) {
            // At least one line is left out before each part.
            int start = position(part, actual, from + 1, until);
            if (start < 0) {
                return false;
            }
            from = start + part.size();
        }
        return from < until;
    }

    private List<List<String>> parts() {
        List<List<String>> parts = new ArrayList<>();
        parts.add(new ArrayList<>());
        for (String line : printed) {
            if (line.equals(LEFT_OUT)) {
                parts.add(new ArrayList<>());
            } else {
                parts.get(parts.size() - 1).add(line);
            }
        }
        return parts;
    }

    private static int position(List<String> part, List<String> lines, int from, int until) {
        for (int start = from; start + part.size() <= until; start++) {
            if (lines.subList(start, start + part.size()).equals(part)) {
                return start;
            }
        }
        return -1;
    }
}
