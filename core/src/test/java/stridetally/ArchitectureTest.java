package stridetally;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stridetally.Rules.heldBy;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stridetally.Exempt.Fence;

/** What the packages of the core may know of each other, of libraries and of the machine. */
@AnalyzeClasses(packages = "stridetally", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {
    /** In the order of the data's way; a package may use only those before it. */
    private static final List<String> PACKAGES = List.of(
            "problem",
            "units",
            "stats",
            "model",
            "table",
            "measures",
            "ingest",
            "logbook",
            "recordings",
            "scoring",
            "trend",
            "forecast",
            "simulate",
            "cohort",
            "share",
            "plan",
            "report");

    private static final DescribedPredicate<JavaClass> DISK = resideInAPackage("java.nio.file..")
            .or(DescribedPredicate.describe(
                    "a file of java.io or java.util.zip",
                    javaClass -> Set.of(
                                    "java.io.File",
                                    "java.io.FileInputStream",
                                    "java.io.FileOutputStream",
                                    "java.io.FileReader",
                                    "java.io.FileWriter",
                                    "java.io.RandomAccessFile",
                                    "java.util.zip.ZipFile",
                                    "java.util.jar.JarFile")
                            .contains(javaClass.getName())))
            .as("the disk");

    @ArchTest
    static final ArchRule everyPackageIsListed = classes()
            .should()
            .resideInAnyPackage(
                    Stream.concat(Stream.of("stridetally"), PACKAGES.stream().map(ArchitectureTest::below))
                            .toArray(String[]::new))
            .because("a new package must say where it stands on the data's way");

    @ArchTest
    static void aPackageUsesOnlyThoseBeforeIt(JavaClasses classes) {
        for (int i = 0; i < PACKAGES.size() - 1; i++) {
            String[] later = PACKAGES.subList(i + 1, PACKAGES.size()).stream()
                    .map(ArchitectureTest::below)
                    .toArray(String[]::new);
            noClasses()
                    .that()
                    .resideInAPackage(below(PACKAGES.get(i)))
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(later)
                    .because("the data go one way, and so must the reader")
                    .allowEmptyShould(true)
                    .check(classes);
        }
    }

    @ArchTest
    static final ArchRule packagesFormNoCycle = slices().matching("stridetally.(*)..")
            .should()
            .beFreeOfCycles()
            .because("two packages that need each other are one");

    @ArchTest
    static final ArchRule theCommandLineLibraryStaysOut =
            fence("picocli..").because("the core is used without a command line too");

    @ArchTest
    static final ArchRule commonsCsvStaysInTable =
            fence("org.apache.commons.csv..", "table").because("one place knows the dialect of the files");

    @ArchTest
    static final ArchRule theReaderOfWorkbooksStaysInIngest = fence("org.dhatim.fastexcel.reader..", "ingest")
            .because("nothing reads a workbook that the guard has not unpacked");

    @ArchTest
    static final ArchRule theWriterOfWorkbooksStaysInReport =
            fence("org.dhatim.fastexcel", "report").because("a workbook is one way to write a document");

    @ArchTest
    static final ArchRule commonsMathStaysInStatsAndForecast =
            fence("org.apache.commons.math3..", "stats", "forecast").because("a number is computed where it is tested");

    @ArchTest
    static final ArchRule commonsStatisticsStaysInStatsAndForecast = fence(
                    "org.apache.commons.statistics..", "stats", "forecast")
            .because("a number is computed where it is tested");

    @ArchTest
    static final ArchRule theRankTestOfCommonsMathIsNotUsed = noClasses()
            .should()
            .dependOnClassesThat()
            .haveFullyQualifiedName("org.apache.commons.math3.stat.inference.MannWhitneyUTest")
            .because("it gives the larger U and a rough p (its issue MATH-1453); Commons Statistics has the exact one");

    @ArchTest
    static final ArchRule tablesawStaysInCohort =
            fence("tech.tablesaw..", "cohort").because("its first use costs half a second and a look at every jar");

    @ArchTest
    static final ArchRule commonmarkStaysInReport = fence("org.commonmark..", "report")
            .because("one place turns Markdown into HTML, and only when somebody asks for it");

    @ArchTest
    static final ArchRule onlyTheLogbookTouchesTheDisk = noClasses()
            .that(heldBy(Fence.DISK))
            .and()
            .resideOutsideOfPackage("stridetally.logbook..")
            .and(DescribedPredicate.not(assignableTo("stridetally.ingest.ByteSource")))
            .should()
            .dependOnClassesThat(DISK)
            .because("the core reads a Reader or a ByteSource and writes an Appendable, so tests need no files");

    @ArchTest
    static final ArchRule thereIsNoNetwork = noClasses()
            .should()
            .dependOnClassesThat(resideInAnyPackage("java.net..", "javax.net..", "java.rmi..")
                    .and(DescribedPredicate.describe(
                            "that can connect", type -> !type.getName().equals("java.net.URI"))))
            .because("data of children never leave the machine by themselves");

    @ArchTest
    static final ArchRule theProcessIsLeftAlone = noClasses()
            .should(Rules.use(Set.of(
                    "java.lang.System.out",
                    "java.lang.System.err",
                    "java.lang.System.in",
                    "java.lang.System.exit",
                    "java.lang.System.getenv",
                    "java.lang.System.getProperty",
                    "java.lang.System.getProperties",
                    "java.lang.System.console",
                    "java.lang.Runtime.exit",
                    "java.lang.Runtime.halt",
                    "java.lang.Boolean.getBoolean",
                    "java.lang.Integer.getInteger",
                    "java.lang.Throwable.printStackTrace")))
            .because("only the command line speaks to the person and knows the surroundings");

    @ArchTest
    static final ArchRule resourcesAreOpenedInMeasuresOnly = noClasses()
            .that()
            .resideOutsideOfPackage("stridetally.measures..")
            .and(heldBy(Fence.DISK))
            .should(Rules.use(Set.of(
                    "java.lang.Class.getResource",
                    "java.lang.Class.getResourceAsStream",
                    "java.lang.ClassLoader.getResource",
                    "java.lang.ClassLoader.getResourceAsStream")))
            .because("the catalogue is opened by one loader");

    @ArchTest
    static final ArchRule thereIsNoClockAndNoChance = noClasses()
            .that(heldBy(Fence.MACHINE))
            .should(Rules.use(MachineDefaults.CLOCK_AND_CHANCE))
            .because("the day and the seed arrive as arguments: same input, same bytes");

    @ArchTest
    static final ArchRule nothingDependsOnTheSettingsOfTheMachine = noClasses()
            .that(heldBy(Fence.MACHINE))
            .should(Rules.use(MachineDefaults.SETTINGS))
            .because("the same input must give the same bytes on another machine");

    @ArchTest
    static final ArchRule valuePackagesHoldValues = classes()
            .that()
            .resideInAnyPackage("stridetally.model..", "stridetally.units..", "stridetally.measures..")
            .and()
            .areTopLevelClasses()
            .and()
            .doNotHaveSimpleName("package-info")
            .and(heldBy(Fence.VALUE))
            .should(Rules.beValues())
            .because("what is passed along must not change under the reader")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule noGeneralExceptionIsThrown = noClasses()
            .that(heldBy(Fence.GENERAL_EXCEPTION))
            .should(Rules.throwGeneralExceptions())
            .because("a failure says by its type whose it is");

    @ArchTest
    static final ArchRule noGeneralExceptionIsCaught = noClasses()
            .that(heldBy(Fence.GENERAL_EXCEPTION))
            .should(Rules.catchGeneralExceptions())
            .because("catching everything hides defects");

    @Test
    void noSourceCatchesThrowable() throws IOException {
        assertEquals(
                List.of(),
                Rules.sourcesThatCatchThrowable(Path.of("src/main/java")),
                "catching everything hides defects");
    }

    @ArchTest
    static void everyExemptionHasAReason(JavaClasses classes) {
        Set<String> exemptions = Rules.exemptions(classes);
        System.out.println("Exemptions in core: " + exemptions.size());
        exemptions.forEach(System.out::println);
        assertTrue(exemptions.stream().noneMatch(line -> line.strip().endsWith(":")), "an exemption without a reason");
    }

    private static String below(String name) {
        return "stridetally." + name + "..";
    }

    private static com.tngtech.archunit.lang.syntax.elements.ClassesShouldConjunction fence(
            String library, String... allowed) {
        String[] inside = Stream.of(allowed).map(ArchitectureTest::below).toArray(String[]::new);
        return noClasses()
                .that(heldBy(Fence.LIBRARY))
                .and()
                .resideOutsideOfPackages(inside)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library);
    }
}
