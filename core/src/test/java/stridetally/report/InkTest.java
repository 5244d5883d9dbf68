package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Contrast as WCAG 2.2 defines it (relative luminance and contrast ratio; from memory): 4.5 to 1 for text, 3 to 1 for marks
 * and lines.
 */
class InkTest {

    @Test
    void theRatioIsThatOfTheGuideline() {
        // Black on white is 21 to 1 by definition; #767676 is the lightest grey that holds 4.5 on white, #777777 does
        // not.
        assertEquals(21, ratio("#000000", "#ffffff"), 1e-9);
        assertTrue(ratio("#767676", "#ffffff") >= 4.5);
        assertTrue(ratio("#777777", "#ffffff") < 4.5);
    }

    @Test
    void textCanBeRead() {
        for (Ink ink : List.of(Ink.TEXT, Ink.QUIET)) {
            assertTrue(ratio(ink.hex(), Ink.PAPER.hex()) >= 4.5, ink.name());
        }
        assertTrue(ratio(Ink.TEXT.hex(), Ink.BREAK.hex()) >= 4.5);
    }

    @Test
    void linesAndMarksStandOutFromPaperAndFromAShadedBreak() {
        for (Ink ink : List.of(Ink.TEXT, Ink.AIM, Ink.OWN, Ink.CHANGE)) {
            assertTrue(ratio(ink.hex(), Ink.PAPER.hex()) >= 3, ink.name());
            assertTrue(ratio(ink.hex(), Ink.BREAK.hex()) >= 3, ink.name());
        }
    }

    @Test
    void thePageHasNoOtherColour() {
        String css = PageStyle.css();
        for (Ink ink : Ink.values()) {
            css = css.replace(ink.hex(), "");
        }
        assertTrue(!css.contains("#") && !css.contains("rgb"), css);
    }

    private static double ratio(String one, String other) {
        double light = Math.max(luminance(one), luminance(other));
        double dark = Math.min(luminance(one), luminance(other));
        return (light + 0.05) / (dark + 0.05);
    }

    private static double luminance(String hex) {
        return 0.2126 * part(hex, 1) + 0.7152 * part(hex, 3) + 0.0722 * part(hex, 5);
    }

    private static double part(String hex, int from) {
        double share = Integer.parseInt(hex.substring(from, from + 2), 16) / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
