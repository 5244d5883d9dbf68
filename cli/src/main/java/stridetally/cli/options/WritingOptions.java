package stridetally.cli.options;

import picocli.CommandLine.Option;
import stridetally.ingest.DateOrder;
import stridetally.units.DecimalMark;

/** How dates and numbers of a log are written, where the log does not prove it. */
public final class WritingOptions {
    @Option(
            names = "--date-order",
            paramLabel = "ORDER",
            converter = DateOrderWord.class,
            description = "day-first or month-first, for dates such as 3/4/2026 that prove neither.")
    private DateOrder order = DateOrder.UNPROVEN;

    @Option(
            names = "--decimal",
            paramLabel = "MARK",
            converter = DecimalWord.class,
            description = "point or comma, the decimal mark of the log (default: point).")
    private DecimalMark decimals = DecimalMark.POINT;

    /** The declared order of dates. */
    public DateOrder order() {
        return order;
    }

    /** The decimal mark. */
    public DecimalMark decimals() {
        return decimals;
    }
}
