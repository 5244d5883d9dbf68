package stridetally.cli.options;

import picocli.CommandLine.Model.CommandSpec;
import stridetally.ingest.DateOrder;
import stridetally.ingest.WhichReader;
import stridetally.units.DecimalMark;

/** How dates and numbers of a log are written, where the log does not prove it. */
public final class WritingOptions {
    private final ValueOption<DateOrder> order = ValueOption.of(
            "--date-order",
            "ORDER",
            DateOrder.class,
            new DateOrderWord(),
            "day-first or month-first, for dates such as 3/4/2026 that prove neither.");

    private final ValueOption<DecimalMark> decimals = ValueOption.of(
            "--decimal",
            "MARK",
            DecimalMark.class,
            new DecimalWord(),
            "point or comma, the decimal mark of the log (default: point).");

    private final ValueOption<WhichReader> reader =
            ValueOption.hidden("--reader", WhichReader.class, new WhichReaderWord());

    /** Declares the options. */
    public void addTo(CommandSpec command) {
        order.addTo(command);
        decimals.addTo(command);
        reader.addTo(command);
    }

    /** The declared order of dates. */
    public DateOrder order() {
        return order.typed().orElse(DateOrder.UNPROVEN);
    }

    /** The decimal mark. */
    public DecimalMark decimals() {
        return decimals.typed().orElse(DecimalMark.POINT);
    }

    /** Which reader is to read the log. */
    public WhichReader reader() {
        return reader.typed().orElse(WhichReader.BY_SIZE);
    }
}
