package org.leat.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.leat.check.Checker;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.file.DesignReader;
import org.leat.report.testing.RuleTestKit;

/** A failing example of the water side breaks its own rule, and no other but where nature ties the two together. */
class OnlyItsRuleTest {

    private static final Path EXAMPLES = Path.of("src/test/resources/rules");
    private static final Set<String> PARTS = Set.of("site", "intake", "penstock", "nozzle", "runner");

    /** Rules that fail together with that of the example, and why no design of this kind can break it alone. Shrinks only. */
    private static final Map<String, Set<String>> TIED = Map.of(
            // water that loses a fiftieth of the fall in the holes goes through them faster than small creatures can
            // swim
            "intake/screen-loss", Set.of("intake/approach-velocity"),
            // nozzles too large for the dry months take what is to stay in the stream
            "nozzle/set-covers-stream", Set.of("site/kept-flow"),
            // a pipe too wide for its money takes next to nothing of the fall
            "penstock/oversized", Set.of("penstock/friction-share"),
            // a root that holds a jet and a jam is many times what flying apart asks of it
            "runner/runaway-strength", Set.of("runner/bucket-root"));

    @Test
    void a_failing_example_breaks_its_own_rule_only() throws IOException {
        Checker checker = Checker.of(List.of(new BuiltInPack()));
        Map<String, Set<String>> neighbours = new TreeMap<>();
        int tried = 0;
        for (Path design : RuleTestKit.designs(EXAMPLES)) {
            Path rule = EXAMPLES.relativize(design.getParent());
            if (PARTS.contains(rule.getName(0).toString())
                    && design.getFileName().toString().startsWith("fails")) {
                tried++;
                String own = rule.toString().replace('\\', '/');
                Set<String> failed = new TreeSet<>();
                for (Finding finding : checker.check(DesignReader.read(design)).findings()) {
                    if (counts(finding)) {
                        failed.add(finding.outcome().rule());
                    }
                }
                assertThat(failed).as(design.toString()).contains(own);
                failed.remove(own);
                if (!failed.isEmpty()) {
                    neighbours.put(own, failed);
                }
            }
        }
        assertThat(tried).isGreaterThan(30);
        assertThat(neighbours).isEqualTo(new TreeMap<>(TIED));
    }

    /** Remarks on parts of the plant that the example says nothing of do not count. */
    private static boolean counts(Finding finding) {
        String part =
                finding.outcome().rule().substring(0, finding.outcome().rule().indexOf('/'));
        return finding.outcome().kind() == Kind.FAIL
                && (PARTS.contains(part) || finding.outcome().level() != Level.NOTE);
    }
}
