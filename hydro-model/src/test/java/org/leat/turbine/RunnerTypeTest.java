package org.leat.turbine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.leat.law.Answer;

/** What is usual for a kind of runner, to its ends. */
class RunnerTypeTest {

    @ParameterizedTest
    @EnumSource(RunnerType.class)
    void the_ends_of_a_usual_range_are_usual(RunnerType type) {
        for (RunnerType.Span span : new RunnerType.Span[] {
            type.efficiencyRange(), type.bucketWidthRatio(), type.pitchToJetRatio(), type.specificSpeed()
        }) {
            assertThat(span.holds(span.low())).isTrue();
            assertThat(span.holds(span.high())).isTrue();
            assertThat(span.holds(Math.nextDown(span.low()))).isFalse();
            assertThat(span.holds(Math.nextUp(span.high()))).isFalse();
        }
        assertThat(type.efficiencyRange().holds(type.efficiency())).isTrue();
    }

    @Test
    void more_jets_fit_a_split_wheel_than_any_other() {
        assertThat(RunnerType.PELTON.maxJets()).isEqualTo(6);
        assertThat(RunnerType.TURGO.maxJets()).isEqualTo(4);
    }

    @Test
    void a_bucket_s_reach_sets_the_greatest_speed_ratio_the_count_can_serve() {
        Answer.Outside reason = (Answer.Outside) LeastBucketCount.of(0.1, 0.12, 0.01, 2);
        double angle = Math.acos(0.105 / 0.12);
        assertThat(reason.input()).isEqualTo("speedRatio");
        assertThat(reason.high().getAsDouble()).isCloseTo(angle / (1.2 * Math.sin(angle)), within(1e-12));
    }

    @Test
    void shares_multiply() {
        assertThat(FatigueAllowance.stress(50e6, 0.12, 0.5, 0.8)).isCloseTo(2.4e6, within(1e-6));
        assertThat(SpeedRatio.onHead(0.48, 0.97)).isCloseTo(0.4656, within(1e-12));
    }
}
