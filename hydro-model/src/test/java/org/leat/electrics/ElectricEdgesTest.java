package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.electrics.TouchVoltageLimits.Band;
import org.leat.electrics.VehicleChargingPlan.Pack;

/** Electric laws by hand, and at the very ends of what they tell apart. */
class ElectricEdgesTest {

    @ParameterizedTest
    @CsvSource({
        "30, BARE_WET",
        "30.0001, BARE_DRY",
        "60, BARE_DRY",
        "60.0001, COVERED",
        "120, COVERED",
        "120.0001, LOW_VOLTAGE"
    })
    void a_limit_of_direct_voltage_belongs_to_the_band_below(double voltage, Band band) {
        assertThat(TouchVoltageLimits.ofDirect(voltage)).isEqualTo(band);
    }

    @ParameterizedTest
    @CsvSource({"12, BARE_WET", "25, BARE_DRY", "25.0001, COVERED", "50, COVERED", "50.0001, LOW_VOLTAGE"})
    void a_limit_of_alternating_voltage_belongs_to_the_band_below(double voltage, Band band) {
        assertThat(TouchVoltageLimits.ofAlternating(voltage)).isEqualTo(band);
    }

    @ParameterizedTest
    @CsvSource({"4, 2.1", "4.1, 1.9", "15.9, 1.9", "16, 1.6", "63, 1.6"})
    void the_conventional_current_of_a_fuse_goes_by_its_size(double rating, double ratio) {
        assertThat(ProtectiveDeviceCoordination.fuse(rating)).isEqualTo(ratio);
    }

    @Test
    void a_device_that_just_fits_protects() {
        assertThat(ProtectiveDeviceCoordination.of(16, 16, 16, 1.45).holds()).isTrue();
        assertThat(ProtectiveDeviceCoordination.of(16.1, 16, 20, 1.45).carriesLoad())
                .isFalse();
        assertThat(ProtectiveDeviceCoordination.of(10, 20.1, 20, 1.1).withinCapacity())
                .isFalse();
        assertThat(ProtectiveDeviceCoordination.of(10, 20, 20, 1.6).opensInTime())
                .isFalse();
        assertThat(ProtectiveDeviceCoordination.greatestRating(32, 1.6)).isCloseTo(29, within(1e-12));
        assertThat(ProtectiveDeviceCoordination.greatestRating(32, 1.2)).isEqualTo(32);
    }

    @Test
    void current_of_a_machine_that_turns_without_end_is_its_flux_over_its_inductance() {
        AlternatorConstants machine = new AlternatorConstants(8, 0.05, 0.2, 1e-3);
        assertThat(machine.saturationCurrent()).isCloseTo(150 / Math.PI, within(1e-9));
        assertThat(machine.withFluxFactor(0.9).fluxLinkage()).isCloseTo(0.045, within(1e-12));
        assertThat(ShortCircuitTorque.currentLimit(machine)).isCloseTo(50 / Math.sqrt(2), within(1e-9));
        assertThat(ShortCircuitTorque.peak(machine)).isCloseTo(0.75 * 8 * 0.0025 / 1e-3, within(1e-9));
        double greatest = 0;
        for (double speed = 1; speed < 100; speed += 0.01) {
            greatest = Math.max(greatest, ShortCircuitTorque.torque(machine, speed));
        }
        assertThat(greatest).isCloseTo(ShortCircuitTorque.peak(machine), within(1e-4));
        assertThat(ShortCircuitTorque.torque(machine, 0)).isZero();
        assertThat(ShortCircuitTorque.inductance(10, 10 / Math.sqrt(2) / 0.2, 0.2, 100))
                .isCloseTo(0, within(1e-9));
    }

    @Test
    void two_diodes_take_their_share() {
        assertThat(DiodeLoss.share(0.9, 48)).isCloseTo(1.8 / 49.8, within(1e-12));
    }

    @Test
    void iron_loss_by_one_reading_is_all_constant_torque_and_by_two_is_split() {
        assertThat(IronLoss.fromOneReading(60, 30).torque(100)).isEqualTo(2);
        IronLoss split = IronLoss.fromTwoReadings((0.5 + 0.01 * 20) * 20, 20, (0.5 + 0.01 * 60) * 60, 60);
        assertThat(split.constantTorque()).isCloseTo(0.5, within(1e-9));
        assertThat(split.eddyTorquePerSpeed()).isCloseTo(0.01, within(1e-9));
    }

    @Test
    void a_day_counts_what_the_battery_loses() {
        EnergyBalance day = new EnergyBalance(100, 60, 15);
        assertThat(day.surplus()).isEqualTo(25);
        assertThat(day.powerNeeded() * 86_400).isCloseTo(75, within(1e-9));
    }

    @Test
    void charge_is_never_counted_above_the_label() {
        assertThat(Peukert.usableCharge(100, 20, 1, 1.2)).isEqualTo(100);
        assertThat(Peukert.usableCharge(100, 20, 10, 1.2))
                .isEqualTo(Peukert.charge(100, 20, 10, 1.2))
                .isLessThan(100);
    }

    @Test
    void charging_takes_the_constant_time_and_the_taper() {
        // knee 10 A / (1/h) = 10 Ah: 40 Ah at 10 A, then from 10 to 1 Ah by the exponential
        double hour = 3600;
        assertThat(ChargeAcceptance.time(10, 50 * hour, 1 * hour, 1 / hour))
                .isCloseTo(4 * hour + hour * Math.log(10), within(1e-6));
        assertThat(ChargeAcceptance.time(10, 50 * hour, 20 * hour, 1 / hour)).isCloseTo(3 * hour, within(1e-6));
    }

    @Test
    void a_pack_that_takes_all_there_is_may_charge_and_one_more_watt_may_not() {
        Pack pack = new Pack("a", 300, 3600);
        VehicleChargingPlan plan = VehicleChargingPlan.of(List.of(pack), 300);
        assertThat(plan.slots()).hasSize(1);
        assertThat(plan.tooStrong()).isEmpty();
        assertThat(plan.powerAt(0)).isEqualTo(300);
        assertThat(plan.powerAt(3600)).isZero();
        assertThat(VehicleChargingPlan.of(List.of(pack), 299.9).tooStrong()).containsExactly("a");
        VehicleChargingPlan both = VehicleChargingPlan.of(List.of(pack, new Pack("b", 100, 1800)), 400);
        assertThat(both.powerAt(0)).as("both fit at once").isEqualTo(400);
    }
}
