package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stridetally.measures.FamilyWords;
import stridetally.model.Contact;
import stridetally.model.GoalId;
import stridetally.model.Remark;

/** What the letter to a family says, and what it never says. */
class FamilyLetterTest {
    private static final String BAD = "=HYPERLINK(\"x\") | <script>alert(1)</script>\n# Met\n```\n[a](b) <b> {0} {9}";

    @Test
    void saysWhatWasMeasuredAtTheStartAndNow() {
        String page = page(MadeCaseload.rich(), "en");
        // The made caseload: baseline 4 steps on 18 September 2026; mean and median of 12, 11, 13 on 2 March 2027.
        assertTrue(page.contains("4 steps at the start, 12 steps on March 2, 2027."), page);
        assertTrue(page.contains("- **Where it matters in the day:** walking with the class line to lunch\n"));
        assertTrue(page.contains("we expect to reach this goal by"));
    }

    @Test
    void usesTheDatesNumbersAndWordsOfTheLanguage() {
        String page = page(MadeCaseload.rich(), "es");
        assertTrue(page.contains("4 pasos al principio, 12 pasos el 2 de marzo de 2027."), page);
        assertFalse(page.contains("walking"), "the routine is written in English");
        assertFalse(page.contains("Walks"), "the remark is written in English");
    }

    @Test
    void tellsTheTherapistsWordsForTheFamilyAndNotTheTeamsRemark() {
        MadeCaseload made = MadeCaseload.rich();
        assertFalse(page(made, "en").contains("most days now"));
        made.remarks.add(new Remark(
                new GoalId("G-1"),
                "winter",
                "en",
                "absent again",
                "",
                Optional.empty(),
                "",
                "",
                "Chalk line.",
                "Proud."));
        String page = page(made, "en");
        assertTrue(page.contains("- **What the therapist says:** Proud.\n"));
        assertTrue(page.contains("- **What helps at home:** Chalk line.\n"));
        assertFalse(page.contains("absent"));
    }

    @Test
    void theTherapistsOwnJudgementIsWhatWeExpect() {
        MadeCaseload made = MadeCaseload.rich();
        made.remarks.clear();
        made.remarks.add(new Remark(new GoalId("G-1"), "winter", "es", "", "", Optional.of("off course"), ""));
        assertTrue(page(made, "en").contains("we do not expect to reach this goal"));
        made.remarks.clear();
        made.remarks.add(new Remark(new GoalId("G-1"), "winter", "en", "", "", Optional.of("wait"), ""));
        assertTrue(page(made, "en").contains("Please ask the therapist."));
    }

    @Test
    void leavesOutVisitsPrecautionsAndTriesAtHome() {
        String page = page(MadeCaseload.rich(), "en");
        assertFalse(page.contains("cold"), "the reason of an absence");
        assertFalse(page.contains("seizures"), "a precaution on file");
        assertFalse(page.contains("2027-02-06") || page.contains("February 6"), "tries at home");
    }

    @Test
    void whatIsNotWrittenIsAPlaceToFillIn() {
        String page = page(MadeCaseload.poor(), "en");
        assertTrue(page.contains("- **Student:** ______\n"));
        assertTrue(page.contains("- The therapist writes here what goes well: ______\n"));
        assertTrue(page.contains("- **The goal:** The therapist fills this in: ______\n"));
    }

    @Test
    void wordsFromOutsideStayWords() {
        MadeCaseload made = MadeCaseload.rich();
        made.names.put(MadeCaseload.STUDENT, BAD);
        made.remarks.add(new Remark(new GoalId("G-1"), "winter", "es", BAD, BAD, Optional.of(BAD), BAD, BAD, BAD, BAD));
        Contact contact = new Contact(BAD, BAD, BAD, BAD, BAD, BAD, Map.of("es", new Contact.Words(BAD, BAD, BAD)));
        StringBuilder out = new StringBuilder();
        FamilyMarkdown.write(letter(made, "es", contact), out);
        String page = out.toString();
        assertFalse(page.contains("\n# Met"), "a heading");
        assertFalse(page.replace("\\<", "").contains("<"), "a tag");
        assertFalse(page.replace("\\[", "").contains("[a"), "a link");
        assertFalse(page.replace("\\`", "").contains("`"), "a fence");
        out.setLength(0);
        FamilyHtml.write(List.of(letter(made, "es", contact)), out);
        StringBuilder calm = new StringBuilder();
        made.names.put(MadeCaseload.STUDENT, "calm");
        made.remarks.remove(made.remarks.size() - 1);
        made.remarks.add(new Remark(new GoalId("G-1"), "winter", "es", "a", "b", Optional.of(BAD), "c", "d", "e", "f"));
        FamilyHtml.write(
                List.of(letter(
                        made,
                        "es",
                        new Contact("a", "b", "c", "d", "e", "f", Map.of("es", new Contact.Words("b", "c", "f"))))),
                calm);
        assertEquals(Xml.of(calm.toString()).bones(), Xml.of(out.toString()).bones());
    }

    /** A family that keeps one of two sheets must not be left with half of the signs to stop at. */
    @Test
    void theEndOfAPageNeverCutsWhenToStop() {
        StringBuilder out = new StringBuilder();
        FamilyHtml.write(List.of(letter(MadeCaseload.rich(), "en", Contact.NONE)), out);
        String page = out.toString();
        assertTrue(page.contains("<article class=\"letter\""), page);
        assertTrue(page.contains("article.letter ul { break-inside: avoid; }"), page);
        FamilyWords words = FamilyWords.of("en").orElseThrow();
        String list = page.substring(page.indexOf(words.text("stop") + "</h2>"));
        String stop = list.substring(0, list.indexOf("</ul>"));
        assertTrue(stop.contains(words.text("stop.signs")) && stop.contains(words.text("stop.emergency")), stop);
    }

    @Test
    void thePageNamesItsLanguageAndThatOfEveryOtherLetter() {
        MadeCaseload made = MadeCaseload.rich();
        StringBuilder out = new StringBuilder();
        FamilyHtml.write(List.of(letter(made, "es", Contact.NONE), letter(made, "en", Contact.NONE)), out);
        Xml page = Xml.of(out.toString());
        assertEquals("es", page.document().getDocumentElement().getAttribute("lang"));
        assertEquals("", page.all("article").get(0).getAttribute("lang"));
        assertEquals("en", page.all("article").get(1).getAttribute("lang"));
    }

    private static String page(MadeCaseload made, String language) {
        StringBuilder out = new StringBuilder();
        FamilyMarkdown.write(letter(made, language, Contact.NONE), out);
        return out.toString();
    }

    private static FamilyLetter letter(MadeCaseload made, String language, Contact contact) {
        FamilyWords words = FamilyWords.of(language).orElseThrow();
        return FamilyLetter.of(made.input(), MadeCaseload.STUDENT, words, contact)
                .orElseThrow();
    }
}
