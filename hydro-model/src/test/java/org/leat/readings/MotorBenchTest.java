package org.leat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.file.Filled;
import org.leat.file.RecordReader;
import org.leat.readings.MotorBench.Fault;
import org.leat.readings.MotorBench.What;
import org.leat.readings.MotorBench.Why;

class MotorBenchTest {

    private static final Map<Fault, Consumer<BenchBySimulator>> PLANTED = planted();

    private static Map<Fault, Consumer<BenchBySimulator>> planted() {
        Map<Fault, Consumer<BenchBySimulator>> faults = new EnumMap<>(Fault.class);
        faults.put(Fault.NOTHING, b -> {});
        faults.put(Fault.PEAK_FOR_RMS, b -> b.voltsShown = Math.sqrt(2));
        faults.put(Fault.STAR_POINT_FOR_LEADS, b -> b.voltsShown = 1 / Math.sqrt(3));
        faults.put(Fault.METER_LOSES_WITH_FREQUENCY, b -> b.lostAtHundredHertz = 0.06);
        faults.put(Fault.SPEED_TWICE_OR_HALF, b -> b.speedShown = 2);
        faults.put(Fault.POLE_PAIRS_MISCOUNTED, b -> b.told = 30);
        faults.put(Fault.GEAR_OR_SLIP, b -> b.gear = 4.43);
        faults.put(Fault.CLAMP_TWICE, b -> b.ampsShown = 2);
        faults.put(Fault.TEST_LEADS_COUNTED, b -> b.testLeads = 0.2);
        faults.put(Fault.PHASE_WEAK, b -> b.emf[1] = 0.9);
        faults.put(Fault.SHORTED_TURNS, b -> {
            b.emf[2] = 0.9;
            b.ohms[2] = 0.9;
        });
        faults.put(Fault.PHASE_REVERSED, b -> b.emf[0] = -1);
        faults.put(Fault.JOINT_BAD, b -> b.ohms[0] = 1.3);
        return faults;
    }

    private static BenchReadings file(String text) {
        Filled<BenchReadings> read = RecordReader.read(BenchReadings.class, "format: 1\n" + text, "bench.yaml");
        return Objects.requireNonNull(read.record(), () -> read.problems().toString());
    }

    private static double value(MotorBench motor, What what) {
        return Objects.requireNonNull(motor.constant(what), what::name).value();
    }

    @Test
    void constants_of_a_motor_read_without_noise_come_back() {
        BenchBySimulator bench = new BenchBySimulator(1);
        bench.noise = false;
        MotorBench motor = bench.result();
        assertThat(motor.first().fault()).isEqualTo(Fault.NOTHING);
        assertThat(value(motor, What.VOLTS_PER_SPEED)).isCloseTo(bench.perSpeed, within(1e-4));
        assertThat(value(motor, What.POLE_PAIRS)).isEqualTo(15);
        assertThat(value(motor, What.RESISTANCE)).isCloseTo(2 * bench.phaseOhms, within(1e-4));
        assertThat(value(motor, What.INDUCTANCE)).isCloseTo(2 * bench.phaseHenry, within(5e-6));
        assertThat(value(motor, What.CONSTANT_TORQUE)).isCloseTo(bench.constant, within(1e-3));
        assertThat(value(motor, What.GROWING_TORQUE)).isCloseTo(bench.growing, within(3e-5));
        assertThat(value(motor, What.SPREAD_OF_VOLTAGES)).isLessThan(1e-3);
    }

    @Test
    void noise_leaves_the_constants_within_three_of_their_uncertainties() {
        for (int seed = 0; seed < 4; seed++) {
            BenchBySimulator bench = new BenchBySimulator(seed);
            MotorBench motor = bench.result();
            for (MotorBench.Constant c : motor.constants()) {
                double truth = switch (c.what()) {
                    case VOLTS_PER_SPEED -> bench.perSpeed;
                    case POLE_PAIRS -> 15;
                    case RESISTANCE -> 2 * bench.phaseOhms;
                    case INDUCTANCE -> 2 * bench.phaseHenry;
                    case CONSTANT_TORQUE -> bench.constant;
                    case GROWING_TORQUE -> bench.growing;
                    case SPREAD_OF_VOLTAGES, SPREAD_OF_RESISTANCES -> c.value();
                };
                assertThat(c.value()).as(c.what().name()).isCloseTo(truth, within(3 * c.standard() + 1e-9));
            }
        }
    }

    static Stream<Fault> faults() {
        return PLANTED.keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("faults")
    void a_fault_that_was_planted_is_named_first(Fault fault) {
        BenchBySimulator bench = new BenchBySimulator(7);
        Objects.requireNonNull(PLANTED.get(fault)).accept(bench);
        MotorBench motor = bench.result();
        assertThat(motor.first().fault()).as(motor.ranked().toString()).isEqualTo(fault);
        assertThat(motor.unexplained()).isFalse();
        switch (fault) {
            case PHASE_WEAK, SHORTED_TURNS -> assertThat(motor.first().size()).isCloseTo(0.1, within(0.04));
            case TEST_LEADS_COUNTED -> assertThat(motor.first().size()).isCloseTo(0.2, within(0.04));
            case POLE_PAIRS_MISCOUNTED -> assertThat(motor.first().size()).isEqualTo(15);
            case GEAR_OR_SLIP -> assertThat(motor.first().size()).isCloseTo(4.43, within(0.1));
            default -> {
                // it has no size
            }
        }
        if (fault == Fault.PHASE_WEAK) {
            assertThat(motor.first().lead()).isEqualTo(1);
        }
    }

    /** {@code -Dleat.bench-draws=200} draws so many benches of each fault and prints how often each is named first. */
    @Test
    void a_study_over_seeded_draws_names_faults_and_leaves_sound_motors_alone() {
        int draws = Integer.getInteger("leat.bench-draws", 0);
        assumeTrue(draws > 0, "-Dleat.bench-draws=200 runs the study");
        StringBuilder out = new StringBuilder(
                "| fault | draws | first | first or told apart by one reading |\n|---|---|---|---|\n");
        int first = 0;
        int grouped = 0;
        int all = 0;
        for (Map.Entry<Fault, Consumer<BenchBySimulator>> planted : PLANTED.entrySet()) {
            int right = 0;
            int group = 0;
            for (int draw = 0; draw < draws; draw++) {
                BenchBySimulator bench = new BenchBySimulator(1000 + draw);
                planted.getValue().accept(bench);
                bench.coasting = false;
                MotorBench motor = bench.result();
                boolean named = motor.first().fault() == planted.getKey();
                right += named ? 1 : 0;
                group += named || motor.twins().stream().anyMatch(t -> t.fault() == planted.getKey() && t.by() != null)
                        ? 1
                        : 0;
            }
            out.append(String.format(
                    Locale.ROOT,
                    "| %s | %d | %.0f %% | %.0f %% |%n",
                    planted.getKey().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                    draws,
                    100.0 * right / draws,
                    100.0 * group / draws));
            first += right;
            grouped += group;
            all += draws;
        }
        System.out.println(out);
        assertThat((double) first / all).isGreaterThan(0.85);
        assertThat((double) grouped / all).isGreaterThan(0.9);
    }

    @Test
    void peak_and_volts_alone_cannot_be_seen_and_the_bridge_would_tell() {
        MotorBench motor = MotorBench.of(
                file("pole-pairs: 15\nreadings:\n  - { speed: 500 rpm, frequency: 125 Hz, volts-ab: 16.76 V }\n"),
                null);
        assertThat(motor.first().fault()).isEqualTo(Fault.NOTHING);
        assertThat(motor.unseen()).contains(Fault.PEAK_FOR_RMS, Fault.STAR_POINT_FOR_LEADS, Fault.TEST_LEADS_COUNTED);
        assertThat(motor.next()).contains(MotorBench.Test.BRIDGE_VOLTS);
        assertThat(motor.constant(What.INDUCTANCE)).isNull();
        assertThat(motor.constant(What.RESISTANCE)).isNull();
    }

    @Test
    void an_open_phase_leaves_two_pairs_dead() {
        MotorBench motor = MotorBench.of(
                file(
                        "pole-pairs: 15\nreadings:\n"
                                + "  - { speed: 500 rpm, frequency: 125 Hz, volts-ab: 16.76 V, volts-bc: 0.1 V, volts-ca: 0.1 V }\n"),
                null);
        assertThat(motor.first().fault()).isEqualTo(Fault.PHASE_OPEN);
        assertThat(motor.first().lead()).isEqualTo(2);
    }

    @Test
    void against_a_design_weak_magnets_and_delta_for_star_are_told_apart() {
        // Rowan Ghyll states 21.3 V at 1000 rpm, 0.125 Ω, 0.4 mH, 8 pole pairs
        String weak =
                "readings:\n  - { speed: 1000 rpm, frequency: 133.3 Hz, volts-ab: 18.1 V, volts-bc: 18.1 V, volts-ca: 18.1 V }\n"
                        + "  - { resistance-ab: 0.125 Ω, resistance-bc: 0.125 Ω, resistance-ca: 0.125 Ω }\n";
        MotorBench motor =
                MotorBench.of(file(weak), DemoPlants.of("rowan-ghyll").design());
        assertThat(motor.first().fault()).isEqualTo(Fault.MAGNETS_WEAK);
        assertThat(motor.first().size()).isCloseTo(0.15, within(0.05));
        String delta = weak.replace("18.1", "12.3").replace("0.125", "0.0417");
        motor = MotorBench.of(file(delta), DemoPlants.of("rowan-ghyll").design());
        assertThat(motor.first().fault()).isEqualTo(Fault.STAR_FOR_DELTA);
        assertThat(motor.first().size()).isEqualTo(1);
    }

    @Test
    void what_cannot_be_is_left_out_with_its_place() {
        MotorBench motor = MotorBench.of(file("""
                pole-pairs: 15
                readings:
                  - { speed: 150 rpm, volts-ab: 5.03 V, volts-bc: 50.3 V, volts-ca: 5.03 V }
                  - { speed: 300 rpm, volts-ab: 10.05 V }
                  - { speed: 400 rpm, volts-ab: 134 V }
                  - { speed: 500 rpm, volts-ab: 16.76 V }
                  - { speed: 250 rpm, volts-ab: 5 V, volts-bc: 30 V, volts-ca: 9 V }
                  - { resistance-ab: 0.1 Ω, resistance-bc: 0.1 Ω, resistance-ca: 0.3 Ω }
                  - { time: 0 s, speed: 500 rpm }
                  - { time: 3 s, speed: 400 rpm }
                  - { time: 6 s, speed: 420 rpm }
                """), null);
        assertThat(motor.cannot())
                .extracting(c -> c.path() + " " + c.why())
                .containsExactlyInAnyOrder(
                        "/readings[0]/volts-bc " + Why.TEN_TIMES,
                        "/readings[2]/volts-ab " + Why.TEN_TIMES,
                        "/readings[4]/volts-bc " + Why.NO_SUCH_VOLTS,
                        "/readings[5]/resistance-ca " + Why.NO_SUCH_RESISTANCES,
                        "/readings[8]/speed " + Why.COASTS_FASTER,
                        "/inertia " + Why.NO_INERTIA);
        assertThat(value(motor, What.VOLTS_PER_SPEED)).isCloseTo(0.32, within(0.003));
    }

    /** A motor of ten pole pairs and 30 V at 1000 rpm, its columns changed with each other. */
    @Test
    void columns_that_changed_places_make_no_machine() {
        String line = "  - { speed: %s rpm, frequency: %s Hz, volts-ab: %s V, volts-bc: 6.01 V, volts-ca: 6 V }\n";
        MotorBench right =
                MotorBench.of(file("readings:\n" + String.format(Locale.ROOT, line, "200", "33.3", "6")), null);
        assertThat(right.cannot()).isEmpty();
        assertThat(value(right, What.POLE_PAIRS)).isEqualTo(10);
        MotorBench hertz =
                MotorBench.of(file("readings:\n" + String.format(Locale.ROOT, line, "33.3", "200", "6")), null);
        assertThat(hertz.cannot())
                .extracting(c -> c.path() + " " + c.why() + " " + Math.round(c.value()))
                .containsExactly("/readings[0]/frequency " + Why.NO_SUCH_POLE_PAIRS + " 360");
        assertThat(hertz.constants()).isEmpty();
        assertThat(hertz.judged()).isFalse();
        MotorBench volts = MotorBench.of(
                file("readings:\n  - { speed: 6 rpm, volts-ab: 200 V }\n  - { speed: 15 rpm, volts-ab: 500 V }\n"
                        + "  - { speed: 6 rpm, bridge-volts: 280 V }\n"),
                null);
        assertThat(volts.cannot())
                .extracting(c -> c.path() + " " + c.why())
                .containsExactly(
                        "/readings[0]/volts-ab " + Why.NO_SUCH_VOLTS_AT_SPEED,
                        "/readings[1]/volts-ab " + Why.NO_SUCH_VOLTS_AT_SPEED,
                        "/readings[2]/bridge-volts " + Why.NO_SUCH_VOLTS_AT_SPEED);
        // a slow ring of many magnets is one, and so is what somebody counted
        assertThat(MotorBench.of(file("readings: [ { speed: 100 rpm, frequency: 160 Hz, volts-ab: 400 V } ]"), null)
                        .cannot())
                .isEmpty();
        assertThat(MotorBench.of(file("pole-pairs: 120\nreadings: [ { speed: 60 rpm, frequency: 120 Hz } ]"), null)
                        .cannot())
                .isEmpty();
    }

    @Test
    void three_shorted_leads_carry_no_more_in_one_than_in_the_other_two() {
        String sound = "readings:\n  - { speed: 300 rpm, volts-ab: 9 V, volts-bc: 9 V, volts-ca: 9 V }\n";
        MotorBench motor = MotorBench.of(
                file(sound + "  - { speed: 60 rpm, amps-a: 2000 A, amps-b: 20 A, amps-c: 20.1 A }\n"
                        + "  - { speed: 60 rpm, amps-a: 20 A, amps-b: 20 A, amps-c: 200 A }\n"
                        + "  - { speed: 60 rpm, amps-a: 20 A, amps-b: 0 A, amps-c: 20.2 A }\n"),
                null);
        assertThat(motor.cannot())
                .extracting(c -> c.path() + " " + c.why())
                .containsExactly("/readings[1]/amps-a " + Why.NO_SUCH_AMPS, "/readings[2]/amps-c " + Why.TEN_TIMES);
    }

    /** The hut's plant states 18 W at 1000 rpm. */
    @Test
    void a_drag_shows_by_coasting_alone_where_a_torque_is_stated() {
        String coasting = "inertia: 0.012 kg·m²\nreadings:\n  - { time: 0 s, speed: 1000 rpm }\n"
                + "  - { time: 1 s, speed: 600 rpm }\n  - { time: 1.8 s, speed: 300 rpm }\n";
        MotorBench against =
                MotorBench.of(file(coasting), DemoPlants.of("rowan-ghyll").design());
        assertThat(against.judged()).isTrue();
        assertThat(against.first().fault()).isEqualTo(Fault.BEARING_DRAGS);
        MotorBench alone = MotorBench.of(file(coasting), null);
        assertThat(alone.judged()).isFalse();
        assertThat(value(alone, What.CONSTANT_TORQUE)).isGreaterThan(0.3);
    }

    @Test
    void a_frequency_tells_no_speed_without_pole_pairs() {
        MotorBench motor = MotorBench.of(file("readings: [ { frequency: 125 Hz, volts-ab: 16.8 V } ]"), null);
        assertThat(motor.cannot()).extracting(MotorBench.Cannot::why).containsExactly(Why.NO_POLE_PAIRS);
        assertThat(motor.constants()).isEmpty();
    }

    /** A brake that falls with speed, and a fan's torque, are no iron and no friction. */
    @Test
    void coasting_that_no_iron_gives_is_told() {
        String coasting = "inertia: 0.04 kg·m²\nreadings:\n";
        MotorBench late = MotorBench.of(
                file(coasting + "  - { time: 0 s, speed: 500 rpm }\n  - { time: 3 s, speed: 450 rpm }\n"
                        + "  - { time: 6 s, speed: 200 rpm }\n"),
                null);
        assertThat(late.cannot()).extracting(MotorBench.Cannot::why).containsExactly(Why.TORQUE_FALLS);
        MotorBench fan = MotorBench.of(
                file(coasting + "  - { time: 0 s, speed: 1000 rpm }\n  - { time: 3 s, speed: 300 rpm }\n"
                        + "  - { time: 6 s, speed: 200 rpm }\n"),
                null);
        assertThat(fan.cannot()).extracting(MotorBench.Cannot::why).containsExactly(Why.TORQUE_ABOVE_PROPORTION);
    }

    @Test
    void one_reading_alone_makes_no_fault_and_no_volts_at_all_cannot_be() {
        MotorBench one = MotorBench.of(file("readings: [ { speed: 500 rpm, volts-ab: 20 V } ]"), null);
        assertThat(one.first().fault()).isEqualTo(Fault.NOTHING);
        assertThat(one.first().probability()).isEqualTo(1);
        assertThat(value(one, What.VOLTS_PER_SPEED)).isCloseTo(20 / (500 * BenchBySimulator.RPM), within(1e-3));
        MotorBench none = MotorBench.of(
                file("readings: [ { speed: 500 rpm, volts-ab: 0 V, volts-bc: 0 V, volts-ca: 0 V } ]"), null);
        assertThat(none.cannot()).extracting(MotorBench.Cannot::why).containsExactly(Why.NO_VOLTS);
        assertThat(none.constants()).isEmpty();
    }
}
