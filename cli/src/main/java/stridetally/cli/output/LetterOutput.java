package stridetally.cli.output;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import stridetally.cli.Console;
import stridetally.cli.files.Content;
import stridetally.cli.files.OutputFolder;
import stridetally.cli.options.PageFormat;
import stridetally.measures.FamilyWords;
import stridetally.model.Contact;
import stridetally.model.StudentCode;
import stridetally.problem.InputRefused;
import stridetally.report.FamilyHtml;
import stridetally.report.FamilyLetter;
import stridetally.report.FamilyMarkdown;
import stridetally.report.ReportInput;
import stridetally.report.TeamReport;
import stridetally.stats.Estimate;

/** The letters of {@code report --for family}. */
public final class LetterOutput {
    private LetterOutput() {}

    /** The letters of the students that are shown and have a goal to tell of, by code. */
    public static List<FamilyLetter> letters(
            ReportInput input,
            Contact contact,
            Optional<String> language,
            Predicate<StudentCode> shown,
            Console console) {
        List<FamilyLetter> letters = new ArrayList<>();
        Map<String, Optional<FamilyWords>> read = new HashMap<>();
        for (StudentCode student : TeamReport.students(input)) {
            if (shown.test(student)) {
                FamilyWords words = words(input, student, language, console, read);
                Estimate<FamilyLetter> letter = FamilyLetter.of(input, student, words, contact);
                if (!letter.isEstimated()) {
                    throw new InputRefused("no letter for " + student.text() + ": " + letter.reason());
                }
                letter.value().filter(one -> !one.goals().isEmpty()).ifPresent(letters::add);
            }
        }
        if (letters.isEmpty()) {
            throw new InputRefused("no letter to write: no student shown has a goal in these days");
        }
        Set<String> languages = new TreeSet<>();
        letters.forEach(letter -> languages.add(letter.words().language()));
        ContactWords.tellLacking(contact, languages, console);
        return letters;
    }

    /** All letters one after another. */
    public static Content together(List<FamilyLetter> letters, PageFormat format) {
        return Content.text(out -> {
            if (format == PageFormat.HTML) {
                FamilyHtml.write(letters, out);
                return;
            }
            String between = "";
            for (FamilyLetter letter : letters) {
                out.append(between);
                FamilyMarkdown.write(letter, out);
                between = "\n---\n\n";
            }
        });
    }

    /** A file for each student; its name is never that of the team's page. */
    public static void apart(List<FamilyLetter> letters, OutputFolder folder, PageFormat format) {
        for (FamilyLetter letter : letters) {
            String name = ReportOutput.fileName(letter.code()) + "-family-"
                    + letter.words().language() + format.extension();
            folder.write(name, together(List.of(letter), format));
        }
    }

    private static FamilyWords words(
            ReportInput input,
            StudentCode student,
            Optional<String> typed,
            Console console,
            Map<String, Optional<FamilyWords>> read) {
        String wanted = typed.orElseGet(() -> FamilyLetter.language(input, student));
        return read.computeIfAbsent(wanted, FamilyWords::of).orElseGet(() -> {
            String known = String.join(", ", FamilyWords.languages());
            if (typed.isPresent()) {
                throw new InputRefused("there is no letter in \"" + wanted + "\"; there is: " + known);
            }
            console.note("there is no letter in the language of " + student.text() + " (there is: " + known
                    + "); theirs is in English, and needs an interpreter");
            return FamilyWords.of(FamilyWords.ENGLISH).orElseThrow();
        });
    }
}
