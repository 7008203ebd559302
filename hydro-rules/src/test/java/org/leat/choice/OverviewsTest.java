package org.leat.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.check.Checker;
import org.leat.check.DesignEdits;
import org.leat.check.Edit;
import org.leat.check.Examined;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Report;
import org.leat.check.Trial;
import org.leat.choice.Overview.GroupedFailure;
import org.leat.choice.Overview.UnderstoodNumber;
import org.leat.choice.Plan.Step;
import org.leat.design.Design;
import org.leat.file.DesignReader;
import org.leat.pack.BuiltInPack;

/** Overviews of the demo designs: whatever they claim is seen by judging a changed design anew, as a design of its own. */
class OverviewsTest {

    private static final Path DEMOS = Path.of("../hydro-examples/designs");
    private static final Checker CHECKER = Checker.of(List.of(new BuiltInPack()));

    static List<Path> demos() throws IOException {
        try (Stream<Path> files = Files.list(DEMOS)) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
        }
    }

    private static Overview overview(Path file) {
        return Overview.of(CHECKER.examined(DesignReader.read(file)), CHECKER.rulebook());
    }

    private static Design design(Path file) {
        return Objects.requireNonNull(DesignReader.read(file).design());
    }

    private static List<String> failing(Report report, GroupedFailure group, Level level) {
        return report.findings().stream()
                .filter(f -> f.failsAt(level))
                .filter(f -> FindingPlace.of(f.outcome())
                        .equals(FindingPlace.of(group.worst().outcome())))
                .map(Finding::toString)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void what_a_change_is_said_to_clear_is_gone_when_the_changed_design_is_judged_anew(Path demo) {
        for (Cause cause : overview(demo).causes()) {
            if (cause.change() == null || !cause.isTried()) {
                continue;
            }
            Report anew = CHECKER.check(
                    DesignEdits.apply(design(demo), cause.change().way().edits()));
            for (GroupedFailure group : cause.clears()) {
                assertThat(failing(anew, group, Level.NOTE)).isEmpty();
            }
            for (GroupedFailure group : cause.calms()) {
                assertThat(failing(anew, group, Level.ERROR)).isEmpty();
                assertThat(failing(anew, group, Level.NOTE)).isNotEmpty();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void after_the_least_plan_only_the_errors_that_it_names_are_left(Path demo) {
        Plan plan = overview(demo).plan();
        List<Edit> edits =
                plan.steps().stream().flatMap(s -> s.way().edits().stream()).toList();
        Report anew = CHECKER.check(DesignEdits.apply(design(demo), edits));
        assertThat(anew.worstFirst(Kind.FAIL).stream()
                        .filter(f -> f.failsAt(Level.ERROR))
                        .map(f -> FindingPlace.of(f.outcome()))
                        .distinct())
                .containsExactlyInAnyOrderElementsOf(plan.stays().stream()
                        .map(s -> FindingPlace.of(s.failure().worst().outcome()))
                        .toList());
        assertThat(plan.tried()).isLessThanOrEqualTo(plan.budget());
        if (plan.batteryPower().isPresent()) {
            assertThat(anew.running().get(0).operatingPoint().batteryPower())
                    .isCloseTo(plan.batteryPower().getAsDouble(), within(1e-6));
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void no_change_of_the_plan_can_be_left_out(Path demo) {
        Examined examined = CHECKER.examined(DesignReader.read(demo));
        Trial trial = Objects.requireNonNull(examined.trial());
        Overview overview = Overview.of(examined, CHECKER.rulebook());
        Plan plan = overview.plan();
        Set<FindingPlace> toClear = examined.report().worstFirst(Kind.FAIL).stream()
                .filter(f -> f.failsAt(Level.ERROR))
                .map(f -> FindingPlace.of(f.outcome()))
                .collect(Collectors.toSet());
        plan.stays()
                .forEach(s -> toClear.remove(FindingPlace.of(s.failure().worst().outcome())));
        assertThat(left(trial, plan.steps(), toClear)).isEmpty();
        for (int i = 0; i < plan.steps().size(); i++) {
            List<Step> fewer = new ArrayList<>(plan.steps());
            fewer.remove(i);
            assertThat(left(trial, fewer, toClear)).isNotEmpty();
        }
    }

    /** {@return errors that changes leave, or bring, and those that they only make a question of} */
    private static List<Outcome> left(Trial trial, List<Step> steps, Set<FindingPlace> toClear) {
        List<Edit> edits = steps.stream().flatMap(s -> s.way().edits().stream()).toList();
        return trial.with(edits).outcomes().stream()
                .filter(o -> toClear.contains(FindingPlace.of(o)))
                .filter(o -> o.kind() == Kind.OPEN || (o.kind() == Kind.FAIL && o.level() == Level.ERROR))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void every_failure_is_under_exactly_one_cause(Path demo) {
        Report report = CHECKER.check(DesignReader.read(demo));
        List<Finding> listed = new ArrayList<>();
        for (Cause cause : overview(demo).causes()) {
            Stream.concat(cause.clears().stream(), cause.calms().stream()).forEach(g -> {
                listed.add(g.worst());
                listed.addAll(g.others());
            });
        }
        assertThat(listed).containsExactlyInAnyOrderElementsOf(report.worstFirst(Kind.FAIL));
    }

    @ParameterizedTest
    @MethodSource("demos")
    void what_settles_most_that_can_hurt_comes_first_and_says_how_to_come_by_it(Path demo) {
        List<MissingInput> inputs = overview(demo).inputs();
        for (int i = 1; i < inputs.size(); i++) {
            assertThat(inputs.get(i).endangering())
                    .isLessThanOrEqualTo(inputs.get(i - 1).endangering());
        }
        assertThat(inputs).allMatch(i -> i.how().known(), "is known how to come by");
    }

    @Test
    void an_input_that_is_told_beyond_the_law_is_not_asked_for_again() throws IOException {
        MissingInput wall = input("highest-wall-temperature: 45 °C", "/penstock/highest-wall-temperature");
        assertThat(wall.how().sentence()).startsWith("told, ").contains("shade or bury the pipe");
        assertThat(wall.how().known()).isTrue();
    }

    @Test
    void the_wall_of_a_pipe_in_the_sun_is_asked_for_where_it_is_not_told() throws IOException {
        assertThat(input("sunlight: open", "/penstock/highest-wall-temperature")
                        .how()
                        .sentence())
                .startsWith("feel or measure");
    }

    private static MissingInput input(String ofPenstock, String field) throws IOException {
        String design = Files.readString(DEMOS.resolve("first-try.yaml"))
                .replaceFirst("(?m)^penstock:$", "penstock:\n  " + ofPenstock);
        Examined examined = CHECKER.examined(DesignReader.read(design, "hot.yaml"));
        return Overview.of(examined, CHECKER.rulebook()).inputs().stream()
                .filter(i -> i.field().equals(field))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void what_fails_hangs_on_the_assumptions_that_it_rests_on(Path demo) {
        List<MissingInput> inputs = overview(demo).inputs();
        for (Finding failure : CHECKER.check(DesignReader.read(demo)).worstFirst(Kind.FAIL)) {
            failure.restsOn()
                    .forEach(rests -> assertThat(inputs)
                            .filteredOn(i -> i.field().equals(rests.field()))
                            .singleElement()
                            .satisfies(i -> assertThat(i.settles()).contains(failure)));
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void two_runs_say_the_same(Path demo) {
        assertThat(overview(demo)).isEqualTo(overview(demo));
    }

    @Test
    void nothing_unjudged_is_ever_called_safe() {
        Overview first = overview(DEMOS.resolve("ash-gill.yaml"));
        assertThat(first.verdict().errors()).isZero();
        assertThat(first.verdict().openEndangering()).isPositive();
        assertThat(first.verdict().answer()).isEqualTo(SafetyVerdict.Answer.UNJUDGED);
    }

    @Test
    void a_file_that_cannot_be_read_is_not_judged() {
        Examined examined = CHECKER.examined(DesignReader.read("format: 1", "bad.yaml"));
        Overview overview = Overview.of(examined, CHECKER.rulebook());
        assertThat(overview.verdict().answer()).isEqualTo(SafetyVerdict.Answer.UNREADABLE);
        assertThat(overview.plan().result()).isEqualTo(Plan.Result.NOTHING_JUDGED);
    }

    /**
     * By hand: 63 mm in SDR 17 has a wall of 3.8 mm (ISO 4427-2, table 1); 24 m of water at 1000 kg/m³ and 9.81 m/s² stand at
     * 2.354 bar; a bore of 10 mm is 78.54 mm²; 21 V rms at 1000 rpm are 1000/(21 √2) = 33.67 rpm for each volt of peak; eight
     * cells of 3.2 V are 25.6 V, at 100 Ah 2560 Wh.
     */
    @Test
    void the_numbers_understood_are_those_that_a_builder_knows() {
        List<UnderstoodNumber> numbers =
                overview(DEMOS.resolve("first-try.yaml")).understood();
        assertThat(value(numbers, UnderstoodNumber.What.PIPE_WALL)).isCloseTo(0.0038, within(1e-9));
        assertThat(value(numbers, UnderstoodNumber.What.STANDING_PRESSURE)).isCloseTo(235_400, within(400.0));
        assertThat(value(numbers, UnderstoodNumber.What.NOZZLE_AREA)).isCloseTo(78.54e-6, within(1e-8));
        assertThat(value(numbers, UnderstoodNumber.What.MOTOR_SPEED_PER_VOLT) * 30 / Math.PI)
                .isCloseTo(33.67, within(0.01));
        assertThat(value(numbers, UnderstoodNumber.What.MOTOR_VOLTS_AT_1000_RPM))
                .isCloseTo(21, within(1e-9));
        assertThat(value(numbers, UnderstoodNumber.What.MOTOR_RESISTANCE)).isCloseTo(0.2, within(1e-9));
        assertThat(value(numbers, UnderstoodNumber.What.BATTERY_NOMINAL_VOLTAGE))
                .isCloseTo(25.6, within(1e-9));
        assertThat(value(numbers, UnderstoodNumber.What.BATTERY_ENERGY) / 3600).isCloseTo(2560, within(1e-6));
    }

    private static double value(List<UnderstoodNumber> numbers, UnderstoodNumber.What what) {
        return numbers.stream()
                .filter(n -> n.what() == what)
                .findFirst()
                .orElseThrow()
                .value();
    }
}
