package stridetally.cli.options;

import picocli.CommandLine.Model.CommandSpec;

/** Which way to forecast: {@code --forecast}. */
public final class ForecastOption {
    private final ValueOption<ForecastWay> way = ValueOption.of(
            "--forecast",
            "WAY",
            ForecastWay.class,
            new ForecastWayWord(),
            "${COMPLETION-CANDIDATES}: with what the whole caseload shows (usual), or from each student's"
                    + " own line alone.");

    /** Declares the option. */
    public void addTo(CommandSpec command) {
        way.addTo(command);
    }

    /** The way asked for. */
    public ForecastWay way() {
        return way.typed().orElse(ForecastWay.POOLED);
    }
}
