package stridetally.forecast;

import java.util.List;
import stridetally.model.Thresholds;

/**
 * A forecaster that is told what the caseload has in common instead of finding it out: the limit that no way of pooling
 * can beat on made-up caseloads, and a check of the arithmetic.
 *
 * @param hyper the caseload's values
 * @param bend of the learning curve, 0 = straight
 */
public record KnownCaseload(Thresholds thresholds, Hyper hyper, double bend) implements Forecaster {

    @Override
    public List<Forecast> forecast(List<ForecastCase> caseload) {
        HyperPosterior known = new HyperPosterior(List.of(HyperPosterior.Place.of(hyper, new LearningCurve(bend, 0))));
        return PooledForecaster.forecast(caseload, thresholds, pool -> known);
    }
}
