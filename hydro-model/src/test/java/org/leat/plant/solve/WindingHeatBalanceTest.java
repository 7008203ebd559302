package org.leat.plant.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import org.leat.arbitraries.Designs;
import org.leat.design.Design;
import org.leat.plant.Plant;
import org.leat.plant.Plants;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.Assumption;
import org.leat.plant.solved.EnergyAccount.Stage;
import org.leat.plant.solved.OperatingPoint;

/** Losses warm the winding, and a warm winding loses more. */
class WindingHeatBalanceTest {

    private static final double AIR = 273.15 + 30;

    @Provide
    Arbitrary<Design> plants() {
        return Designs.plausible();
    }

    private static Running running(String alternator, String regulator) {
        return plant(alternator, regulator).solve().running().get(0);
    }

    private static Plant plant(String alternator, String regulator) {
        return Plant.of(Plants.read(Plants.LEAST
                        .replace(
                                "gross-head: 24 m",
                                "gross-head: 24 m\n  air-temperature: { lowest: 0 °C, highest: 30 °C }")
                        .replace("battery:", alternator.indent(2) + "battery:")
                + regulator));
    }

    private static double heat(OperatingPoint o) {
        return o.energy().lostBefore(Stage.AIR_GAP) + o.energy().lostBefore(Stage.TERMINALS);
    }

    @Test
    void a_stated_thermal_resistance_settles_the_temperature_by_the_heat_balance() {
        for (String regulator : new String[] {
            "", "regulator: { kind: tracking, tracking-window: { from: 20 V, to: 100 V }, current-rating: 30 A }\n"
        }) {
            Plant plant = plant("thermal-resistance: 0.8 K/W", regulator);
            Running running = plant.solve().running().get(0);
            OperatingPoint o = running.operatingPoint();
            assertThat(o.windingTemperature()).isGreaterThan(AIR + 5).isCloseTo(AIR + 0.8 * heat(o), within(0.1));
            double resistance = 0.1 * (234.5 + o.windingTemperature() - 273.15) / 254.5;
            assertThat(o.energy().lostBefore(Stage.TERMINALS))
                    .as(regulator)
                    .isCloseTo(3 * resistance * o.phaseCurrent() * o.phaseCurrent(), within(1e-6));
            assertThat(plant.assumptions())
                    .extracting(Assumption::path)
                    .doesNotContain("/alternator/winding/temperature");
        }
    }

    @Test
    void without_it_the_temperature_is_assumed_and_told() {
        Plant plant = plant("", "");
        assertThat(plant.solve().running().get(0).operatingPoint().windingTemperature())
                .isCloseTo(273.15 + 80, within(1e-9));
        assertThat(plant.assumptions()).extracting(Assumption::path).contains("/alternator/winding/temperature");
    }

    @Test
    void worse_cooling_leaves_less_for_the_battery() {
        double before = Double.POSITIVE_INFINITY;
        double cooler = 0;
        for (double resistance = 0.2; resistance < 3; resistance *= 1.7) {
            OperatingPoint o = running("thermal-resistance: " + String.format(Locale.ROOT, "%.3f K/W", resistance), "")
                    .operatingPoint();
            assertThat(o.windingTemperature()).isGreaterThan(cooler);
            assertThat(o.batteryPower()).isLessThan(before);
            before = o.batteryPower();
            cooler = o.windingTemperature();
        }
    }

    @Test
    void warm_magnets_of_a_stated_coefficient_need_more_speed_for_the_bus() {
        double without =
                running("thermal-resistance: 1 K/W", "").operatingPoint().speed();
        Plant with = plant("thermal-resistance: 1 K/W\nflux-coefficient: -0.12 %/K", "");
        OperatingPoint o = with.solve().running().get(0).operatingPoint();
        assertThat(o.speed()).isGreaterThan(without * 1.01);
        // the coefficient also tells how much stronger cold magnets are
        assertThat(with.numbers().alternator().coldMagnetFactor()).isCloseTo(1 + 0.0012 * 20, within(1e-12));
    }

    @Test
    void a_second_reading_and_coasting_tell_the_torque_that_grows_with_speed() {
        // 0.2 N·m and 0.002 N·m·s: 22 W at 1000 rpm, and by hand 0.2·52.36 + 0.002·52.36² = 15.955 W at 500 rpm
        AlternatorNumbers two = plant(
                        "no-load-loss: { power: 42.877 W, speed: 1000 rpm, power-at-second-speed: 15.955 W, second-speed: 500 rpm }",
                        "")
                .numbers()
                .alternator();
        assertThat(two.noLoadTorque()).isCloseTo(0.2, within(1e-3));
        assertThat(two.noLoadTorquePerSpeed()).isCloseTo(0.002, within(1e-5));
        // the same machine with 0.05 kg·m²: t = J/k ln((T0 + k w1)/(T0 + k w2))
        double rpm = Math.PI / 30;
        double first = 25 * Math.log((0.2 + 2 * rpm) / (0.2 + rpm));
        double second = 25 * Math.log((0.2 + rpm) / (0.2 + 0.5 * rpm));
        AlternatorNumbers coasted = plant(
                        String.format(
                                Locale.ROOT,
                                "spin-down: { inertia: 0.05 kg·m², from: 1000 rpm, to: 500 rpm, time: %.6f s, to-second: 250 rpm,"
                                        + " second-time: %.6f s }",
                                first,
                                second),
                        "")
                .numbers()
                .alternator();
        assertThat(coasted.noLoadTorque()).isCloseTo(0.2, within(1e-5));
        assertThat(coasted.noLoadTorquePerSpeed()).isCloseTo(0.002, within(1e-7));
    }

    @Test
    void the_account_shows_iron_and_friction_with_the_part_that_grows() {
        Plant plant = plant(
                "no-load-loss: { power: 42.877 W, speed: 1000 rpm, power-at-second-speed: 15.955 W, second-speed: 500 rpm }",
                "");
        AlternatorNumbers a = plant.numbers().alternator();
        OperatingPoint o = plant.solve().running().get(0).operatingPoint();
        double torque = a.noLoadTorque() + a.noLoadTorquePerSpeed() * o.alternatorSpeed();
        assertThat(o.energy().lostBefore(Stage.AIR_GAP))
                .isPositive()
                .isCloseTo(torque * o.alternatorSpeed(), within(1e-6));
    }

    @Property(tries = 60, shrinking = ShrinkingMode.OFF)
    void the_heat_balance_holds_for_any_plant_whose_cooling_is_known(@ForAll("plants") Design design) {
        Plant plant = Plant.of(design);
        if (!(plant.numbers().alternator().thermalResistance() instanceof Amount.Known known)) {
            return;
        }
        double resistance = known.value();
        double air = plant.numbers().site().highestAirTemperature();
        for (Running running : plant.solve().running()) {
            OperatingPoint o = running.operatingPoint();
            assertThat(o.windingTemperature())
                    .isCloseTo(air + resistance * heat(o), within(0.06 + 1e-3 * resistance * heat(o)));
        }
    }
}
