package stridetally.cli.options;

/** Reads the word of {@code --forecast}. */
final class ForecastWayWord extends Word<ForecastWay> {
    ForecastWayWord() {
        super(ForecastWay.class);
    }
}
