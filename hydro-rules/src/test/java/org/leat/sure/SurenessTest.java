package org.leat.sure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.leat.check.Checker;
import org.leat.check.DesignEdits;
import org.leat.check.Edit;
import org.leat.check.Examined;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Report;
import org.leat.check.Rule;
import org.leat.check.RulePack;
import org.leat.design.Design;
import org.leat.file.DesignReader;
import org.leat.pack.BuiltInPack;
import org.leat.quantity.Measured;
import org.leat.quantity.Si;
import org.leat.sure.Sureness.Basis;
import org.leat.sure.Sureness.OfVerdict;
import org.leat.sure.Sureness.Origin;

class SurenessTest {

    private static final int FEW = 16;
    private static final Checker CHECKER = Checker.of(List.of(new Few()));

    /** Some of the built-in rules: those that these tests look at, and some that hang on assumptions. */
    private static final class Few implements RulePack {

        private static final Set<String> FEW_RULES = Set.of(
                "penstock/static-pressure",
                "penstock/temperature",
                "site/measurement-spread",
                "intake/submergence",
                "runner/speed-ratio",
                "protection/touch-voltage",
                "nozzle/jet-against-bucket",
                "alternator/winding-current");

        @Override
        public String name() {
            return "few";
        }

        @Override
        public List<Rule> rules() {
            return new BuiltInPack()
                    .rules().stream()
                            .filter(rule -> FEW_RULES.contains(rule.card().id()))
                            .toList();
        }
    }

    private static Examined demo(String name) {
        return CHECKER.examined(DesignReader.read(Path.of("../hydro-examples/designs/" + name + ".yaml")));
    }

    private static OfVerdict of(Sureness sureness, String rule) {
        return sureness.verdicts().stream()
                .filter(v -> v.identity().rule().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    private static Design with(Design design, double head, double half) {
        Measured<Length> measured =
                new Measured<>(Si.quantity(head, "m", Length.class), Si.quantity(half, "m", Length.class));
        return DesignEdits.apply(design, List.of(new Edit("/site/gross-head/head", measured)));
    }

    @Test
    void a_standing_pressure_is_as_uncertain_as_the_head() {
        Sureness sureness = Study.of(demo("tannery-yard"), FEW);
        double half = sureness.inputs().stream()
                .filter(i -> i.path().equals("/site/gross-head"))
                .mapToDouble(i -> (i.high() - i.low()) / 2)
                .findFirst()
                .orElseThrow();
        OfVerdict standing = of(sureness, "penstock/static-pressure");
        assertThat(standing.basis()).isEqualTo(Basis.FIRST_ORDER);
        assertThat(standing.most().orElseThrow().path()).isEqualTo("/site/gross-head");
        assertThat(standing.most().orElseThrow().share()).isCloseTo(1, within(1e-6));
        // ρ g a/√3, water between 999 and 1000 kg/m³
        assertThat(standing.uncertainty().orElseThrow()).isCloseTo(999.8 * 9.80665 * half / Math.sqrt(3), within(2.0));
    }

    @Test
    void the_share_of_plants_that_fail_is_seen_again_by_judging_each_anew() {
        int count = 8;
        Design design = Objects.requireNonNull(DesignReader.read(Path.of("../hydro-examples/designs/rowan-ghyll.yaml"))
                .design());
        // a head so badly known that the sets on hand cannot be told apart by it at its low end
        double half = 1.3;
        Sureness sureness = Study.of(CHECKER.examined(with(design, 32, half)), count);
        assertThat(sureness.inputs())
                .singleElement()
                .satisfies(i -> assertThat(i.origin()).isEqualTo(Origin.TOLERANCE));
        List<Boolean> anew = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double head = 32 - half + 2 * half * (i + 0.5) / count;
            anew.add(CHECKER.check(with(design, head, half)).findings().stream()
                    .filter(f -> f.outcome().rule().equals("site/measurement-spread"))
                    .anyMatch(f -> f.outcome().kind() == Kind.FAIL));
        }
        double failing = (double) anew.stream().filter(f -> f).count() / count;
        assertThat(failing).isBetween(0.01, 0.99);
        assertThat(of(sureness, "site/measurement-spread").failing()).hasValue(failing);
    }

    @Test
    void what_hangs_on_an_assumption_is_sampled_and_stays_open() {
        Examined examined = demo("orchard-sluice");
        Report before = demo("orchard-sluice").report();
        Sureness sureness = Study.of(examined, FEW);
        List<Finding> hanging =
                before.findings().stream().filter(f -> !f.restsOn().isEmpty()).toList();
        assertThat(hanging).isNotEmpty();
        for (Finding finding : hanging) {
            OfVerdict verdict = sureness.verdicts().stream()
                    .filter(v -> v.identity().equals(finding.outcome().identity()))
                    .findFirst()
                    .orElseThrow();
            assertThat(verdict.basis()).isEqualTo(Basis.SAMPLED);
            assertThat(verdict.finding().outcome().kind())
                    .isEqualTo(finding.outcome().kind())
                    .isNotEqualTo(Kind.PASS);
        }
        assertThat(examined.report()).isEqualTo(before);
    }

    @Test
    void probabilities_and_shares_are_what_they_are_called_and_the_same_at_every_call() {
        Sureness sureness = Study.of(demo("first-try"), FEW);
        assertThat(sureness.verdicts()).isNotEmpty().allSatisfy(v -> {
            assertThat(v.failing().orElse(0)).isBetween(0.0, 1.0);
            assertThat(v.failing().orElse(0) + v.undecided()).isBetween(0.0, 1 + 1e-12);
            assertThat(v.shares().stream().mapToDouble(Sureness.Share::share).sum())
                    .isLessThan(1 + 1e-9);
            assertThat(v.failing().isPresent()).isEqualTo(v.basis() != Basis.UNMOVED);
        });
        assertThat(Study.of(demo("first-try"), FEW)).isEqualTo(sureness);
    }

    @Test
    void an_error_that_nothing_comes_near_stands_in_every_plant() {
        assertThat(Study.of(demo("tannery-yard"), FEW).anyError()).hasValue(1);
    }

    @Test
    void what_states_no_tolerance_and_assumes_nothing_says_neither_sure_nor_unsure() {
        Design design = Objects.requireNonNull(DesignReader.read(Path.of("../hydro-examples/designs/rowan-ghyll.yaml"))
                .design());
        Measured<Length> exactly = Measured.exactly(Si.quantity(32, "m", Length.class));
        Sureness sureness = Study.of(
                CHECKER.examined(DesignEdits.apply(design, List.of(new Edit("/site/gross-head/head", exactly)))), FEW);
        assertThat(sureness.inputs()).isEmpty();
        assertThat(sureness.anyError()).isEmpty();
        assertThat(sureness.verdicts())
                .isNotEmpty()
                .allSatisfy(v -> assertThat(v.failing()).isEmpty());
    }
}
