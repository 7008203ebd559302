package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.catalogue.tables.AmericanWireGauge;
import org.leat.catalogue.tables.AmpacityCatalogue;
import org.leat.catalogue.tables.AmpacityFactors;
import org.leat.catalogue.tables.CableLaying;
import org.leat.catalogue.tables.ConductorCatalogue;
import org.leat.design.CableInsulation;
import org.leat.design.ConductorMaterial;
import org.leat.design.LayingMethod;
import org.leat.design.Stranding;
import org.leat.published.PublishedCase;

class PublishedCableTest {

    static Stream<PublishedCase> cases() {
        return PublishedCase.of("electrical-cable");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void cables_agree_with_what_is_published(PublishedCase c) {
        switch (c.family()) {
            case "cab-r2" -> c.assertMatches("R20", perKilometre(Stranding.STRANDED, c.in("S")));
            case "cab-r5" -> c.assertMatches("R20", perKilometre(Stranding.FLEXIBLE, c.in("S")));
            case "cab-kt" -> c.assertMatches("Kt", ConductorTemperature.measuringFactor(kelvin(c.in("T"))));
            case "cab-dc" -> direct(c);
            case "cab-3ph" -> threePhase(c);
            case "cab-awg" -> {
                c.assertMatches("d", AmericanWireGauge.diameter((int) c.in("awg")) * 1e3);
                c.assertMatches("S", AmericanWireGauge.area((int) c.in("awg")) * 1e6);
            }
            case "cab-ca-PVC70" -> ambient(c, CableInsulation.PVC);
            case "cab-ca-XLPE90" -> ambient(c, CableInsulation.XLPE);
            case "cab-iz-C-2loaded-PVC" -> capacity(c, LayingMethod.C, 2, CableInsulation.PVC);
            case "cab-iz-C-2loaded-XLPE" -> capacity(c, LayingMethod.C, 2, CableInsulation.XLPE);
            case "cab-iz-C-3loaded-PVC" -> capacity(c, LayingMethod.C, 3, CableInsulation.PVC);
            case "cab-iz-B2-3loaded-PVC" -> capacity(c, LayingMethod.B2, 3, CableInsulation.PVC);
            case "cab" -> permitted(c);
            default -> throw new AssertionError("no law bound to " + c);
        }
    }

    private static double perKilometre(Stranding stranding, double squareMillimetres) {
        return ConductorCatalogue.resistance(ConductorMaterial.COPPER, stranding, squareMillimetres / 1e6)
                        .orThrow()
                * 1000;
    }

    private static double core(PublishedCase c, String length) {
        double r20 = perKilometre(Stranding.FLEXIBLE, c.in("S")) / 1000;
        return VoltageDrop.core(
                c.in(length), ConductorTemperature.resistance(r20, ConductorTemperature.COPPER, kelvin(c.in("T"))), 1);
    }

    private static void direct(PublishedCase c) {
        double core = core(c, "length_one_way");
        c.assertMatches("dV", VoltageDrop.direct(core, c.in("I")));
        c.assertMatches("dV_percent", VoltageDrop.direct(core, c.in("I")) / c.in("V") * 100);
        c.assertMatches("P_loss", VoltageDrop.directLoss(core, c.in("I")));
    }

    private static void threePhase(PublishedCase c) {
        double core = core(c, "length");
        c.assertMatches("R_per_phase", core);
        c.assertMatches("P_loss", VoltageDrop.threePhaseLoss(core, c.in("I_phase_rms")));
        c.assertMatches("dV_LL_rms", VoltageDrop.threePhase(core, c.in("I_phase_rms")));
    }

    private static void ambient(PublishedCase c, CableInsulation insulation) {
        assertThat(AmpacityCatalogue.conductorTemperature(insulation)).isEqualTo(kelvin(c.in("Tc")));
        c.assertMatches(
                "k", AmpacityFactors.ambient(insulation, kelvin(c.in("Ta"))).orThrow());
    }

    private static void capacity(PublishedCase c, LayingMethod method, int loaded, CableInsulation insulation) {
        CableLaying laying = new CableLaying(ConductorMaterial.COPPER, method, insulation, loaded, kelvin(30), 1);
        c.assertMatches(
                "Iz", AmpacityCatalogue.capacity(c.in("S") / 1e6, laying).orThrow());
    }

    /** The tolerance of this case is nil: what is compared is rounded to the table's last digit. */
    private static void permitted(PublishedCase c) {
        assertThat(c.id()).isEqualTo("cab-g52");
        c.assertMatches("public_lighting", percent(PermittedVoltageDrop.share(false, true, 50)));
        c.assertMatches("public_other", percent(PermittedVoltageDrop.share(false, false, 50)));
        c.assertMatches("private_lighting", percent(PermittedVoltageDrop.share(true, true, 100)));
        c.assertMatches("private_other", percent(PermittedVoltageDrop.share(true, false, 0)));
        c.assertMatches(
                "extra_per_m_beyond_100m",
                percent(PermittedVoltageDrop.share(true, true, 101) - PermittedVoltageDrop.share(true, true, 100)));
        c.assertMatches(
                "extra_max",
                percent(PermittedVoltageDrop.share(true, true, 5000) - PermittedVoltageDrop.share(true, true, 100)));
    }

    private static double percent(double share) {
        return Math.round(share * 1e8) / 1e6;
    }

    private static double kelvin(double celsius) {
        return celsius + 273.15;
    }
}
