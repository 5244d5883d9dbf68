package stridetally.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stridetally.model.Precaution;
import stridetally.model.Student;

/**
 * What one student may practise next, for the therapist: every rung with what stands for and against it.
 *
 * @param whyNoHome why there is no home sheet; empty when there is one
 */
public record StudentPlan(
        Student student,
        LocalDate asOf,
        Caution caution,
        Optional<LineLayout> line,
        List<Step> steps,
        Optional<String> whyNoHome) {

    /** How a rung stands. */
    public enum Standing {
        BARRED("barred"),
        APPROVED("approved"),
        READY("ready"),
        NOT_YET("not yet");

        private final String word;

        Standing(String word) {
            this.word = word;
        }

        /** The word of the page. */
        public String word() {
            return word;
        }
    }

    /**
     * One rung.
     *
     * @param approval the latest, whether it still holds or not
     * @param why what stands behind the standing
     * @param onHomeSheet whether the home sheet prints it
     */
    public record Step(
            Rung rung, Standing standing, Optional<Approval> approval, String why, OnHomeSheet onHomeSheet) {}

    /** Whether a rung is printed. */
    public enum OnHomeSheet {
        YES("yes"),
        NO("no");

        private final String word;

        OnHomeSheet(String word) {
            this.word = word;
        }

        /** The word of the page. */
        public String word() {
            return word;
        }
    }

    public StudentPlan {
        steps = List.copyOf(steps);
    }

    /** What is ready and lies beyond the last rung that is approved. */
    public List<Step> next() {
        List<Step> next = new ArrayList<>();
        for (Step step : steps) {
            if (step.standing() == Standing.APPROVED) {
                next.clear();
            } else if (step.standing() == Standing.READY) {
                next.add(step);
            }
        }
        return next;
    }

    /** The plan of a student. */
    public static StudentPlan of(
            Student student,
            Ladder ladder,
            Approvals approvals,
            Probes probes,
            Optional<LineLayout> line,
            LocalDate asOf) {
        Caution caution = Caution.of(student.precautions());
        var sheet = HomeSheet.of(student, ladder, approvals, line, asOf);
        List<Rung> home = sheet.value().map(HomeSheet::rungs).orElse(List.of()).stream()
                .map(HomeSheet.HomeRung::rung)
                .toList();
        List<Step> steps = new ArrayList<>();
        for (Rung rung : ladder.rungs()) {
            steps.add(step(
                    rung,
                    caution.known(),
                    approvals.latest(student.code(), rung, asOf),
                    probes.readiness(student.code(), rung),
                    home.contains(rung) ? OnHomeSheet.YES : OnHomeSheet.NO,
                    asOf));
        }
        return new StudentPlan(
                student,
                asOf,
                caution,
                line,
                steps,
                sheet.isEstimated() ? Optional.empty() : Optional.of(sheet.reason()));
    }

    private static Step step(
            Rung rung,
            Set<Precaution> precautions,
            Optional<Approval> approval,
            Readiness readiness,
            OnHomeSheet home,
            LocalDate asOf) {
        Set<Precaution> barred = rung.barredBy(precautions);
        if (!barred.isEmpty()) {
            return new Step(rung, Standing.BARRED, approval, "not with " + HomeSheet.words(barred), home);
        }
        boolean holds = approval.map(one -> one.holds(asOf)).orElse(false);
        Standing seen = readiness.state() == Readiness.State.READY ? Standing.READY : Standing.NOT_YET;
        return new Step(rung, holds ? Standing.APPROVED : seen, approval, readiness.text(), home);
    }
}
