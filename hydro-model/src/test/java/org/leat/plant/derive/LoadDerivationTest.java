package org.leat.plant.derive;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.design.Design;
import org.leat.plant.Plants;

/** Which field keeps the daily use from being known. */
class LoadDerivationTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "none",
            value = {
                "loads: []                                                        | /loads",
                "loads: [{ name: tv, power: 60 W }]                               | /loads[tv]/hours-per-day",
                "loads: [{ name: tv, power: 60 W, hours-per-day: 3 }]             | /inverter/efficiency",
                "loads: [{ name: tv, power: 60 W, hours-per-day: 0 }]             | none",
                "loads: [{ name: tv, power: 60 W, hours-per-day: 3, supply: bus }] | none"
            })
    void the_first_field_without_which_the_use_is_not_known_is_named(String loads, String missing) {
        Design design = Plants.read(Plants.LEAST + loads.strip() + "\n");
        assertThat(LoadDerivation.missing(design).orElse(null)).isEqualTo(missing);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "none",
            value = {
                "inverter: { standing-power: 5 W }                   | /inverter/efficiency",
                "inverter: { efficiency: 90 % }                      | /inverter/standing-power",
                "inverter: { efficiency: 90 %, standing-power: 5 W } | none"
            })
    void an_inverter_must_say_what_it_takes_itself(String inverter, String missing) {
        Design design = Plants.read(
                Plants.LEAST + inverter.strip() + "\nloads: [{ name: tv, power: 60 W, hours-per-day: 3 }]\n");
        assertThat(LoadDerivation.missing(design).orElse(null)).isEqualTo(missing);
    }
}
