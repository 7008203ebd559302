package org.leat.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.quantity.QuantityKind;

class UsualUnitsTest {

    @ParameterizedTest
    @CsvSource({"15, 15 s", "299, 299 s", "300, 5 min", "3600, 60 min", "7199, 120 min", "7200, 2 h", "86400, 24 h"})
    void a_time_is_told_in_seconds_minutes_or_hours(double seconds, String shown) {
        assertThat(UsualUnits.show(seconds, QuantityKind.TIME)).isEqualTo(shown);
    }
}
