package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.published.PublishedCase;

class PublishedSafetyTest {

    static Stream<PublishedCase> cases() {
        return PublishedCase.of("electrical-safety");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void touch_voltages_agree_with_what_is_published(PublishedCase c) {
        switch (c.id()) {
            case "safe-elv" -> {
                c.assertMatches("ac_rms", TouchVoltageLimits.EXTRA_LOW_ALTERNATING);
                c.assertMatches("dc_ripple_free", TouchVoltageLimits.EXTRA_LOW_DIRECT);
                c.assertMatches("ripple_max_rms", TouchVoltageLimits.RIPPLE * 100);
                c.assertMatches("peak_max_for_120", TouchVoltageLimits.peak(120));
                c.assertMatches("peak_max_for_60", TouchVoltageLimits.peak(60));
            }
            case "safe-dry" -> {
                c.assertMatches("ac_rms", TouchVoltageLimits.alternating(false));
                c.assertMatches("dc_ripple_free", TouchVoltageLimits.direct(false));
            }
            case "safe-runaway-1", "safe-runaway-3" -> {
                double voltage = OpenCircuitBus.voltage(c.in("E_LL_rms_at_rated"), c.in("runaway_ratio"));
                c.assertMatches("V_dc_oc", voltage);
                assertThat(voltage > TouchVoltageLimits.direct(false))
                        .isEqualTo(c.json().at("/expected/exceeds_60/value").asBoolean());
                assertThat(TouchVoltageLimits.ofDirect(voltage) == TouchVoltageLimits.Band.LOW_VOLTAGE)
                        .isEqualTo(c.json().at("/expected/exceeds_120/value").asBoolean());
            }
            default -> throw new AssertionError("no law bound to " + c);
        }
    }
}
