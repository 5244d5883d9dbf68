package stridetally.simulate;

import java.util.ArrayList;
import java.util.List;
import stridetally.forecast.Forecast;
import stridetally.forecast.ForecastCase;
import stridetally.forecast.Forecaster;
import stridetally.forecast.Hyper;
import stridetally.forecast.KnownCaseload;
import stridetally.forecast.OwnLineForecaster;
import stridetally.forecast.PooledForecaster;
import stridetally.model.Thresholds;

/** One scenario judged after so many weeks, by four ways: four points, own line, pooled, and the limit. */
public final class CalibrationCell {
    private static final int LAST_POINTS = 4;

    private final Scenario scenario;
    private final int weeks;
    private final CallScore fourPoints = new CallScore();
    private final CallScore own = new CallScore();
    private final CallScore pooled = new CallScore();
    private final CallScore limit = new CallScore();
    private final int[] reached = new int[3];
    private final int[] judged = new int[3];
    private int children;
    private long sessions;

    CalibrationCell(Scenario scenario, int weeks) {
        this.scenario = scenario;
        this.weeks = weeks;
    }

    /** One caseload more; goals with too few points are left out. */
    void add(int goals, long seed, ChanceTenths tenths) {
        ChildMaker maker = new ChildMaker(scenario, seed);
        List<MadeChild> made = new ArrayList<>();
        for (int i = 0; i < goals; i++) {
            made.add(maker.next());
        }
        List<ForecastCase> cases =
                made.stream().map(child -> MadeCases.after(weeks, child)).toList();
        List<Forecast> ownLine = by(new OwnLineForecaster(Thresholds.USUAL), cases);
        List<Forecast> ours = by(new PooledForecaster(Thresholds.USUAL), cases);
        List<Forecast> best = by(new KnownCaseload(Thresholds.USUAL, truth(), scenario.bend()), cases);
        for (int i = 0; i < goals; i++) {
            if (ownLine.get(i) instanceof Forecast.Outlook alone
                    && ours.get(i) instanceof Forecast.Outlook withOthers
                    && best.get(i) instanceof Forecast.Outlook known) {
                MadeChild child = made.get(i);
                children++;
                sessions += cases.get(i).series().points().size();
                own.add(alone, child);
                pooled.add(withOthers, child);
                limit.add(known, child);
                fourPoints.call(allBelow(child) ? 0 : 1, child);
                boolean came = child.satisfiesAfter(7 * weeks, MadeCases.SESSIONS_MET);
                tenths.add(withOthers.chance(), came);
                judge(withOthers.chance(), came);
            }
        }
    }

    private static List<Forecast> by(Forecaster forecaster, List<ForecastCase> cases) {
        return forecaster.forecast(cases);
    }

    private void judge(double chance, boolean came) {
        int word = chance >= Thresholds.USUAL.onCourse() ? 0 : chance <= Thresholds.USUAL.offCourse() ? 2 : 1;
        judged[word]++;
        reached[word] += came ? 1 : 0;
    }

    /** What the maker knows: the jump's children are told as a straight line, which they are not. */
    private Hyper truth() {
        Scenario.Shape shape = scenario.shape();
        return new Hyper(
                0,
                ChildMaker.SPREAD_LEVEL,
                ChildMaker.MEAN_WAY,
                ChildMaker.SPREAD_WAY,
                Math.log(shape.noise()),
                0.01,
                shape.carry(),
                0);
    }

    private boolean allBelow(MadeChild child) {
        List<MadeSession> known = child.sessions().stream()
                .filter(session -> session.day() <= 7 * weeks)
                .toList();
        return known.subList(known.size() - LAST_POINTS, known.size()).stream()
                .allMatch(session -> session.value() < session.day() / (7.0 * ChildMaker.WEEKS));
    }

    public Scenario scenario() {
        return scenario;
    }

    public int weeks() {
        return weeks;
    }

    /** Sessions that a goal had by then, on average; of a cell that holds goals. */
    public double sessions() {
        return (double) sessions / children;
    }

    /** Called off course when the last four points lie below the aim line. */
    public CallScore fourPoints() {
        return fourPoints;
    }

    public CallScore own() {
        return own;
    }

    public CallScore pooled() {
        return pooled;
    }

    /** The same posterior told the caseload's true values. */
    public CallScore limit() {
        return limit;
    }

    /** Goals judged on course (0), too close to call (1), off course (2). */
    public int judged(int word) {
        return judged[word];
    }

    /** Of these, those whose criterion was satisfied by the due date. */
    public int reached(int word) {
        return reached[word];
    }
}
