package org.leat.pack.battery;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.leat.check.testing.Plants;

/** A bank that does not suit what hangs on the bus is offered the number of cells that does: one or two fewer or more, half, double. */
class OtherCellsTest {

    /** Cells of lithium iron phosphate have 3.2 V nominal. */
    private static List<String> offered(int cells, String from, String to) {
        return Plants.of(
                        "sound",
                        "/battery/cells-in-series: " + cells,
                        "/regulator: null",
                        "/inverter/input-voltage: { from: " + from + ", to: " + to + " }")
                .findings(BusVoltageMatch.RULE)
                .stream()
                .flatMap(finding -> finding.waysOut().stream())
                .map(way -> Plants.edits(way.edits()).getOrDefault("/battery/cells-in-series", ""))
                .toList();
    }

    @Test
    void the_number_that_suits_the_inverter_is_offered() {
        assertThat(offered(9, "24 V", "27 V")).containsExactly("8");
        assertThat(offered(7, "24 V", "27 V")).containsExactly("8");
        assertThat(offered(16, "24 V", "27 V")).containsExactly("8");
        assertThat(offered(4, "24 V", "27 V")).containsExactly("8");
        assertThat(offered(10, "24 V", "27 V")).containsExactly("8");
        assertThat(offered(6, "24 V", "27 V")).containsExactly("8");
        assertThat(offered(32, "24 V", "27 V")).containsExactly("8");
        assertThat(offered(2, "24 V", "27 V")).containsExactly("8");
    }

    @Test
    void no_bank_has_less_than_one_cell() {
        assertThat(offered(1, "2 V", "3 V")).isEmpty();
    }
}
