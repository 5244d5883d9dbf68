package stridetally.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stridetally.model.Precaution;
import stridetally.model.Student;
import stridetally.stats.Estimate;

/**
 * What one family may practise. None can be made with a rung that stays at school, that a precaution bars, whose approval does
 * not hold on the day, or for a child whose precautions are blank, unknown or {@code other}.
 *
 * @param day the day it is made for
 * @param line empty when the child's height is not known
 * @param rungs at least one, in the order of the ladder
 */
public record HomeSheet(
        Student student, LocalDate day, Caution caution, Optional<LineLayout> line, List<HomeRung> rungs) {

    /** A rung with the approval that lets it home. */
    public record HomeRung(Rung rung, Approval approval, HomeHelp help) {
        public HomeRung {
            if (rung.home() != Rung.Home.YES
                    || !approval.rung().equals(rung.id())
                    || !rung.isMeantFor(approval.help())
                    || !HomeHelp.of(approval.help()).equals(Optional.of(help))) {
                throw new IllegalArgumentException("rung " + rung.id() + " is not for home with this help");
            }
        }
    }

    public HomeSheet {
        rungs = List.copyOf(rungs);
        if (rungs.isEmpty() || caution.whyNoHome().isPresent() || !caution.equals(Caution.of(student.precautions()))) {
            throw new IllegalArgumentException("no home sheet can be made for this student");
        }
        for (HomeRung one : rungs) {
            boolean barred = !one.rung().barredBy(caution.known()).isEmpty();
            boolean theirs = one.approval().student().equals(student.code());
            if (barred || !theirs || !one.approval().holds(day)) {
                throw new IllegalArgumentException("rung " + one.rung().id() + " is not for this student on this day");
            }
        }
    }

    /** The sheet, or why there is none. */
    public static Estimate<HomeSheet> of(
            Student student, Ladder ladder, Approvals approvals, Optional<LineLayout> line, LocalDate asOf) {
        Caution caution = Caution.of(student.precautions());
        if (caution.whyNoHome().isPresent()) {
            return Estimate.notEstimable(caution.whyNoHome().get());
        }
        if (student.until().map(last -> last.isBefore(asOf)).orElse(false)) {
            return Estimate.notEstimable("the student has left");
        }
        List<HomeRung> rungs = new ArrayList<>();
        List<String> held = new ArrayList<>();
        for (Rung rung : ladder.rungs()) {
            Optional<Approval> approval = approvals.latest(student.code(), rung, asOf);
            if (approval.isEmpty()) {
                continue;
            }
            Optional<String> why = whyHeld(rung, approval.get(), caution.known(), asOf);
            if (why.isPresent()) {
                held.add(rung.id() + " " + why.get());
            } else {
                HomeHelp help = HomeHelp.of(approval.get().help()).orElseThrow();
                rungs.add(new HomeRung(rung, approval.get(), help));
            }
        }
        if (rungs.isEmpty()) {
            return Estimate.notEstimable(
                    held.isEmpty() ? "no rung is approved in approved.csv" : String.join("; ", held));
        }
        return Estimate.of(new HomeSheet(student, asOf, caution, line, rungs));
    }

    /** Why an approved rung does not come home; empty when it does. */
    static Optional<String> whyHeld(Rung rung, Approval approval, Set<Precaution> precautions, LocalDate asOf) {
        Set<Precaution> barred = rung.barredBy(precautions);
        if (!barred.isEmpty()) {
            return Optional.of("is barred by " + words(barred));
        }
        if (rung.home() == Rung.Home.NO) {
            return Optional.of("stays at school");
        }
        if (!approval.holds(asOf)) {
            return Optional.of("was approved until " + approval.lastDay());
        }
        if (!rung.isMeantFor(approval.help())) {
            return Optional.of("is meant for " + rung.leastHelp().orElseThrow().word() + "; with "
                    + approval.help().word() + " help another rung is due");
        }
        return HomeHelp.of(approval.help()).isPresent()
                ? Optional.empty()
                : Optional.of("needs " + approval.help().word() + " help, which a family cannot be asked for");
    }

    static String words(Set<Precaution> precautions) {
        List<String> words = precautions.stream().map(Precaution::word).sorted().toList();
        return String.join(", ", words);
    }
}
