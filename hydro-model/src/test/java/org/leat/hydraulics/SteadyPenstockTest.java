package org.leat.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.leat.arbitraries.Penstocks;
import org.leat.law.Gravity;

class SteadyPenstockTest {

    private static final PenstockSection PIPE = new PenstockSection(200, 0.0792, 1e-5, 1.5);
    private static final OpenNozzles NOZZLE = OpenNozzles.withoutBranches(List.of(0.018), 0.97, 0.97);

    @Provide
    Arbitrary<SteadyPenstock> penstock() {
        return Penstocks.penstock();
    }

    @Provide
    Arbitrary<List<PenstockSection>> sections() {
        return Penstocks.sections();
    }

    @Provide
    Arbitrary<OpenNozzles> nozzles() {
        return Penstocks.nozzles();
    }

    /** The equation is put together here from the parts of the answer and from the definition, not from the solver. */
    @Property
    void every_answer_satisfies_the_energy_equation(
            @ForAll("penstock") SteadyPenstock penstock,
            @ForAll("nozzles") OpenNozzles nozzles,
            @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 200) double head) {
        SteadyFlow flow = penstock.solve(head, nozzles, Penstocks.DENSITY);
        double lost = flow.screenLoss();
        for (int i = 0; i < flow.sections().size(); i++) {
            PenstockSection pipe = penstock.sections().get(i);
            lost += DarcyWeisbach.headLoss(
                    flow.flow(),
                    pipe.length(),
                    pipe.bore(),
                    pipe.roughness(),
                    pipe.lossCoefficient(),
                    Penstocks.VISCOSITY);
        }
        double jets = 0;
        for (NozzleJet jet : flow.jets()) {
            double branch =
                    flow.flow() == 0 ? 0 : jet.flow() / (Math.PI / 4 * nozzles.branchBore() * nozzles.branchBore());
            double ideal = jet.velocity() / nozzles.velocityCoefficient();
            double head1 = (nozzles.branchLoss() * branch * branch + ideal * ideal) / (2 * Gravity.STANDARD);
            assertThat(lost + head1).isCloseTo(head, within(1e-9 * head));
            jets += jet.flow();
        }
        assertThat(jets).isCloseTo(flow.flow(), within(1e-9 * flow.flow()));
    }

    @Property
    void jets_never_carry_more_than_the_water_that_falls(
            @ForAll("penstock") SteadyPenstock penstock,
            @ForAll("nozzles") OpenNozzles nozzles,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 200) double head) {
        SteadyFlow flow = penstock.solve(head, nozzles, Penstocks.DENSITY);
        double falling = Penstocks.DENSITY * Gravity.STANDARD * flow.flow() * head;
        assertThat(flow.jetPower()).isBetween(0.0, falling);
        assertThat(flow.netHead()).isBetween(0.0, head);
    }

    @Property
    void more_head_gives_more_flow_and_more_power(
            @ForAll("penstock") SteadyPenstock penstock,
            @ForAll("nozzles") OpenNozzles nozzles,
            @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 150) double head,
            @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 50) double more) {
        SteadyFlow low = penstock.solve(head, nozzles, Penstocks.DENSITY);
        SteadyFlow high = penstock.solve(head + more, nozzles, Penstocks.DENSITY);
        assertThat(high.flow()).isGreaterThan(low.flow());
        assertThat(high.jetPower()).isGreaterThan(low.jetPower());
    }

    @Property
    void a_rougher_pipe_never_passes_more(
            @ForAll("sections") List<PenstockSection> sections,
            @ForAll("nozzles") OpenNozzles nozzles,
            @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 150) double head) {
        List<PenstockSection> rougher = new ArrayList<>();
        for (PenstockSection s : sections) {
            rougher.add(new PenstockSection(s.length(), s.bore(), s.roughness() * 2 + 1e-5, s.lossCoefficient()));
        }
        double smooth = new SteadyPenstock(sections, 0, Penstocks.VISCOSITY).flow(head, nozzles.conductance());
        double rough = new SteadyPenstock(rougher, 0, Penstocks.VISCOSITY).flow(head, nozzles.conductance());
        assertThat(rough).isLessThanOrEqualTo(smooth * (1 + 1e-12));
    }

    @Property
    void cutting_a_section_in_two_changes_nothing(
            @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 0.9) double cut,
            @ForAll("nozzles") OpenNozzles nozzles,
            @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 150) double head) {
        PenstockSection upper = new PenstockSection(PIPE.length() * cut, PIPE.bore(), PIPE.roughness(), 1);
        PenstockSection lower = new PenstockSection(PIPE.length() * (1 - cut), PIPE.bore(), PIPE.roughness(), 0.5);
        double one = new SteadyPenstock(List.of(PIPE), 0, Penstocks.VISCOSITY).flow(head, nozzles.conductance());
        double two =
                new SteadyPenstock(List.of(upper, lower), 0, Penstocks.VISCOSITY).flow(head, nozzles.conductance());
        assertThat(two).isCloseTo(one, within(1e-11 * one));
    }

    /** Lengths times s, viscosity times s^1.5, head times s: the same flow in other units of length (time times √s). */
    @Property
    void the_flow_does_not_depend_on_the_unit_of_length(@ForAll @Scale(9) @DoubleRange(min = 0.2, max = 5) double s) {
        double here = new SteadyPenstock(List.of(PIPE), 0, Penstocks.VISCOSITY).flow(40, NOZZLE.conductance());
        PenstockSection scaled =
                new PenstockSection(PIPE.length() * s, PIPE.bore() * s, PIPE.roughness() * s, PIPE.lossCoefficient());
        OpenNozzles nozzle = OpenNozzles.withoutBranches(List.of(0.018 * s), 0.97, 0.97);
        double there = new SteadyPenstock(List.of(scaled), 0, Penstocks.VISCOSITY * Math.pow(s, 1.5))
                .flow(40 * s, nozzle.conductance());
        assertThat(there).isCloseTo(here * Math.pow(s, 2.5), within(1e-10 * there));
    }

    @Property
    void flow_rises_steadily_through_the_unsettled_range(
            @ForAll @Scale(9) @DoubleRange(min = 2000, max = 4500) double reynolds) {
        PenstockSection pipe = new PenstockSection(300, 0.05, 1e-5, 0);
        SteadyPenstock penstock = new SteadyPenstock(List.of(pipe), 0, Penstocks.VISCOSITY);
        double flow = reynolds * Penstocks.VISCOSITY * pipe.area() / pipe.bore();
        double head = penstock.headLoss(flow) + 1e-3;
        double conductance = flow / Math.sqrt(1e-3);
        assertThat(penstock.flow(head, conductance)).isCloseTo(flow, within(1e-10 * flow));
        assertThat(penstock.headLoss(flow * 1.0001)).isGreaterThan(penstock.headLoss(flow));
    }

    @Test
    void shut_nozzles_hold_the_water_still() {
        OpenNozzles shut = OpenNozzles.withoutBranches(List.of(), 0.97, 1);
        SteadyFlow still = new SteadyPenstock(List.of(PIPE), 10, Penstocks.VISCOSITY).solve(40, shut, 1000);
        assertThat(still.flow()).isZero();
        assertThat(still.netHead()).isEqualTo(40);
        assertThat(still.jetPower()).isZero();
        assertThat(still.sections().get(0).frictionFactor()).isZero();
    }

    @Test
    void impossible_pipes_are_refused() {
        assertThatThrownBy(() -> new PenstockSection(10, -0.05, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new PenstockSection(0, 0.05, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SteadyPenstock(List.of(), 0, 1e-6)).isInstanceOf(IllegalArgumentException.class);
        SteadyPenstock penstock = new SteadyPenstock(List.of(PIPE), 0, 1e-6);
        assertThatThrownBy(() -> penstock.flow(Double.NaN, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> penstock.flow(10, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
