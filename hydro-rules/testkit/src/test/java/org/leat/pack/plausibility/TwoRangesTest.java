package org.leat.pack.plausibility;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.leat.check.Kind;
import org.leat.check.Outcome;
import org.leat.check.testing.Plants;

/** A number that has a range of its own and one against another number is held against both. */
class TwoRangesTest {

    private static List<String> odd(String... changes) {
        return Plants.of("sound", changes).outcomes(Sizes.RULE).stream()
                .filter(outcome -> outcome.kind() == Kind.FAIL)
                .map(Outcome::during)
                .toList();
    }

    @Test
    void charging_limits_are_held_against_what_parts_have_and_against_the_bank() {
        assertThat(odd()).isEmpty();
        // three times the capacity in an hour; no more amperes than a device has
        assertThat(odd("/battery/charge-current-limit: 600 A"))
                .containsExactly("charge current over capacity per hour");
        assertThat(odd("/battery/charge-current-limit: 1500 A", "/battery/capacity: 1500 Ah"))
                .containsExactly("current rating");
        // 3.9 V a cell; 2.75 V a cell of four hundred
        assertThat(odd("/battery/charge-voltage-limit: 31.2 V")).containsExactly("charge voltage over cells in series");
        assertThat(odd("/battery/charge-voltage-limit: 1100 V", "/battery/cells-in-series: 400"))
                .containsExactly("cells in series", "input voltage limit");
    }

    @Test
    void a_wall_is_held_against_the_pipe() {
        assertThat(odd("/penstock/sections[run]/pipe: { kind: steel, outside-diameter: 60.3 mm, wall: 9 mm }"))
                .containsExactly("wall over outside diameter");
    }
}
