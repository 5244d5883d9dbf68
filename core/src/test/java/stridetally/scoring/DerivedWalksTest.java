package stridetally.scoring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stridetally.ingest.ReadingKind;
import stridetally.ingest.SeriesNumbers;
import stridetally.measures.Catalogue;
import stridetally.measures.GaitFormulas;
import stridetally.model.Body;
import stridetally.model.Caseload;
import stridetally.model.DateRange;
import stridetally.model.MeasureId;
import stridetally.model.Period;
import stridetally.model.Protocol;
import stridetally.model.SeriesKey;
import stridetally.model.Settings;
import stridetally.model.Side;
import stridetally.model.Student;
import stridetally.model.StudentCode;
import stridetally.model.TrialPlace;
import stridetally.model.Use;
import stridetally.units.Amount;

/**
 * Speed, cadence, step length, walk ratio and scaled speed from a stopwatch, a tape and a count. The made-up walk of 1.18
 * m/s, 132 steps/min and a leg of 0.62 m and its digits were computed in Python, apart from this program.
 */
class DerivedWalksTest {
    private static final LocalDate DAY = LocalDate.of(2026, 10, 5);
    private static final StudentCode CHILD = new StudentCode("S1");

    private final SessionTable table = new SessionTable(new SeriesNumbers());
    private final List<DerivedTry> made = new ArrayList<>();
    private final List<String> gaps = new ArrayList<>();
    private long alone;
    private long line;

    /** 119 children (Hum Mov 2013, 14:340): stride 1.23 m, cadence 117.9/min, speed 72.5 m/min, printed to three digits. */
    @Test
    void agreesWithThePublishedMeansOf119Children() {
        // In one minute: 117.9 steps of 1.23 / 2 m.
        double metres = 117.9 * 1.23 / 2;
        assertEquals(72.5, 60 * GaitFormulas.speed(metres, 60), 0.05);
        assertEquals(117.9, GaitFormulas.cadence(117.9, 60), 1e-12);
        assertEquals(1.23, 2 * GaitFormulas.stepLength(metres, 117.9), 1e-12);
    }

    /** Formula: Hof 1996 (memory). With g = 9.81 the value would be 0.4784666355. */
    @Test
    void scalesSpeedByLegLength() {
        assertEquals(0.4785483518, GaitFormulas.scaledSpeed(1.18, 0.62), 5e-11);
        assertEquals(0.4638202458, GaitFormulas.scaledSpeed(1.18, 0.66), 5e-11);
        assertEquals(0.4063360882, GaitFormulas.walkRatio(1.18 * 60 / 132, 132), 5e-11);
    }

    /** 10 m in 8.41, 8.13 and 8.02 s: the mean of the speeds is 1.2219852451 m/s, and not 10 over the mean time. */
    @Test
    void aSessionIsTheMeanOfTheSpeedsOfItsTries() {
        int number = 0;
        for (String seconds : List.of("8.41", "8.13", "8.02")) {
            number++;
            log("walk-distance", number, "10", "");
            log("walk-time", number, seconds, "");
        }
        derive(LegLengths.none());
        assertEquals(3, made.size());
        double mean =
                made.stream().mapToDouble(one -> Amount.toDouble(one.value())).sum() / 3;
        assertEquals(1.2219852451, mean, 1e-9);
        assertEquals(List.of(), gaps);
        assertEquals(
                "walk-distance 10 m (line 1) / walk-time 8.41 s (line 2)",
                made.get(0).madeOf());
    }

    @Test
    void everyMeasureFollowsFromAllPartsAndALegLength() {
        log("walk-distance", 1, "11.8", "");
        log("walk-time", 1, "10", "");
        log("walk-steps", 1, "22", "");
        derive(legs(DAY.minusDays(10), "62", "119"));
        // 22 steps in 10 s are 132/min; 11.8 m / 22 = 0.536363636 m.
        assertEquals(
                List.of(
                        "walk-speed 1.18",
                        "cadence 132",
                        "step-length 0.536363636",
                        "walk-ratio 0.406336088",
                        "scaled-speed 0.478548352"),
                made.stream()
                        .map(one -> one.key().measure().text() + " " + new Amount(one.value()).text())
                        .toList());
    }

    /** The same walk as above, its speed written down instead of its parts. */
    @Test
    void aLoggedSpeedIsScaledToo() {
        log("walk-speed", 1, "1.18", "pace=comfortable");
        derive(legs(DAY.minusDays(10), "62", "119"));
        assertEquals(1, made.size());
        assertEquals("scaled-speed", made.get(0).key().measure().text());
        assertEquals("pace=comfortable", made.get(0).key().protocol().text());
        assertEquals("0.478548352", new Amount(made.get(0).value()).text());
        assertEquals(
                "walk-speed 1.18 m/s / leg length 0.62 m (bodies.csv)",
                made.get(0).madeOf());
    }

    @Test
    void aLoggedSpeedIsScaledOnceWhateverPartsStandBesideIt() {
        log("walk-distance", 1, "11.8", "");
        log("walk-time", 1, "8", "");
        log("walk-speed", 1, "1.18", "");
        derive(legs(DAY.minusDays(10), "62", "119"));
        assertEquals(List.of("scaled-speed 0.478548352"), scaled());
    }

    @Test
    void aLoggedScaledSpeedStandsAlone() {
        log("walk-speed", 1, "1.18", "");
        log("scaled-speed", 1, "0.5", "");
        derive(legs(DAY.minusDays(10), "62", "119"));
        assertEquals(List.of(), scaled());
    }

    @Test
    void aLoggedSpeedWithoutALegLengthOfItsDaysIsToldWhereALegWasEverMeasured() {
        log("walk-speed", 1, "1.18", "");
        derive(LegLengths.none());
        assertEquals(List.of(), gaps);
        derive(legs(DAY.minusDays(400), "62", "119"));
        assertEquals(List.of(), scaled());
        assertEquals(1, gaps.size());
        assertTrue(gaps.get(0).contains("no leg length of the same period"), gaps.get(0));
    }

    private List<String> scaled() {
        return made.stream()
                .filter(one -> one.key().measure().text().equals("scaled-speed"))
                .map(one -> one.key().measure().text() + " " + new Amount(one.value()).text())
                .toList();
    }

    @Test
    void aMissingPartIsSaidAndTheOtherTriesAreScored() {
        log("walk-distance", 1, "10", "");
        log("walk-time", 1, "8", "");
        log("walk-time", 2, "9", "");
        derive(LegLengths.none());
        assertEquals(1, made.size());
        assertEquals(
                List.of("walk-speed of " + CHILD.text() + " on 2026-10-05, try 2: not known, the try has no"
                        + " walk-distance"),
                gaps);
    }

    @Test
    void aTimeByItselfGivesNothingAndIsCounted() {
        log("walk-time", 1, "9", "");
        derive(LegLengths.none());
        assertEquals(0, made.size());
        assertEquals(1, alone);
    }

    /** 10 m in 8 s = 1.25 m/s; 50 ft = 15.24 m in 12 s = 1.27 m/s. A bare number may be feet or metres. */
    @ParameterizedTest
    @CsvSource({"distance=10m, 8, 1.25", "distance=50ft, 12, 1.27", "distance=10, 8, ''"})
    void aMarkedWayMayStandInTheProtocol(String protocol, String seconds, String speed) {
        log("walk-time", 1, seconds, protocol);
        derive(LegLengths.none());
        assertEquals(
                speed.isEmpty() ? List.of() : List.of(speed),
                made.stream().map(one -> new Amount(one.value()).text()).toList());
    }

    @Test
    void walksAtTwoPacesAreKeptApartUnderOneNumber() {
        for (String pace : List.of("comfortable", "fast")) {
            log("walk-distance", 1, "10", "pace=" + pace);
            log("walk-time", 1, pace.equals("fast") ? "5" : "10", "pace=" + pace);
        }
        derive(LegLengths.none());
        assertEquals(
                List.of("pace=comfortable 1", "pace=fast 2"),
                made.stream()
                        .map(one -> one.key().protocol().text() + " " + new Amount(one.value()).text())
                        .toList());
    }

    @Test
    void aLoggedSpeedIsNotCountedTwice() {
        log("walk-distance", 1, "10", "");
        log("walk-time", 1, "8", "");
        log("walk-speed", 1, "1.2", "");
        derive(LegLengths.none());
        assertEquals(List.of(), made);
    }

    @Test
    void twoValuesOfOnePartAreNotChosenBetween() {
        log("walk-distance", 1, "10", "");
        log("walk-time", 1, "8", "");
        log("walk-time", 1, "9", "");
        derive(LegLengths.none());
        assertEquals(List.of(), made);
        assertTrue(gaps.get(0).contains("2 values of walk-time"), gaps.get(0));
    }

    /** 10 000 typed for 10.000 m, or a time in minutes: 1250 m/s is no walk. */
    @Test
    void unitsMixedUpByAThousandAreSaid() {
        log("walk-distance", 1, "10000", "");
        log("walk-time", 1, "8", "");
        derive(LegLengths.none());
        assertEquals(List.of(), made);
        assertTrue(gaps.get(0).contains("check the units"), gaps.get(0));
    }

    @Test
    void aWalkThatWasUnableGivesAnUnableSpeed() {
        log("walk-distance", 1, "10", "");
        table.trial(series("walk-time", ""), day(), 0, 1, ReadingKind.UNABLE, 0, 1, 0, 0, ++line);
        derive(LegLengths.none());
        assertEquals(ReadingKind.UNABLE, made.get(0).kind());
    }

    /** Leg lengths in inches (24.4 for 62 cm; 37 in for a height of 140 cm would be 94 cm) or metres are never converted. */
    @ParameterizedTest
    @CsvSource({
        "62, 119, ''",
        "24.4, 119, unlikely in centimetres",
        "0.62, 119, unlikely in centimetres",
        "37, 140, unlikely in centimetres",
    })
    void aLegLengthInInchesIsRefused(String leg, String height, String why) {
        Optional<Double> metres = legs(DAY, leg, height).on(CHILD, DAY).value();
        assertEquals(why.isEmpty(), metres.isPresent());
        assertTrue(legs(DAY, leg, height).on(CHILD, DAY).reason().contains(why));
    }

    @Test
    void aLegLengthOfAnotherYearIsNotUsed() {
        LegLengths old = legs(DAY.minusYears(1), "58", "112");
        log("walk-distance", 1, "10", "");
        log("walk-time", 1, "8", "");
        derive(old);
        assertEquals(
                List.of("walk-speed"),
                made.stream().map(one -> one.key().measure().text()).toList());
        assertTrue(gaps.get(0).contains("no leg length of the same period: the last is of 2025-10-05"), gaps.get(0));
    }

    @Test
    void aLegLengthHoldsForItsReportingPeriod() {
        Period autumn = new Period("autumn", new DateRange(LocalDate.of(2026, 9, 1), LocalDate.of(2026, 12, 31)), "");
        LegLengths legs = legs(List.of(autumn), LocalDate.of(2026, 9, 2), "62", "119");
        assertTrue(legs.on(CHILD, LocalDate.of(2026, 12, 30)).isEstimated());
        // In no period: 125 days are more than 92.
        assertTrue(legs.on(CHILD, LocalDate.of(2027, 1, 5)).value().isEmpty());
    }

    private LegLengths legs(LocalDate day, String leg, String height) {
        return legs(List.of(), day, leg, height);
    }

    private LegLengths legs(List<Period> periods, LocalDate day, String leg, String height) {
        Settings usual = Settings.usual("");
        Settings settings = new Settings(
                "",
                periods,
                List.of(),
                usual.shownUnits(),
                usual.help(),
                usual.prompt(),
                usual.thresholds(),
                List.of());
        Body body = new Body(
                CHILD, day, Optional.of(Amount.of(height)), Optional.of(Amount.of(leg)), Optional.empty(), "tape");
        List<Student> none = List.of();
        return LegLengths.of(new Caseload(
                settings,
                none,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(body),
                List.of()));
    }

    private void derive(LegLengths legs) {
        DerivedWalks.into(table, Catalogue.standard()::find, legs, new DerivedWalks.Taker() {
            @Override
            public void derived(DerivedTry one) {
                made.add(one);
            }

            @Override
            public void gap(WalkGap gap) {
                gaps.add(gap.sentence());
            }

            @Override
            public void alone(long tries) {
                alone += tries;
            }
        });
    }

    private void log(String measure, int number, String value, String protocol) {
        table.trial(
                series(measure, protocol),
                day(),
                0,
                number,
                ReadingKind.EXACT,
                Amount.of(value).billionths(),
                1,
                0,
                0,
                ++line);
    }

    private static int day() {
        return Math.toIntExact(DAY.toEpochDay());
    }

    private int series(String measure, String protocol) {
        java.util.TreeMap<String, String> keys = new java.util.TreeMap<>();
        Stream.of(protocol)
                .filter(text -> !text.isEmpty())
                .forEach(text -> keys.put(text.substring(0, text.indexOf('=')), text.substring(text.indexOf('=') + 1)));
        return table.numbers()
                .number(new SeriesKey(
                        "",
                        CHILD,
                        new MeasureId(measure),
                        Side.NONE,
                        new Protocol(keys),
                        TrialPlace.SCHOOL,
                        Use.PROBE));
    }
}
