package org.leat.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Method;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javax.measure.quantity.Length;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import org.leat.arbitraries.Designs;
import org.leat.file.DesignReader;
import org.leat.file.DesignWriter;
import org.leat.plant.Plants;
import org.leat.quantity.Si;

/** Designs built in code, part by part. */
class BuildersTest {

    @Test
    void every_record_of_a_design_has_a_builder() throws Exception {
        Set<String> without = new TreeSet<>();
        int records = 0;
        for (JavaClass type : new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("org.leat.design")) {
            if (type.isRecord()
                    && type.getModifiers().contains(JavaModifier.PUBLIC)
                    && !type.getName().contains("Exception")) {
                records++;
                String nested = type.getName().substring("org.leat.design.".length());
                try {
                    Method build = Class.forName("org.leat.design." + nested.replace("$", "") + "Builder")
                            .getMethod("build");
                    assertThat(build.getReturnType().getName()).isEqualTo(type.getName());
                } catch (ClassNotFoundException e) {
                    without.add(nested);
                }
            }
        }
        assertThat(records).isGreaterThan(50);
        assertThat(without).isEmpty();
    }

    @Test
    void what_is_not_set_is_absent_and_lists_are_empty() {
        Section section = SectionBuilder.builder()
                .name("run")
                .length(Si.quantity(84, "m", Length.class))
                .pipe(PipeHoseBuilder.builder()
                        .bore(Si.quantity(50, "mm", Length.class))
                        .build())
                .build();
        assertThat(section.fittings()).isEmpty();
        assertThat(section.fromElevation()).isNull();
    }

    @Test
    void a_design_that_tells_no_devices_says_nothing_of_them_and_an_empty_list_says_there_are_none() {
        Design design = Plants.least();
        Design silent = DesignBuilder.builder(design).protection(null).build();
        Design none = DesignBuilder.builder(design).protection(List.of()).build();
        assertThat(silent.protection()).isNull();
        assertThat(none.protection()).isEmpty();
        assertThat(silent).isNotEqualTo(none);
        assertThat(silent.devices()).isEmpty();
        assertThat(none.devices()).isEmpty();
        assertThat(DesignReader.read(DesignWriter.yaml(silent), "silent.yaml").design())
                .isEqualTo(silent);
        assertThat(DesignReader.read(DesignWriter.yaml(none), "none.yaml").design())
                .isEqualTo(none);
        assertThat(DesignReader.read(DesignWriter.json(none), "none.yaml").design())
                .isEqualTo(none);
    }

    @Test
    void a_record_that_lacks_what_it_needs_is_refused_by_name() {
        assertThatExceptionOfType(ImpossibleValueException.class)
                .isThrownBy(() -> SectionBuilder.builder().build())
                .withMessageContaining("name: found nothing, expected a value")
                .withMessageContaining("pipe: found nothing");
    }

    @Property(tries = 40, shrinking = ShrinkingMode.OFF)
    void a_builder_that_begins_with_a_design_builds_the_same(@ForAll("any") Design design) {
        assertThat(DesignBuilder.builder(design).build()).isEqualTo(design);
    }

    @Provide
    Arbitrary<Design> any() {
        return Designs.plausible();
    }
}
