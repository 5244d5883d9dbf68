package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stridetally.measures.Catalogue;
import stridetally.measures.FamilyWords;
import stridetally.measures.ShippedLadder;
import stridetally.model.Contact;
import stridetally.model.Level;
import stridetally.model.MeasureId;
import stridetally.model.Precaution;
import stridetally.model.Student;
import stridetally.model.StudentCode;
import stridetally.model.WordScale;
import stridetally.plan.Approval;
import stridetally.plan.Caution;
import stridetally.plan.HomeHelp;
import stridetally.plan.HomeSheet;
import stridetally.plan.Ladder;
import stridetally.plan.LadderRows;
import stridetally.plan.LineLayout;
import stridetally.plan.Rung;
import stridetally.plan.Task;
import stridetally.units.Amount;

/** What a home sheet always says, and that no word from outside becomes more than a word. */
class HomeSheetPagesTest {
    private static final String BAD =
            "=HYPERLINK(\"x\") | <script>alert(1)</script>\n# Met\n```\n[a](b) <b> {0} {9} &amp;";
    private static final LocalDate DAY = LocalDate.of(2027, 3, 5);

    @Test
    void whateverHelpIsApprovedAndWhateverIsHeededTheCautionsStand() {
        for (String language : FamilyWords.languages()) {
            FamilyWords words = FamilyWords.of(language).orElseThrow();
            for (Precaution one : EnumSet.complementOf(EnumSet.of(Precaution.OTHER))) {
                for (String help : WordScale.HELP.words().subList(0, 7)) {
                    String[] both =
                            markdown(sheet("calm", help, one), paper("calm")).split("\n---\n", -1);
                    String page = both[FamilyWords.languages().indexOf(language)];
                    for (String key : List.of(
                            "sheet.first",
                            "stop.home",
                            "sheet.only",
                            "stop.place",
                            "stop.signs",
                            "stop.emergency",
                            "sheet.home",
                            "sheet.line.clear")) {
                        assertTrue(page.contains(words.text(key)), key);
                    }
                    assertTrue(page.contains(words.text("ask") + ":** calm"), "whom to ask");
                    if (one != Precaution.NONE) {
                        assertTrue(page.contains(words.text("sheet.care." + one.word())), one.word());
                    }
                    assertEquals(
                            !help.startsWith("hand") && !help.startsWith("contact"),
                            page.contains(words.text("sheet.hold.WITHIN_REACH")),
                            help);
                    assertTrue(
                            page.indexOf(words.text("stop.signs")) < page.indexOf("### "),
                            "when to stop stands before the tasks");
                }
            }
        }
    }

    /** The words are fixed: common practice, no source. */
    @Test
    void withoutHelpAlwaysReadsTheSame() {
        assertEquals(
                "Without holding, an adult beside and a little behind, within reach.",
                FamilyWords.of("en").orElseThrow().text("sheet.hold.WITHIN_REACH"));
    }

    /** Check values of the line: common practice, no source. 117 cm: see LineLayoutTest. */
    @Test
    void theLineIsThatOfTheChildOrALineToFillIn() {
        HomeSheet sheet = sheet("calm", "stand-by", Precaution.NONE);
        String page = markdown(sheet, paper("calm"));
        assertTrue(page.contains("6 feet (1.8 m) long and 3 inches (8 cm) wide, never more than 4 inches"), page);
        assertTrue(page.contains("About 4 big steps or 8 small steps"));
        assertTrue(page.contains("1,8 m (6 pies)"));
        HomeSheet without =
                new HomeSheet(sheet.student(), sheet.day(), sheet.caution(), Optional.empty(), sheet.rungs());
        assertTrue(markdown(without, paper("calm")).contains("how long the line is: ______"));
    }

    @Test
    void noNameUnlessOneIsGiven() {
        HomeSheet sheet = sheet("calm", "stand-by", Precaution.NONE);
        assertTrue(
                markdown(sheet, new FamilyPaper(Optional.empty(), Contact.NONE)).contains("**Student:** ______"));
        assertTrue(markdown(sheet, paper("Quillo")).contains("**Student:** Quillo"));
    }

    @Test
    void wordsFromOutsideStayWords() {
        String page = markdown(sheet(BAD, "hand-held one", Precaution.NECK), paper(BAD));
        assertFalse(page.contains("\n# Met"), "a heading");
        assertFalse(page.replace("\\<", "").contains("<"), "a tag");
        assertFalse(page.replace("\\[", "").contains("[a"), "a link");
        assertFalse(page.replace("\\`", "").contains("`"), "a fence");
        Xml bad = html(sheet(BAD, "hand-held one", Precaution.NECK), paper(BAD));
        Xml calm = html(sheet("calm", "hand-held one", Precaution.NECK), paper("calm"));
        assertEquals(calm.bones(), bad.bones());
    }

    @Test
    void thePageHoldsBothLanguagesEachMarkedAndTheSameBytesTwice() {
        HomeSheet sheet = sheet("calm", "stand-by", Precaution.NONE);
        Xml page = html(sheet, paper("calm"));
        assertEquals("en", page.document().getDocumentElement().getAttribute("lang"));
        assertEquals(2, page.all("article").size());
        assertEquals("es", page.all("article").get(1).getAttribute("lang"));
        assertEquals(markdown(sheet, paper("calm")), markdown(sheet, paper("calm")));
    }

    /** English words of the contact are not shown as if they were Spanish; a place is a name. */
    @Test
    void whomToAskIsWrittenInTheLanguageOfThePaper() {
        Contact contact = new Contact("", "therapist", "North Hall", "555-0142", "", "mornings", Map.of());
        HomeSheet sheet = sheet("calm", "stand-by", Precaution.NONE);
        String[] both =
                markdown(sheet, new FamilyPaper(Optional.empty(), contact)).split("\n---\n", -1);
        assertTrue(both[0].contains(":** therapist; North Hall; 555-0142; mornings"), both[0]);
        assertTrue(both[1].contains(":** North Hall; 555-0142\n"), both[1]);
        Contact told = new Contact(
                "",
                "therapist",
                "North Hall",
                "555-0142",
                "",
                "mornings",
                Map.of("es", new Contact.Words("terapia", "", "por la mañana")));
        both = markdown(sheet, new FamilyPaper(Optional.empty(), told)).split("\n---\n", -1);
        assertTrue(both[1].contains(":** terapia; North Hall; 555-0142; por la mañana"), both[1]);
        assertEquals(List.of("role_es", "hours_es"), contact.lacks("es"));
        assertEquals(List.of(), told.lacks("es"));
        assertEquals(List.of(), contact.lacks("en"));
    }

    /** Three of our own tasks with the longest words, the most help and a caution fill no more than one page in any language. */
    @Test
    void threeTasksFillOnePage() {
        for (FamilyWords words : languages()) {
            String page = HomeSheetMarkdown.of(longest(3, words), paper("a fairly long line to fill"), words);
            assertTrue(SheetLength.isOnePage(page), words.language() + ": " + SheetLength.lines(page) + " lines");
            assertFalse(page.contains(words.text("sheet.more", "3")), page);
        }
    }

    /** A second page is said, and no end of a page comes between a task and its caution. */
    @Test
    void moreTasksGoOnToASecondPageAndSaySo() {
        for (FamilyWords words : languages()) {
            HomeSheet sheet = longest(6, words);
            String page = HomeSheetMarkdown.of(sheet, paper("a fairly long line to fill"), words);
            assertFalse(SheetLength.isOnePage(page), words.language());
            int said = page.indexOf(words.text("sheet.more", "6"));
            assertTrue(said > 0 && said < page.indexOf("\n### "), page);
        }
        FamilyWords english = FamilyWords.of("en").orElseThrow();
        HomeSheetPages.Page six = new HomeSheetPages.Page(longest(6, english), paper("calm"));
        HomeSheetPages.Page three = new HomeSheetPages.Page(longest(3, english), paper("calm"));
        assertEquals(List.of(six.sheet()), HomeSheetPages.ofMorePages(List.of(three, six)));
        StringBuilder html = new StringBuilder();
        HomeSheetPages.html(List.of(six), html);
        for (String rule : List.of(
                "article.sheet ul, article.letter ul { break-inside: avoid; }",
                "h1, h2, h3 { break-after: avoid; }",
                "h2.goal, article + article { break-before: page; }")) {
            assertTrue(html.toString().contains(rule), rule);
        }
        assertEquals(2, html.toString().split("<article class=\"sheet\"", -1).length - 1);
        // The caution is an item of the list that is kept whole, right below the task's name.
        for (HomeSheet.HomeRung rung : six.sheet().rungs()) {
            String caution = Optional.ofNullable(rung.rung().words().get("en"))
                    .orElseThrow()
                    .caution();
            String before = html.substring(0, html.indexOf(caution));
            assertTrue(before.lastIndexOf("<ul>") > before.lastIndexOf("</ul>"), caution);
            assertTrue(before.lastIndexOf("<h3") > before.lastIndexOf("</ul>"), caution);
        }
    }

    /** Each language begins with its own first heading, and no level is passed over. */
    @Test
    void thePageCanBeLedThrough() {
        FamilyWords english = FamilyWords.of("en").orElseThrow();
        StringBuilder html = new StringBuilder();
        HomeSheetPages.html(List.of(new HomeSheetPages.Page(longest(3, english), paper("calm"))), html);
        Xml page = Xml.of(html.toString());
        TeamHtmlTest.check(page);
        assertEquals(languages().size(), page.all("h1").size());
    }

    private static HomeSheet longest(int tasks, FamilyWords words) {
        HomeSheet one = sheet("calm", "hand-held one", Precaution.NECK);
        List<HomeSheet.HomeRung> longest = ladder().rungs().stream()
                .filter(rung -> rung.home() == Rung.Home.YES
                        && rung.barredBy(one.caution().known()).isEmpty())
                .sorted(Comparator.comparingInt((Rung rung) -> -length(rung, words)))
                .limit(tasks)
                .map(rung -> mostHelp(rung, one.student()))
                .toList();
        assertEquals(tasks, longest.size());
        return new HomeSheet(one.student(), one.day(), one.caution(), one.line(), longest);
    }

    private static List<FamilyWords> languages() {
        return FamilyWords.languages().stream()
                .map(language -> FamilyWords.of(language).orElseThrow())
                .toList();
    }

    /** Approved with the most help that is asked of a family, which has the most to say. */
    private static HomeSheet.HomeRung mostHelp(Rung rung, Student student) {
        List<Level> levels = WordScale.HELP.words().stream()
                .map(word -> WordScale.HELP.find(word).orElseThrow())
                .filter(level -> rung.isMeantFor(level) && HomeHelp.of(level).isPresent())
                .toList();
        Level level = levels.get(levels.size() - 1);
        return new HomeSheet.HomeRung(
                rung,
                new Approval(student.code(), rung.id(), DAY, Optional.empty(), level),
                HomeHelp.of(level).orElseThrow());
    }

    private static Ladder ladder() {
        return LadderRows.read(ShippedLadder.rows(), Catalogue.standard(), WordScale.HELP, FamilyWords.languages())
                .value()
                .orElseThrow();
    }

    private static int length(Rung rung, FamilyWords words) {
        Rung.Words said =
                Optional.ofNullable(rung.words().get(words.language())).orElseThrow();
        return (said.task() + said.help() + said.fade() + said.caution()).length();
    }

    private static HomeSheet sheet(String text, String help, Precaution precaution) {
        Rung.Words words = new Rung.Words(text, text, text, text, text);
        Rung rung = new Rung(
                text,
                Set.of(Task.FORWARD),
                new MeasureId("line-steps"),
                Optional.empty(),
                Optional.empty(),
                Set.of(),
                Rung.Home.YES,
                FamilyWords.languages().stream().collect(Collectors.toMap(one -> one, one -> words)));
        Student student = new Student(
                new StudentCode(text),
                "",
                text,
                Optional.empty(),
                Optional.empty(),
                "",
                "",
                "",
                "",
                "",
                "en",
                List.of(precaution.word()));
        var level = WordScale.HELP.find(help).orElseThrow();
        Approval approval = new Approval(student.code(), text, DAY, Optional.empty(), level);
        return new HomeSheet(
                student,
                DAY,
                Caution.of(student.precautions()),
                Optional.of(LineLayout.of(Amount.of("117"))),
                List.of(new HomeSheet.HomeRung(
                        rung, approval, HomeHelp.of(level).orElseThrow())));
    }

    private static FamilyPaper paper(String text) {
        return new FamilyPaper(
                Optional.of(text),
                new Contact(text, text, text, text, text, text, Map.of("es", new Contact.Words(text, text, text))));
    }

    private static String markdown(HomeSheet sheet, FamilyPaper paper) {
        StringBuilder out = new StringBuilder();
        try {
            HomeSheetPages.markdown(List.of(new HomeSheetPages.Page(sheet, paper)), out);
        } catch (IOException impossible) {
            throw new AssertionError(impossible);
        }
        return out.toString();
    }

    private static Xml html(HomeSheet sheet, FamilyPaper paper) {
        StringBuilder out = new StringBuilder();
        HomeSheetPages.html(List.of(new HomeSheetPages.Page(sheet, paper)), out);
        return Xml.of(out.toString());
    }

    @Test
    void everyLanguageHasItsCautionForEveryPrecaution() {
        for (String language : FamilyWords.languages()) {
            Map<String, String> texts = FamilyWords.of(language).orElseThrow().texts();
            for (Precaution one : EnumSet.complementOf(EnumSet.of(Precaution.OTHER, Precaution.NONE))) {
                assertFalse(texts.getOrDefault("sheet.care." + one.word(), "").isBlank(), language + " " + one);
            }
        }
    }
}
