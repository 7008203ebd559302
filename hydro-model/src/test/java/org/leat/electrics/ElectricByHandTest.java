package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.leat.law.Answer;

/** Electric laws worked by hand. */
class ElectricByHandTest {

    /** Tungsten: 1.1 Ω cold, 0.0045 /K, 100 K warmer. */
    @Test
    void an_element_resists_more_when_hot_and_takes_its_share() {
        assertThat(DumpElement.hot(1.1, 0.0045, 100)).isCloseTo(1.595, within(1e-12));
        assertThat(DumpSizing.share(28.4, 1.42, 25)).isCloseTo(0.8, within(1e-12));
    }

    /** 1 kWh straight from the bus, 0.9 kWh through 90 %, 10 W day and night; half of it stored at 80 %. */
    @Test
    void a_day_s_use_is_counted_at_the_battery_s_poles() {
        double hour = 3600;
        EnergyBalance.Use use = new EnergyBalance.Use(1000 * hour, 900 * hour, 0.9, 10);
        assertThat(use.demand() / hour).isCloseTo(1000 + 1000 + 240, within(1e-9));
        EnergyBalance day = EnergyBalance.ofDay(100, use, 0.5, 0.8);
        assertThat(day.surplus() / hour).isCloseTo(2400 - 2240 - 0.5 * 2240 * 0.25, within(1e-9));
    }

    /** A raised sine has an rms of √1.5 times its mean. */
    @Test
    void an_inverter_of_one_phase_draws_a_raised_sine() {
        assertThat(InverterCurrent.singlePhaseRms(40)).isCloseTo(40 * Math.sqrt(1.5), within(1e-9));
    }

    @Test
    void readings_of_a_purely_constant_torque_leave_no_slope() {
        IronLoss constant = IronLoss.fromTwoReadings(0.3 * 31, 31, 0.3 * 97, 97);
        assertThat(constant.eddyTorquePerSpeed()).isZero();
        assertThat(constant.constantTorque()).isCloseTo(0.3, within(1e-12));
        IronLoss slight = IronLoss.fromTwoReadings(0.3 * 31, 31, (0.3 + 1e-5 * 66) * 97, 97);
        assertThat(slight.eddyTorquePerSpeed()).isCloseTo(1e-5, within(1e-12));
        IronLoss eddies = IronLoss.fromTwoReadings(0.01 * 31 * 31, 31, 0.01 * 97 * 97, 97);
        assertThat(eddies.constantTorque()).isZero();
    }

    @Test
    void cold_magnets_raise_what_the_diodes_block() {
        AlternatorConstants machine = new AlternatorConstants(8, 0.05, 0.2, 1e-3);
        assertThat(ReverseVoltage.openCircuit(machine, 100, 1.05))
                .isCloseTo(Math.sqrt(3) * 8 * 0.05 * 100 * 1.05, within(1e-9));
    }

    /** IEC 60269-1; a cable of 32 A for 18 A: fuses from 20 A whose 1.6 times (1.9 below 16 A) is at most 1.45 times 32 A. */
    @Test
    void fuses_that_protect_a_cable_lie_between_its_load_and_what_it_stands() {
        assertThat(StandardFuseRatings.protecting(18, 32)).containsExactly(20.0, 25.0);
        assertThat(StandardFuseRatings.protecting(30, 32)).isEmpty();
        assertThat(StandardFuseRatings.all())
                .hasSize(26)
                .startsWith(2.0, 4.0, 6.0)
                .endsWith(1250.0);
    }

    /** 50 V behind 0.1 Ω: 1 kW leaves 25 + √(625 − 100) V; 20 A take 2 V. */
    @Test
    void a_battery_sags_under_power_and_under_current() {
        assertThat(VoltageSag.underPower(50, 0.1, 1000).orThrow()).isCloseTo(25 + Math.sqrt(525), within(1e-9));
        assertThat(VoltageSag.underCurrent(50, 0.1, 20)).isCloseTo(48, within(1e-12));
        assertThat(VoltageDrop.core(10, 0.002, 2)).isCloseTo(0.01, within(1e-15));
    }

    /** Leads shorted by an ideal bus of no volts: the peak is where ω L = R, whatever adds to R counted. */
    @Test
    void torque_peaks_where_reactance_and_resistance_are_alike() {
        BatteryClamp bus = new BatteryClamp(
                new AlternatorConstants(10, 0.03, 0.1, 1e-3), 0.05, new DiodeLine(0.7, 0.01), 24, 0.02);
        TorquePeak peak = TorquePeak.of(bus);
        assertThat(TorquePeak.speedOf(bus)).isEqualTo(Answer.of(peak.speed()));
        for (double factor : List.of(0.98, 1.02)) {
            assertThat(bus.at(factor * peak.speed()).torque()).isLessThan(peak.torque());
        }
        assertThat(bus.at(peak.speed()).torque()).isCloseTo(peak.torque(), within(1e-9));
        BatteryClamp without =
                new BatteryClamp(new AlternatorConstants(10, 0.03, 0.1, 0), 0.05, new DiodeLine(0.7, 0.01), 24, 0.02);
        assertThat(TorquePeak.speedOf(without)).isInstanceOf(Answer.Outside.class);
    }

    /** Air at 30 °C, copper loss of 100 W at 20 °C: at 2.545 K/W the line meets none, 254.5 K the most. */
    @Test
    void a_winding_that_no_air_can_cool_tells_by_how_much() {
        Answer.Outside burns = (Answer.Outside) WindingTemperature.of(30, 100, 3);
        assertThat(burns.value()).isCloseTo(300, within(1e-9));
        assertThat(burns.high().getAsDouble()).isCloseTo(254.5, within(1e-9));
    }

    /** A direct current of 10 A with 3 A at the frequency, 1 A a quarter behind at twice and 2 A at six times. */
    @Test
    void a_meter_reads_means_and_ripples_of_a_wave() {
        WaveformMeter meter = new WaveformMeter();
        int steps = 3600;
        double period = 0.02;
        for (int n = 0; n < steps; n++) {
            double angle = 2 * Math.PI * (n + 0.5) / steps;
            double current = 10 + 3 * Math.cos(angle) + Math.sin(2 * angle) + 2 * Math.cos(6 * angle + 1);
            meter.add(period / steps, angle, current, 24, 300, 3, 4, 5);
        }
        BridgeWaveform wave = meter.read(10, 0.2);
        assertThat(wave.directCurrent()).isCloseTo(10, within(1e-9));
        assertThat(wave.directVoltage()).isCloseTo(24, within(1e-9));
        assertThat(wave.greatestDirectVoltage()).isEqualTo(24);
        assertThat(wave.phaseCurrentRms()).isCloseTo(5, within(1e-9));
        assertThat(wave.airGapPower()).isCloseTo(300, within(1e-9));
        assertThat(wave.torque()).isCloseTo(30, within(1e-9));
        assertThat(wave.copperLoss()).isCloseTo(0.2 * 50, within(1e-9));
        assertThat(wave.directPower()).isCloseTo(240, within(1e-9));
        assertThat(wave.rippleAtFrequency()).isCloseTo(3, within(1e-9));
        assertThat(wave.rippleAtTwice()).isCloseTo(1, within(1e-9));
        assertThat(wave.rippleAtSix()).isCloseTo(2, within(1e-9));
    }

    /** 100 Ah, half of it used, 90 %, 25 V: 1125 Wh, at 50 W 22.5 h. A tenth in an hour is 10 A; lead wants a fiftieth. */
    @Test
    void a_bank_feeds_for_so_long_and_is_charged_by_so_much() {
        double ampereHour = 3600;
        assertThat(Autonomy.time(100 * ampereHour, 0.5, 0.9, 25, 50) / 3600).isCloseTo(22.5, within(1e-9));
        assertThat(Autonomy.capacity(1125 * 3600, 0.5, 0.9, 25)).isCloseTo(100 * ampereHour, within(1e-6));
        double tenth = 0.1 / 3600;
        assertThat(ChargeCurrentLimit.greatest(tenth, 100 * ampereHour)).isCloseTo(10, within(1e-9));
        assertThat(ChargeCurrentLimit.leastCapacity(tenth, 10)).isCloseTo(100 * ampereHour, within(1e-6));
        assertThat(ChargeCurrentLimit.leastMeanForLead(100 * ampereHour)).isCloseTo(2, within(1e-9));
        assertThat(ChargeAcceptance.current(30, 20 * ampereHour, 1 / ampereHour))
                .isEqualTo(20);
        assertThat(ChargeAcceptance.current(15, 20 * ampereHour, 1 / ampereHour))
                .isEqualTo(15);
        assertThat(BatteryFaultCurrent.bankResistance(0.002, 8, 2)).isCloseTo(0.008, within(1e-15));
    }

    /** t = (k S/I)²: 115 A √s/mm² on 10 mm² at 1 kA lasts 1.3225 s. */
    @Test
    void a_conductor_stands_a_fault_for_the_time_its_copper_takes_to_heat() {
        assertThat(AdiabaticHeating.longestTime(1000, 10e-6, AdiabaticHeating.COPPER_PVC)
                        .orThrow())
                .isCloseTo(1.3225, within(1e-9));
    }
}
