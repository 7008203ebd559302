package org.leat.plant.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GoldenSectionTest {

    private final List<Double> lookedAt = new ArrayList<>();

    private DoubleUnaryOperator topAt(double top) {
        return x -> {
            lookedAt.add(x);
            return -(x - top) * (x - top);
        };
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 1.3, 2, 2.72, 3.99, 4})
    void the_interval_holds_the_greatest_value_and_is_as_narrow_as_asked(double top) {
        GoldenSection found = GoldenSection.about(topAt(top), 1, 4, 1e-3);
        assertThat(found.low()).isLessThanOrEqualTo(top);
        assertThat(found.high()).isGreaterThanOrEqualTo(top);
        assertThat(found.high() - found.low()).isLessThanOrEqualTo(1e-3 * found.high());
        assertThat(found.middle()).isCloseTo(top, within(1e-3 * 4));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.3, 3.99})
    void a_step_takes_one_look_and_leaves_the_golden_share(double top) {
        GoldenSection found = GoldenSection.about(topAt(top), 1, 4, 1e-3);
        int steps = lookedAt.size() - 2;
        assertThat(found.high() - found.low()).isCloseTo(3 * Math.pow((Math.sqrt(5) - 1) / 2, steps), within(1e-9));
        assertThat(lookedAt).allSatisfy(x -> assertThat(x).isBetween(1.0, 4.0));
    }
}
