package org.leat.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
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
