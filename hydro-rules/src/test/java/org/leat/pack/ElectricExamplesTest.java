package org.leat.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.check.Checker;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.report.testing.RuleTestKit;

/** The electric side's examples: each breaks the rule it is named for, and nothing but what its expectation names. */
class ElectricExamplesTest {

    private static final Path EXAMPLES = Path.of("src/test/resources/rules");
    private static final String UNKNOWN = "-unknown.yaml";
    private static final Set<String> COMPONENTS = Set.of(
            "alternator",
            "battery",
            "bus",
            "cable",
            "dump",
            "electric",
            "inverter",
            "loads",
            "plant",
            "protection",
            "rectifier",
            "regulator");

    /** What a failure cannot be parted from, by example. Shrinks only: every other example breaks its own rule alone. */
    private static final Map<String, List<String>> INSEPARABLE = Map.ofEntries(
            // to be below cut-in with a machine that suits the plant otherwise, the smallest nozzles take all water
            // there is
            Map.entry("alternator/cut-in", List.of("nozzle/set-covers-stream", "site/kept-flow")),
            // a runner that is not held runs past the torque peak, off its best speed, and does not come back by itself
            Map.entry(
                    "alternator/holds-runner",
                    List.of("alternator/torque-peak", "plant/restart", "runner/speed-ratio")),
            // the wrong joints make the wrong volts per speed: the runner turns at the wrong share of the jet's
            // velocity
            Map.entry("alternator/star-or-delta", List.of("runner/speed-ratio")),
            // near the peak a gust past it is not recovered
            Map.entry("alternator/torque-peak", List.of("plant/restart")),
            Map.entry("plant/restart", List.of("alternator/torque-peak")),
            // a bank of another voltage than the bus is also outside the inverter's window
            Map.entry("battery/bus-voltage-match", List.of("inverter/input-window")),
            // what never fills the bank is also too little to keep lead from sulphating
            Map.entry("battery/never-full", List.of("battery/least-current")),
            // the dump load is lost without harm only where a second line holds
            Map.entry("dump/lost", List.of("dump/second-line")),
            Map.entry("dump/second-line", List.of("dump/lost")),
            // a fuse that leaves the turbine alone leaves it with its capacitor, and the dump load on the other side
            Map.entry("protection/turbine-not-fused-open", List.of("rectifier/capacitor", "dump/side-of-bridge")));

    private final RuleTestKit kit = new RuleTestKit(Checker.of(List.of(new BuiltInPack())));

    private static Stream<Path> examples() throws IOException {
        return RuleTestKit.designs(EXAMPLES).stream().filter(file -> COMPONENTS.contains(component(file)));
    }

    private static Stream<Path> failing() throws IOException {
        return examples()
                .filter(file -> !file.toString().endsWith(UNKNOWN))
                .filter(file -> !component(file).equals("electric"));
    }

    private static Stream<Path> unknown() throws IOException {
        return examples().filter(file -> file.toString().endsWith(UNKNOWN));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void an_example_is_found_to_be_what_it_is_expected_to_be(Path design) throws IOException {
        assertThat(kit.differences(design)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("failing")
    void a_design_made_to_break_a_rule_breaks_it_and_only_what_is_named(Path design) throws IOException {
        List<String> named = named(design);
        assertThat(failures(design)).contains(named.get(0));
        assertThat(kit.check(design).findings().stream()
                        .filter(f -> f.failsAt(Level.WARNING))
                        .map(f -> f.outcome().rule())
                        .collect(Collectors.toSet()))
                .isSubsetOf(named);
    }

    @Test
    void every_failing_example_breaks_one_rule_alone_except_what_cannot_be_parted() throws IOException {
        Map<String, List<String>> more = new TreeMap<>();
        for (Path design : failing().toList()) {
            List<String> named = named(design);
            if (named.size() > 1) {
                more.put(named.get(0), named.subList(1, named.size()));
            }
        }
        assertThat(more).isEqualTo(INSEPARABLE);
    }

    @ParameterizedTest
    @MethodSource("unknown")
    void a_design_that_leaves_something_out_is_not_passed(Path design) throws IOException {
        String rule = named(design).get(0);
        assertThat(kit.check(design).findings())
                .anyMatch(f -> f.outcome().rule().equals(rule) && f.outcome().kind() == Kind.OPEN);
        assertThat(failures(design)).doesNotContain(rule);
    }

    @Test
    void a_sound_plant_breaks_no_rule_that_warns() throws IOException {
        for (String sound : List.of("sound", "sound-lead", "sound-tracking")) {
            assertThat(kit.check(EXAMPLES.resolve("electric/" + sound + ".yaml"))
                            .findings())
                    .as(sound)
                    .noneMatch(f -> f.failsAt(Level.WARNING));
        }
    }

    private Set<String> failures(Path design) throws IOException {
        return kit.check(design).findings().stream()
                .filter(f -> f.outcome().kind() == Kind.FAIL)
                .map(f -> f.outcome().rule())
                .collect(Collectors.toSet());
    }

    private static List<String> named(Path design) throws IOException {
        String first = Files.readAllLines(RuleTestKit.expectation(design)).get(0);
        return List.of(first.replaceAll("^rules: \\[|]$", "").split(", "));
    }

    private static String component(Path file) {
        return String.valueOf(file.getParent().getFileName());
    }
}
