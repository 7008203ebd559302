package org.leat.plant.numbers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.leat.plant.loads.DailyUse;
import org.leat.plant.loads.LoadNumbers;

/** What the loads take in a day, worked by hand in watt-hours. */
class DailyUseTest {

    private static final double WATT_HOUR = 3600;
    private static final LoadNumbers PUMP = new LoadNumbers("pump", 1, 90, 2 * 3600, false, false);
    private static final LoadNumbers RADIO = new LoadNumbers("radio", 2, 5, 24 * 3600, true, false);
    private static final LoadNumbers BICYCLE = new LoadNumbers("bicycle", 2, 45, 3 * 3600, false, true);
    private static final LoadNumbers SPARE_PACK = new LoadNumbers("spare pack", 1, 45, 0, false, true);

    @Test
    void a_day_takes_the_loads_the_loss_of_the_inverter_and_its_standing_power() {
        DailyUse use = new DailyUse(List.of(PUMP, RADIO), 0.9, 5);
        assertThat(use.demand()).isCloseTo((200 + 240 + 120) * WATT_HOUR, within(1e-6));
        assertThat(use.meanPower()).isCloseTo(560.0 / 24, within(1e-9));
    }

    @Test
    void most_is_drawn_if_all_loads_begin_together_while_the_turbine_goes_on() {
        DailyUse use = new DailyUse(List.of(RADIO, PUMP), 0.9, 5);
        // 115 W against 40 W for two hours, 15 W against 40 W for the rest
        assertThat(use.mostDrawn(40)).isCloseTo(150 * WATT_HOUR, within(1e-6));
        assertThat(use.mostDrawn(0)).isCloseTo(use.demand(), within(1e-6));
        assertThat(use.mostDrawn(200)).isZero();
    }

    @Test
    void packs_are_those_that_are_charged_at_some_time() {
        DailyUse use = new DailyUse(List.of(PUMP, BICYCLE, SPARE_PACK), 0.9, 0);
        assertThat(use.packs()).containsExactly(BICYCLE);
        assertThat(use.atPoles(BICYCLE)).isCloseTo(50, within(1e-9));
    }
}
