package org.leat.plant.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.leat.design.Design;
import org.leat.plant.Plant;
import org.leat.plant.Plants;
import org.leat.plant.derive.LoadDerivation;
import org.leat.plant.duties.CycleYears;
import org.leat.plant.duties.FullDay;
import org.leat.plant.duties.PackCharging;
import org.leat.plant.loads.DailyUse;
import org.leat.plant.numbers.BatteryNumbers;

/** A day of full use on a running plant: no energy comes from nowhere. */
class FullDayTest {

    private static final double DAY = 86_400;

    private static Design design(double lights, String more) {
        return Plants.read(
                Plants.statedText("24 m", "9 mm", "160 mm", "regulator: { kind: none }") + """
                inverter: { efficiency: 90 %%, standing-power: 5 W }
                loads:
                  - { name: lights, power: %s W, hours-per-day: 6, supply: bus }
                %s
                """.formatted(lights, more));
    }

    private static Running running(Design design) {
        return Plant.of(design).solve().running().get(0);
    }

    private static FullDay day(Design design) {
        return FullDay.of(
                running(design),
                LoadDerivation.of(design),
                Plant.of(design).numbers().battery());
    }

    @Test
    void what_is_left_is_what_came_less_what_was_needed() {
        FullDay day = day(design(100, ""));
        assertThat(day.generated()).isCloseTo(day.running().operatingPoint().batteryPower() * DAY, within(1e-6));
        assertThat(day.surplus() * DAY).isCloseTo(day.generated() - day.needed(), within(1e-3));
    }

    @Test
    void more_is_needed_than_the_loads_take_because_the_battery_loses_some() {
        Design design = design(100, "");
        assertThat(day(design).needed()).isGreaterThan(LoadDerivation.of(design).demand());
    }

    @Test
    void more_use_leaves_less_and_goes_deeper() {
        FullDay little = day(design(200, ""));
        FullDay much = day(design(800, ""));
        assertThat(much.surplus()).isLessThan(little.surplus());
        assertThat(much.depth()).isGreaterThan(little.depth()).isPositive();
    }

    @Test
    void the_depth_is_what_is_drawn_of_the_named_energy_of_the_bank() {
        Design design = design(800, "");
        BatteryNumbers battery = Plant.of(design).numbers().battery();
        // eight cells of 3.2 V and 100 A h
        assertThat(battery.storedEnergy()).isCloseTo(2560 * 3600, within(1e-3));
        assertThat(day(design).depth() * 2560 * 3600).isCloseTo(day(design).drawn(), within(1e-3));
    }

    @Test
    void deeper_cycles_last_fewer_years() {
        Design little = design(400, "");
        Design much = design(800, "");
        double longer =
                CycleYears.of(day(little), Plant.of(little).numbers()).years().orElse(Double.MAX_VALUE);
        assertThat(CycleYears.of(day(much), Plant.of(much).numbers()).years().orElseThrow())
                .isLessThan(longer);
    }

    @Test
    void packs_are_charged_from_what_the_other_loads_leave() {
        Design design = design(
                40,
                "  - { name: bicycle, power: 45 W, count: 2, hours-per-day: 4, pack: { energy: 180 Wh, cells-in-series: 10 } }");
        Running running = running(design);
        DailyUse use = LoadDerivation.of(design);
        PackCharging charging = PackCharging.of(running, use);
        double others = 40 * 6.0 / 24 + 5;
        assertThat(charging.together()).isCloseTo(100, within(1e-9));
        assertThat(charging.spare()).isCloseTo(running.operatingPoint().batteryPower() - others, within(1e-6));
        assertThat(charging.inTurn() + charging.tooStrong().size()).isEqualTo(2);
    }
}
