package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import stridetally.logbook.StudentRecord;
import stridetally.measures.FamilyWords;
import stridetally.model.Contact;
import stridetally.model.GoalId;
import stridetally.model.Remark;
import stridetally.table.CsvTable;

/** What holds of every kind of document: hostile words stay words, pages can be led through, nothing is promised. */
class EveryPageTest {
    private static final ReportInput.Stamp STAMP = new ReportInput.Stamp("made-up", 12);

    static LongStream seeds() {
        return LongStream.range(0, 15);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theReviewAndTheGroupsCanBeLedThrough(long seed) {
        ReportInput input = RandomCaseload.of(seed).input();
        List<AnnualReview> reviews = AnnualReview.all(input, List.of(), everybody -> true);
        StringBuilder out = new StringBuilder();
        AnnualHtml.write(reviews, PageDetail.EVERYTHING, out);
        TeamHtmlTest.check(Xml.of(out.toString()));
        StringBuilder groups = new StringBuilder();
        GroupMarkdown.html(groups(input), groups);
        TeamHtmlTest.check(Xml.of(groups.toString()));
    }

    /** Also the kinds that are for one reader only, and the review as a meeting reads it. */
    @Test
    void everyKindOfPageCanBeLedThrough() {
        pages(MadeCaseload.rich(), "calm words").forEach((kind, page) -> {
            Xml read = Xml.of(page);
            TeamHtmlTest.check(read);
            assertEquals("h1", read.all("h1", "h2", "h3").get(0).getTagName(), kind);
        });
    }

    @Test
    void hostileWordsChangeNoElementOfAnyPage() {
        Map<String, String> calm = pages(TeamHtmlTest.made("calm words"), "calm words");
        Map<String, String> bad = pages(TeamHtmlTest.made(TeamHtmlTest.BAD), TeamHtmlTest.BAD);
        assertEquals(List.of("review", "groups", "caseload", "letter", "record"), List.copyOf(bad.keySet()));
        bad.forEach((kind, page) -> {
            assertEquals(
                    Xml.of(calm.getOrDefault(kind, "")).bones(), Xml.of(page).bones(), kind);
            assertFalse(page.contains("<script"), kind);
            assertFalse(page.contains("<img"), kind);
            assertFalse(page.contains("href="), kind);
        });
    }

    @Test
    void hostileWordsMakeNoTableCellHeadingTagOrLinkInMarkdown() {
        markdown(TeamHtmlTest.made(TeamHtmlTest.BAD), TeamHtmlTest.BAD).forEach((kind, page) -> {
            assertFalse(page.contains("\n# Met"), kind + ": a heading");
            String outsideCharts = page.replaceAll("(?s)```text\n.*?\n```\n", "");
            assertFalse(outsideCharts.replace("\\<", "").contains("<"), kind + ": a tag");
            assertFalse(outsideCharts.replace("\\[", "").contains("["), kind + ": a link");
            assertFalse(outsideCharts.replace("\\`", "").contains("`"), kind + ": a fence");
            String columns = "";
            for (String line : page.lines().toList()) {
                String bars = line.startsWith("|") ? line.replace("\\|", "").replaceAll("[^|]", "") : "";
                assertTrue(columns.isEmpty() || bars.isEmpty() || bars.equals(columns), kind + ": " + line);
                columns = bars;
            }
        });
    }

    @Test
    void hostileWordsRunAsNoFormulaInAnyTable() {
        String formula = "=HYPERLINK(\"http://x.invalid\")";
        ReportInput input = TeamHtmlTest.made(formula).input();
        StringBuilder out = new StringBuilder();
        CsvTable review = new CsvTable(out, AnnualRows.HEADINGS);
        AnnualReview.all(input, List.of(), everybody -> true)
                .forEach(one -> AnnualRows.rows(one).forEach(review::row));
        GroupReport report = groups(input);
        CsvTable table = new CsvTable(out, GroupTableRows.HEADINGS);
        report.groups().forEach(row -> table.row(GroupTableRows.row(report, row)));
        ReportCsv.write(CaseloadReport.of(input, CaseloadReport.QUIET_DAYS), out);
        String text = out.toString();
        assertTrue(text.contains("\"'=HYPERLINK"), text);
        assertFalse(text.matches("(?s).*(^|[,\n])\"?=.*"), text);
    }

    /** Words that someone might act on carry their cautions; a page of figures defers to those who decide. */
    @Test
    void everyPageDefersAndNonePromisesOrDiagnoses() {
        markdown(MadeCaseload.rich(), "calm words").forEach((kind, page) -> {
            String lower = page.toLowerCase(Locale.ROOT);
            for (String word : List.of("guarantee", "diagnos", "will reach", "will walk", "cure", "normal for")) {
                assertFalse(lower.contains(word), kind + " says " + word);
            }
        });
        Map<String, String> pages = markdown(MadeCaseload.rich(), "calm words");
        String review = pages.getOrDefault("review", "");
        assertTrue(review.contains("within medical orders and the rules of the school and the state"));
        assertTrue(review.contains("## Before anyone practises"));
        assertTrue(review.contains("Stop now and tell the therapist"));
        assertTrue(review.contains("Precautions on file: seizures"));
        assertTrue(review.contains("no promise and no forecast of this child"));
        assertTrue(review.contains("The team decides."));
        assertTrue(pages.getOrDefault("groups", "").contains("can say who they are"));
        assertTrue(pages.getOrDefault("caseload", "").contains("The treating therapist decides"));
        assertTrue(pages.getOrDefault("record", "").contains("confidential record of a child"));
    }

    @Test
    void sameInputSameBytes() {
        assertEquals(pages(MadeCaseload.rich(), "x"), pages(MadeCaseload.rich(), "x"));
        assertEquals(markdown(MadeCaseload.rich(), "x"), markdown(MadeCaseload.rich(), "x"));
    }

    @Test
    void aRemarkInAnotherLanguageSaysSoToWhoeverHasThePageReadAloud() {
        String page = team("es", "Se mantiene sobre la cinta.");
        List<Element> spans = Xml.of(page).all("span");
        assertEquals(2, spans.size(), "the remark and what comes next");
        assertEquals("es", spans.get(0).getAttribute("lang"));
        assertEquals("Se mantiene sobre la cinta.", spans.get(0).getTextContent());
        assertEquals(0, Xml.of(team("en", "Stays on the tape.")).all("span").size());
        assertEquals(0, Xml.of(team("", "Stays on the tape.")).all("span").size());
        assertEquals(
                0,
                Xml.of(team("\" onload=\"x", "Stays on the tape.")).all("span").size());
    }

    /** The signs that mark a language on the way to HTML mean nothing in words from outside. */
    @Test
    void marksOfALanguageInWordsFromOutsideAreNoMarks() {
        String marks = "\uE000es\uE001 words \uE002 \uE000\" onload=\"x\uE001";
        assertEquals(
                Xml.of(pages(TeamHtmlTest.made("calm words"), "calm").getOrDefault("review", ""))
                        .bones(),
                Xml.of(pages(TeamHtmlTest.made(marks), marks).getOrDefault("review", ""))
                        .bones());
        assertFalse(team("es", marks).contains("lang=\"&quot;"));
        assertEquals(2, Xml.of(team("es", marks)).all("span").size());
    }

    /** What our own loops take for unfit is what these patterns say: control, format and lone surrogate signs. */
    @Test
    void unfitSignsAreThoseOfThePattern() {
        SplittableRandom random = new SplittableRandom(7);
        String signs =
                "ab <&\t\n\r\u0000\u007f\u0085\u00a0\u00ad\u200b\u202e\u2028\u2029\ud800\udc00\ufffe\uffff\u00e9\ue000";
        for (int round = 0; round < 4000; round++) {
            StringBuilder text = new StringBuilder();
            for (int place = random.nextInt(12); place > 0; place--) {
                text.append(signs.charAt(random.nextInt(signs.length())));
            }
            if (round % 3 == 0) {
                text.appendCodePoint(0x1F6B6).appendCodePoint(0xE0001);
            }
            String unfit = "\\p{Cntrl}\\p{Cf}\\p{Cs}\\uFFFE\\uFFFF\\u2028\\u2029";
            assertEquals(text.toString().replaceAll("[" + unfit + "&&[^\n]]+", " "), XmlText.fit(text.toString()));
            assertEquals(
                    text.toString()
                            .replaceAll("[" + unfit + "\uE000-\uE002]+", " ")
                            .strip(),
                    XmlText.line(text.toString()));
        }
    }

    private static String team(String language, String words) {
        MadeCaseload made = MadeCaseload.rich();
        made.remarks.clear();
        made.remarks.add(new Remark(new GoalId("G-1"), "winter", language, words, words, Optional.of("on course"), ""));
        StringBuilder out = new StringBuilder();
        TeamHtml.write(List.of(made.team()), out);
        return out.toString();
    }

    private static GroupReport groups(ReportInput input) {
        return GroupReport.of(input, MadeCaseload.range("2026-03-06", "2027-03-05"), everybody -> true);
    }

    private static Map<String, String> pages(MadeCaseload made, String words) {
        ReportInput input = made.input();
        Map<String, String> pages = new LinkedHashMap<>();
        StringBuilder out = new StringBuilder();
        AnnualHtml.write(AnnualReview.all(input, List.of(), everybody -> true), PageDetail.SUMMARY, out);
        pages.put("review", cut(out));
        GroupMarkdown.html(groups(input), out);
        pages.put("groups", cut(out));
        CaseloadHtml.write(CaseloadReport.of(input, CaseloadReport.QUIET_DAYS), out);
        pages.put("caseload", cut(out));
        FamilyHtml.write(List.of(letter(input)), out);
        pages.put("letter", cut(out));
        RecordMarkdown.html(record(words), STAMP, Optional.of(words), out);
        pages.put("record", cut(out));
        return pages;
    }

    private static Map<String, String> markdown(MadeCaseload made, String words) {
        ReportInput input = made.input();
        Map<String, String> pages = new LinkedHashMap<>();
        StringBuilder out = new StringBuilder();
        AnnualReview.all(input, List.of(), everybody -> true)
                .forEach(review -> AnnualMarkdown.write(review, PageDetail.SUMMARY, out));
        pages.put("review", cut(out));
        GroupMarkdown.write(groups(input), out);
        pages.put("groups", cut(out));
        CaseloadMarkdown.write(CaseloadReport.of(input, CaseloadReport.QUIET_DAYS), out);
        pages.put("caseload", cut(out));
        FamilyMarkdown.write(letter(input), out);
        pages.put("letter", cut(out));
        RecordMarkdown.write(record(words), STAMP, Optional.of(words), out);
        pages.put("record", cut(out));
        return pages;
    }

    private static FamilyLetter letter(ReportInput input) {
        return FamilyLetter.of(input, MadeCaseload.STUDENT, FamilyWords.of("en").orElseThrow(), Contact.NONE)
                .orElseThrow();
    }

    private static StudentRecord record(String words) {
        return new StudentRecord(
                MadeCaseload.STUDENT,
                List.of(new StudentRecord.Part(words, words, List.of(words), List.of(List.of(words)))),
                1);
    }

    private static String cut(StringBuilder out) {
        String text = out.toString();
        out.setLength(0);
        return text;
    }
}
