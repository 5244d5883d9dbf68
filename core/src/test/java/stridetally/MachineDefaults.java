package stridetally;

import java.util.Set;

/** Calls whose answer depends on the day, on chance or on the machine's settings: the same input must give the same bytes. */
public final class MachineDefaults {
    private MachineDefaults() {}

    /** The clock and chance, for the core; the day and the seed are arguments there. */
    public static final Set<String> CLOCK_AND_CHANCE = Set.of(
            "java.lang.System.currentTimeMillis",
            "java.lang.System.nanoTime",
            "java.time.Clock.system",
            "java.time.Clock.systemUTC",
            "java.time.Clock.systemDefaultZone",
            "java.time.Instant.now",
            "java.time.LocalDate.now",
            "java.time.LocalDateTime.now",
            "java.time.LocalTime.now",
            "java.time.OffsetDateTime.now",
            "java.time.ZonedDateTime.now",
            "java.time.Year.now",
            "java.time.YearMonth.now",
            "java.util.Date.<init>()",
            "java.lang.Math.random",
            "java.util.Random.<init>()",
            "java.util.SplittableRandom.<init>()",
            "java.util.UUID.randomUUID",
            "java.util.Collections.shuffle(List)",
            "java.util.concurrent.ThreadLocalRandom.current");

    /** Today without a clock, for the command line, where only {@code Main} makes the clock. */
    public static final Set<String> TODAY_WITHOUT_A_CLOCK = Set.of(
            "java.time.Clock.system",
            "java.time.Clock.systemUTC",
            "java.time.Clock.systemDefaultZone",
            "java.time.Instant.now()",
            "java.time.LocalDate.now()",
            "java.time.LocalDate.now(ZoneId)",
            "java.time.LocalDateTime.now()",
            "java.time.ZonedDateTime.now()",
            "java.util.Date.<init>()",
            "java.lang.System.currentTimeMillis",
            "java.lang.Math.random",
            "java.util.Random.<init>()");

    /** Locale, character set, zone and line end, for both modules. */
    public static final Set<String> SETTINGS = Set.of(
            "java.util.Locale.getDefault",
            "java.nio.charset.Charset.defaultCharset",
            "java.time.ZoneId.systemDefault",
            "java.util.TimeZone.getDefault",
            "java.lang.System.lineSeparator",
            "java.lang.String.format(String,Object[])",
            "java.lang.String.formatted",
            "java.lang.String.toLowerCase()",
            "java.lang.String.toUpperCase()",
            "java.lang.String.getBytes()",
            "java.lang.String.<init>(byte[])",
            "java.lang.String.<init>(byte[],int,int)",
            "java.io.ByteArrayOutputStream.toString()",
            "java.io.InputStreamReader.<init>(InputStream)",
            "java.io.OutputStreamWriter.<init>(OutputStream)",
            "java.io.PrintWriter.<init>(OutputStream)",
            "java.io.PrintWriter.<init>(OutputStream,boolean)",
            "java.io.FileReader.<init>(String)",
            "java.io.FileReader.<init>(File)",
            "java.io.FileWriter.<init>(String)",
            "java.io.FileWriter.<init>(File)",
            "java.util.Scanner.<init>(InputStream)",
            "java.util.Formatter.<init>()",
            "java.util.Formatter.<init>(Appendable)",
            "java.text.DecimalFormat.<init>(String)",
            "java.text.SimpleDateFormat.<init>(String)",
            "java.text.NumberFormat.getInstance()",
            "java.text.NumberFormat.getNumberInstance()",
            "java.text.NumberFormat.getPercentInstance()",
            "java.text.Collator.getInstance()",
            "java.time.format.DateTimeFormatter.ofPattern(String)",
            "java.util.ResourceBundle.getBundle(String)");
}
