package org.leat.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.leat.check.DesignEdits;
import org.leat.check.Edit;
import org.leat.check.Examined;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.testing.Example;
import org.leat.check.testing.RuleTestKit;
import org.leat.choice.MissingInput;
import org.leat.choice.Overview;
import org.leat.choice.Plan;
import org.leat.file.Reading;

/** The least plan of every example with an error, carried out and judged anew as a design of its own. */
class LeastPlanHoldsTest {

    private final RuleTestKit kit = new RuleTestKit(PackExamples.CHECKER);
    private final List<String> wrong = new ArrayList<>();
    private final List<Plan.Result> results = new ArrayList<>();

    @Test
    void after_the_plan_only_the_errors_that_it_names_are_left() throws IOException {
        Set<Object> seen = new HashSet<>();
        List<Example> examples = new ArrayList<>(PackExamples.failing().toList());
        examples.addAll(PackExamples.ofPlants());
        for (Example example : examples) {
            Reading reading = kit.read(example);
            if (seen.add(Objects.requireNonNull(reading.design()))) {
                hold(example, reading);
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(results).contains(Plan.Result.FOUND, Plan.Result.SOME_STAY);
        assertThat(results.stream().filter(r -> r == Plan.Result.FOUND).count()).isGreaterThan(30);
    }

    private void hold(Example example, Reading reading) {
        Examined examined = PackExamples.CHECKER.examined(reading);
        Overview overview = Overview.of(examined, PackExamples.CHECKER.rulebook());
        Plan plan = overview.plan();
        results.add(plan.result());
        for (MissingInput input : overview.inputs()) {
            if (!input.how().known()) {
                wrong.add(example.id() + ": nobody knows how to come by " + input.field());
            }
        }
        if (plan.result() == Plan.Result.NOTHING_NEEDED) {
            return;
        }
        List<Edit> edits =
                plan.steps().stream().flatMap(s -> s.way().edits().stream()).toList();
        List<Outcome> anew =
                PackExamples.CHECKER.outcomes(DesignEdits.apply(Objects.requireNonNull(reading.design()), edits));
        Set<String> stays = new HashSet<>();
        plan.stays().forEach(s -> stays.add(place(s.failure().worst().outcome())));
        for (Outcome then : anew) {
            if (then.kind() == Kind.FAIL && then.level() == Level.ERROR && !stays.contains(place(then))) {
                wrong.add(example.id() + ": after the plan " + then.identity() + " fails");
            }
        }
        if (plan.tried() > plan.budget()) {
            wrong.add(example.id() + ": " + plan.tried() + " tries");
        }
    }

    private static String place(Outcome outcome) {
        return outcome.rule() + " " + outcome.path();
    }
}
