package org.leat.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.testing.Example;
import org.leat.check.testing.RuleTestKit;
import org.leat.design.Design;
import org.leat.design.DesignBuilder;
import org.leat.design.NozzleSet;
import org.leat.design.NozzleSetBuilder;
import org.leat.plant.Plant;
import org.leat.quantity.Si;

/** What is wrong on the nozzles that are fitted is found as well while they lie in the drawer. */
class SetsInTheDrawerTest {

    private final RuleTestKit kit = new RuleTestKit(PackExamples.CHECKER);

    /** Rules of currents, heat, speed and volts, in faults and without. */
    private static final Set<String> RULES = Set.of(
            "alternator/phase-open",
            "alternator/winding-current",
            "rectifier/current",
            "rectifier/diode-short",
            "regulator/failed-short");

    private record InTheDrawer(String rule, Design design, Set<String> cases) {}

    @Test
    void a_fault_of_a_nozzle_set_is_found_where_the_set_is_not_the_one_fitted() throws IOException {
        Set<String> missed = new TreeSet<>();
        List<InTheDrawer> plants = plants();
        for (InTheDrawer plant : plants) {
            if (!failing(PackExamples.CHECKER.check(plant.design()).findings(), plant.rule())
                    .containsAll(plant.cases())) {
                missed.add(plant.rule());
            }
        }
        assertThat(plants).extracting(InTheDrawer::rule).containsExactlyInAnyOrderElementsOf(RULES);
        assertThat(missed).isEmpty();
    }

    /** One failing example of each rule on the nozzles as built, the nozzles taken out for others. */
    private List<InTheDrawer> plants() throws IOException {
        Map<String, InTheDrawer> plants = new LinkedHashMap<>();
        for (Example example : PackExamples.failing().toList()) {
            if (!RULES.contains(example.rule()) || plants.containsKey(example.rule())) {
                continue;
            }
            Design design = Objects.requireNonNull(kit.read(example).design());
            String built = Plant.of(design).numbers().nozzles().asBuilt().name();
            Set<String> cases = failing(kit.check(example).findings(), example.rule());
            cases.removeIf(id -> !id.endsWith("/" + built));
            if (!cases.isEmpty()
                    && design.nozzles().sets().isEmpty()
                    && alike(design.nozzles().open())) {
                plants.put(example.rule(), new InTheDrawer(example.rule(), takenOut(design), cases));
            }
        }
        return List.copyOf(plants.values());
    }

    private static boolean alike(List<Quantity<Length>> open) {
        return open.stream().mapToDouble(Si::of).distinct().count() == 1;
    }

    private static Design takenOut(Design design) {
        NozzleSet nozzles = design.nozzles();
        Quantity<Length> fitted = nozzles.open().get(0);
        List<Quantity<Length>> drawer = new ArrayList<>(nozzles.available());
        drawer.add(fitted);
        Quantity<Length> other = Si.quantity(Math.rint(900 * Si.of(fitted)), "mm", Length.class);
        return DesignBuilder.builder(design)
                .nozzles(NozzleSetBuilder.builder(nozzles)
                        .open(nozzles.open().stream().map(each -> other).toList())
                        .available(drawer)
                        .build())
                .build();
    }

    private static Set<String> failing(List<Finding> findings, String rule) {
        Set<String> cases = new TreeSet<>();
        for (Finding finding : findings) {
            if (finding.outcome().rule().equals(rule)
                    && finding.outcome().kind() == Kind.FAIL
                    && finding.outcome().level() != Level.NOTE) {
                cases.add(finding.outcome().during());
            }
        }
        return cases;
    }
}
