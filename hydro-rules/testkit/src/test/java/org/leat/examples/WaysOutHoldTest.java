package org.leat.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.leat.check.DesignEdits;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Report;
import org.leat.check.WayOut;
import org.leat.check.testing.Example;
import org.leat.check.testing.RuleTestKit;
import org.leat.file.DesignReader;
import org.leat.file.Reading;

/** Every way out of examples and demos, carried out and judged again as a design of its own. */
class WaysOutHoldTest {

    private final RuleTestKit kit = new RuleTestKit(PackExamples.CHECKER);

    private static final Path DEMOS = Path.of("../../hydro-examples/designs");

    private final Set<Object> seen = new HashSet<>();
    private final List<String> wrong = new ArrayList<>();
    private int tried;

    @Test
    void every_way_out_takes_its_failure_away_and_brings_no_new_one_of_its_level() throws IOException {
        for (Example example : PackExamples.some()) {
            hold(example.id(), kit.read(example), kit.check(example));
        }
        try (Stream<Path> demos = Files.list(DEMOS)) {
            for (Path demo :
                    demos.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
                Reading reading = DesignReader.read(demo);
                assertThat(reading.problems()).as(demo.toString()).isEmpty();
                hold(demo.toString(), reading, PackExamples.CHECKER.check(reading));
            }
        }
        assertThat(tried).isGreaterThan(100);
        assertThat(wrong).isEmpty();
    }

    private void hold(String name, Reading reading, Report before) {
        if (!seen.add(Objects.requireNonNull(reading.design()))) {
            return; // a base as it is: it was held already
        }
        for (Finding finding : before.findings()) {
            for (WayOut way : finding.waysOut()) {
                if (!way.edits().isEmpty()) {
                    tried++;
                    List<Outcome> after =
                            PackExamples.CHECKER.outcomes(DesignEdits.apply(reading.design(), way.edits()));
                    wrong.addAll(newFailures(name, before, finding, way, after));
                }
            }
        }
    }

    private static List<String> newFailures(
            String name, Report before, Finding finding, WayOut way, List<Outcome> after) {
        Level level = finding.outcome().level();
        Set<Object> known = new HashSet<>();
        before.findings().stream()
                .filter(f -> f.failsAt(level))
                .map(f -> f.outcome().rule() + f.outcome().path())
                .forEach(known::add);
        return after.stream()
                .filter(then -> then.kind() == Kind.FAIL)
                .filter(then -> then.identity().equals(finding.outcome().identity())
                        || (then.level().compareTo(level) >= 0 && !known.contains(then.rule() + then.path())))
                .map(then -> name + " " + finding.outcome().identity() + " by "
                        + way.message().id() + ": " + then.identity() + " "
                        + then.message().id())
                .toList();
    }
}
