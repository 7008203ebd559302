package org.leat.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.published.PublishedCase;

/** Valves shut evenly in time: what they let through, how fast they stop it, and what hammer comes of it. */
class ValveClosingTest {

    private static final double HEAD = 30;

    static List<PublishedCase> losses() {
        return PublishedCase.of("hydraulics-valves").toList();
    }

    @ParameterizedTest
    @MethodSource("losses")
    void losses_part_open_are_the_published_ones(PublishedCase c) {
        c.assertMatches(ValveKind.valueOf(c.text("valve")).lossCoefficient(c.in("opening")));
    }

    /** Perry's gate valve (24 at a quarter, 4.5 at half) throttles earlier than Weisbach's; at the end both are as steep. */
    @Test
    void another_table_of_the_gate_valve_ends_as_steeply() {
        assertThat(1 / Math.sqrt(24) / 0.25)
                .isEqualTo(1 / Math.sqrt(GateValveLoss.coefficient(0.125)) / 0.125, within(0.01));
        assertThat(GateValveLoss.coefficient(0.25)).isBetween(0.6 * 24, 24.0);
        assertThat(GateValveLoss.coefficient(0.5)).isBetween(0.4 * 4.5, 4.5);
    }

    @Property
    void more_open_lets_more_through(
            @ForAll ValveKind kind,
            @ForAll @DoubleRange(min = 1e-5, max = 1) @Scale(5) double headShare,
            @ForAll @DoubleRange(min = 0, max = 0.99) double opening) {
        double share = ValveClosing.flowShare(kind, headShare, opening);
        assertThat(share).isBetween(0.0, 1.0);
        assertThat(ValveClosing.flowShare(kind, headShare, opening + 0.01)).isGreaterThanOrEqualTo(share);
        assertThat(ValveClosing.flowShare(kind, headShare, 0)).isZero();
        assertThat(ValveClosing.flowShare(kind, headShare, 1)).isEqualTo(1);
    }

    /** The stroke of a gate valve in a pipe of 1.4 m/s under 30 m: nine tenths of the flow still pass an eighth open. */
    @Test
    void a_gate_valve_stops_most_of_the_flow_in_the_last_of_its_travel() {
        double headShare = 1.4 * 1.4 / (2 * 9.80665 * HEAD);
        assertThat(ValveClosing.flowShare(ValveKind.GATE, headShare, 0.125))
                .isEqualTo(1 / Math.sqrt(1 + 97.7 * headShare), within(1e-9));
        assertThat(ValveClosing.effectiveTime(ValveKind.GATE, headShare, 15, 0.6))
                .isBetween(1.2, 1.9);
        assertThat(ValveClosing.effectiveTime(ValveKind.BALL, headShare, 15, 0.6))
                .isBetween(3.5, 6.0);
        assertThat(ValveClosing.effectiveTime(ValveKind.NEEDLE, 0.9, 15, 0.6)).isBetween(6.0, 9.0);
    }

    @Property
    void the_effective_time_is_no_longer_than_the_whole_and_grows_with_it_and_a_gate_valve_has_the_least(
            @ForAll ValveKind kind,
            @ForAll @DoubleRange(min = 1e-4, max = 0.05) @Scale(5) double headShare,
            @ForAll @DoubleRange(min = 0, max = 200) double time,
            @ForAll @DoubleRange(min = 0.05, max = 3) double returnTime) {
        double share = kind == ValveKind.NEEDLE ? 1 - headShare : headShare;
        double effective = ValveClosing.effectiveTime(kind, share, time, returnTime);
        assertThat(effective).isBetween(0.0, time);
        assertThat(ValveClosing.effectiveTime(kind, share, time * 1.1, returnTime))
                .isGreaterThanOrEqualTo(effective * (1 - 1e-3));
        assertThat(effective)
                .isGreaterThanOrEqualTo(
                        ValveClosing.effectiveTime(ValveKind.GATE, headShare, time, returnTime) * (1 - 1e-3));
    }

    /** Allievi's number of 2 or less: the closed form with the effective time bounds the waves. */
    @Property(tries = 300)
    void the_closed_form_with_the_effective_time_bounds_the_waves_in_one_pipe(
            @ForAll ValveKind kind,
            @ForAll @DoubleRange(min = 0.05, max = 2) double number,
            @ForAll @DoubleRange(min = 1.05, max = 20) double returnTimes,
            @ForAll @DoubleRange(min = 0, max = 0.03) double frictionFactor) {
        SurgeResult shut = shut(kind, number, returnTimes, frictionFactor);
        assertThat(shut.highestHead()).isLessThanOrEqualTo(shut.closedFormHead() + 1e-6);
    }

    @Test
    void the_closed_form_is_near_the_waves_in_a_fast_closing_and_twice_them_in_a_slow_one() {
        SurgeResult fast = shut(ValveKind.GATE, 1, 1.05, 0);
        assertThat((fast.highestHead() - HEAD) / (fast.closedFormHead() - HEAD)).isBetween(0.8, 1.0);
        SurgeResult slow = shut(ValveKind.GATE, 0.3, 20, 0);
        assertThat((slow.highestHead() - HEAD) / (slow.closedFormHead() - HEAD)).isBetween(0.45, 0.6);
    }

    @Test
    void an_area_that_falls_evenly_is_milder_by_far() {
        SurgeLine line = line(300, 0.02);
        double flow = 1.2 * line.sections().get(0).area();
        double even = SurgeStudy.shut(line, flow, 15).highestHead() - HEAD;
        double gate = SurgeStudy.shutBy(ValveKind.GATE, line, flow, 0.08, 15).highestHead() - HEAD;
        assertThat(gate).isGreaterThan(5 * even);
    }

    /** A closing time so long that the effective one is some return times. */
    private static SurgeResult shut(ValveKind kind, double number, double returnTimes, double frictionFactor) {
        double velocity = 1.2;
        SurgeLine line = line(number * 9.80665 * HEAD / velocity, frictionFactor);
        double flow = velocity * line.sections().get(0).area();
        double net = line.workingHead(flow);
        double share = ValveClosing.headShare(kind, flow, 0.08, net, HEAD);
        double time = returnTimes * line.returnTime();
        while (ValveClosing.effectiveTime(kind, share, time, line.returnTime()) < returnTimes * line.returnTime()) {
            time *= 1.1;
        }
        return SurgeStudy.shutBy(kind, line, flow, 0.08, time);
    }

    private static SurgeLine line(double waveSpeed, double frictionFactor) {
        return new SurgeLine(List.of(new SurgeSection(90, 0.08, waveSpeed, frictionFactor, 25, 0)), HEAD);
    }

    @Test
    void an_opening_beyond_the_travel_is_refused() {
        assertThatThrownBy(() -> GateValveLoss.coefficient(1.2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> NeedleOpening.share(-0.1)).isInstanceOf(IllegalArgumentException.class);
    }
}
