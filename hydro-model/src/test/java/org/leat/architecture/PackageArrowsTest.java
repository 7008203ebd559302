package org.leat.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Clock;
import java.util.Locale;

/** The arrows between the packages of the model. */
@AnalyzeClasses(packages = "org.leat", importOptions = ImportOption.DoNotIncludeTests.class)
class PackageArrowsTest {

    @ArchTest
    static final ArchRule no_package_reaches_back =
            slices().matching("org.leat.(**)").should().beFreeOfCycles().because("data travels one way");

    @ArchTest
    static final ArchRule laws_know_no_design = noClasses()
            .that()
            .resideInAnyPackage("org.leat.law..", "org.leat.hydraulics..", "org.leat.turbine..", "org.leat.electrics..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "org.leat.design..",
                    "org.leat.quantity..",
                    "org.leat.file..",
                    "org.leat.plant..",
                    "org.leat.catalogue..")
            .because("a law is plain doubles in SI, good for any design");

    @ArchTest
    static final ArchRule designs_use_quantities_only = noClasses()
            .that()
            .resideInAPackage("org.leat.design..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "org.leat.law..",
                    "org.leat.hydraulics..",
                    "org.leat.turbine..",
                    "org.leat.electrics..",
                    "org.leat.catalogue..",
                    "org.leat.file..",
                    "org.leat.plant..")
            .because("a design is what the builder chose, not what follows from it");

    @ArchTest
    static final ArchRule files_know_no_physics = noClasses()
            .that()
            .resideInAPackage("org.leat.file..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "org.leat.hydraulics..", "org.leat.turbine..", "org.leat.electrics..", "org.leat.plant..")
            .because("reading a file must not need a solver");

    @ArchTest
    static final ArchRule plants_know_no_file = noClasses()
            .that()
            .resideInAPackage("org.leat.plant..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.leat.file..")
            .because("a design built in code is as good as one read");

    @ArchTest
    static final ArchRule the_rooms_of_the_plant_form_no_cycle =
            slices().matching("org.leat.plant.(*)..").should().beFreeOfCycles().because("data travels one way");

    @ArchTest
    static final ArchRule numbers_know_no_room = noClasses()
            .that()
            .resideInAPackage("org.leat.plant.numbers..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "org.leat.plant",
                    "org.leat.plant.derive..",
                    "org.leat.plant.solve..",
                    "org.leat.plant.solved..",
                    "org.leat.plant.cases..",
                    "org.leat.plant.duties..")
            .because("numbers are what the others share");

    @ArchTest
    static final ArchRule what_is_solved_knows_no_solver = noClasses()
            .that()
            .resideInAPackage("org.leat.plant.solved..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "org.leat.plant",
                    "org.leat.plant.derive..",
                    "org.leat.plant.solve",
                    "org.leat.plant.cases..",
                    "org.leat.plant.duties..")
            .because("whoever reads a result needs no solver");

    @ArchTest
    static final ArchRule deriving_numbers_solves_nothing = noClasses()
            .that()
            .resideInAPackage("org.leat.plant.derive..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "org.leat.plant",
                    "org.leat.plant.solve..",
                    "org.leat.plant.solved..",
                    "org.leat.plant.cases..",
                    "org.leat.plant.duties..")
            .because("a number follows from the design alone");

    @ArchTest
    static final ArchRule solvers_know_numbers_only = noClasses()
            .that()
            .resideInAPackage("org.leat.plant.solve..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "org.leat.plant", "org.leat.plant.derive..", "org.leat.plant.cases..", "org.leat.plant.duties..")
            .because("numbers from anywhere can be solved, and no solver knows which situation it serves");

    @ArchTest
    static final ArchRule cases_take_numbers_as_they_are = noClasses()
            .that()
            .resideInAPackage("org.leat.plant.cases..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.leat.plant", "org.leat.plant.derive..", "org.leat.plant.duties..")
            .because("a case assumes nothing");

    @ArchTest
    static final ArchRule the_same_everywhere = noClasses()
            .should()
            .callMethod(Locale.class, "getDefault")
            .orShould()
            .callMethod(String.class, "toLowerCase")
            .orShould()
            .callMethod(String.class, "toUpperCase")
            .orShould()
            .callMethod(String.class, "format", String.class, Object[].class)
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(Clock.class, "systemDefaultZone")
            .because("the same input gives the same bytes on every machine, locale and day");

    @ArchTest
    static final ArchRule no_law_and_no_table_holds_a_number_or_null = noFields()
            .that()
            .areDeclaredInClassesThat()
            .resideInAnyPackage(
                    "org.leat.law..",
                    "org.leat.hydraulics..",
                    "org.leat.turbine..",
                    "org.leat.electrics..",
                    "org.leat.catalogue..",
                    "org.leat.plant..")
            .should()
            .haveRawType(Double.class)
            .because("a number that may be absent is an Answer, an Amount or an OptionalDouble");

    @ArchTest
    static final ArchRule the_model_prints_nothing = noClasses()
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .because("only the command line prints");
}
