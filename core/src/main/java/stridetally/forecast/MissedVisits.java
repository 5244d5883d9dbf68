package stridetally.forecast;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import stridetally.model.Visit;

/** Why there are few sessions, from the attendance log. */
final class MissedVisits {

    private MissedVisits() {}

    /** Such as {@code Missed since 2025-09-08: 3 student absent, 1 school closed.}; nothing when none was missed. */
    static Optional<Sentence> sentence(GoalFacts facts) {
        List<Visit> missed = facts.visits().stream()
                .filter(visit -> visit.status() != Visit.Status.HELD)
                .filter(visit -> !visit.date().isAfter(facts.asOf()))
                .filter(visit -> facts.start()
                        .map(start -> !visit.date().isBefore(start))
                        .orElse(true))
                .toList();
        Map<Visit.Status, Integer> counts = new EnumMap<>(Visit.Status.class);
        missed.forEach(visit -> counts.merge(visit.status(), 1, Integer::sum));
        Optional<LocalDate> since =
                facts.start().or(() -> missed.stream().map(Visit::date).min(LocalDate::compareTo));
        String why = counts.entrySet().stream()
                .map(count -> count.getValue() + " " + count.getKey().word())
                .collect(Collectors.joining(", "));
        return missed.isEmpty() ? Optional.empty() : since.map(first -> JudgementSentence.MISSED.with(first, why));
    }
}
