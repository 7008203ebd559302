package org.leat.pack.bus;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.leat.check.Kind;
import org.leat.check.testing.Plants;

/** What a tracking regulator lets go meets its own input, where nothing at the bridge takes it. */
class ClampAtBridgeTest {

    @Test
    void a_regulator_that_does_not_stand_the_runaway_is_offered_a_better_one_or_a_clamp() {
        assertThat(Plants.of(
                                "sound-tracking",
                                "/dump-load: null",
                                "/cables[3]: null",
                                "/regulator/input-voltage-limit: 90 V")
                        .findings(Overvoltage.RULE))
                .filteredOn(finding -> finding.outcome().kind() == Kind.FAIL)
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.outcome().path()).isEqualTo("/regulator/input-voltage-limit");
                    // a rating that is sold, or advice that is no edit
                    assertThat(finding.waysOut())
                            .extracting(way -> Plants.edits(way.edits()))
                            .containsExactly(Map.of("/regulator/input-voltage-limit", "150 V"), Map.of());
                });
    }
}
