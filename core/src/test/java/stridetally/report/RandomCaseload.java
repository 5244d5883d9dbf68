package stridetally.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import stridetally.measures.Measure;
import stridetally.measures.Sidedness;
import stridetally.model.Benchmark;
import stridetally.model.Change;
import stridetally.model.Criterion;
import stridetally.model.Goal;
import stridetally.model.GoalAim;
import stridetally.model.GoalEnd;
import stridetally.model.GoalSide;
import stridetally.model.Remark;
import stridetally.model.ServicePlan;
import stridetally.model.Side;
import stridetally.model.StudentCode;
import stridetally.model.TrialPlace;
import stridetally.model.Use;
import stridetally.model.Visit;
import stridetally.units.Amount;

/** Caseloads of every shape from a seed: goals with and without their parts, sessions of every kind, edge values. */
final class RandomCaseload {
    private static final List<Measure> MEASURES =
            List.of(MadeCaseload.STEPS, MadeCaseload.STANCE, MadeCaseload.STAIRS, MadeCaseload.SUCCESS);
    private static final List<String> HELP = List.of("independent", "supervision", "stand-by", "minimal", "");

    private final SplittableRandom random;
    private final MadeCaseload made = new MadeCaseload();

    private RandomCaseload(long seed) {
        random = new SplittableRandom(seed);
    }

    static MadeCaseload of(long seed) {
        RandomCaseload one = new RandomCaseload(seed);
        int students = 1 + one.random.nextInt(3);
        for (int i = 0; i < students; i++) {
            one.student(i == 0 ? MadeCaseload.STUDENT : new StudentCode("S-" + (i + 1)));
        }
        return one.made;
    }

    private void student(StudentCode code) {
        if (chance(0.8)) {
            made.students.add(MadeCaseload.student(code, chance(0.3) ? new String[] {"seizures"} : new String[0]));
        }
        if (chance(0.7)) {
            made.services.add(new ServicePlan(
                    code,
                    chance(0.7) ? Optional.of(LocalDate.parse("2026-09-01")) : Optional.empty(),
                    Optional.empty(),
                    random.nextInt(90),
                    List.of("week", "month", "year", "fortnight").get(random.nextInt(4)),
                    "direct"));
        }
        for (int i = random.nextInt(4); i > 0; i--) {
            made.visits.add(new Visit(
                    code,
                    LocalDate.parse("2026-12-01").plusDays(random.nextInt(90)),
                    chance(0.5) ? OptionalInt.of(30) : OptionalInt.empty(),
                    pick(List.of(Visit.Status.values())),
                    "direct",
                    Optional.empty(),
                    chance(0.5) ? "cold" : ""));
        }
        for (int i = 1 + random.nextInt(2); i > 0; i--) {
            goal(code, i);
        }
    }

    private void goal(StudentCode code, int number) {
        MadeCaseload.Draft draft = new MadeCaseload.Draft();
        Measure measure = pick(MEASURES);
        boolean share = measure.equals(MadeCaseload.SUCCESS);
        draft.id = code.text() + "-" + number;
        draft.student = code;
        draft.measure = measure;
        draft.side =
                measure.sidedness() == Sidedness.NONE && chance(0.9) ? GoalSide.NONE : pick(List.of(GoalSide.values()));
        draft.baseline = chance(0.85) ? (share ? "0.2" : "4") : "";
        draft.baselineDate = chance(0.85) ? "2026-09-18" : "";
        draft.target = chance(0.85) ? (share ? "0.8" : random.nextInt(3) == 0 ? "4" : "12.5") : "";
        draft.due = chance(0.85) ? (chance(0.5) ? "2027-06-04" : "2027-02-01") : "";
        draft.help = chance(0.8) ? HELP.get(random.nextInt(3)) : "";
        draft.aim = chance(0.2) ? GoalAim.KEEP : GoalAim.REACH;
        draft.ended = chance(0.1) ? Optional.of(GoalEnd.RAISED) : Optional.empty();
        draft.criterion = new Criterion(maybe(2), maybe(3), maybe(2));
        Goal goal = draft.goal();
        made.goals.add(goal);
        beside(goal);
        for (int i = random.nextInt(12) * (chance(0.2) ? 4 : 1); i > 0; i--) {
            session(goal, measure, share);
        }
    }

    private void beside(Goal goal) {
        if (chance(0.5)) {
            made.benchmarks.add(new Benchmark(goal.id(), LocalDate.parse("2027-01-15"), Amount.of("6")));
            made.changes.add(new Change(
                    goal.student(),
                    chance(0.5) ? Optional.of(goal.id()) : Optional.empty(),
                    LocalDate.parse("2026-12-10"),
                    "A wider line for the first tries, and the same line for all of the others after that, and so on"));
        }
        if (chance(0.5)) {
            made.remarks.add(new Remark(
                    goal.id(),
                    "winter",
                    chance(0.5) ? "en" : "es",
                    "Going well.",
                    chance(0.5) ? "More turns." : "",
                    chance(0.5) ? Optional.of("on course") : Optional.empty(),
                    ""));
        }
    }

    private void session(Goal goal, Measure measure, boolean share) {
        String day = LocalDate.parse("2026-09-01").plusDays(random.nextInt(190)).toString();
        Side side = measure.sidedness() == Sidedness.NONE ? Side.NONE : pick(List.of(Side.values()));
        TrialPlace place = chance(0.85) ? TrialPlace.SCHOOL : TrialPlace.HOME;
        Use use = chance(0.85) ? Use.PROBE : Use.PRACTICE;
        StringBuilder tries = new StringBuilder();
        for (int i = 1 + random.nextInt(4); i > 0; i--) {
            tries.append(tries.isEmpty() ? "" : " ").append(value(share));
        }
        made.tries(
                goal.student(),
                measure,
                side,
                place,
                use,
                day,
                HELP.get(random.nextInt(HELP.size())),
                tries.toString());
    }

    private String value(boolean share) {
        int kind = random.nextInt(20);
        String amount = share ? random.nextInt(4) + "/3" : String.valueOf(random.nextInt(160) / 8.0);
        amount = share && amount.startsWith("3") ? "3/3" : amount;
        return switch (kind) {
            case 0 -> "unable";
            case 1 -> "refused";
            case 2 -> "untested";
            case 3 -> share ? amount : ">" + amount;
            case 4 -> share ? amount : "<" + amount;
            case 5 -> "absent";
            default -> amount;
        };
    }

    private OptionalInt maybe(int number) {
        return chance(0.75) ? OptionalInt.of(number) : OptionalInt.empty();
    }

    private <T> T pick(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }

    private boolean chance(double share) {
        return random.nextDouble() < share;
    }
}
