package org.leat.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.leat.arbitraries.Penstocks;

class FrictionTest {

    /** 1/√f put back into the equation. */
    @Property
    void the_root_satisfies_colebrook_and_white(
            @ForAll @Scale(9) @DoubleRange(min = 3.6, max = 8) double decades,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.05) double relativeRoughness) {
        double reynolds = Math.pow(10, decades);
        double x = 1 / Math.sqrt(ColebrookWhite.frictionFactor(reynolds, relativeRoughness));
        double right = -2 * Math.log10(relativeRoughness / 3.7 + 2.51 / reynolds * x);
        assertThat(x).isCloseTo(right, within(1e-12 * x));
    }

    @Property
    void swamee_and_jain_stay_within_their_stated_error(
            @ForAll @Scale(9) @DoubleRange(min = 3.7, max = 7.99) double decades,
            @ForAll @Scale(9) @DoubleRange(min = -5.99, max = -2.01) double roughDecades) {
        double reynolds = Math.pow(10, decades);
        double rough = Math.pow(10, roughDecades);
        double exact = ColebrookWhite.frictionFactor(reynolds, rough);
        assertThat(SwameeJain.frictionFactor(reynolds, rough).orThrow()).isCloseTo(exact, within(0.03 * exact));
    }

    @Property
    void head_lost_never_falls_when_the_flow_rises(
            @ForAll @Scale(9) @DoubleRange(min = 2, max = 6) double decades,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.05) double relativeRoughness,
            @ForAll @Scale(9) @DoubleRange(min = 1.0001, max = 1.2) double faster) {
        double slow = Math.pow(10, decades);
        double fast = slow * faster;
        double before = DarcyFriction.frictionFactor(slow, relativeRoughness) * slow * slow;
        double after = DarcyFriction.frictionFactor(fast, relativeRoughness) * fast * fast;
        assertThat(after).isGreaterThan(before);
    }

    @Property
    void the_bridge_lies_within_its_band(
            @ForAll @Scale(9) @DoubleRange(min = 500, max = 8000) double reynolds,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.05) double relativeRoughness) {
        assertThat(DarcyFriction.frictionFactor(reynolds, relativeRoughness))
                .isBetween(
                        DarcyFriction.lowest(reynolds, relativeRoughness),
                        DarcyFriction.highest(reynolds, relativeRoughness));
    }

    @Test
    void the_bridge_meets_both_ends() {
        double below = DarcyFriction.frictionFactor(2300, 1e-4);
        assertThat(DarcyFriction.frictionFactor(Math.nextUp(2300.0), 1e-4)).isCloseTo(below, within(1e-12));
        double above = DarcyFriction.frictionFactor(4000, 1e-4);
        assertThat(DarcyFriction.frictionFactor(Math.nextDown(4000.0), 1e-4)).isCloseTo(above, within(1e-12));
        assertThat(DarcyFriction.unsettled(3000)).isTrue();
        assertThat(DarcyFriction.unsettled(2300)).isFalse();
        assertThat(DarcyFriction.unsettled(4000)).isFalse();
    }

    @Test
    void laminar_flow_ends_and_nonsense_is_refused() {
        assertThat(LaminarFriction.frictionFactor(2301).isValue()).isFalse();
        assertThatThrownBy(() -> DarcyFriction.frictionFactor(0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ColebrookWhite.frictionFactor(1e5, -1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> DarcyWeisbach.headLoss(0.001, 10, 0, 0, 0, 1e-6))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Property
    void the_least_bore_loses_just_what_it_may(
            @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 20) double loss,
            @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 20) double litres) {
        double bore = LeastBore.forLoss(loss, litres / 1000, 200, 1e-5, 1.5, Penstocks.VISCOSITY);
        double lost = DarcyWeisbach.headLoss(litres / 1000, 200, bore, 1e-5, 1.5, Penstocks.VISCOSITY);
        assertThat(lost).isCloseTo(loss, within(1e-9 * loss));
    }
}
