package stridetally.scoring;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import stridetally.measures.Measure;
import stridetally.model.Caseload;
import stridetally.model.Criterion;
import stridetally.model.Goal;
import stridetally.model.GoalAim;
import stridetally.model.GoalId;
import stridetally.model.GoalSide;
import stridetally.model.Level;
import stridetally.model.Protocol;
import stridetally.model.Settings;
import stridetally.model.Student;
import stridetally.model.StudentCode;
import stridetally.model.Summary;
import stridetally.model.TrialPlace;
import stridetally.model.WordScale;
import stridetally.units.Amount;

/** A goal being written, for tests: 4 steps on 2025-09-01 to 10 steps by 2026-06-01, independent, until told otherwise. */
final class GoalDraft {
    GoalSide side = GoalSide.NONE;
    Map<String, String> protocol = Map.of();
    String baseline = "4";
    String baselineDate = "2025-09-01";
    String target = "10";
    String due = "2026-06-01";
    String criterion = "4/5x2";
    String help = "independent";
    String prompt = "";
    Optional<Summary> summary = Optional.empty();
    Set<TrialPlace> places = EnumSet.of(TrialPlace.SCHOOL, TrialPlace.CLINIC);
    GoalAim aim = GoalAim.REACH;
    String from = "";
    String until = "";
    String follows = "";
    List<String> roster = List.of();

    Goal goal() {
        return new Goal(
                new GoalId("G1"),
                Tries.STUDENT,
                Tries.STEPS,
                side,
                new Protocol(new TreeMap<>(protocol)),
                "",
                "",
                amount(baseline),
                day(baselineDate),
                "",
                amount(target),
                day(due),
                criterion(criterion),
                level(WordScale.HELP, help),
                level(WordScale.PROMPT, prompt),
                summary,
                places,
                aim,
                Optional.empty(),
                day(from),
                day(until),
                Optional.empty(),
                follows.isEmpty() ? Optional.empty() : Optional.of(new GoalId(follows)));
    }

    private static Student student(String code) {
        return new Student(
                new StudentCode(code), "", "", Optional.empty(), Optional.empty(), "", "", "", "", "", "", List.of());
    }

    Counting counting(Measure measure) {
        return Counting.forGoal(goal(), measure, Settings.usual("L"));
    }

    GoalScore score(Measure measure, SessionTable table, String asOf) {
        return new GoalScorer(caseload(), id -> Optional.of(measure), table, LocalDate.parse(asOf)).score(goal());
    }

    Caseload caseload() {
        return new Caseload(
                Settings.usual("L"),
                roster.stream().map(GoalDraft::student).toList(),
                List.of(goal()),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    /** {@code 4/5x2}: 4 of 5 tries over 2 sessions; {@code x2}: 2 sessions by value; any number may be left out. */
    private static Criterion criterion(String text) {
        int times = text.indexOf('x');
        String[] tries = (times < 0 ? text : text.substring(0, times)).split("/", -1);
        return new Criterion(
                number(tries[0]),
                number(tries.length < 2 ? "" : tries[1]),
                number(times < 0 ? "" : text.substring(times + 1)));
    }

    private static OptionalInt number(String text) {
        return text.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(text));
    }

    private static Optional<Amount> amount(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(Amount.of(text));
    }

    private static Optional<LocalDate> day(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(text));
    }

    private static Optional<Level> level(WordScale scale, String word) {
        return word.isEmpty() ? Optional.empty() : scale.find(word);
    }
}
