package org.leat.catalogue.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leat.catalogue.tables.CellProperty.ABSORPTION_VOLTAGE;
import static org.leat.catalogue.tables.CellProperty.EQUALISING_VOLTAGE;
import static org.leat.catalogue.tables.CellProperty.FLOAT_VOLTAGE;
import static org.leat.catalogue.tables.CellProperty.HIGHEST_CHARGE_VOLTAGE;
import static org.leat.catalogue.tables.CellProperty.LOW_VOLTAGE_DISCONNECT;
import static org.leat.catalogue.tables.CellProperty.NOMINAL_VOLTAGE;

import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.leat.design.Chemistry;
import org.leat.law.Answer;

class CellChemistryCatalogueTest {

    @ParameterizedTest
    @EnumSource(Chemistry.class)
    void every_chemistry_has_every_property_but_those_it_must_not_have(Chemistry chemistry) {
        Set<CellProperty> none = switch (chemistry) {
            case FLOODED_LEAD_ACID -> Set.of();
            case AGM_LEAD_ACID, GEL_LEAD_ACID, LITHIUM_IRON_PHOSPHATE -> Set.of(EQUALISING_VOLTAGE);
            case LITHIUM_ION -> Set.of(EQUALISING_VOLTAGE, FLOAT_VOLTAGE);
        };
        for (CellProperty property : CellProperty.values()) {
            assertThat(CellChemistryCatalogue.find(chemistry, property).isEmpty())
                    .as("%s %s", chemistry, property)
                    .isEqualTo(none.contains(property));
        }
    }

    @ParameterizedTest
    @EnumSource(Chemistry.class)
    void voltages_of_a_chemistry_are_in_order(Chemistry chemistry) {
        double disconnect = CellChemistryCatalogue.usual(chemistry, LOW_VOLTAGE_DISCONNECT);
        double nominal = CellChemistryCatalogue.usual(chemistry, NOMINAL_VOLTAGE);
        double absorption = CellChemistryCatalogue.usual(chemistry, ABSORPTION_VOLTAGE);
        assertThat(disconnect).isLessThan(nominal);
        assertThat(nominal).isLessThan(absorption);
        assertThat(absorption).isLessThanOrEqualTo(CellChemistryCatalogue.usual(chemistry, HIGHEST_CHARGE_VOLTAGE));
        CellChemistryCatalogue.find(chemistry, FLOAT_VOLTAGE)
                .ifPresent(held -> assertThat(held.high()).isLessThan(absorption));
    }

    @Property
    void the_resting_voltage_rises_with_the_charge(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = 0, max = 1) double one,
            @ForAll @DoubleRange(min = 0, max = 1) double other) {
        assertThat(CellChemistryCatalogue.openCircuitVoltage(chemistry, Math.min(one, other)))
                .isLessThanOrEqualTo(CellChemistryCatalogue.openCircuitVoltage(chemistry, Math.max(one, other)));
    }

    @Property
    void deeper_cycles_are_fewer(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = 0.2, max = 0.8) double one,
            @ForAll @DoubleRange(min = 0.2, max = 0.8) double other) {
        assertThat(CellChemistryCatalogue.cycles(chemistry, Math.max(one, other))
                        .orThrow())
                .isLessThanOrEqualTo(CellChemistryCatalogue.cycles(chemistry, Math.min(one, other))
                        .orThrow());
    }

    @Test
    void cycles_outside_the_tabled_depths_have_no_answer() {
        assertThat(CellChemistryCatalogue.cycles(Chemistry.GEL_LEAD_ACID, 0.05)).isInstanceOf(Answer.Outside.class);
        assertThat(CellChemistryCatalogue.cycles(Chemistry.GEL_LEAD_ACID, 0.95)).isInstanceOf(Answer.Outside.class);
    }

    @Test
    void a_bank_of_two_hundred_ampere_hours_is_scaled_from_its_cells() {
        double capacity = 200 * 3600;
        assertThat(CellChemistryCatalogue.greatestChargeCurrent(Chemistry.FLOODED_LEAD_ACID, capacity)
                        .usual())
                .isCloseTo(25, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(CellChemistryCatalogue.internalResistance(Chemistry.FLOODED_LEAD_ACID, 12, capacity)
                        .usual())
                .isCloseTo(12 * 0.12 / 200, org.assertj.core.data.Offset.offset(1e-12));
    }
}
