package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.catalogue.tables.CellChemistryCatalogue;
import org.leat.catalogue.tables.CellProperty;
import org.leat.design.Chemistry;
import org.leat.published.PublishedCase;

class PublishedBatteryTest {

    static Stream<PublishedCase> cases() {
        return PublishedCase.of("electrical-battery");
    }

    private static final double HOUR = 3600;

    @ParameterizedTest
    @MethodSource("cases")
    void batteries_agree_with_what_is_published(PublishedCase c) {
        switch (c.family()) {
            case "bat-vent-nicd" ->
                c.assertMatches("Q", HydrogenVentilation.airFlowUnrounded((int) c.in("n"), gasCurrent(c)) * HOUR);
            case "bat-vent-pb" -> {
                double flow = HydrogenVentilation.airFlow((int) c.in("n"), gasCurrent(c));
                c.assertMatches("Q", flow * HOUR);
                c.assertMatches("A", HydrogenVentilation.openingArea(flow) * 1e4);
            }
            case "bat-vent-unreg" ->
                c.assertMatches("Q", HydrogenVentilation.airFlow((int) c.in("n"), c.in("I_gen")) * HOUR);
            case "bat-peukert" -> peukert(c);
            case "bat-tempcomp" ->
                c.assertMatches(
                        "V",
                        TemperatureCompensation.voltage(
                                        (int) c.in("n"), c.in("V_cell_25"), c.in("tc") / 1000, c.in("T") + 273.15)
                                .orThrow());
            case "bat-autonomy" ->
                c.assertMatches(
                        "C",
                        Autonomy.capacity(c.in("E_day") * 3.6e6 * c.in("days"), c.in("DoD"), c.in("eta"), c.in("V"))
                                / HOUR);
            case "bat-chem-Pb" ->
                chemistry(
                        c,
                        c.text("chemistry").equals("Pb-gel") ? Chemistry.GEL_LEAD_ACID : Chemistry.FLOODED_LEAD_ACID);
            case "bat-chem" -> chemistry(c, Chemistry.LITHIUM_ION);
            case "bat-loaddump" -> aboveAnythingABusStands(c);
            default -> throw new AssertionError("no law bound to " + c);
        }
    }

    private static double gasCurrent(PublishedCase c) {
        return HydrogenVentilation.gasCurrent(c.in("Igas") / 1000 / HOUR, c.in("Crt") * HOUR);
    }

    private static void peukert(PublishedCase c) {
        if (c.has("Cp")) {
            c.assertMatches("t", Peukert.timeFromCapacityAtOneAmpere(c.in("Cp") * HOUR, c.in("I"), c.in("k")) / HOUR);
            return;
        }
        double capacity = c.in("C") * HOUR;
        double rated = c.in("H") * HOUR;
        c.assertMatches("t", Peukert.time(capacity, rated, c.in("I"), c.in("k")) / HOUR);
        c.assertMatches("C_eff", Peukert.charge(capacity, rated, c.in("I"), c.in("k")) / HOUR);
    }

    private static void chemistry(PublishedCase c, Chemistry chemistry) {
        c.assertMatches("V_nom", usual(chemistry, CellProperty.NOMINAL_VOLTAGE));
        c.assertMatches("V_absorb", usual(chemistry, CellProperty.ABSORPTION_VOLTAGE));
        c.assertMatches("LVD", usual(chemistry, CellProperty.LOW_VOLTAGE_DISCONNECT));
        c.assertMatches("tempcomp", usual(chemistry, CellProperty.TEMPERATURE_COMPENSATION) * 1000);
        c.assertMatches("charge_C_rate_max", usual(chemistry, CellProperty.CHARGE_RATE) * HOUR);
        assertThat(c.json().get("expected").has("V_float"))
                .isEqualTo(CellChemistryCatalogue.find(chemistry, CellProperty.FLOAT_VOLTAGE)
                        .isPresent());
        assertThat(c.json().get("expected").has("V_equalise"))
                .isEqualTo(CellChemistryCatalogue.find(chemistry, CellProperty.EQUALISING_VOLTAGE)
                        .isPresent());
        CellChemistryCatalogue.find(chemistry, CellProperty.FLOAT_VOLTAGE)
                .ifPresent(held -> c.assertMatches("V_float", held.usual()));
        CellChemistryCatalogue.find(chemistry, CellProperty.EQUALISING_VOLTAGE)
                .ifPresent(held -> c.assertMatches("V_equalise", held.usual()));
    }

    private static double usual(Chemistry chemistry, CellProperty property) {
        return CellChemistryCatalogue.usual(chemistry, property);
    }

    /**
     * No law: the levels belong to a test of vehicles, where the surge lasts milliseconds. What they show is held: a 12 V and a
     * 24 V bus that loses its battery under load is no longer of extra-low voltage for bare parts.
     */
    private static void aboveAnythingABusStands(PublishedCase c) {
        assertThat(c.expected("Us12_min")).isGreaterThan(TouchVoltageLimits.direct(false));
        assertThat(TouchVoltageLimits.ofDirect(c.expected("Us24_min"))).isEqualTo(TouchVoltageLimits.Band.LOW_VOLTAGE);
        assertThat(RegulatorResponse.SERIES.batteryLost(false, false)).isEqualTo(RegulatorResponse.Outcome.RUNS_AWAY);
    }
}
