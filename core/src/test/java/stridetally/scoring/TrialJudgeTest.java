package stridetally.scoring;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stridetally.model.Level;
import stridetally.model.Protocol;
import stridetally.model.SeriesKey;
import stridetally.model.Settings;
import stridetally.model.Side;
import stridetally.model.Trial;
import stridetally.model.TrialPlace;
import stridetally.model.Use;
import stridetally.model.WordScale;
import stridetally.units.Amount;
import stridetally.units.Reading;

/** One trial under the goal of 10 steps, independent. */
class TrialJudgeTest {

    @ParameterizedTest(name = "{0} {1} on {2} -> {3} {4} {5}")
    @CsvSource(delimiter = '|', textBlock = """
            10      | independent | 2025-10-06 | true  | yes       | ''
            9       | independent | 2025-10-06 | true  | no        | ''
            >10     | independent | 2025-10-06 | true  | yes       | ''
            >8      | independent | 2025-10-06 | true  | not known | capped before the target
            <8      | independent | 2025-10-06 | true  | no        | ''
            4/5     | independent | 2025-10-06 | true  | ''        | 4 of 5 tries met
            unable  | independent | 2025-10-06 | true  | no        | ''
            refused | ''          | 2025-10-06 | false | ''        | refused
            absent  | ''          | 2025-10-06 | false | ''        | absent
            12      | minimal     | 2025-10-06 | false | no        | needed more help or prompt than the goal permits
            12      | ''          | 2025-10-06 | false | not known | help or prompt not written
            # whatever the help was, 9 is not 10
            9       | ''          | 2025-10-06 | false | no        | help or prompt not written
            10      | independent | 2025-08-06 | false | ''        | before the goal's first day
            10      | independent | 2026-08-06 | false | ''        | after the day of the report
            """)
    void verdict(String value, String help, String day, boolean counted, String meets, String why) {
        TrialVerdict verdict = judge().verdict(trial(TrialPlace.SCHOOL, reading(value), help, day));
        assertEquals(counted, verdict.counted());
        assertEquals(meets, verdict.meets().word());
        assertEquals(why, verdict.why());
    }

    @Test
    void anotherPlaceIsNamed() {
        TrialVerdict verdict = judge().verdict(trial(TrialPlace.HOME, reading("10"), "independent", "2025-10-06"));
        assertEquals("done at another place (home)", verdict.why());
    }

    private static TrialJudge judge() {
        return TrialJudge.of(new GoalDraft().goal(), Tries.steps(), Settings.usual("L"), LocalDate.of(2025, 12, 31));
    }

    private static Trial trial(TrialPlace place, Reading reading, String help, String day) {
        Optional<Level> level = help.isEmpty() ? Optional.empty() : WordScale.HELP.find(help);
        return new Trial(
                new SeriesKey("", Tries.STUDENT, Tries.STEPS, Side.NONE, Protocol.NONE, place, Use.PROBE),
                LocalDate.parse(day),
                "",
                1,
                reading,
                level,
                Optional.empty(),
                "",
                "",
                "",
                "",
                "");
    }

    private static Reading reading(String value) {
        return switch (value) {
            case "unable" -> new Reading.NotObtained(Reading.Why.UNABLE);
            case "refused" -> new Reading.NotObtained(Reading.Why.REFUSED);
            case "absent" -> new Reading.NotObtained(Reading.Why.ABSENT);
            case "4/5" -> new Reading.Tries(4, 5);
            case ">10" -> new Reading.AtLeast(Amount.of("10"));
            case ">8" -> new Reading.AtLeast(Amount.of("8"));
            case "<8" -> new Reading.AtMost(Amount.of("8"));
            default -> new Reading.Exact(Amount.of(value));
        };
    }
}
