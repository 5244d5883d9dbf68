package stridetally.cli.options;

import stridetally.forecast.Forecaster;
import stridetally.forecast.OwnLineForecaster;
import stridetally.forecast.PooledForecaster;
import stridetally.model.Thresholds;

/** The ways of forecasting. */
public enum ForecastWay {
    /** With what the whole caseload shows. */
    POOLED("pooled"),
    /** From the student's own line alone. */
    OWN("own-line");

    private final String id;

    ForecastWay(String id) {
        this.id = id;
    }

    /** The id for method lines. */
    public String id() {
        return id;
    }

    /** The forecaster. */
    public Forecaster forecaster(Thresholds thresholds) {
        return this == POOLED ? new PooledForecaster(thresholds) : new OwnLineForecaster(thresholds);
    }

    /** As typed. */
    @Override
    public String toString() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
