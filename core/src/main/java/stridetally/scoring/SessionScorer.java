package stridetally.scoring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import stridetally.ingest.ReadingKind;
import stridetally.model.Level;
import stridetally.model.Summary;
import stridetally.scoring.Answer.Meets;

/** The tries of one session into its values, its help and its answer. The streak is laid over them later, see {@link Streak}. */
public final class SessionScorer {
    private final Counting counting;

    private SessionScorer(Counting counting) {
        this.counting = counting;
    }

    /** Scores the sessions of one goal and side, or of one bare series. */
    public static SessionScorer by(Counting counting) {
        return new SessionScorer(counting);
    }

    /** One session; its streak is 0. */
    public Session score(TrialGroup tries) {
        int[] rows = counted(tries);
        SessionSummaries summaries = new SessionSummaries(tries, rows, counting);
        CriterionCheck criterion = new CriterionCheck(tries, counting);
        Tally tally = new Tally(tries, counting);
        Judged judged = judged(tries, rows, criterion);
        return new Session(
                tries.date(),
                tries.label(),
                tally.trials,
                tally.recorded,
                tally.counted,
                reasoned(summaries.by(counting.summary()), tally),
                summaries.best(),
                summaries.mean(),
                summaries.median(),
                summaries.last(),
                summaries.sd(),
                tally.independent,
                tally.permitted,
                tally.helpWritten,
                tally.mostHelp == Level.BLANK ? OptionalInt.empty() : OptionalInt.of(tally.mostHelp),
                tally.capped,
                judged.met,
                judged.given,
                criterion.session(),
                0,
                tally.doubtful,
                tally.status(),
                note(tally, summaries));
    }

    private int[] counted(TrialGroup tries) {
        int[] rows = new int[tries.size()];
        int count = 0;
        for (int row = 0; row < tries.size(); row++) {
            if (counting.counts(tries.kind(row), tries.help(row), tries.prompt(row))) {
                rows[count++] = row;
            }
        }
        return Arrays.copyOf(rows, count);
    }

    private record Judged(int met, int given) {}

    private static Judged judged(TrialGroup tries, int[] rows, CriterionCheck criterion) {
        int met = 0;
        int given = 0;
        for (int row : rows) {
            if (tries.kind(row) == ReadingKind.TRIES) {
                met += (int) tries.value(row);
                given += tries.given(row);
            } else {
                Meets meets = criterion.row(row);
                met += meets == Meets.YES ? 1 : 0;
                given += meets == Meets.NOT_ASKED ? 0 : 1;
            }
        }
        return new Judged(met, given);
    }

    private SessionValue reasoned(SessionValue value, Tally tally) {
        return value == SessionSummaries.NO_TRY ? new SessionValue.Missing(whyNone(tally)) : value;
    }

    private String whyNone(Tally tally) {
        if (tally.recorded == 0) {
            return tally.status().word();
        }
        Optional<String> bar = counting.bar();
        if (bar.isPresent()) {
            return bar.get();
        }
        if (tally.permitted + tally.doubtful == 0) {
            return "every try needed more help than permitted";
        }
        return "no try is known to be at permitted help";
    }

    private String note(Tally tally, SessionSummaries summaries) {
        List<String> notes = new ArrayList<>();
        int assisted = tally.recorded - tally.permitted - tally.doubtful;
        if (assisted > 0 && assisted < tally.recorded) {
            notes.add(assisted + " of " + tally.recorded + " tries needed more help than permitted");
        }
        if (tally.doubtful > 0) {
            notes.add("help or prompt not written for " + tally.doubtful + " of " + tally.recorded + " tries");
        }
        if (summaries.has(ReadingKind.UNABLE) && summaries.adds(counting.summary())) {
            notes.add("a try was unable: the value is of the others");
        }
        if (counting.summary() == Summary.BEST && tally.counted > counting.firstTries() && !summaries.byTries()) {
            notes.add("best of the first " + counting.firstTries() + " of " + tally.counted + " tries");
        }
        return String.join("; ", notes);
    }

    /** Tries by what they are. */
    private static final class Tally {
        private int trials;
        private int recorded;
        private int counted;
        private int permitted;
        private int doubtful;
        private int independent;
        private int helpWritten;
        private int mostHelp = Level.BLANK;
        private int capped;
        private SessionStatus unrecorded = SessionStatus.NOT_TESTED;

        Tally(TrialGroup tries, Counting counting) {
            for (int row = 0; row < tries.size(); row++) {
                ReadingKind kind = tries.kind(row);
                trials += tries.given(row);
                if (kind.recorded()) {
                    made(tries, row, counting);
                } else {
                    unrecorded = moreTelling(kind);
                }
            }
        }

        private void made(TrialGroup tries, int row, Counting counting) {
            ReadingKind kind = tries.kind(row);
            int given = tries.given(row);
            int help = tries.help(row);
            recorded += given;
            Standing standing = counting.standing(kind, help, tries.prompt(row));
            permitted += standing == Standing.PERMITTED ? given : 0;
            doubtful += standing == Standing.DOUBTFUL ? given : 0;
            independent += help == 0 ? given : 0;
            helpWritten += help == Level.BLANK ? 0 : given;
            mostHelp = Math.max(mostHelp, help);
            if (counting.counts(kind, help, tries.prompt(row))) {
                counted += given;
                capped += kind == ReadingKind.AT_LEAST || kind == ReadingKind.AT_MOST ? 1 : 0;
            }
        }

        private SessionStatus moreTelling(ReadingKind kind) {
            if (kind == ReadingKind.REFUSED || unrecorded == SessionStatus.REFUSED) {
                return SessionStatus.REFUSED;
            }
            return kind == ReadingKind.ABSENT ? SessionStatus.ABSENT : unrecorded;
        }

        SessionStatus status() {
            return recorded > 0 ? SessionStatus.TRIED : unrecorded;
        }
    }
}
