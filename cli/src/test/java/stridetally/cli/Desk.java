package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A folder with the files of one test and a logbook {@code book} in it; {@code @} in an argument is that folder. */
record Desk(Path folder) {
    static final String HEAD = "student,date,measure,trial,value,unit,help,prompt,side,place,note\n";
    static final String ROW = "S01,2026-01-05,line-steps,1,6,steps,independent,none,,school,\n";

    /** A row that differs from {@link #ROW} in some words. */
    static String row(String... oldAndNew) {
        String row = ROW;
        for (int pair = 0; pair < oldAndNew.length; pair += 2) {
            assertTrue(row.contains(oldAndNew[pair]), oldAndNew[pair]);
            row = row.replace(oldAndNew[pair], oldAndNew[pair + 1]);
        }
        return row;
    }

    /** With a logbook of two students and no trial. */
    static Desk withLogbook(Path folder) {
        Desk desk = new Desk(folder).file("students.csv", "student,grade\nS01,2\nS02,3\n");
        assertEquals(0, desk.run("import @students.csv --logbook @book --new").exitCode());
        return desk;
    }

    Desk file(String name, String text) {
        return file(name, text.getBytes(StandardCharsets.UTF_8));
    }

    Desk file(String name, byte[] content) {
        try {
            Files.createDirectories(path(name).toAbsolutePath().getParent());
            Files.write(path(name), content);
            return this;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    Path path(String name) {
        return folder.resolve(name);
    }

    String text(String name) {
        try {
            return Files.readString(path(name));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** Runs a line, split at blanks; an underscore in a word stands for a blank. Never a stack trace, never a NaN. */
    Run run(String line) {
        List<String> words = new ArrayList<>();
        for (String word : line.split(" ", -1)) {
            words.add(word.replace('_', ' ').replace("@", folder + "/"));
        }
        Run run = Run.of(words.toArray(String[]::new));
        for (String told : List.of(run.out(), run.err())) {
            assertFalse(told.contains("NaN") || told.contains("\tat ") || told.contains("Exception"), told);
        }
        return run;
    }

    /** Imports into the logbook. */
    Run imported(String arguments) {
        return run("import --logbook @book " + arguments);
    }

    /**
     * What an import says of a file: rows, taken, known, set aside, blank, replaced, entry. Goals by themselves are answered
     * with how they are written, and their counts, the first five, with a sentence.
     */
    List<String> counts(Run run, String file) {
        Matcher sentence = Pattern.compile(Pattern.quote(file)
                        + ": (\\d+) rows? = (\\d+) taken \\+ (\\d+) known \\+ (\\d+) set aside \\+ (\\d+) blank")
                .matcher(run.err());
        if (sentence.find()) {
            return IntStream.rangeClosed(1, 5).mapToObj(sentence::group).toList();
        }
        String line = run.out()
                .lines()
                .filter(one -> one.contains(file))
                .findFirst()
                .orElseThrow(() -> new AssertionError(run.out() + run.err()));
        List<String> cells =
                Arrays.stream(line.split("\\|", -1)).map(String::strip).toList();
        return cells.subList(3, cells.size() - 1);
    }

    /** Every folder and every file with its content, but for the lock, which is a file of its own that says nothing. */
    Map<String, String> content() {
        Map<String, String> content = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path one : all.toList()) {
                if (Files.isRegularFile(one) && !one.endsWith(".lock")) {
                    content.put(
                            folder.relativize(one).toString(), HexFormat.of().formatHex(Files.readAllBytes(one)));
                } else if (Files.isDirectory(one)) {
                    content.put(folder.relativize(one).toString(), "folder");
                }
            }
            return content;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
