package stridetally.report;

import java.util.Optional;
import stridetally.scoring.Bound;
import stridetally.scoring.Session;
import stridetally.scoring.SessionStatus;

/** The marks of sessions on a drawn chart: a shape each, so that none needs its colour. In the order of the key. */
enum ChartMark {
    /** A disc. */
    SESSION("session"),
    /** A ring. */
    SOME_HELP("session, some tries with more help (in no value)"),
    /** A triangle that points up. */
    AT_LEAST("at least this: a try was stopped at the cap"),
    /** A triangle that points down. */
    AT_MOST("at most this: a try was stopped at the cap"),
    /** A cross below the field. */
    ALL_HELP("no value: every try with more help"),
    /** A short bar below the field. */
    NOT_TRIED("no value: refused, absent or not tested"),
    /** A small ring below the field. */
    NO_VALUE("no value for another reason");

    private static final double SIZE = 4;

    private final String words;

    ChartMark(String words) {
        this.words = words;
    }

    /** What the key says. */
    String words() {
        return words;
    }

    /** Whether it stands at a value; else it stands below the field. */
    boolean hasValue() {
        return compareTo(AT_MOST) <= 0;
    }

    /** The mark of a session. */
    static ChartMark of(Session session) {
        Optional<Measured> value = Measured.of(session.value()).value();
        if (value.isEmpty()) {
            return session.status() != SessionStatus.TRIED ? NOT_TRIED : session.assistedOnly() ? ALL_HELP : NO_VALUE;
        }
        boolean someHelp = session.permittedTries() + session.doubtfulTries() < session.recorded();
        return value.get()
                .bound()
                .map(bound -> bound == Bound.AT_LEAST ? AT_LEAST : AT_MOST)
                .orElse(someHelp ? SOME_HELP : SESSION);
    }

    /** Draws it around a place. */
    void draw(SvgCanvas canvas, double x, double y) {
        SvgCanvas.Stroke stroke = SvgCanvas.Stroke.solid(Ink.TEXT, "1.6");
        switch (this) {
            case SESSION -> canvas.circle(x, y, SIZE, Ink.TEXT);
            case SOME_HELP -> canvas.circle(x, y, SIZE, Ink.PAPER);
            case AT_LEAST -> canvas.shape(Ink.TEXT, x - 5, y + 4, x + 5, y + 4, x, y - 5);
            case AT_MOST -> canvas.shape(Ink.TEXT, x - 5, y - 4, x + 5, y - 4, x, y + 5);
            case ALL_HELP -> {
                canvas.line(x - SIZE, y - SIZE, x + SIZE, y + SIZE, stroke);
                canvas.line(x - SIZE, y + SIZE, x + SIZE, y - SIZE, stroke);
            }
            case NOT_TRIED -> canvas.line(x - SIZE, y, x + SIZE, y, stroke);
            case NO_VALUE -> canvas.circle(x, y, 2.5, Ink.PAPER);
        }
    }
}
