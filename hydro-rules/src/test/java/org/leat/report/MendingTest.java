package org.leat.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.check.Checker;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Report;
import org.leat.file.DesignReader;
import org.leat.pack.BuiltInPack;
import org.leat.report.mending.Mended;
import org.leat.report.mending.Mending;

class MendingTest {

    private static final Checker CHECKER = Checker.of(List.of(new BuiltInPack()));

    static Stream<Path> demos() throws IOException {
        return Files.list(Path.of("..", "hydro-examples", "designs"))
                .filter(f -> f.toString().endsWith(".yaml"))
                .sorted();
    }

    private static Mended mend(String text, String... rules) {
        return Mending.of(CHECKER, text, t -> DesignReader.read(t, "f.yaml"), Level.NOTE, Set.of(rules));
    }

    private static Set<String> failures(Report report) {
        return report.findings().stream()
                .filter(f -> f.outcome().kind() == Kind.FAIL)
                .map(f -> f.outcome().level() + f.outcome().rule() + f.outcome().path())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @ParameterizedTest
    @MethodSource("demos")
    void changes_touch_only_their_lines_and_the_report_is_that_of_the_changed_text(Path file) throws IOException {
        String text = Files.readString(file);
        Mended mended = mend(text);
        List<String> before = text.lines().toList();
        List<String> after = mended.text().lines().toList();
        assertThat(after).hasSameSizeAs(before);
        Set<Integer> changed = new TreeSet<>();
        for (int i = 0; i < before.size(); i++) {
            if (!before.get(i).equals(after.get(i))) {
                changed.add(i + 1);
                int hash = before.get(i).indexOf(" #");
                if (hash >= 0) {
                    assertThat(after.get(i)).endsWith(before.get(i).substring(hash));
                }
            }
        }
        assertThat(changed)
                .isEqualTo(mended.steps().stream()
                        .map(s -> s.edit().position().line())
                        .collect(Collectors.toCollection(TreeSet::new)));
        Report again = CHECKER.check(DesignReader.read(mended.text(), "f.yaml"));
        assertThat(again.findings()).isEqualTo(mended.after().findings());
        Set<String> worse = failures(again);
        worse.removeAll(failures(mended.before()));
        int worst = mended.steps().stream()
                .mapToInt(s -> s.finding().outcome().level().ordinal())
                .min()
                .orElse(0);
        assertThat(worse).noneMatch(w -> Level.valueOf(w.split("[a-z]")[0]).ordinal() > worst);
        assertThat(mend(mended.text()).steps().stream()
                        .map(s -> s.way().edits().get(0).path())
                        .toList())
                .as("a second time only what the first would not change twice")
                .allMatch(path -> mended.steps().stream()
                        .anyMatch(s -> s.way().edits().get(0).path().equals(path)));
    }

    @Test
    void the_unsafe_demos_get_better_and_what_stays_says_why() throws IOException {
        int steps = 0;
        List<Mended.Why> whys = new ArrayList<>();
        for (Path file : demos().toList()) {
            Mended mended = mend(Files.readString(file));
            steps += mended.steps().size();
            assertThat(mended.after().failures(Level.ERROR))
                    .isLessThanOrEqualTo(mended.before().failures(Level.ERROR));
            mended.left().forEach(left -> whys.add(left.why()));
            assertThat(mended.left()).allMatch(left -> left.finding().failsAt(Level.NOTE));
        }
        assertThat(steps).isGreaterThan(5);
        assertThat(whys)
                .contains(
                        Mended.Why.NO_WAY_OUT,
                        Mended.Why.ADVICE_ONLY,
                        Mended.Why.SEVERAL_VALUES,
                        Mended.Why.LIST,
                        Mended.Why.CHANGED_ALREADY);
    }

    @Test
    void no_value_is_changed_twice_and_only_the_rules_asked_for_are_mended() throws IOException {
        String text = Files.readString(Path.of("..", "hydro-examples", "designs", "tannery-yard.yaml"));
        List<String> paths = mend(text).steps().stream()
                .map(s -> s.way().edits().get(0).path())
                .toList();
        assertThat(paths).doesNotHaveDuplicates();
        Mended one = mend(text, "plant/stop-safely");
        assertThat(one.steps()).hasSize(1);
        assertThat(one.text()).isEqualTo(text.replaceFirst("stop-water: quick-valve", "stop-water: deflector"));
    }

    @Test
    void of_several_ways_out_the_one_that_wins_most_is_taken() throws IOException {
        String text = Files.readString(Path.of("..", "hydro-examples", "designs", "tannery-yard.yaml"));
        Mended mended = mend(text, "penstock/static-pressure");
        Mended.Step step = mended.steps().get(0);
        double gain = step.way().gain().orElse(0);
        assertThat(step.finding().waysOut()).hasSizeGreaterThan(1);
        assertThat(step.finding().waysOut())
                .allMatch(way -> way.gain().orElse(0) <= gain || way.edits().size() != 1);
    }

    @Test
    void line_ends_of_either_kind_stay() throws IOException {
        String text = Files.readString(Path.of("..", "hydro-examples", "designs", "tannery-yard.yaml"));
        String windows = text.replace("\n", "\r\n");
        assertThat(mend(windows).text()).isEqualTo(mend(text).text().replace("\n", "\r\n"));
    }
}
