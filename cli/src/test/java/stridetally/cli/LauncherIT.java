package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packaged command, as a person starts it. */
final class LauncherIT {
    private static final Path HOME = Path.of("..").toAbsolutePath().normalize();
    private static final Path LAUNCHER = HOME.resolve("scripts/stridetally");
    private static final Path ARCHIVE = HOME.resolve("cli/target/stridetally.jsa");

    @TempDir
    Path elsewhere;

    @BeforeAll
    static void needsThePackagedJar() throws IOException {
        try (Stream<Path> files = Files.list(HOME.resolve("cli/target"))) {
            assumeTrue(files.anyMatch(file -> file.getFileName().toString().matches("stridetally-cli-[0-9].*\\.jar")));
        }
    }

    @Test
    void runsThroughALinkFromAnotherFolder() throws Exception {
        Path link = Files.createSymbolicLink(elsewhere.resolve("tally"), LAUNCHER);
        Path second = Files.createSymbolicLink(elsewhere.resolve("again"), Path.of("tally"));
        Run run = start(Map.of(), second.toString(), "--version");
        assertEquals(0, run.exitCode(), run.err());
        assertTrue(run.out().startsWith("stridetally "), run.out());
        assertTrue(Files.exists(link));
    }

    @Test
    void theJarRunsWithoutTheLauncher() throws Exception {
        String jar;
        try (Stream<Path> files = Files.list(HOME.resolve("cli/target"))) {
            jar = files.map(Path::toString)
                    .filter(name -> name.matches(".*/stridetally-cli-[0-9.]+\\.jar"))
                    .findFirst()
                    .orElseThrow();
        }
        Run run = start(Map.of(), java(), "-jar", jar, "--help");
        assertEquals(Run.of("--help"), run);
    }

    @Test
    void todayIsADayOfThisPlace() throws Exception {
        Path log = elsewhere.resolve("log.csv");
        Files.writeString(log, "student,date,measure,value\nS1,2999-01-01,line-steps,4\n");
        // Fourteen hours before and twelve behind UTC: never the same day in both.
        for (String zone : List.of("Etc/GMT-14", "Etc/GMT+12")) {
            LocalDate before = LocalDate.now(ZoneId.of(zone));
            Run run = start(Map.of("TZ", zone), LAUNCHER.toString(), "score", log.toString());
            LocalDate after = LocalDate.now(ZoneId.of(zone));
            assertTrue(
                    run.err().contains("1 try after " + before + " left out")
                            || run.err().contains("1 try after " + after + " left out"),
                    run.err());
        }
    }

    @Test
    void exitCodesReachTheShell() throws Exception {
        assertEquals(2, start(Map.of(), LAUNCHER.toString(), "no-such-command").exitCode());
        Run full = start(Map.of(), "bash", "-c", LAUNCHER + " --help >/dev/full");
        assertEquals(4, full.exitCode());
        assertFalse(full.err().contains("\tat "), full.err());
    }

    @Test
    void aReaderThatHasSeenEnoughIsNoError() throws Exception {
        Run run = start(
                Map.of(),
                "bash",
                "-c",
                "set -o pipefail; " + LAUNCHER + " generate-completion | true; echo ${PIPESTATUS[0]}");
        assertEquals("0\n", run.out(), run.err());
        assertEquals("", run.err());
    }

    @Test
    void anOldJavaIsRefusedInOneSentence() throws Exception {
        Path jdk = elsewhere.resolve("jdk8");
        Files.createDirectories(jdk.resolve("bin"));
        Files.createSymbolicLink(jdk.resolve("bin/java"), Path.of(java()));
        Files.writeString(jdk.resolve("release"), "JAVA_VERSION=\"1.8.0_392\"\n");
        Run run = start(Map.of("JAVA_HOME", jdk.toString()), LAUNCHER.toString(), "--help");
        assertEquals(
                new Run(
                        4,
                        "",
                        "stridetally: Java 17 or newer is needed, and " + jdk
                                + "/bin/java is 1.8.0_392; install a newer JDK or set JAVA_HOME to one.\n"),
                run);
    }

    @Test
    void aMissingBuildIsRefusedInOneSentence() throws Exception {
        Path scripts = Files.createDirectory(elsewhere.resolve("scripts"));
        Files.copy(LAUNCHER, scripts.resolve("stridetally"));
        Run run = start(Map.of(), "bash", scripts.resolve("stridetally").toString(), "--help");
        assertEquals(4, run.exitCode());
        assertEquals(
                "stridetally: it has not been built yet; run scripts/demo, scripts/test or 'mvn package' in "
                        + elsewhere.toRealPath() + " first.\n",
                run.err());
    }

    /** Tablesaw looks at every jar when it is first touched, so what does not need it must not. */
    @Test
    void helpComesFromTheArchiveAndLoadsNoTablesaw() throws Exception {
        assumeTrue(Files.exists(ARCHIVE), "this Java could not make an archive");
        Path log = elsewhere.resolve("classes.txt");
        Run run = start(
                Map.of("STRIDETALLY_JAVA_OPTIONS", "-Xlog:class+load:file=" + log), LAUNCHER.toString(), "--help");
        assertEquals(Run.of("--help"), run);
        List<String> loaded = Files.readAllLines(log);
        assertEquals(
                List.of(),
                loaded.stream().filter(line -> line.contains("tech.tablesaw")).toList());
        assertEquals(
                List.of(),
                loaded.stream().filter(line -> line.contains("source: file:")).toList());
    }

    private static String java() {
        return System.getProperty("java.home") + File.separator + "bin" + File.separator + "java";
    }

    private Run start(Map<String, String> environment, String... command) throws IOException, InterruptedException {
        Path out = elsewhere.resolve("out.txt");
        Path err = elsewhere.resolve("err.txt");
        ProcessBuilder builder = new ProcessBuilder(new ArrayList<>(List.of(command)))
                .directory(elsewhere.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().putAll(environment);
        int exitCode = builder.start().waitFor();
        return new Run(
                exitCode, Files.readString(out, StandardCharsets.UTF_8), Files.readString(err, StandardCharsets.UTF_8));
    }
}
