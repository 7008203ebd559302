package org.leat.plant.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.leat.plant.Plant;
import org.leat.plant.Plants;

/** Air for a lead battery on a running plant, by the formula of IEC 62485-2 clause 7.2 (read in reproductions). */
class HydrogenAirTest {

    private static Cases cases(String regulator) {
        return Plant.of(Plants.read(Plants.statedText("24 m", "9 mm", "160 mm", regulator)
                        .replace(
                                "chemistry: lithium-iron-phosphate, cells-in-series: 8",
                                "chemistry: flooded-lead-acid, cells-in-series: 12")))
                .solve();
    }

    private static void isByTheFormula(HydrogenAir air) {
        // 0.05 m³/h for each ampere and cell, and openings that let it through at 0.1 m/s
        assertThat(air.airFlow()).isCloseTo(0.05 * 12 * air.gasCurrent() / 3600, within(1e-12));
        assertThat(air.openingArea()).isCloseTo(air.airFlow() / 0.1, within(0.01 * air.airFlow() / 0.1));
    }

    @Test
    void at_absorption_voltage_an_open_cell_gasses_with_twenty_milliamperes_for_each_ampere_hour() {
        HydrogenAir air = HydrogenAir.of(cases("regulator: { kind: series, absorption-voltage: 28.8 V }"));
        assertThat(air.gasCurrent()).isCloseTo(0.020 * 100, within(1e-9));
        isByTheFormula(air);
    }

    @Test
    void where_nothing_limits_the_voltage_all_the_turbine_gives_makes_gas() {
        Cases cases = cases("");
        HydrogenAir air = HydrogenAir.of(cases);
        assertThat(air.gasCurrent())
                .isEqualTo(cases.batteryFull().get(0).turbineCurrent())
                .isGreaterThan(2);
        isByTheFormula(air);
    }
}
