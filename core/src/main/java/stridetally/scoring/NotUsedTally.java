package stridetally.scoring;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Adds up the tries that a goal does not use, by reason. */
final class NotUsedTally {
    private final Map<WhyNotUsed, Map<String, Integer>> tries = new TreeMap<>();

    void add(WhyNotUsed why, String detail, TrialGroup session) {
        int recorded = 0;
        for (int row = 0; row < session.size(); row++) {
            recorded += session.kind(row).recorded() ? session.given(row) : 0;
        }
        add(why, detail, recorded);
    }

    /** Tells the sessions within the days of a goal from those that are not. */
    List<TrialGroup> within(GoalSpan span, List<TrialGroup> sessions) {
        List<TrialGroup> within = new ArrayList<>();
        for (TrialGroup session : sessions) {
            Optional<WhyNotUsed> why = span.outside(session.date());
            if (why.isPresent()) {
                add(why.get(), "", session);
            } else {
                within.add(session);
            }
        }
        return within;
    }

    /** The tries of a session that do not count because of their help or prompt. */
    void addHelp(Session session) {
        int known = session.permittedTries() + session.doubtfulTries();
        add(WhyNotUsed.MORE_HELP, "", session.recorded() - known);
        add(WhyNotUsed.HELP_NOT_WRITTEN, "", known - session.counted());
    }

    private void add(WhyNotUsed why, String detail, int more) {
        if (more > 0) {
            tries.computeIfAbsent(why, any -> new TreeMap<>()).merge(detail, more, Integer::sum);
        }
    }

    List<NotUsed> all() {
        List<NotUsed> all = new ArrayList<>();
        for (Map.Entry<WhyNotUsed, Map<String, Integer>> reason : tries.entrySet()) {
            for (Map.Entry<String, Integer> detail : reason.getValue().entrySet()) {
                all.add(new NotUsed(reason.getKey(), detail.getKey(), detail.getValue()));
            }
        }
        return all;
    }
}
