package stridetally.simulate;

import stridetally.forecast.Forecast;

/** How well a way of forecasting did on goals whose truth is known. */
public final class CallScore {
    private int goals;
    private int wrong;
    private int covered;
    private double squares;
    private double width;

    /** One more goal. */
    void add(Forecast.Outlook outlook, MadeChild child) {
        double low = (outlook.low80() - MadeCases.BASELINE) / MadeCases.WAY;
        double high = (outlook.high80() - MadeCases.BASELINE) / MadeCases.WAY;
        call(outlook.chanceLine(), child);
        covered += low <= child.lineAtDue() && child.lineAtDue() <= high ? 1 : 0;
        width += high - low;
    }

    /** One more goal of which only a chance is said. */
    void call(double chance, MadeChild child) {
        double truth = child.reaches() ? 1 : 0;
        goals++;
        wrong += chance >= 0.5 == child.reaches() ? 0 : 1;
        squares += (chance - truth) * (chance - truth);
    }

    /** How many goals. */
    public int goals() {
        return goals;
    }

    /** Share of goals called wrong: chance of the line 0.5 or more against what came. */
    public double wrong() {
        return (double) wrong / goals;
    }

    /** Mean square of chance less what came. */
    public double brier() {
        return squares / goals;
    }

    /** Share of goals whose line came to lie within the 80 % interval. */
    public double coverage() {
        return (double) covered / goals;
    }

    /** Mean width of the interval; 1 = the whole way. */
    public double width() {
        return width / goals;
    }
}
