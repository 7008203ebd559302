package org.leat.electrics;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.catalogue.tables.CellChemistryCatalogue;
import org.leat.catalogue.tables.CellProperty;
import org.leat.design.Chemistry;
import org.leat.published.PublishedCase;

class PublishedInverterAndLoadsTest {

    static Stream<PublishedCase> cases() {
        return PublishedCase.of("electrical-inverter");
    }

    static Stream<PublishedCase> packs() {
        return PublishedCase.of("electrical-loads");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void inverters_agree_with_what_is_published(PublishedCase c) {
        switch (c.family()) {
            case "inv-idc" -> c.assertMatches("I_dc", InverterCurrent.direct(c.in("P_ac"), c.in("V_min"), c.in("eta")));
            case "inv-self" -> {
                c.assertMatches("E_gen", InverterIdleShare.daily(c.in("P_gen")) / 3.6e6);
                c.assertMatches("E_idle", InverterIdleShare.daily(c.in("P_idle")) / 3.6e6);
                c.assertMatches("share", InverterIdleShare.share(c.in("P_idle"), c.in("P_gen")));
            }
            default -> throw new AssertionError("no law bound to " + c);
        }
    }

    @ParameterizedTest
    @MethodSource("packs")
    void packs_agree_with_what_is_published(PublishedCase c) {
        int cells = (int) c.in("cells_series");
        double nominal = CellChemistryCatalogue.usual(Chemistry.LITHIUM_ION, CellProperty.NOMINAL_VOLTAGE);
        double energy = PackCharge.energy(cells, nominal, c.in("Ah") * 3600, c.in("dSoC"));
        double socket = PackCharge.atSocket(energy, c.in("eta_charger"));
        c.assertMatches("E_pack", energy / 3600);
        c.assertMatches("E_ac", socket / 3600);
        c.assertMatches("P_ac", PackCharge.meanPower(socket, c.in("hours") * 3600));
        c.assertMatches(
                "V_full",
                PackCharge.fullVoltage(
                        cells,
                        CellChemistryCatalogue.usual(Chemistry.LITHIUM_ION, CellProperty.HIGHEST_CHARGE_VOLTAGE)));
    }
}
