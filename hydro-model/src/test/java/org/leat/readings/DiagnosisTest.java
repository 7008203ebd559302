package org.leat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.plant.Plant;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.readings.Channel.LoadState;
import org.leat.readings.Channel.ReadingKind;

class DiagnosisTest {

    private static final Plant PLANT = DemoPlants.of("rowan-ghyll");
    private static final Expectations EXPECTED = Expectations.of(PLANT);
    private static final FaultTable TABLE = FaultTable.of(EXPECTED);
    private static final List<ReadingKind> ON_BUS = List.of(
            ReadingKind.RUNNING_PRESSURE,
            ReadingKind.FLOW,
            ReadingKind.SPEED,
            ReadingKind.BRIDGE_VOLTS,
            ReadingKind.BATTERY_VOLTS,
            ReadingKind.BRIDGE_AMPS,
            ReadingKind.BATTERY_AMPS);

    /** Readings without noise, of the set as built and of the next. */
    private static List<Observation> readings(FaultKind kind, double size, List<ReadingKind> what, int sets) {
        List<Observation> readings = new ArrayList<>();
        for (NozzleGroup set : EXPECTED.sets().subList(0, sets)) {
            FaultKind here = kind.ofOneNozzle() && !set.asBuilt() ? FaultKind.NOTHING : kind;
            double[] values = ReadingModel.of(new FaultyPlants(PLANT).of(here, size, set), set);
            if (set.asBuilt()) {
                add(readings, Channel.standing(), values);
            }
            what.forEach(one -> add(readings, new Channel(set.name(), LoadState.BUS, one), values));
        }
        return readings;
    }

    private static void add(List<Observation> readings, Channel channel, double[] values) {
        double value = values[channel.slot()];
        readings.add(new Observation(channel, "", value, channel.what().usualUncertainty(value)));
    }

    @Test
    void a_plant_that_reads_as_designed_is_called_sound() {
        Diagnosis said = Diagnosis.of(TABLE, readings(FaultKind.NOTHING, 1, ON_BUS, 2));
        assertThat(said.ranked().get(0).kind()).isEqualTo(FaultKind.NOTHING);
        assertThat(said.ranked().get(0).probability()).isGreaterThan(0.5);
        assertThat(said.unexplained()).isFalse();
        assertThat(said.dangers()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "SCREEN_BLOCKED, 0.5",
        "AIR_IN_PIPE, 0.2",
        "HEAD_LOWER, 0.15",
        "NOZZLE_BLOCKED, 0.5",
        "WHEEL_WORN, 0.3",
        "MAGNETS_WEAKER, 0.15",
        "PHASE_OPEN, 1",
        "DIODE_OPEN, 1",
        "DIODE_SHORTED, 1",
        "JOINT_BAD, 0.1",
        "DUMP_ON, 0.6",
        "BATTERY_NOT_TAKING, 0.6"
    })
    void a_plain_fault_is_named_first_and_its_size_is_within_its_range(FaultKind kind, double size) {
        Diagnosis said = Diagnosis.of(TABLE, readings(kind, size, ON_BUS, 2));
        Diagnosis.Ranked first = said.ranked().get(0);
        assertThat(first.kind()).isEqualTo(kind);
        assertThat(said.unexplained()).isFalse();
        if (kind.sized()) {
            assertThat(size).isBetween(first.low(), first.high());
            assertThat(first.size()).isBetween(0.8 * size, 1.25 * size);
        }
    }

    @Test
    void screen_and_pinch_are_one_group_and_a_gauge_half_way_would_tell() {
        Diagnosis said = Diagnosis.of(TABLE, readings(FaultKind.PIPE_PINCHED, 0.5, ON_BUS, 2));
        assertThat(said.ranked().get(0).kind()).isEqualTo(FaultKind.SCREEN_BLOCKED);
        assertThat(said.twins()).anySatisfy(twin -> {
            assertThat(twin.kind()).isEqualTo(FaultKind.PIPE_PINCHED);
            assertThat(twin.separating()).isNotNull();
            assertThat(twin.separating().what()).isEqualTo(ReadingKind.MIDWAY_PRESSURE);
        });
        assertThat(said.next().get(0).channel().what()).isEqualTo(ReadingKind.MIDWAY_PRESSURE);
    }

    @Test
    void a_shorted_diode_is_told_first_because_it_can_hurt() {
        Diagnosis said = Diagnosis.of(
                TABLE, readings(FaultKind.DIODE_SHORTED, 1, List.of(ReadingKind.SPEED, ReadingKind.BATTERY_AMPS), 1));
        assertThat(said.dangers()).extracting(Diagnosis.Ranked::kind).contains(FaultKind.DIODE_SHORTED);
    }

    /** Two faults in one plant, each solved on top of the other: not what either moves, added. */
    @ParameterizedTest
    @CsvSource({
        "SCREEN_BLOCKED, 0.6, JOINT_BAD, 0.3",
        "WHEEL_WORN, 0.3, JOINT_BAD, 0.2",
        "HEAD_LOWER, 0.15, MAGNETS_WEAKER, 0.2"
    })
    void two_faults_at_once_are_not_called_one_and_both_are_named(
            FaultKind one, double size, FaultKind other, double otherSize) {
        NozzleGroup set = EXPECTED.sets().get(0);
        Plant first = new FaultyPlants(PLANT).of(one, size, set).plant();
        double[] both = ReadingModel.of(new FaultyPlants(first).of(other, otherSize, set), set);
        List<Observation> readings = new ArrayList<>();
        add(readings, Channel.standing(), both);
        ON_BUS.forEach(what -> add(readings, new Channel(set.name(), LoadState.BUS, what), both));
        for (ReadingKind what : List.of(ReadingKind.SPEED, ReadingKind.LEAD_VOLTS)) {
            add(readings, new Channel(set.name(), LoadState.OPEN, what), both);
        }
        Diagnosis said = Diagnosis.of(TABLE, readings);
        assertThat(said.unexplained()).as(said.ranked().toString()).isTrue();
        assertThat(said.pairs()).as(said.pairs().toString()).hasSize(2);
        assertThat(said.pairs()).anySatisfy(pair -> {
            assertThat(pair.one()).isEqualTo(one);
            assertThat(pair.other()).isEqualTo(other);
            assertThat(pair.sizeOfOther()).isBetween(0.7 * otherSize, 1.4 * otherSize);
        });
        // both sizes integrated: the pair that is there is no rare one
        assertThat(said.pairs().get(0).share() + said.pairs().get(1).share()).isGreaterThan(0.5);
    }

    @Test
    void a_single_fault_is_not_called_two() {
        Diagnosis said = Diagnosis.of(TABLE, readings(FaultKind.JOINT_BAD, 0.2, ON_BUS, 2));
        assertThat(said.unexplained()).isFalse();
        assertThat(said.pairs()).isEmpty();
    }

    @Test
    void with_nothing_read_nothing_is_known_but_how_common_faults_are() {
        Diagnosis said = Diagnosis.of(TABLE, List.of());
        double all = TABLE.kinds().stream().mapToDouble(FaultKind::weight).sum();
        assertThat(said.probability(FaultKind.NOTHING)).isCloseTo(FaultKind.NOTHING.weight() / all, within(0.08));
        assertThat(said.next()).isNotEmpty();
    }

    private static Observation seen(String set, LoadState state, ReadingKind what, double value) {
        return new Observation(new Channel(set, state, what), "", value, what.usualUncertainty(value));
    }

    @Test
    void what_can_hurt_is_told_first_though_something_else_is_likelier() {
        Diagnosis said = Diagnosis.of(
                TABLE,
                readings(
                        FaultKind.WHEEL_WORN,
                        0.25,
                        List.of(ReadingKind.SPEED, ReadingKind.BATTERY_AMPS, ReadingKind.RUNNING_PRESSURE),
                        1));
        assertThat(said.ranked().get(0).kind()).isEqualTo(FaultKind.WHEEL_WORN);
        assertThat(said.dangers()).extracting(Diagnosis.Ranked::kind).contains(FaultKind.BEARING_DRAG);
        assertThat(said.probability(FaultKind.BEARING_DRAG)).isLessThan(said.probability(FaultKind.WHEEL_WORN));
    }

    @Test
    void a_dead_dump_load_is_not_shown_on_the_bus_and_is_named_with_the_battery_away() {
        List<Observation> onBus = readings(FaultKind.NOTHING, 1, ON_BUS, 1);
        Diagnosis before = Diagnosis.of(TABLE, onBus);
        Diagnosis.Unseen unseen = before.unseen().stream()
                .filter(u -> u.kind() == FaultKind.DUMP_DEAD)
                .findFirst()
                .orElseThrow();
        Channel showing = Objects.requireNonNull(unseen.showing());
        assertThat(showing.state()).isEqualTo(LoadState.DUMP);
        assertThat(before.unseen()).extracting(Diagnosis.Unseen::kind).doesNotContain(FaultKind.SCREEN_BLOCKED);
        NozzleGroup set = EXPECTED.sets().get(0);
        double dead = ReadingModel.of(new FaultyPlants(PLANT).of(FaultKind.DUMP_DEAD, 1, set), set)[
                Channel.slot(LoadState.DUMP, ReadingKind.BRIDGE_VOLTS)];
        List<Observation> more = new ArrayList<>(onBus);
        more.add(seen(set.name(), LoadState.DUMP, ReadingKind.BRIDGE_VOLTS, dead));
        Diagnosis after = Diagnosis.of(TABLE, more);
        assertThat(after.ranked().get(0).kind()).isEqualTo(FaultKind.DUMP_DEAD);
        assertThat(after.dangers().get(0).kind()).isEqualTo(FaultKind.DUMP_DEAD);
        assertThat(after.unseen()).extracting(Diagnosis.Unseen::kind).doesNotContain(FaultKind.DUMP_DEAD);
    }

    @Test
    void what_readings_would_not_show_speaks_not_against_a_sound_plant() {
        Diagnosis three = Diagnosis.of(
                TABLE,
                readings(
                        FaultKind.NOTHING,
                        1,
                        List.of(ReadingKind.SPEED, ReadingKind.BATTERY_AMPS, ReadingKind.RUNNING_PRESSURE),
                        1));
        assertThat(three.probability(FaultKind.NOTHING)).isGreaterThan(0.9);
        // a screen that takes 1 % of the head cannot be told from a sound one by three readings, one of 50 % can
        NozzleGroup set = EXPECTED.sets().get(0);
        Hypothesis screen = new Posterior(TABLE, readings(FaultKind.NOTHING, 1, ON_BUS, 1), Map.of())
                .hypotheses().stream()
                        .filter(h -> h.kind() == FaultKind.SCREEN_BLOCKED)
                        .findFirst()
                        .orElseThrow();
        assertThat(set.asBuilt()).isTrue();
        assertThat(screen.points().get(0).shows()).isFalse();
        assertThat(screen.points().stream().filter(p -> p.size() > 0.5)).allMatch(Hypothesis.Point::shows);
    }

    /** Readings drawn of each fault as likely as it is, diagnosed anew: by how much they narrow down on average. */
    @Test
    void a_further_reading_tells_as_many_bits_as_it_does_when_it_is_drawn_and_taken() {
        List<Observation> three = readings(
                FaultKind.WHEEL_WORN,
                0.25,
                List.of(ReadingKind.SPEED, ReadingKind.BATTERY_AMPS, ReadingKind.RUNNING_PRESSURE),
                1);
        Diagnosis.Next best = Diagnosis.of(TABLE, three).next().get(0);
        Posterior before = new Posterior(TABLE, three, Map.of());
        Random random = new Random(11);
        double after = 0;
        int draws = 150;
        for (int i = 0; i < draws; i++) {
            double which = random.nextDouble();
            int place = 0;
            while (which > before.whole(place)
                    && place + 1 < before.hypotheses().size()) {
                which -= before.whole(place);
                place++;
            }
            Hypothesis one = before.hypotheses().get(place);
            double[] weights = one.weights();
            double size = random.nextDouble();
            int at = 0;
            while (size > weights[at] && at + 1 < weights.length) {
                size -= weights[at];
                at++;
            }
            Hypothesis.Point point = one.points().get(at);
            FaultReader.At there = new FaultReader(TABLE, one.kind(), one.set()).at(best.channel());
            double[] moved = there.moved(point.node());
            double value = there.value(point);
            for (int b = 0; b < moved.length; b++) {
                value += moved[b] * point.said().tolerances()[b];
            }
            double own = Math.hypot(best.channel().what().usualUncertainty(value), there.model(point.node()));
            double spread = Math.sqrt(own * own + point.said().evidence().left(moved));
            List<Observation> more = new ArrayList<>(three);
            more.add(seen(
                    best.channel().nozzles(),
                    best.channel().state(),
                    best.channel().what(),
                    value + spread * random.nextGaussian()));
            after += entropy(new Posterior(TABLE, more, Map.of())) / draws;
        }
        assertThat(entropy(before) - after).isCloseTo(best.bits(), within(0.2));
        assertThat(best.bits()).isGreaterThan(0.5);
    }

    private static double entropy(Posterior posterior) {
        double sum = 0;
        for (int i = 0; i < posterior.hypotheses().size(); i++) {
            double p = posterior.whole(i);
            sum -= p > 0 ? p * Math.log(p) / Math.log(2) : 0;
        }
        return sum;
    }
}
