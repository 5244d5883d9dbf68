package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stridetally.measures.Catalogue;
import stridetally.measures.FamilyWords;
import stridetally.measures.ShippedLadder;
import stridetally.model.Contact;
import stridetally.model.MeasureId;
import stridetally.model.Side;
import stridetally.model.Student;
import stridetally.model.WordScale;
import stridetally.plan.Caution;
import stridetally.plan.LadderRows;
import stridetally.plan.LineLayout;
import stridetally.plan.LogLine;
import stridetally.plan.LogSheet;
import stridetally.plan.StudentPlan;
import stridetally.units.Amount;

/** What a therapist reads before planning, and the log to fill in by hand: led through, and words stay words. */
class PlanPagesTest {
    private static final LocalDate DAY = LocalDate.of(2027, 3, 8);
    private static final String BAD = "<script>alert(1)</script> | # Met\n```\n[a](b) {0}";

    @Test
    void theRungsCanBeLedThroughAndDefer() {
        Xml page = plan("calm words");
        TeamHtmlTest.check(page);
        assertEquals("h1", page.all("h1", "h2", "h3").get(0).getTagName());
        String words = page.document().getDocumentElement().getTextContent();
        assertTrue(words.contains("medical orders"), words);
        assertEquals(page.bones(), plan(BAD).bones());
    }

    @Test
    void theBlankLogCanBeLedThroughAndCarriesTheCautionsOfItsMeasures() {
        Xml page = log("North Hall");
        TeamHtmlTest.check(page);
        assertEquals("h1", page.all("h1", "h2", "h3").get(0).getTagName());
        String words = page.document().getDocumentElement().getTextContent();
        assertTrue(words.contains(measure().cautions()), words);
        assertTrue(words.contains("Stop"), words);
        assertEquals(page.bones(), log(BAD).bones());
        assertFalse(words.contains("Quillo"));
    }

    private static stridetally.measures.Measure measure() {
        return Catalogue.standard().find(new MeasureId("line-steps")).orElseThrow();
    }

    private static Xml plan(String why) {
        Student student = MadeCaseload.student(MadeCaseload.STUDENT, "North Hall");
        List<StudentPlan.Step> steps = LadderRows.read(
                        ShippedLadder.rows(), Catalogue.standard(), WordScale.HELP, FamilyWords.languages())
                .value()
                .orElseThrow()
                .rungs()
                .stream()
                .map(rung -> new StudentPlan.Step(
                        rung, StudentPlan.Standing.READY, Optional.empty(), why, StudentPlan.OnHomeSheet.NO))
                .toList();
        StudentPlan plan = new StudentPlan(
                student,
                DAY,
                Caution.of(student.precautions()),
                Optional.of(LineLayout.of(Amount.of("117"))),
                steps,
                Optional.of(why));
        StringBuilder out = new StringBuilder();
        PracticePages.html(List.of(plan), out);
        return Xml.of(out.toString());
    }

    private static Xml log(String school) {
        LogSheet sheet = new LogSheet(
                school, DAY, List.of(new LogLine(new MadeCaseload.Draft().goal(), measure(), Side.NONE, 3)));
        StringBuilder out = new StringBuilder();
        LogSheetHtml.write(
                List.of(sheet),
                MadeCaseload.rich().caseload(),
                new Contact(school, school, school, school, school, school, Map.of()),
                out);
        return Xml.of(out.toString());
    }
}
