package stridetally.cli;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
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
import org.junit.jupiter.api.Test;
import stridetally.Exempt.Fence;
import stridetally.MachineDefaults;
import stridetally.Rules;

/** What the packages of the command line may know of each other, of libraries and of the machine. */
@AnalyzeClasses(packages = "stridetally.cli", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {
    private static final DescribedPredicate<JavaClass> DISK = DescribedPredicate.describe(
            "the disk",
            javaClass -> Set.of(
                            "java.io.File",
                            "java.io.FileInputStream",
                            "java.io.FileOutputStream",
                            "java.io.FileReader",
                            "java.io.FileWriter",
                            "java.io.RandomAccessFile",
                            "java.util.zip.ZipFile",
                            "java.nio.file.Files",
                            "java.nio.channels.FileChannel")
                    .contains(javaClass.getName()));

    @ArchTest
    static final ArchRule everyPackageIsListed = classes()
            .should()
            .resideInAnyPackage(
                    "stridetally.cli",
                    "stridetally.cli.commands..",
                    "stridetally.cli.options..",
                    "stridetally.cli.input..",
                    "stridetally.cli.output..",
                    "stridetally.cli.files..")
            .because("a new package must say what it holds");

    @ArchTest
    static final ArchRule optionsKnowNoCommand = noClasses()
            .that()
            .resideInAPackage("stridetally.cli.options..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("stridetally.cli.commands..")
            .because("an option serves several commands");

    @ArchTest
    static final ArchRule filesKnowNothingOfTheCommandLine = noClasses()
            .that()
            .resideInAPackage("stridetally.cli.files..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "picocli..", "stridetally.cli", "stridetally.cli.commands..", "stridetally.cli.options..")
            .because("writing a file whole has nothing to do with who asked");

    @ArchTest
    static final ArchRule theCoreKnowsTheLibraries = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "org.apache.commons..", "tech.tablesaw..", "com.fasterxml..", "org.dhatim..", "org.commonmark..")
            .because("a command loads, calls, renders and returns a code");

    @ArchTest
    static final ArchRule onlyFilesTouchesTheDisk = noClasses()
            .that(heldBy(Fence.DISK))
            .and()
            .resideOutsideOfPackage("stridetally.cli.files..")
            .should()
            .dependOnClassesThat(DISK)
            .because("paths may be passed along, but one place opens and replaces files");

    @ArchTest
    static final ArchRule onlyMainKnowsTheProcess = noClasses()
            .that()
            .doNotBelongToAnyOf(Main.class)
            .and(heldBy(Fence.MACHINE))
            .should(Rules.use(Set.of(
                    "java.lang.System.out",
                    "java.lang.System.err",
                    "java.lang.System.in",
                    "java.lang.System.exit",
                    "java.lang.System.getenv",
                    "java.lang.System.getProperty",
                    "java.lang.System.console",
                    "java.lang.Runtime.exit",
                    "java.lang.Runtime.halt")))
            .because("a command must run in a test as it runs in a shell");

    @ArchTest
    static final ArchRule onlyMainMakesAClock = noClasses()
            .that()
            .doNotBelongToAnyOf(Main.class, LazyClock.class)
            .should(Rules.use(MachineDefaults.TODAY_WITHOUT_A_CLOCK))
            .because("the tests run on a fixed day");

    @ArchTest
    static final ArchRule onlyMainTakesTheLazyClock = noClasses()
            .that()
            .doNotBelongToAnyOf(Main.class, LazyClock.class)
            .should()
            .dependOnClassesThat()
            .belongToAnyOf(LazyClock.class)
            .because("the tests run on a fixed day");

    @ArchTest
    static final ArchRule nothingDependsOnTheSettingsOfTheMachine = noClasses()
            .that()
            .doNotBelongToAnyOf(LazyClock.class)
            .and(heldBy(Fence.MACHINE))
            .should(Rules.use(MachineDefaults.SETTINGS))
            .because("the same input must give the same bytes on another machine");

    @ArchTest
    static final ArchRule noGeneralExceptionIsThrown = noClasses()
            .that(heldBy(Fence.GENERAL_EXCEPTION))
            .should(Rules.throwGeneralExceptions())
            .because("a failure says by its type whose it is");

    @ArchTest
    static final ArchRule noGeneralExceptionIsCaught = noClasses()
            .that(heldBy(Fence.GENERAL_EXCEPTION))
            .should(Rules.catchGeneralExceptions())
            .because("one handler turns failures into sentences");

    @ArchTest
    static final ArchRule commandsCatchNothing = noClasses()
            .that()
            .resideInAPackage("stridetally.cli.commands..")
            .should(Rules.catchAnything())
            .because("one handler turns failures into sentences")
            .allowEmptyShould(true);

    @Test
    void noSourceCatchesThrowable() throws IOException {
        assertEquals(
                List.of(),
                Rules.sourcesThatCatchThrowable(Path.of("src/main/java")),
                "one handler turns failures into sentences");
    }

    @ArchTest
    static void everyExemptionHasAReason(JavaClasses classes) {
        Set<String> exemptions = Rules.exemptions(classes);
        System.out.println("Exemptions in cli: " + exemptions.size());
        exemptions.forEach(System.out::println);
        assertTrue(exemptions.stream().noneMatch(line -> line.strip().endsWith(":")), "an exemption without a reason");
    }
}
