package org.leat.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.leat.check.Baseline.AbsentFinding;
import org.leat.check.Baseline.BaselineState;
import org.leat.file.DesignReader;
import org.leat.quantity.Si;

class BaselineTest {

    private static final Rule BORE = MadeRule.of(
            "a/bore",
            Level.WARNING,
            Level.ERROR,
            j -> List.of(j.at("/nozzles/open[0]")
                    .atMost(Si.of(j.design().nozzles().open().get(0)), j.limit("most"))));

    private static Baseline.Accepted accepted(Kind kind, Level level, Double margin, boolean suppressed) {
        Identity identity = new Identity("a/bore", "/nozzles/open[10 mm]", "");
        return new Baseline.Accepted(
                "sample",
                identity,
                kind,
                level,
                margin == null ? OptionalDouble.empty() : OptionalDouble.of(margin),
                "too wide",
                suppressed);
    }

    private static Report against(Baseline.Accepted... accepted) {
        return Checker.of(List.of(MadeRule.pack(BORE)))
                .against(Baseline.of(List.of(accepted)))
                .check(Samples.reading());
    }

    private static BaselineState state(Baseline.Accepted... accepted) {
        return against(accepted).findings().get(0).baseline();
    }

    private static final double MARGIN = -1.0 / 9; // 10 mm against 9 mm

    @Test
    void only_what_is_new_counts() {
        assertThat(state()).isEqualTo(BaselineState.NEW);
        assertThat(against().failures(Level.WARNING)).isEqualTo(1);
        Report known = against(accepted(Kind.FAIL, Level.WARNING, MARGIN, false));
        assertThat(known.findings().get(0).baseline()).isEqualTo(BaselineState.UNCHANGED);
        assertThat(known.failures(Level.WARNING)).isZero();
        assertThat(known.known()).hasSize(1);
        assertThat(known.absent()).isEmpty();
    }

    @Test
    void what_got_worse_is_new_and_what_got_better_is_known() {
        assertThat(state(accepted(Kind.FAIL, Level.NOTE, MARGIN, false))).isEqualTo(BaselineState.NEW);
        assertThat(state(accepted(Kind.OPEN, Level.WARNING, null, false))).isEqualTo(BaselineState.NEW);
        assertThat(state(accepted(Kind.FAIL, Level.WARNING, MARGIN + 0.02, false)))
                .isEqualTo(BaselineState.NEW);
        assertThat(state(accepted(Kind.FAIL, Level.WARNING, MARGIN + 0.005, false)))
                .isEqualTo(BaselineState.UPDATED);
        assertThat(state(accepted(Kind.FAIL, Level.WARNING, MARGIN - 0.3, false)))
                .isEqualTo(BaselineState.UPDATED);
        assertThat(state(accepted(Kind.FAIL, Level.ERROR, MARGIN, false))).isEqualTo(BaselineState.UPDATED);
        assertThat(state(accepted(Kind.FAIL, Level.WARNING, null, false)))
                .as("was without bounds beyond it")
                .isEqualTo(BaselineState.UPDATED);
    }

    @Test
    void what_was_suppressed_then_was_not_accepted() {
        assertThat(state(accepted(Kind.FAIL, Level.WARNING, MARGIN, true))).isEqualTo(BaselineState.NEW);
    }

    @Test
    void what_is_gone_is_told_and_the_pass_in_its_place_is_new_and_counts_as_a_pass() {
        Report report = Checker.of(List.of(MadeRule.pack(BORE)))
                .against(Baseline.of(List.of(accepted(Kind.FAIL, Level.WARNING, MARGIN, false))))
                .check(DesignReader.read(Samples.SHORT.replace("[10 mm]", "[8 mm]"), "sample.yaml"));
        assertThat(report.findings().get(0).baseline()).isEqualTo(BaselineState.NEW);
        assertThat(report.count(Kind.PASS)).isEqualTo(1);
        assertThat(report.absent()).extracting(AbsentFinding::text).containsExactly("too wide");
    }

    @Test
    void cables_go_by_their_ends_wherever_they_stand_in_the_list() {
        String one = "  - { from: rectifier, to: regulator, length: 20 m, conductor: { area: 10 mm² } }\n";
        String two = "  - { from: regulator, to: battery, length: 2 m, conductor: { area: 10 mm² } }\n";
        Rule each = MadeRule.of("a/run", Level.NOTE, Level.NOTE, j -> {
            List<Outcome> outcomes = new java.util.ArrayList<>();
            for (int i = 0; i < j.design().cables().size(); i++) {
                outcomes.add(j.at("/cables[" + i + "]").says("no"));
            }
            return outcomes;
        });
        List<List<String>> found = new java.util.ArrayList<>();
        for (String cables : List.of(one + two, two + one)) {
            var reading = DesignReader.read(Samples.SHORT + "cables:\n" + cables, "s.yaml");
            assertThat(reading.problems()).isEmpty();
            found.add(Checker.of(List.of(MadeRule.pack(each))).check(reading).findings().stream()
                    .map(f -> f.stable().path())
                    .sorted()
                    .toList());
        }
        assertThat(found.get(0))
                .containsExactly("/cables[rectifier+regulator]", "/cables[regulator+battery]")
                .isEqualTo(found.get(1));
        var twice = DesignReader.read(Samples.SHORT + "cables:\n" + one + one, "s.yaml");
        assertThat(Checker.of(List.of(MadeRule.pack(each))).check(twice).findings())
                .extracting(f -> f.stable().path())
                .containsExactly("/cables[rectifier+regulator]", "/cables[rectifier+regulator 2]");
    }
}
