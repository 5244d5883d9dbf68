package stridetally.scoring;

/**
 * The sessions of one series of a long log after another: summed up as plain numbers where that says all, else scored.
 * Whoever needs a session, for its row or for its point, asks the same one. Not for several threads.
 */
public final class WalkedSessions {
    private final SeriesWalk walk;
    private final Counting counting;
    private final SessionScorer scorer;
    private final boolean serves;
    private final PlainSession plain = new PlainSession();
    private boolean isPlain;

    /** Of a series, or of several that count as one, to which the walk goes now. */
    public WalkedSessions(SeriesWalk walk, int[] series, Counting counting) {
        this.walk = walk;
        this.counting = counting;
        this.scorer = SessionScorer.by(counting);
        this.serves = PlainSession.serves(counting);
        plain.count(counting);
        walk.over(series);
    }

    /** Reads the next session; false at the end. */
    public boolean next() {
        if (!walk.nextSession()) {
            return false;
        }
        isPlain = serves && plain.take(walk);
        return true;
    }

    /** How the tries of the series count. */
    public Counting counting() {
        return counting;
    }

    /** The day of the session, in days since 1970-01-01. */
    public int day() {
        return walk.day();
    }

    /** Its label; blank as a rule. */
    public String label() {
        return walk.label();
    }

    /** Whether {@link #plain} says all of it. */
    public boolean isPlain() {
        return isPlain;
    }

    /** Its sums, when it is plain; used again for the next one. */
    public PlainSession plain() {
        return plain;
    }

    /** The session as an object. */
    public Session scored() {
        return scorer.score(walk.group());
    }
}
