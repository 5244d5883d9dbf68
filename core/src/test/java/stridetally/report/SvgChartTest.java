package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import stridetally.model.Change;
import stridetally.model.Criterion;
import stridetally.model.GoalAim;

/**
 * The drawn chart. Places are worked out by hand: days from 2026-09-18 to 2027-06-04 (259 of them) stand from x = 60 to 600,
 * values of an axis from 0 to 12 from y = 244 up to 44.
 */
class SvgChartTest {

    @Test
    void aSessionStandsAtItsDayAndValue() {
        MadeCaseload made = plain();
        made.steps("2027-01-26", "supervision", "8");
        // 60 + 540 * 130 / 259 = 331.04; 4 to 12 is shown on 0 to 12, 6 steps of 2: 244 - 200 * 8 / 12 = 110.67.
        assertEquals(
                1,
                drawn(made).all("circle").stream()
                        .filter(one -> one.getAttribute("cx").equals("331")
                                && one.getAttribute("cy").equals("110.7")
                                && one.getAttribute("r").equals("4"))
                        .count());
    }

    @Test
    void theAimLineGoesFromBaselineToTarget() {
        // From 4 on the first day to 12 on the due date: 244 - 200 * 4 / 12 = 177.33, and 44.
        Element aim = drawn(plain()).all("line").stream()
                .filter(one -> one.getAttribute("stroke-dasharray").equals("9 5")
                        && one.getAttribute("x1").equals("60"))
                .findFirst()
                .orElseThrow();
        assertEquals(
                List.of("60", "177.3", "600", "44"),
                List.of(
                        aim.getAttribute("x1"),
                        aim.getAttribute("y1"),
                        aim.getAttribute("x2"),
                        aim.getAttribute("y2")));
    }

    @Test
    void whatIsNotASimpleValueHasAShapeOfItsOwn() {
        MadeCaseload made = plain();
        made.steps("2026-10-06", "supervision", "5");
        made.steps("2026-10-13", "supervision", "6 6 6@minimal");
        made.steps("2026-10-20", "supervision", ">9 >9 >9");
        made.steps("2026-10-27", "minimal", "9 9 9");
        made.steps("2026-11-03", "supervision", "absent");
        made.steps("2026-11-10", "supervision", "unable");
        List<ChartMark> marks =
                data(made).sessions().stream().map(ChartMark::of).toList();
        assertEquals(
                List.of(
                        ChartMark.SESSION,
                        ChartMark.SOME_HELP,
                        ChartMark.AT_LEAST,
                        ChartMark.ALL_HELP,
                        ChartMark.NOT_TRIED,
                        ChartMark.NO_VALUE),
                marks);
        String svg = svg(made);
        marks.forEach(mark -> assertTrue(svg.contains(">" + XmlText.escape(mark.words()) + "<"), mark.name()));
        assertFalse(svg.contains(ChartMark.AT_MOST.words()), "the key names only what is drawn");
    }

    @Test
    void noTwoMarksOrLinesAreToldByColourAlone() {
        List<String> shapes = java.util.Arrays.stream(ChartMark.values())
                .map(mark -> {
                    SvgCanvas canvas = new SvgCanvas();
                    mark.draw(canvas, 0, 0);
                    return canvas.elements().replaceAll("stroke=\"[^\"]*\"", "");
                })
                .toList();
        assertEquals(shapes.size(), shapes.stream().distinct().count());
        String svg = svg(MadeCaseload.rich());
        // The aim line, the own line and the dated change differ in dash or width.
        assertTrue(svg.contains("stroke-width=\"1.8\" stroke-dasharray=\"9 5\""));
        assertTrue(svg.contains("stroke-width=\"2.4\" />"));
        assertTrue(svg.contains("stroke-width=\"1.4\" stroke-dasharray=\"2 3\""));
    }

    @Test
    void breaksAreShadedAndChangesNumberedOnTheirDays() {
        Xml drawn = drawn(MadeCaseload.rich());
        // The winter break, 2026-12-21 to 2027-01-01: from day 94 to the end of day 105, 60 + 540 * 94 / 259 = 255.98.
        Element shade = drawn.all("rect").stream()
                .filter(one -> one.getAttribute("fill").equals(Ink.BREAK.hex())
                        && one.getAttribute("y").equals("44"))
                .findFirst()
                .orElseThrow();
        assertEquals("256", shade.getAttribute("x"));
        // 12 days: 540 * 12 / 259 = 25.02.
        assertEquals("25", shade.getAttribute("width"));
        assertTrue(texts(drawn).contains("1  2026-11-30  Arms free instead of on the hips"));
    }

    @Test
    void itSaysInWordsWhatItShows() {
        Xml drawn = drawn(MadeCaseload.rich());
        Element svg = drawn.document().getDocumentElement();
        assertEquals("img", svg.getAttribute("role"));
        assertEquals("chart-title chart-desc", svg.getAttribute("aria-labelledby"));
        assertEquals(
                "Goal G-1: steps, more is better", drawn.all("title").get(0).getTextContent());
        String words = drawn.all("desc").get(0).getTextContent();
        assertTrue(
                words.startsWith("9 sessions with a value, from 4 steps on 2026-09-29 to 12 steps on 2027-03-02, and 2"
                        + " sessions without a value. The baseline is 4 steps on 2026-09-18. The target is 12 steps, due"
                        + " 2027-06-04."),
                words);
        assertTrue(words.endsWith("On 2026-11-30 teaching changed: Arms free instead of on the hips."), words);
    }

    @Test
    void aForecastFarBeyondTheValuesIsAnArrowAndDoesNotSquashThem() {
        ChartData rich = data(MadeCaseload.rich());
        ChartData wide = new ChartData(
                rich.title(),
                rich.unit(),
                rich.better(),
                rich.sessions(),
                rich.baseline(),
                rich.baselineDate(),
                rich.target(),
                rich.due(),
                rich.aim(),
                rich.trend(),
                Optional.of(new stridetally.forecast.Forecast.Outlook(12, -400, 400, 0.5, 0.5, List.of())),
                rich.changes(),
                rich.breaks(),
                rich.asOf());
        StringBuilder out = new StringBuilder();
        SvgChart.write(wide, out);
        assertTrue(out.toString().contains("80 % range -400 to 400 (arrow: goes on beyond the chart)"));
        assertTrue(ChartFrame.of(wide).high() < 40);
    }

    @Test
    void aTargetToBeHeldHasNoAimLine() {
        MadeCaseload made = new MadeCaseload();
        MadeCaseload.Draft draft = new MadeCaseload.Draft();
        draft.aim = GoalAim.KEEP;
        made.goals.add(draft.goal());
        String svg = svg(made);
        assertTrue(svg.contains(">target 12 steps, to be held<"));
        assertFalse(svg.contains("aim line"));
    }

    @Test
    void nothingKnownIsStillADrawing() {
        MadeCaseload made = MadeCaseload.poor();
        assertTrue(drawn(made).all("desc").get(0).getTextContent().startsWith("No session with a value yet."));
    }

    @Test
    void hostileWordsStayWords() {
        MadeCaseload made = plain();
        String bad = "</text><script>alert(1)</script>\u0000\u0001\u202e\ud800 & \"x\" ]]> &#1;";
        made.changes.add(new Change(MadeCaseload.STUDENT, Optional.empty(), LocalDate.parse("2026-12-03"), bad));
        MadeCaseload calm = plain();
        calm.changes.add(new Change(MadeCaseload.STUDENT, Optional.empty(), LocalDate.parse("2026-12-03"), "calm"));
        assertEquals(drawn(calm).bones(), drawn(made).bones());
    }

    @Test
    void sameDataSameBytes() {
        assertEquals(svg(MadeCaseload.rich()), svg(MadeCaseload.rich()));
        assertEquals(
                "-0.3 1000 12.5", String.join(" ", XmlText.number(-0.26), XmlText.number(1000), XmlText.number(12.46)));
    }

    private static List<String> texts(Xml drawn) {
        return drawn.all("text").stream().map(Element::getTextContent).toList();
    }

    private static MadeCaseload plain() {
        MadeCaseload made = new MadeCaseload();
        MadeCaseload.Draft draft = new MadeCaseload.Draft();
        draft.criterion = new Criterion(OptionalInt.empty(), OptionalInt.empty(), OptionalInt.of(3));
        made.goals.add(draft.goal());
        return made;
    }

    private static ChartData data(MadeCaseload made) {
        return made.team().goals().get(0).sides().get(0).drawing();
    }

    private static String svg(MadeCaseload made) {
        StringBuilder out = new StringBuilder();
        SvgChart.write(data(made), out);
        return out.toString();
    }

    private static Xml drawn(MadeCaseload made) {
        return Xml.of(svg(made));
    }
}
