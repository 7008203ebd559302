package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.catalogue.tables.AmpacityCatalogue;
import org.leat.catalogue.tables.AmpacityFactors;
import org.leat.catalogue.tables.CableInductance;
import org.leat.catalogue.tables.CableLaying;
import org.leat.catalogue.tables.ReferenceMethod;
import org.leat.design.CableInsulation;
import org.leat.design.ConductorMaterial;
import org.leat.design.LayingMethod;
import org.leat.law.Answer;
import org.leat.published.PublishedCase;

/** What the laying of a cable does to its current and its inductance, against published values. */
class PublishedLayingTest {

    private static final double CELSIUS = 273.15;

    static Stream<PublishedCase> cases() {
        return Stream.of("electrical-laying", "electrical-inductance").flatMap(PublishedCase::of);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void laying_agrees_with_what_is_published(PublishedCase c) {
        String[] name = c.id().substring(c.id().indexOf('-') + 1).split("/", -1);
        switch (c.family()) {
            case "izd1" -> capacity(c, ReferenceMethod.D1, 20);
            case "izd2" -> capacity(c, ReferenceMethod.D2, 20);
            case "ize" -> capacity(c, ReferenceMethod.E, 30);
            case "izf" -> capacity(c, name[0].equals("flat") ? ReferenceMethod.F_FLAT : ReferenceMethod.F, 30);
            case "ktg" ->
                c.assertMatches(AmpacityFactors.ground(CableInsulation.valueOf(name[0]), c.in("T") + CELSIUS)
                        .orThrow());
            case "krho" -> {
                ReferenceMethod method = name[0].equals("duct") ? ReferenceMethod.D1 : ReferenceMethod.D2;
                c.assertMatches(AmpacityFactors.soil(method, c.in("rho")).orThrow());
            }
            case "indk" -> c.assertMatches(RunInductance.internal((int) c.in("n_wires")) * 1e6);
            case "indrun" ->
                c.assertMatches(c.in("factor")
                        * RunInductance.perConductor(c.in("K") / 1e6, c.in("S") / 1e3, c.in("d") / 1e3)
                                .orThrow()
                        * 1e6);
            case "indpair" -> {
                // K of a solid wire; mH/km is uH/m
                double each = RunInductance.perConductor(RunInductance.internal(1), c.in("d"), 2 * c.in("r"))
                        .orThrow();
                c.assertMatches(RunInductance.twoWire(each, 1) * 1e6);
            }
            case "indxsingle" -> tabled(c, CableInductance.Lay.SINGLE_CORES);
            case "indxmulti" -> tabled(c, CableInductance.Lay.MULTICORE);
            default -> throw new AssertionError("no law bound to " + c);
        }
    }

    @Test
    void every_case_of_the_files_is_bound() {
        assertThat(cases()).hasSize(194 + 36);
    }

    private static void tabled(PublishedCase c, CableInductance.Lay lay) {
        c.assertMatches(CableInductance.perConductor(lay, c.in("A") / 1e6).orThrow() * 1e6);
    }

    private static CableLaying laying(
            ReferenceMethod method, CableInsulation insulation, int loaded, double celsius, int circuits, double soil) {
        return new CableLaying(ConductorMaterial.COPPER, method, insulation, loaded, celsius + CELSIUS, circuits, soil);
    }

    private static void capacity(PublishedCase c, ReferenceMethod method, double celsius) {
        CableInsulation insulation = CableInsulation.valueOf(c.text("insulation"));
        c.assertMatches(AmpacityCatalogue.capacity(
                        c.in("A") / 1e6, laying(method, insulation, (int) c.in("loaded"), celsius, 1, 2.5))
                .orThrow());
    }

    @Test
    void the_simplified_annex_of_the_standard_is_another_table() {
        double[] area = {25, 50, 95};
        double[] simplified = {104, 148, 216};
        for (int i = 0; i < area.length; i++) {
            double duct = amperes(area[i], laying(ReferenceMethod.D1, CableInsulation.PVC, 2, 20, 1, 2.5));
            double direct = amperes(area[i], laying(ReferenceMethod.D2, CableInsulation.PVC, 2, 20, 1, 2.5));
            assertThat(simplified[i]).isBetween(duct, direct);
        }
    }

    private static double amperes(double squareMillimetres, CableLaying laying) {
        return AmpacityCatalogue.capacity(squareMillimetres / 1e6, laying).orThrow();
    }

    @Test
    void moist_soil_helps_a_cable_laid_direct_far_more_than_one_in_a_duct() {
        double direct = amperes(16, laying(ReferenceMethod.D2, CableInsulation.XLPE, 3, 20, 1, 1))
                / amperes(16, laying(ReferenceMethod.D2, CableInsulation.XLPE, 3, 20, 1, 2.5));
        double duct = amperes(16, laying(ReferenceMethod.D1, CableInsulation.XLPE, 3, 20, 1, 1))
                / amperes(16, laying(ReferenceMethod.D1, CableInsulation.XLPE, 3, 20, 1, 2.5));
        assertThat(direct).isCloseTo(1.5, within(1e-9));
        assertThat(duct).isCloseTo(1.18, within(1e-9));
        assertThat(AmpacityFactors.soil(ReferenceMethod.C, 0.1)).isEqualTo(Answer.of(1));
        assertThat(AmpacityFactors.soil(ReferenceMethod.D1, 0.49)).isInstanceOf(Answer.Outside.class);
        assertThat(AmpacityFactors.soil(ReferenceMethod.D2, 3.01)).isInstanceOf(Answer.Outside.class);
    }

    @Test
    void the_factor_of_the_ground_follows_the_root_of_the_temperatures() {
        for (int celsius = 10; celsius <= 50; celsius++) {
            assertThat(AmpacityFactors.ground(CableInsulation.PVC, celsius + CELSIUS)
                            .orThrow())
                    .isCloseTo(Math.sqrt((70.0 - celsius) / 50), within(0.012));
            assertThat(AmpacityFactors.ground(CableInsulation.XLPE, celsius + CELSIUS)
                            .orThrow())
                    .isCloseTo(Math.sqrt((90.0 - celsius) / 70), within(0.012));
        }
        assertThat(AmpacityFactors.ground(CableInsulation.PVC, 9 + CELSIUS)).isInstanceOf(Answer.Outside.class);
        assertThat(AmpacityFactors.ground(CableInsulation.PVC, 51 + CELSIUS)).isInstanceOf(Answer.Outside.class);
    }

    @ParameterizedTest
    @EnumSource(
            value = ReferenceMethod.class,
            names = {"D1", "D2"})
    void circuits_side_by_side_in_the_ground_carry_less(ReferenceMethod method) {
        double before = 1;
        for (int circuits = 2; circuits <= 20; circuits++) {
            double factor = AmpacityFactors.grouping(method, circuits).orThrow();
            assertThat(factor).isLessThanOrEqualTo(before);
            before = factor;
        }
        assertThat(before).isLessThan(0.35);
        assertThat(AmpacityFactors.grouping(method, 1)).isEqualTo(Answer.of(1));
        assertThat(AmpacityFactors.grouping(method, 2))
                .isEqualTo(Answer.of(method == ReferenceMethod.D1 ? 0.85 : 0.75));
        assertThat(AmpacityFactors.grouping(method, 21)).isInstanceOf(Answer.Outside.class);
    }

    @Test
    void where_no_table_is_at_hand_there_is_no_capacity() {
        CableLaying aluminium = new CableLaying(
                ConductorMaterial.ALUMINIUM, ReferenceMethod.D1, CableInsulation.PVC, 2, 293.15, 1, 2.5);
        CableLaying thin = laying(ReferenceMethod.F, CableInsulation.PVC, 2, 30, 1, 2.5);
        assertThat(AmpacityCatalogue.capacity(25e-6, aluminium)).isInstanceOf(Answer.Outside.class);
        assertThat(AmpacityCatalogue.smallestThatCarries(10, aluminium)).isInstanceOf(Answer.Outside.class);
        assertThat(AmpacityCatalogue.capacity(16e-6, thin))
                .as("F starts at 25 mm²")
                .isInstanceOf(Answer.Outside.class);
        assertThat(AmpacityCatalogue.smallestThatCarries(150, thin)).isEqualTo(Answer.of(35e-6));
    }

    @ParameterizedTest
    @EnumSource(LayingMethod.class)
    void every_method_of_a_design_is_a_reference_method(LayingMethod method) {
        assertThat(ReferenceMethod.of(method).name()).isEqualTo(method.name());
        CableLaying short6 = new CableLaying(ConductorMaterial.COPPER, method, CableInsulation.PVC, 2, 303.15, 1);
        assertThat(short6.soilResistivity()).isEqualTo(2.5);
    }

    @Property
    void wires_farther_apart_have_more_inductance_and_the_unit_does_not_matter(
            @ForAll @DoubleRange(min = 1, max = 20) double millimetres,
            @ForAll @DoubleRange(min = 1.01, max = 1000) double times) {
        double diameter = millimetres / 1000;
        double near = RunInductance.perConductor(0, diameter * times, diameter).orThrow();
        double far =
                RunInductance.perConductor(0, diameter * times * 2, diameter).orThrow();
        assertThat(far - near).isCloseTo(0.2e-6 * Math.log(2), within(1e-13));
        assertThat(RunInductance.perConductor(0, times, 1).orThrow()).isCloseTo(near, within(1e-13));
    }

    @Test
    void wires_cannot_lie_in_one_another() {
        assertThat(RunInductance.perConductor(5e-8, 0.0049, 0.005)).isInstanceOf(Answer.Outside.class);
        assertThat(RunInductance.perConductor(5e-8, 0.005, 0.005).orThrow())
                .isCloseTo(5e-8 + 0.2e-6 * Math.log(2), within(1e-15));
    }

    @Test
    void a_conductor_between_two_of_the_table_has_the_inductance_of_the_fewer_wires() {
        assertThat(RunInductance.internal(2)).isEqualTo(RunInductance.internal(3));
        assertThat(RunInductance.internal(18)).isEqualTo(RunInductance.internal(7));
        assertThat(RunInductance.internal(60)).isEqualTo(RunInductance.internal(37));
        assertThat(RunInductance.internal(200)).isEqualTo(RunInductance.internal(61));
        assertThat(RunInductance.FLAT * RunInductance.FLAT * RunInductance.FLAT).isCloseTo(2, within(0.01));
        assertThat(RunInductance.MULTICORE).isEqualTo(1.02);
    }

    @Test
    void the_round_figures_of_cable_and_open_wire_hold() {
        for (double area : new double[] {1.5, 10, 95}) {
            assertThat(CableInductance.perConductor(CableInductance.Lay.MULTICORE, area / 1e6)
                            .orThrow())
                    .isBetween(0.24e-6, 0.36e-6);
            assertThat(CableInductance.perConductor(CableInductance.Lay.SINGLE_CORES, area / 1e6)
                            .orThrow())
                    .isBetween(0.28e-6, 0.47e-6);
        }
        assertThat(CableInductance.perConductor(CableInductance.Lay.MULTICORE, 12e-6))
                .isEqualTo(CableInductance.perConductor(CableInductance.Lay.MULTICORE, 10e-6));
        assertThat(CableInductance.perConductor(CableInductance.Lay.MULTICORE, 1.4e-6))
                .isInstanceOf(Answer.Outside.class);
        assertThat(CableInductance.perConductor(CableInductance.Lay.MULTICORE, 96e-6))
                .isInstanceOf(Answer.Outside.class);
        assertThat(RunInductance.twoWire(1e-6, 300)).isEqualTo(2 * RunInductance.perPhase(1e-6, 300));
        assertThat(RunInductance.perPhase(1e-6, 300)).isCloseTo(3e-4, within(1e-12));
    }
}
