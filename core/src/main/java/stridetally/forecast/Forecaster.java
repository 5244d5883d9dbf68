package stridetally.forecast;

import java.util.List;

/** A way of forecasting. It sees the whole caseload at once, because what other goals show is evidence on this one. */
public interface Forecaster {

    /**
     * One forecast for each case, in the same order. The same caseload gives the same figures, whatever the codes of the
     * students and whatever part of it is shown.
     */
    List<Forecast> forecast(List<ForecastCase> caseload);
}
