package org.leat;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The arrows between the packages of this module, and the calls that are forbidden in it. */
@AnalyzeClasses(packages = "org.leat", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureOfRulesTest {

    @ArchTest
    static final ArchRule the_checker_knows_no_pack_and_no_format = noClasses()
            .that()
            .resideInAPackage("org.leat.check..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.leat.pack..", "org.leat.page..", "org.leat.report..", "com.fasterxml..")
            .because("a later stage never reaches back, and no stage knows the output format");

    @ArchTest
    static final ArchRule rules_know_no_format = noClasses()
            .that()
            .resideInAPackage("org.leat.pack..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.leat.page..", "org.leat.report..", "com.fasterxml..")
            .because("a rule formats no text");

    @ArchTest
    static final ArchRule rules_call_no_laws = noClasses()
            .that()
            .resideInAPackage("org.leat.pack..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.leat.hydraulics..", "org.leat.turbine..", "org.leat.electrics..")
            .because("what a rule needs is a number of the plant or of a case");

    @ArchTest
    static final ArchRule reports_know_no_pack = noClasses()
            .that()
            .resideInAnyPackage("org.leat.report..", "org.leat.page..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.leat.pack..")
            .because("a report words whatever pack it is given");

    @ArchTest
    static final ArchRule reports_know_no_page = noClasses()
            .that()
            .resideInAPackage("org.leat.report..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.leat.page..")
            .because("the page uses the wording of reports, never the other way");

    @ArchTest
    static final ArchRule nothing_prints_or_ends_the_process = noClasses()
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
    static final ArchRule nothing_asks_the_wall_clock = noClasses()
            .should()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(java.time.Instant.class, "now")
            .orShould()
            .callMethod(java.time.LocalDate.class, "now")
            .because("the same input gives the same bytes whenever");

    @ArchTest
    static final ArchRule no_field_is_a_number_or_null = noFields()
            .that()
            .areDeclaredInClassesThat()
            .resideInAnyPackage("org.leat.plant..", "org.leat.check..", "org.leat.pack..")
            .should()
            .haveRawType(Double.class)
            .because("a number that may be unknown is an Amount, an Answer or an OptionalDouble");

    @ArchTest
    static final ArchRule no_method_returns_a_number_or_null = noMethods()
            .that()
            .areDeclaredInClassesThat()
            .resideInAnyPackage("org.leat.plant..", "org.leat.check..", "org.leat.pack..")
            .and()
            .doNotHaveModifier(JavaModifier.SYNTHETIC)
            .should()
            .haveRawReturnType(Double.class)
            .because("a number that may be unknown is an Amount, an Answer or an OptionalDouble");

    @ArchTest
    static final ArchRule packages_form_no_cycles =
            slices().matching("org.leat.(**)").should().beFreeOfCycles();
}
