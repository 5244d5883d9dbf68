package stridetally.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stridetally.measures.FamilyWords;
import stridetally.model.Contact;

/** The letter to a family as Markdown. */
public final class FamilyMarkdown {
    private static final List<String> STOP =
            List.of("stop.first", "stop.home", "stop.place", "stop.signs", "stop.emergency");

    private final MarkdownPage page;
    private final FamilyWords words;

    private FamilyMarkdown(FamilyWords words, Appendable out) {
        page = new MarkdownPage(out);
        this.words = words;
    }

    /** Writes one letter. */
    public static void write(FamilyLetter letter, Appendable out) {
        new FamilyMarkdown(letter.words(), out).write(letter);
    }

    private void write(FamilyLetter letter) {
        page.heading(1, words.text("title"));
        MarkdownPage.Label student = new MarkdownPage.Label(words.text("student"));
        letter.name().ifPresentOrElse(name -> page.bullet(student.text(), name), () -> page.fillIn(student));
        page.bullet(words.text("time"), new LetterNumbers(words, Optional.empty()).days(letter.days()));
        page.paragraph(words.text("greeting"));
        page.paragraph(words.text("intro"));
        strengths(letter);
        letter.goals().forEach(this::goal);
        page.heading(2, words.text("stop"));
        STOP.forEach(key -> page.bullet(words.text(key)));
        ask(letter.contact());
        page.heading(2, words.text("meet"));
        Stream.of("meet.offer", "meet.interpreter", "meet.sees").forEach(key -> page.paragraph(words.text(key)));
        page.signature(words.text("signed.date"), words.text("signed.therapist"));
        if (!words.text("reader").isBlank()) {
            page.paragraph(words.text("reader"));
        }
        page.paragraph(words.text("code") + ":", letter.code().text());
    }

    private void strengths(FamilyLetter letter) {
        page.heading(2, words.text("well"));
        List<String> all = letter.goals().stream()
                .flatMap(goal -> goal.strengths().stream())
                .toList();
        all.forEach(page::bullet);
        if (all.isEmpty()) {
            page.fillIn(words.text("well.fill"));
        }
    }

    private void goal(LetterGoal goal) {
        page.heading(2, goal.measured().orElseGet(() -> words.text("measured.fill") + ": ______"));
        line("routine", goal.said().routine());
        page.bullet(goal.start().label(), goal.start().text());
        goal.now().forEach(now -> page.bullet(now.label(), now.text()));
        line("goal", goal.target());
        page.bullet(words.text("expect"), goal.expect());
        goal.said().remark().ifPresent(text -> page.bullet(words.text("remark"), text));
        goal.said().next().ifPresent(text -> page.bullet(words.text("next"), text));
        if (!goal.closed()) {
            line("home", goal.said().home());
        }
    }

    private void line(String key, Optional<String> text) {
        text.ifPresentOrElse(
                said -> page.bullet(words.text(key), said),
                () -> page.fillIn(words.text(key), words.text(key + ".fill")));
    }

    private void ask(Contact contact) {
        String text = FamilyPaper.reach(contact, words.language());
        line("ask", text.isEmpty() ? Optional.empty() : Optional.of(text));
    }
}
