package org.leat.plant.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.leat.plant.Plant;
import org.leat.plant.Plants;
import org.leat.plant.duties.HydrogenAir;

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

    @Test
    void while_equalising_the_gas_follows_the_charge_up_to_sixty_milliamperes_for_each_ampere_hour() {
        // EN 50272-3 (read in a reproduction): 60 mA for each Ah without voltage limit, never more than what charges
        Cases cases = cases("regulator: { kind: series, absorption-voltage: 28.8 V, equalising-voltage: 30.6 V }");
        HydrogenAir air = HydrogenAir.of(cases);
        double charging = cases.batteryFull().stream()
                .mapToDouble(BatteryFull::turbineCurrent)
                .max()
                .orElseThrow();
        assertThat(air.gasCurrent())
                .isCloseTo(Math.max(0.020 * 100, Math.min(0.060 * 100, charging)), within(1e-9))
                .isGreaterThan(2);
        assertThat(air.equalising()).isTrue();
        isByTheFormula(air);
    }

    @Test
    void sparks_stay_as_far_from_a_vent_as_the_cube_root_of_the_gas_behind_it() {
        // IEC 62485-2 (from memory): d = 28.8 mm · ∛(N I C); 200 Ah at 60 mA/Ah 659 mm, 400 Ah 831 mm
        assertThat(new HydrogenAir(0.060 * 200, true, 0, 0).sparkDistance(1, 1)).isCloseTo(0.659, within(0.0005));
        assertThat(new HydrogenAir(0.060 * 400, true, 0, 0).sparkDistance(1, 1)).isCloseTo(0.831, within(0.0005));
        // two strings share it, six cells behind one vent add theirs
        assertThat(new HydrogenAir(24, true, 0, 0).sparkDistance(1, 2)).isCloseTo(0.659, within(0.0005));
        assertThat(new HydrogenAir(24, true, 0, 0).sparkDistance(6, 2))
                .isCloseTo(0.0288 * Math.cbrt(6 * 12_000), within(1e-9));
    }
}
