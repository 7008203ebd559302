package org.leat.catalogue.tables;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.leat.design.CableInsulation;
import org.leat.design.ConductorMaterial;
import org.leat.design.LayingMethod;
import org.leat.design.Stranding;
import org.leat.law.Answer;

class CableCataloguesTest {

    @Property
    void a_larger_copper_conductor_never_resists_more(
            @ForAll Stranding stranding,
            @ForAll @DoubleRange(min = 0.5, max = 120) double one,
            @ForAll @DoubleRange(min = 0.5, max = 120) double other) {
        double smaller = ohms(stranding, Math.min(one, other));
        double larger = ohms(stranding, Math.max(one, other));
        assertThat(larger).isLessThanOrEqualTo(smaller);
    }

    @Test
    void resistance_does_not_jump_up_at_a_listed_area() {
        for (Stranding stranding : Stranding.values()) {
            for (double area : ConductorCatalogue.areas(ConductorMaterial.COPPER, stranding)) {
                if (area < 120e-6) {
                    assertThat(ohms(stranding, area * 1.002e6)).isLessThanOrEqualTo(ohms(stranding, area * 1e6));
                }
            }
        }
    }

    @Property
    void the_least_conductor_for_a_drop_keeps_it_and_the_next_smaller_does_not(
            @ForAll Stranding stranding, @ForAll @DoubleRange(min = 0.1, max = 50) double milliohms) {
        double permitted = milliohms / 1000;
        double factor = 1.2;
        Answer area =
                ConductorCatalogue.smallestForDrop(ConductorMaterial.COPPER, stranding, r20 -> r20 * factor, permitted);
        if (area instanceof Answer.Value value) {
            assertThat(ohms(stranding, value.value() * 1e6) * factor).isLessThanOrEqualTo(permitted);
            ConductorCatalogue.areas(ConductorMaterial.COPPER, stranding).stream()
                    .filter(a -> a < value.value() * 0.999)
                    .forEach(a -> assertThat(ohms(stranding, a * 1e6) * factor).isGreaterThan(permitted));
        } else {
            assertThat(ohms(stranding, 120) * factor).isGreaterThan(permitted);
        }
    }

    @Property
    void hotter_air_and_more_circuits_never_carry_more(
            @ForAll ConductorMaterial material,
            @ForAll LayingMethod method,
            @ForAll CableInsulation insulation,
            @ForAll @IntRange(min = 2, max = 3) int loaded,
            @ForAll @DoubleRange(min = 2.5, max = 120) double area,
            @ForAll @DoubleRange(min = 284, max = 320) double ambient,
            @ForAll @DoubleRange(min = 0, max = 3) double hotter,
            @ForAll @IntRange(min = 1, max = 19) int circuits) {
        CableLaying laying = new CableLaying(material, method, insulation, loaded, ambient, circuits);
        if (!tabled(area, laying)) {
            assertThat(AmpacityCatalogue.capacity(area / 1e6, laying)).isInstanceOf(Answer.Outside.class);
            return;
        }
        double base = amps(area, laying);
        assertThat(amps(area, new CableLaying(material, method, insulation, loaded, ambient + hotter, circuits)))
                .isLessThanOrEqualTo(base);
        assertThat(amps(area, new CableLaying(material, method, insulation, loaded, ambient, circuits + 1)))
                .isLessThanOrEqualTo(base);
        assertThat(amps(area, new CableLaying(material, method, insulation, 3, ambient, circuits)))
                .isLessThanOrEqualTo(base);
        assertThat(base).isPositive();
    }

    @Property
    void the_least_cable_that_carries_a_current_does_and_the_next_smaller_does_not(
            @ForAll LayingMethod method,
            @ForAll CableInsulation insulation,
            @ForAll @DoubleRange(min = 0, max = 500) double current) {
        CableLaying laying = new CableLaying(ConductorMaterial.COPPER, method, insulation, 2, 313.15, 2);
        Answer area = AmpacityCatalogue.smallestThatCarries(current, laying);
        if (area instanceof Answer.Value value) {
            assertThat(amps(value.value() * 1e6, laying)).isGreaterThanOrEqualTo(current);
            AmpacityCatalogue.areas(laying)
                    .filter(a -> a < value.value() * 0.999)
                    .forEach(a -> assertThat(amps(a * 1e6, laying)).isLessThan(current));
        } else {
            double greatest = AmpacityCatalogue.areas(laying).max().orElseThrow();
            assertThat(amps(greatest * 1e6, laying)).isLessThan(current);
        }
    }

    /** Aluminium only in air on a wall; single cores in free air from 25 mm². */
    private static boolean tabled(double area, CableLaying laying) {
        boolean onWall = laying.method() == ReferenceMethod.B2 || laying.method() == ReferenceMethod.C;
        double least = laying.method() == ReferenceMethod.F ? 25 : 0;
        return (onWall || laying.material() == ConductorMaterial.COPPER)
                && area >= least
                && AmpacityCatalogue.areas(laying).max().orElse(0) * 1e6 >= area;
    }

    @Test
    void every_method_has_its_own_table_and_the_ground_is_not_the_wall() {
        for (LayingMethod method : LayingMethod.values()) {
            CableLaying laying = new CableLaying(ConductorMaterial.COPPER, method, CableInsulation.XLPE, 2, 303.15, 1);
            assertThat(tabled(35, laying)).isTrue();
            assertThat(AmpacityCatalogue.areas(laying).count()).isGreaterThanOrEqualTo(5);
        }
        assertThat(amps(35, copper(LayingMethod.D1))).isLessThan(amps(35, copper(LayingMethod.D2)));
        assertThat(amps(35, copper(LayingMethod.C))).isLessThan(amps(35, copper(LayingMethod.E)));
    }

    private static CableLaying copper(LayingMethod method) {
        return new CableLaying(ConductorMaterial.COPPER, method, CableInsulation.PVC, 2, 293.15, 1);
    }

    @Test
    void ambient_factors_follow_the_root_of_the_temperature_that_is_left() {
        for (CableInsulation insulation : CableInsulation.values()) {
            double hottest = AmpacityCatalogue.conductorTemperature(insulation);
            for (double ambient = 283.15; ambient <= hottest - 10; ambient += 5) {
                double root = Math.sqrt((hottest - ambient) / (hottest - 303.15));
                assertThat(AmpacityFactors.ambient(insulation, ambient).orThrow())
                        .isCloseTo(root, org.assertj.core.api.Assertions.within(0.011));
            }
        }
    }

    @Test
    void what_the_tables_do_not_cover_has_no_answer() {
        CableLaying hot = new CableLaying(ConductorMaterial.COPPER, LayingMethod.C, CableInsulation.PVC, 2, 335, 1);
        CableLaying crowd = new CableLaying(ConductorMaterial.COPPER, LayingMethod.C, CableInsulation.PVC, 2, 303, 21);
        CableLaying plain = new CableLaying(ConductorMaterial.COPPER, LayingMethod.C, CableInsulation.PVC, 2, 303, 1);
        assertThat(AmpacityCatalogue.capacity(4e-6, hot)).isInstanceOf(Answer.Outside.class);
        assertThat(AmpacityCatalogue.smallestThatCarries(1, crowd)).isInstanceOf(Answer.Outside.class);
        assertThat(AmpacityCatalogue.capacity(1e-6, plain)).isInstanceOf(Answer.Outside.class);
        assertThat(AmpacityCatalogue.capacity(150e-6, plain)).isInstanceOf(Answer.Outside.class);
        assertThat(ConductorCatalogue.resistance(ConductorMaterial.COPPER, Stranding.STRANDED, 150e-6))
                .isInstanceOf(Answer.Outside.class);
        assertThat(ConductorCatalogue.resistance(ConductorMaterial.ALUMINIUM, Stranding.FLEXIBLE, 16e-6))
                .isInstanceOf(Answer.Outside.class);
    }

    @Test
    void fifty_square_millimetres_is_the_standards_own_oddity() {
        assertThat(ohms(Stranding.FLEXIBLE, 50)).isLessThan(ohms(Stranding.STRANDED, 50));
    }

    @Test
    void an_american_gauge_lies_within_its_metric_neighbours() {
        double gauge6 = AmericanWireGauge.area(6) * 1e6;
        assertThat(ohms(Stranding.STRANDED, gauge6))
                .isBetween(ohms(Stranding.STRANDED, 16), ohms(Stranding.STRANDED, 10));
    }

    private static double ohms(Stranding stranding, double squareMillimetres) {
        return ConductorCatalogue.resistance(ConductorMaterial.COPPER, stranding, squareMillimetres / 1e6)
                .orThrow();
    }

    private static double amps(double squareMillimetres, CableLaying laying) {
        return AmpacityCatalogue.capacity(squareMillimetres / 1e6, laying).orThrow();
    }
}
