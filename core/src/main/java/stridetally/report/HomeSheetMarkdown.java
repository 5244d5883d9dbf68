package stridetally.report;

import java.util.List;
import java.util.Optional;
import stridetally.measures.FamilyWords;
import stridetally.model.Contact;
import stridetally.model.DateRange;
import stridetally.model.Precaution;
import stridetally.plan.HomeHelp;
import stridetally.plan.HomeSheet;
import stridetally.plan.HomeSheet.HomeRung;
import stridetally.plan.LineLayout;
import stridetally.plan.Rung;

/** A home sheet in one language as Markdown. */
final class HomeSheetMarkdown {
    private final MarkdownPage page;
    private final FamilyWords words;
    private final LetterNumbers numbers;

    private HomeSheetMarkdown(FamilyWords words, Appendable out) {
        this.page = new MarkdownPage(out);
        this.words = words;
        this.numbers = new LetterNumbers(words, Optional.empty());
    }

    /** The sheet; one that fills more than a page says so before its first task. */
    static String of(HomeSheet sheet, FamilyPaper paper, FamilyWords words) {
        String sheetOfOnePage = written(sheet, paper, words, Extent.ONE_PAGE);
        return SheetLength.isOnePage(sheetOfOnePage) ? sheetOfOnePage : written(sheet, paper, words, Extent.MORE);
    }

    /** How many pages it takes. */
    private enum Extent {
        ONE_PAGE,
        MORE
    }

    private static String written(HomeSheet sheet, FamilyPaper paper, FamilyWords words, Extent extent) {
        StringBuilder out = new StringBuilder();
        new HomeSheetMarkdown(words, out).write(sheet, paper, extent);
        return out.toString();
    }

    private void write(HomeSheet sheet, FamilyPaper paper, Extent extent) {
        page.heading(1, words.text("sheet.title"));
        MarkdownPage.Label student = new MarkdownPage.Label(words.text("student"));
        paper.name().ifPresentOrElse(name -> page.bullet(student.text(), name), () -> page.fillIn(student));
        page.bullet(words.text("code"), sheet.student().code().text());
        page.bullet(words.text("sheet.day"), numbers.day(sheet.day()));
        page.paragraph(words.text("sheet.home"));
        page.heading(2, words.text("sheet.before"));
        List.of("sheet.first", "stop.home", "sheet.only", "stop.place", "sheet.shoes", "sheet.short")
                .forEach(key -> page.bullet(words.text(key)));
        for (Precaution one : sheet.caution().toHeed()) {
            page.bullet(words.text("sheet.care." + one.word()));
        }
        // Before the tasks, so that the end of the paper never cuts it off.
        page.heading(2, words.text("stop"));
        List.of("stop.signs", "stop.emergency").forEach(key -> page.bullet(words.text(key)));
        ask(paper.contact());
        line(sheet.line());
        page.heading(2, words.text("sheet.tasks"));
        if (extent == Extent.MORE) {
            page.paragraph(
                    words.text("sheet.more", Integer.toString(sheet.rungs().size())));
        }
        sheet.rungs().forEach(this::rung);
        page.signature(words.text("signed.date"), words.text("signed.therapist"));
        if (!words.text("sheet.reader").isBlank()) {
            page.paragraph(words.text("sheet.reader"));
        }
    }

    private void line(Optional<LineLayout> line) {
        page.heading(2, words.text("sheet.line"));
        line.ifPresentOrElse(
                one -> {
                    page.bullet(words.text(
                            "sheet.line.tape",
                            Integer.toString(one.lengthFeet()),
                            one.lengthMetres().replace(".", words.text("decimal"))));
                    page.bullet(words.text(
                            "sheet.line.steps",
                            Integer.toString(one.largeSteps()),
                            Integer.toString(one.smallSteps())));
                },
                () -> page.fillIn(words.text("sheet.line.fill")));
        page.bullet(words.text("sheet.line.clear"));
    }

    private void rung(HomeRung one) {
        Rung.Words said = one.rung().words().get(words.language());
        if (said == null) {
            throw new IllegalStateException("rung without words in " + words.language());
        }
        page.heading(3, said.name());
        page.bullet(words.text("sheet.do"), said.task());
        page.bullet(
                words.text("sheet.hold"), words.text("sheet.hold." + one.help().name()));
        page.bullet(words.text("sheet.help"), said.help());
        if (one.help() != HomeHelp.WITHIN_REACH) {
            page.bullet(words.text("sheet.fade"), words.text("sheet.fade.ask") + " " + said.fade());
        }
        page.bullet(words.text("sheet.care"), said.caution());
        DateRange days = new DateRange(one.approval().approved(), one.approval().lastDay());
        page.bullet(
                words.text("sheet.until"),
                words.text("sheet.until.days", numbers.day(days.first()), numbers.day(days.last())));
    }

    private void ask(Contact contact) {
        String text = FamilyPaper.reach(contact, words.language());
        if (text.isEmpty()) {
            page.fillIn(words.text("ask"), words.text("ask.fill"));
        } else {
            page.bullet(words.text("ask"), text);
        }
    }
}
