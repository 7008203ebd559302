package org.leat.catalogue.tables;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.leat.design.Making;

class RunnerMaterialTest {

    @Test
    void every_row_is_possible_and_names_its_source() {
        assertThat(RunnerMaterial.all()).hasSizeGreaterThan(10).allSatisfy(row -> {
            assertThat(row.density()).isBetween(900.0, 9000.0);
            assertThat(row.strengthAcross()).isBetween(5e6, row.strengthAlong());
            assertThat(row.modulusAcross()).isBetween(5e8, row.modulusAlong());
            assertThat(row.wetFactor()).isBetween(0.3, 1.0);
            assertThat(row.fatigueRatio()).isBetween(0.1, 0.5);
            assertThat(row.fatigueCycles()).isGreaterThanOrEqualTo(1e7);
            assertThat(row.source()).isNotBlank();
        });
        assertThat(RunnerMaterial.all()).extracting(RunnerMaterial::name).doesNotHaveDuplicates();
    }

    @Test
    void printed_rows_are_weaker_across_the_layers_and_others_are_not() {
        assertThat(RunnerMaterial.all()).allSatisfy(row -> {
            if (row.making() == Making.PRINTED) {
                assertThat(row.strengthAcross()).isLessThan(row.strengthAlong());
                assertThat(row.deflectionLow().orElseThrow()).isBetween(320.0, 420.0);
            } else {
                assertThat(row.strengthAcross()).isEqualTo(row.strengthAlong());
            }
        });
    }

    @Test
    void a_row_of_two_series_of_tests_says_which_value_is_whose() {
        assertThat(RunnerMaterial.all().stream()
                        .filter(row -> row.name().equals("PLA"))
                        .map(RunnerMaterial::source))
                .singleElement()
                .asString()
                .contains("across 22.8 MPa", "along: ", "the two are not one series");
    }

    @Test
    void metals_have_no_heat_deflection_and_take_no_water() {
        assertThat(RunnerMaterial.find("bronze-cast")).hasValueSatisfying(row -> {
            assertThat(row.deflectionLow()).isEmpty();
            assertThat(row.waterUptake()).isZero();
        });
    }

    @Test
    void a_name_is_found_in_any_case_and_an_unknown_one_is_empty() {
        assertThat(RunnerMaterial.find("petg")).map(RunnerMaterial::name).hasValue("PETG");
        assertThat(RunnerMaterial.find("unobtainium")).isEmpty();
    }
}
