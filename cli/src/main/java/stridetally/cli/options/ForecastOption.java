package stridetally.cli.options;

import picocli.CommandLine.Option;

/** Which way to forecast: {@code --forecast}. */
public final class ForecastOption {
    @Option(
            names = "--forecast",
            paramLabel = "WAY",
            converter = ForecastWayWord.class,
            description = "${COMPLETION-CANDIDATES}: with what the whole caseload shows (usual), or from each student's"
                    + " own line alone.")
    private ForecastWay way = ForecastWay.POOLED;

    /** The way asked for. */
    public ForecastWay way() {
        return way;
    }
}
