package org.leat.plant.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.leat.plant.Plant;
import org.leat.plant.Plants;

/** What each run carries for long, against the operating point and by hand. */
class CableDutyTest {

    private static String run(String from, String to) {
        return "\n  - { from: " + from + ", to: " + to
                + ", length: 10 m, conductor: { area: 10 mm², stranding: flexible } }";
    }

    private static String inverter(String fields) {
        return "inverter: { " + fields + " }\ncables:" + run("inverter", "battery");
    }

    /** Two nozzle sets, the wider one second. */
    private static Cases cases(String parts) {
        String text = Plants.statedText("24 m", "8 mm", "160 mm", parts)
                .replace("open: [8 mm]", "open: [8 mm]\n  available: [8 mm, 9 mm]");
        return Plant.of(Plants.read(text)).solve();
    }

    private static CableDuty only(Cases cases) {
        List<CableDuty> duties = cases.cableDuties();
        assertThat(duties).hasSize(1);
        assertThat(duties.get(0).cable()).isEqualTo(cases.numbers().cables().get(0));
        return duties.get(0);
    }

    private static CableDuty.Carries carried(Cases cases) {
        return (CableDuty.Carries) only(cases);
    }

    private static Running widest(Cases cases) {
        return cases.running().stream()
                .filter(running -> running.nozzles().name().equals("9 mm"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void from_the_alternator_flow_three_phases_the_set_of_most_current_counts() {
        Cases cases = cases("cables:" + run("alternator", "rectifier"));
        CableDuty.Carries duty = carried(cases);
        double current = widest(cases).operatingPoint().phaseCurrent();
        double resistance = duty.cable().coreResistance();
        assertThat(cases.running()).hasSize(2);
        assertThat(duty.threePhase()).isTrue();
        assertThat(duty.during()).isEqualTo("running/9 mm");
        assertThat(duty.current()).isEqualTo(current).isPositive();
        assertThat(duty.drop()).isCloseTo(Math.sqrt(3) * current * resistance, within(1e-12));
        assertThat(duty.lostPower()).isCloseTo(3 * current * current * resistance, within(1e-9));
    }

    @Test
    void behind_the_bridge_flows_direct_current_there_and_back() {
        Cases cases = cases("cables:" + run("battery", "rectifier"));
        CableDuty.Carries duty = carried(cases);
        double current = widest(cases).operatingPoint().directCurrent();
        double resistance = duty.cable().coreResistance();
        assertThat(duty.threePhase()).isFalse();
        assertThat(duty.current()).isEqualTo(current);
        assertThat(duty.drop()).isCloseTo(2 * current * resistance, within(1e-12));
        assertThat(duty.lostPower()).isCloseTo(2 * current * current * resistance, within(1e-9));
    }

    @Test
    void behind_a_tracking_regulator_flows_the_battery_s_current_and_before_it_the_bridge_s() {
        String tracking =
                "regulator: { kind: tracking, tracking-window: { from: 30 V, to: 90 V }, efficiency: 95 % }\n";
        Cases behind = cases(tracking + "cables:" + run("regulator", "battery"));
        Cases before = cases(tracking + "cables:" + run("rectifier", "regulator"));
        double battery = widest(behind).operatingPoint().batteryCurrent();
        double bridge = widest(before).operatingPoint().directCurrent();
        assertThat(carried(behind).current()).isEqualTo(battery);
        assertThat(carried(before).current()).isEqualTo(bridge);
        assertThat(battery).isGreaterThan(1.1 * bridge);
    }

    @Test
    void to_the_dump_load_flows_what_it_takes_cold_at_the_voltage_of_a_full_battery() {
        String dump = "dump-load: { resistance: 1.6 ohm, resistance-hot: 1.8 ohm, trigger-voltage: 28.4 V }\n";
        Cases cases = cases(dump + "cables:" + run("rectifier", "dump-load"));
        CableDuty.Carries duty = carried(cases);
        assertThat(cases.batteryFull())
                .extracting(BatteryFull::dumpVoltage)
                .allSatisfy(volts -> assertThat(volts / 1.6).isLessThanOrEqualTo(duty.current() + 1e-9))
                .anySatisfy(volts -> assertThat(volts / 1.6).isCloseTo(duty.current(), within(1e-9)));
        assertThat(duty.during()).startsWith("battery-full/");
        assertThat(duty.threePhase()).isFalse();
    }

    @Test
    void without_a_dump_load_its_run_is_of_unknown_duty() {
        assertThat(only(cases("cables:" + run("rectifier", "dump-load"))))
                .isInstanceOfSatisfying(
                        CableDuty.NotStated.class,
                        duty -> assertThat(duty.missing()).isEqualTo("/dump-load"));
    }

    /** 1500 W out of 90 % at 21 V is 79.4 A; without a cut-off voltage the resting battery counts. */
    @Test
    void to_the_inverter_flows_its_lasting_power_at_the_lowest_voltage_it_works_at() {
        Cases cutOff = cases(inverter("continuous-power: 1500 W, efficiency: 90 %, cut-off-voltage: 21 V"));
        assertThat(carried(cutOff).current()).isCloseTo(1500 / (0.9 * 21), within(1e-9));
        assertThat(carried(cutOff).threePhase()).isFalse();
        Cases resting = cases(inverter("continuous-power: 1500 W, efficiency: 90 %"));
        double volts = resting.numbers().battery().restingVoltage();
        assertThat(carried(resting).current()).isCloseTo(1500 / (0.9 * volts), within(1e-9));
    }

    @Test
    void what_an_inverter_takes_is_unknown_without_its_power_or_its_efficiency() {
        assertThat(only(cases(inverter("efficiency: 90 %"))))
                .isEqualTo(new CableDuty.NotStated(
                        only(cases(inverter("efficiency: 90 %"))).cable(), "/inverter/continuous-power"));
        assertThat(only(cases(inverter("continuous-power: 1500 W"))))
                .isInstanceOfSatisfying(
                        CableDuty.NotStated.class,
                        duty -> assertThat(duty.missing()).isEqualTo("/inverter/efficiency"));
        assertThat(only(cases("cables:" + run("battery", "inverter"))))
                .isInstanceOfSatisfying(
                        CableDuty.NotStated.class,
                        duty -> assertThat(duty.missing()).isEqualTo("/inverter/continuous-power"));
    }

    @Test
    void all_loads_on_the_bus_flow_at_once_and_those_of_the_inverter_do_not_count() {
        String loads = """
                loads:
                  - { name: lamps, power: 9 W, count: 6, supply: bus }
                  - { name: pump, power: 60 W, supply: bus }
                  - { name: kettle, power: 900 W }
                """;
        Cases cases = cases(loads + "cables:" + run("battery", "loads"));
        double volts = cases.numbers().battery().restingVoltage();
        assertThat(carried(cases).current()).isCloseTo((6 * 9 + 60) / volts, within(1e-9));
        Cases none = cases("loads: [ { name: kettle, power: 900 W } ]\ncables:" + run("battery", "loads"));
        assertThat(only(none)).isInstanceOf(CableDuty.NotLoaded.class);
    }

    /** What is clamped to the inverter's input is fed by the battery's run to it, and carries its own loads only. */
    @Test
    void loads_at_the_inverters_input_flow_through_the_batterys_run_too() {
        String inverter = "inverter: { continuous-power: 1000 W, efficiency: 90 %, cut-off-voltage: 22 V }\n";
        String loads = "loads: [ { name: pump, power: 120 W, hours-per-day: 1 h, supply: bus } ]\n";
        Cases both = cases(inverter + loads + "cables:" + run("battery", "inverter") + run("inverter", "loads"));
        CableDuty.Carries feeding = (CableDuty.Carries) both.cableDuties().get(0);
        CableDuty.Carries fed = (CableDuty.Carries) both.cableDuties().get(1);
        double direct = 120 / both.numbers().battery().restingVoltage();
        assertThat(fed.current()).isEqualTo(direct);
        assertThat(feeding.current()).isCloseTo(1000 / (0.9 * 22) + direct, within(1e-9));
        assertThat(feeding.during()).contains("all direct-current loads at once");
        Cases alone = cases(inverter + "cables:" + run("battery", "inverter") + run("inverter", "loads"));
        assertThat(alone.cableDuties().get(1)).isInstanceOf(CableDuty.NotLoaded.class);
        assertThat(((CableDuty.Carries) alone.cableDuties().get(0)).current())
                .isCloseTo(1000 / (0.9 * 22), within(1e-9));
    }
}
