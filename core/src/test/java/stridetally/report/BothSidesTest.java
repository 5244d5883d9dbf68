package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import stridetally.scoring.Answer;
import stridetally.scoring.Bound;
import stridetally.scoring.Session;
import stridetally.scoring.SessionStatus;
import stridetally.scoring.SessionValue;
import stridetally.units.Amount;

class BothSidesTest {

    static Session session(String day, SessionValue value, OptionalInt mostHelp) {
        return new Session(
                LocalDate.parse(day),
                "",
                1,
                1,
                1,
                value,
                value,
                value,
                value,
                value,
                Optional.empty(),
                1,
                1,
                1,
                mostHelp,
                0,
                0,
                0,
                Answer.NOT_ASKED,
                0,
                0,
                SessionStatus.TRIED,
                "");
    }

    static SessionValue known(String value) {
        return new SessionValue.Known(Amount.of(value).billionths(), 1);
    }

    private static SessionValue capped(String value) {
        return new SessionValue.Bounded(Bound.AT_LEAST, Amount.of(value).billionths(), 1);
    }

    private static Session session(String day, SessionValue value) {
        return session(day, value, OptionalInt.of(0));
    }

    @Test
    void aDayHasBothSidesTheirDifferenceAndTheirSymmetry() {
        List<BothSides> days =
                BothSides.of(List.of(session("2026-01-12", known("4"))), List.of(session("2026-01-12", known("6"))));
        assertEquals(1, days.size());
        // By hand: 6 - 4; 100 * 2 / 5; 100 ln 1.5.
        assertEquals(2, days.get(0).difference().orElseThrow());
        assertEquals(40, days.get(0).index().orElseThrow(), 1e-12);
        assertEquals(40.546510810816, days.get(0).logRatio().orElseThrow(), 1e-9);
    }

    @Test
    void neverFromACappedSide() {
        BothSides day = BothSides.of(
                        List.of(session("2026-01-12", known("4"))), List.of(session("2026-01-12", capped("30"))))
                .get(0);
        List<String> reasons = new ArrayList<>(List.of(
                day.difference().reason(), day.index().reason(), day.logRatio().reason()));
        assertEquals(List.of("the right is capped", "the right is capped", "the right is capped"), reasons);
        assertEquals(30, day.right().orElseThrow().value());
    }

    @Test
    void aDayWithOneSideIsShownAndSaid() {
        List<BothSides> days =
                BothSides.of(List.of(session("2026-01-12", known("4"))), List.of(session("2026-01-19", known("6"))));
        assertEquals(2, days.size());
        assertEquals(
                "no value on the right: not tried on this day",
                days.get(0).difference().reason());
        assertEquals(
                "no value on the left: not tried on this day",
                days.get(1).index().reason());
    }

    @Test
    void ofSessionsBelow0ThereIsADifferenceAndNoSymmetry() {
        BothSides day = BothSides.of(
                        List.of(session("2026-01-12", known("-1"))), List.of(session("2026-01-12", known("3"))))
                .get(0);
        assertEquals(4, day.difference().orElseThrow());
        assertEquals("a side is below 0", day.index().reason());
        assertEquals("a side is below 0", day.logRatio().reason());
    }

    @Test
    void ofSessionsAt0TheReasonSaysWhatIsMissing() {
        BothSides one = BothSides.of(
                        List.of(session("2026-01-12", known("0"))), List.of(session("2026-01-12", known("3"))))
                .get(0);
        assertEquals(200, one.index().orElseThrow());
        assertEquals("a side is 0", one.logRatio().reason());
        BothSides none = BothSides.of(
                        List.of(session("2026-01-12", known("0"))), List.of(session("2026-01-12", known("0"))))
                .get(0);
        assertEquals("both sides are 0", none.index().reason());
        assertEquals(0, none.difference().orElseThrow());
    }
}
