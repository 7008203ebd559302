package org.leat.plant.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.leat.design.InsulationClass;
import org.leat.design.MagnetGrade;
import org.leat.plant.Plant;
import org.leat.plant.Plants;
import org.leat.plant.duties.BridgeHeat;
import org.leat.plant.duties.SettledWinding;
import org.leat.plant.numbers.BatteryNumbers;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.solved.EnergyAccount.Stage;
import org.leat.plant.solved.OperatingPoint;

/** Heat of bridge and winding, and the bank when it is flat, worked again by hand from currents and losses. */
class ElectricHeatTest {

    private final Plant plant = Plant.of(Plants.read(Plants.statedText("24 m", "9 mm", "160 mm", "")));
    private final PlantNumbers numbers = plant.numbers();
    private final Running running = plant.solve().running().get(0);
    private final OperatingPoint point = running.operatingPoint();

    @Test
    void two_diodes_at_a_time_carry_the_current() {
        BridgeHeat heat = BridgeHeat.of(numbers, running);
        double current = point.phaseCurrent();
        double loss = 2 * numbers.rectifier().threshold() * point.directCurrent()
                + 3 * numbers.rectifier().slopeResistance() * current * current;
        assertThat(heat.loss()).isCloseTo(loss, within(1e-9)).isPositive();
        assertThat(heat.junction(2)).isCloseTo(numbers.site().highestAirTemperature() + 2 * loss, within(1e-9));
    }

    @Test
    void a_winding_settles_where_its_losses_leave() {
        double resistance = 0.4;
        SettledWinding settled = SettledWinding.of(numbers, running, resistance);
        double copper = point.energy().lostBefore(Stage.TERMINALS)
                * (settled.temperature().orElseThrow() - 273.15 + 234.5)
                / (point.windingTemperature() - 273.15 + 234.5);
        double iron = point.energy().lostBefore(Stage.AIR_GAP);
        double air = numbers.site().highestAirTemperature();
        assertThat(settled.temperature().orElseThrow()).isCloseTo(air + resistance * (copper + iron), within(1e-6));
        assertThat(SettledWinding.hottest(plant.solve(), resistance)
                        .temperature()
                        .orElseThrow())
                .isGreaterThanOrEqualTo(settled.temperature().orElseThrow());
    }

    @Test
    void a_winding_that_loses_more_than_leaves_has_no_temperature() {
        assertThat(SettledWinding.of(numbers, running, 1e6).temperature()).isEmpty();
        assertThat(SettledWinding.burns(OptionalDouble.empty())).isTrue();
        assertThat(SettledWinding.burns(OptionalDouble.of(300 + 273.14))).isFalse();
        assertThat(SettledWinding.burns(OptionalDouble.of(300 + 273.16))).isTrue();
        assertThat(Stream.of(OptionalDouble.empty(), OptionalDouble.of(400), OptionalDouble.of(350))
                        .sorted(SettledWinding.coolestFirst()))
                .containsExactly(OptionalDouble.of(350), OptionalDouble.of(400), OptionalDouble.empty());
    }

    @Test
    void classes_and_grades_stand_what_their_letters_say() {
        assertThat(SettledWinding.limit(InsulationClass.F)).isCloseTo(155 + 273.15, within(1e-9));
        assertThat(SettledWinding.magnetLimit(MagnetGrade.SH)).isCloseTo(150 + 273.15, within(1e-9));
        assertThat(SettledWinding.magnetLimit(MagnetGrade.FERRITE)).isCloseTo(250 + 273.15, within(1e-9));
    }

    @Test
    void a_flat_bank_rests_no_higher_than_a_charged_one() {
        BatteryNumbers flat = numbers.battery().flat();
        assertThat(flat.restingVoltage())
                .isLessThan(numbers.battery().restingVoltage())
                .isPositive();
        assertThat(flat.stateOfCharge()).isZero();
        assertThat(flat.capacity()).isEqualTo(numbers.battery().capacity());
    }

    @Test
    void a_tracking_window_begins_above_the_battery_and_ends_above_a_battery_that_opens_under_load() {
        TrackingWindow window = plant.solve().trackingWindow();
        double peak = 1.27
                * numbers.alternator().coldMagnetFactor()
                * numbers.alternator().peakLineVoltage(point.alternatorSpeed());
        assertThat(window.from()).isCloseTo(numbers.battery().absorptionVoltage() + 2, within(1e-9));
        assertThat(window.to()).isBetween(1.1 * peak, 1.1 * peak + 5);
        assertThat(window.to() % 5).isZero();
        assertThat(window.isOpen()).isEqualTo(window.to() > window.from());
    }
}
