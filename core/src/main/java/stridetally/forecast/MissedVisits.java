package stridetally.forecast;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import stridetally.model.Visit;

/** Why there are few sessions, from the attendance log. */
final class MissedVisits {

    private MissedVisits() {}

    /** Such as {@code Missed since 2025-09-08: 3 student absent, 1 school closed.}; nothing when none was missed. */
    static Optional<Sentence> sentence(GoalFacts facts) {
        Map<Visit.Status, Integer> counts = new EnumMap<>(Visit.Status.class);
        LocalDate since = facts.start().orElse(facts.asOf());
        for (Visit visit : facts.visits()) {
            if (missed(visit, facts)) {
                counts.put(visit.status(), counts.getOrDefault(visit.status(), 0) + 1);
                since = visit.date().isBefore(since) ? visit.date() : since;
            }
        }
        if (counts.isEmpty()) {
            return Optional.empty();
        }
        StringJoiner why = new StringJoiner(", ");
        for (Map.Entry<Visit.Status, Integer> count : counts.entrySet()) {
            why.add(count.getValue() + " " + count.getKey().word());
        }
        return Optional.of(JudgementSentence.MISSED.with(since, why.toString()));
    }

    private static boolean missed(Visit visit, GoalFacts facts) {
        return visit.status() != Visit.Status.HELD
                && !visit.date().isAfter(facts.asOf())
                && (facts.start().isEmpty()
                        || !visit.date().isBefore(facts.start().get()));
    }
}
