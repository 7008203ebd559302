package org.leat;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The arrows between all artifacts, seen from the one that has them all. */
@AnalyzeClasses(
        packages = "org.leat",
        importOptions = {ImportOption.DoNotIncludeTests.class, ArchitectureOfAllTest.NoTestJars.class})
class ArchitectureOfAllTest {

    static final class NoTestJars implements ImportOption {
        @Override
        public boolean includes(Location location) {
            return !location.contains("-tests.jar");
        }
    }

    @ArchTest
    static final ArchRule only_the_command_line_knows_itself = noClasses()
            .that()
            .resideOutsideOfPackage("org.leat.cli..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.leat.cli..", "picocli..")
            .because("what only a command line needs stays out of the embedding path");

    @ArchTest
    static final ArchRule only_rule_files_and_the_command_line_know_of_expressions = noClasses()
            .that()
            .resideOutsideOfPackages("org.leat.cli..", "org.leat.rulefile..", "org.leat.expression..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.leat.rulefile..", "org.leat.expression..", "dev.cel..", "com.google..")
            .because("who reads no rule files does not get an expression engine");

    @ArchTest
    static final ArchRule only_the_route_of_the_command_line_reads_tracks = noClasses()
            .that()
            .resideOutsideOfPackage("org.leat.route..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("io.jenetics..")
            .because("who walks no track does not get a library that reads them");

    @ArchTest
    static final ArchRule only_the_command_line_prints_and_ends_the_process = noClasses()
            .that()
            .resideOutsideOfPackage("org.leat.cli..")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .callMethod(System.class, "exit", int.class)
            .because("a library leaves the terminal to the program that embeds it");

    @ArchTest
    static final ArchRule nothing_asks_the_environments_habits = ForbiddenCalls.HABITS_OF_THE_ENVIRONMENT;

    @ArchTest
    static final ArchRule packages_form_no_cycles =
            slices().matching("org.leat.(**)").should().beFreeOfCycles();
}
