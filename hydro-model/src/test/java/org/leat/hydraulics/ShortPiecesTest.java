package org.leat.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.leat.hydraulics.RejoiningBlows.Blow;

/** Sections of unlike bore: what joints let through, and pieces too short to set the blow of a line. */
class ShortPiecesTest {

    private static final double FLOW = 0.003;
    private static final SurgeSection MAIN = new SurgeSection(300, 0.08, 300, 0.02, 29, 0);
    private static final SurgeSection STEEL = new SurgeSection(0.05, 0.04, 1200, 0.02, 29.2, 29);
    private static final SurgeSection OUTLET = new SurgeSection(0.3, 0.05, 1200, 0.02, 0, 0);

    private static HeadEnvelope stopped(SurgeLine line) {
        return Characteristics.run(
                line,
                FLOW,
                new UpperEnd.Open(),
                new LowerEnd.Nozzles(NozzleOpening.step(0)),
                48,
                3 * line.returnTime());
    }

    @Property
    void at_a_joint_head_and_flow_are_equal_on_both_sides(
            @ForAll @DoubleRange(min = 1e3, max = 1e6) double b,
            @ForAll @DoubleRange(min = 0, max = 1e6) double beyond) {
        double on = JointTransmission.transmitted(b, beyond);
        double back = JointTransmission.reflected(b, beyond);
        assertThat(on).isCloseTo(1 + back, within(1e-12));
        assertThat(on * b).as("flow").isCloseTo((1 - back) * beyond, within(1e-9 * b));
    }

    @Test
    void a_tank_turns_the_sign_an_equal_pipe_lets_all_through_and_a_dead_end_doubles() {
        assertThat(JointTransmission.reflected(5e4, 0)).isEqualTo(-1);
        assertThat(JointTransmission.transmitted(5e4, 5e4)).isEqualTo(1);
        assertThat(JointTransmission.transmitted(1, 1e12)).isCloseTo(2, within(1e-9));
        assertThat(JointTransmission.impedance(Math.PI * 9.80665, Math.PI)).isCloseTo(1, within(1e-12));
    }

    @Property(tries = 50)
    void the_first_pass_is_that_of_the_characteristics(
            @ForAll @DoubleRange(min = 0.03, max = 0.15) double upper,
            @ForAll @DoubleRange(min = 0.03, max = 0.15) double lower) {
        SurgeLine line = new SurgeLine(
                List.of(new SurgeSection(100, upper, 500, 0, 0, 0), new SurgeSection(100, lower, 500, 0, 0, 0)), 200);
        HeadEnvelope waves = Characteristics.run(
                line, 0.001, new UpperEnd.Open(), new LowerEnd.Nozzles(NozzleOpening.step(0)), 80, 0.39);
        List<Double> rises = SeriesStop.firstPass(line, 0.001, 0);
        assertThat(waves.highestAt(1, 1)).isCloseTo(200 + rises.get(1), within(1e-6));
        assertThat(waves.highestAt(0, 0.5)).isCloseTo(200 + rises.get(0), within(1e-6));
    }

    @Test
    void a_hand_s_breadth_of_steel_at_the_inlet_does_not_set_the_blow_of_the_line() {
        SurgeLine plain = new SurgeLine(List.of(MAIN), 30);
        SurgeLine line = new SurgeLine(List.of(STEEL, MAIN), 30);
        HeadEnvelope envelope = stopped(line);
        assertThat(line.joukowskyHead(FLOW)).as("its own rise").isGreaterThan(15 * plain.joukowskyHead(FLOW));
        assertThat(envelope.highestPressureHead(1))
                .isCloseTo(stopped(plain).highestPressureHead(0), within(0.01 * plain.joukowskyHead(FLOW)));
        assertThat(envelope.waveSpeedChange()).isLessThan(1e-3);
        assertThat(envelope.highest(1)).as("lower end of the piece").isEqualTo(envelope.highest(2));
        assertThat(envelope.elevation(0)).isEqualTo(29.2);
        assertThat(envelope.distance(2)).isEqualTo(0.05);
        assertThat(envelope.nodes()).isEqualTo(2 + envelope.firstNode(2) - envelope.firstNode(1));
    }

    @Test
    void a_short_outlet_has_the_heads_of_the_end_of_the_line() {
        SurgeLine line = new SurgeLine(List.of(MAIN, OUTLET), 30);
        HeadEnvelope envelope = stopped(line);
        assertThat(envelope.highestAt(1, 0)).isEqualTo(envelope.highestAt(0, 1));
        assertThat(envelope.highestAt(1, 1)).isEqualTo(envelope.highestAt(0, 1));
        assertThat(envelope.lowestAt(1, 1)).isEqualTo(envelope.lowestAt(0, 1));
    }

    @Test
    void the_cavity_model_takes_short_pieces_the_same_way() {
        RejoiningBlows plain =
                RejoiningColumn.blows(new SurgeLine(List.of(MAIN), 30), FLOW, NozzleOpening.step(0), -10.1);
        RejoiningBlows both = RejoiningColumn.blows(
                new SurgeLine(List.of(STEEL, MAIN, OUTLET), 30), FLOW, NozzleOpening.step(0), -10.1);
        assertThat(both.peak(1, Blow.FIRST).head())
                .isCloseTo(plain.peak(0, Blow.FIRST).head(), within(0.5));
        assertThat(both.peak(2, Blow.FIRST).head())
                .isEqualTo(both.peak(1, Blow.FIRST).head());
        assertThat(both.peak(0, Blow.FIRST).head()).isCloseTo(30 - 29, within(1e-9));
    }

    @Test
    void a_piece_keeps_its_inertia_and_its_losses() {
        SurgeLine line = new SurgeLine(List.of(STEEL, MAIN, OUTLET), 30);
        SurgeLine joined = line.withoutPieces(0.01);
        assertThat(joined.sections()).hasSize(1);
        assertThat(joined.inertia()).isCloseTo(line.inertia(), within(1e-9 * line.inertia()));
        assertThat(joined.workingHead(FLOW)).isCloseTo(line.workingHead(FLOW), within(1e-9));
        assertThat(line.withoutPieces(0)).isEqualTo(line);
        assertThat(line.withoutPieces(2 * 0.3 / 1200))
                .as("not shorter")
                .satisfies(l -> assertThat(l.sections()).hasSize(2));
        assertThat(line.withoutPieces(100).sections()).as("the longest stays").hasSize(1);
    }
}
