package org.leat.plant.numbers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.leat.plant.loads.InverterSupply;

/** Battery and cable at a start, worked by Ohm's law. */
class InverterSupplyTest {

    private static final InverterSupply SUPPLY = new InverterSupply(24, 0.02);

    @Test
    void at_a_voltage_the_current_is_what_the_resistance_lets_through() {
        assertThat(SUPPLY.powerAt(22)).isCloseTo(100 * 22, within(1e-9));
        assertThat(SUPPLY.powerAt(25)).isZero();
    }

    @Test
    void the_voltage_under_a_power_gives_that_power() {
        double volts = SUPPLY.voltageUnder(2200).orElseThrow();
        assertThat(volts).isCloseTo(22, within(1e-9));
        assertThat(SUPPLY.powerAt(volts)).isCloseTo(2200, within(1e-6));
    }

    @Test
    void beyond_a_quarter_of_the_short_circuit_power_there_is_no_voltage() {
        assertThat(SUPPLY.voltageUnder(24 * 24 / 0.02 / 4 - 1)).isPresent();
        assertThat(SUPPLY.voltageUnder(24 * 24 / 0.02 / 4 + 1)).isEmpty();
    }
}
