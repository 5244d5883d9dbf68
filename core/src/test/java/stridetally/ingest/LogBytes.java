package stridetally.ingest;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Optional;
import stridetally.measures.Catalogue;
import stridetally.model.Settings;
import stridetally.units.DecimalMark;

/** A log in memory. */
public final class LogBytes implements ByteSource {
    private final byte[] bytes;

    /** Of these bytes, which are not copied. */
    public LogBytes(byte[] bytes) {
        this.bytes = bytes;
    }

    /** Of a text in UTF-8. */
    public static LogBytes of(String text) {
        return new LogBytes(text.getBytes(StandardCharsets.UTF_8));
    }

    /** How a bare log is read. */
    public static LogRules rules() {
        return new LogRules(
                Settings.usual(""),
                Catalogue.standard(),
                Optional.empty(),
                LocalDate.MAX,
                DateOrder.UNPROVEN,
                DecimalMark.POINT,
                Optional.empty(),
                "");
    }

    @Override
    public String name() {
        return "log.csv";
    }

    @Override
    public long size() {
        return bytes.length;
    }

    @Override
    public InputStream open() {
        return new ByteArrayInputStream(bytes);
    }
}
