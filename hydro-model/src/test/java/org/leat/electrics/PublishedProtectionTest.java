package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.catalogue.rows.Spread;
import org.leat.catalogue.tables.CellChemistryCatalogue;
import org.leat.design.Chemistry;
import org.leat.published.PublishedCase;

class PublishedProtectionTest {

    static Stream<PublishedCase> cases() {
        return PublishedCase.of("electrical-protection");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void protection_agrees_with_what_is_published(PublishedCase c) {
        switch (c.id()) {
            case "cab-adiab-1", "cab-adiab-3" ->
                c.assertMatches(
                        "S_min",
                        AdiabaticHeating.leastArea(c.in("I"), c.in("t"), c.in("k") * 1e6)
                                        .orThrow()
                                * 1e6);
            case "prot-batt-isc-1" -> c.assertMatches("Isc", BatteryFaultCurrent.at(c.in("V"), c.in("R"), 0));
            case "prot-batt-isc-2" -> golfCartBatteries(c);
            case "prot-batt-isc-4", "prot-batt-isc-6" -> bank(c);
            case "prot-coord-1", "prot-coord-3", "prot-coord-5" -> coordination(c);
            default -> throw new AssertionError("no law bound to " + c);
        }
    }

    private static void bank(PublishedCase c) {
        double bank =
                BatteryFaultCurrent.bankResistance(c.in("R_cell"), (int) c.in("n_series"), (int) c.in("n_parallel"));
        c.assertMatches("I_terminals", BatteryFaultCurrent.at(c.in("V_oc"), bank, 0));
        c.assertMatches("I_at_point", BatteryFaultCurrent.at(c.in("V_oc"), bank, c.in("R_ext")));
    }

    private static void coordination(PublishedCase c) {
        boolean ours = ProtectiveDeviceCoordination.of(c.in("IB"), c.in("In"), c.in("Iz"), c.in("I2_over_In"))
                .holds();
        assertThat(ours)
                .as(c.toString())
                .isEqualTo(c.json().at("/expected/ok/value").asBoolean());
    }

    /**
     * The measured current must lie in the range that the catalogue's internal resistance gives for 6 V batteries of 220 A h
     * (capacity of the type from memory). What the fuse and the breaker let pass is a property of theirs: no law is bound.
     */
    private static void golfCartBatteries(PublishedCase c) {
        Spread resistance = CellChemistryCatalogue.internalResistance(Chemistry.FLOODED_LEAD_ACID, 6, 2 * 220 * 3600.0);
        double voltage = 6 * CellChemistryCatalogue.openCircuitVoltage(Chemistry.FLOODED_LEAD_ACID, 1);
        assertThat(c.expected("I_peak_unprotected"))
                .isBetween(
                        BatteryFaultCurrent.at(voltage, resistance.high(), 0),
                        BatteryFaultCurrent.at(voltage, resistance.low(), 0));
    }
}
