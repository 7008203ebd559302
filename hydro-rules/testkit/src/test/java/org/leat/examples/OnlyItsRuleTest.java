package org.leat.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.testing.Example;
import org.leat.check.testing.RuleTestKit;

/** A failing example breaks its own rule, and no other but where nature ties the two together. */
class OnlyItsRuleTest {

    private final RuleTestKit kit = new RuleTestKit(PackExamples.CHECKER);

    private static final Set<String> WATER = Set.of("site", "intake", "penstock", "nozzle", "runner");

    /**
     * Rules that fail together with that of the example, and why no design of this kind can break it alone. Shrinks
     * only. On the water side notes count too.
     */
    private static final Map<String, Set<String>> TIED = Map.ofEntries(
            // a fuse that opens on so small a current carries no day's, and neither bears a winding of less what a
            // fault makes
            Map.entry(
                    "regulator/short-current:fails-partly-blocked",
                    Set.of("alternator/phase-open", "protection/continuous-load", "rectifier/diode-short")),
            // a wall that the blow of a stop is too much for folds in the suction of the same stop
            Map.entry("penstock/surge-pressure:fails", Set.of("penstock/collapse")),
            // a guard that never comes in holds nothing
            Map.entry("dump/lost:fails-guard-above-the-battery", Set.of("dump/guard-alone")),
            Map.entry("dump/guard-alone:fails-above-the-battery", Set.of("dump/lost")),
            // a winding that bears less than a battery pulls bears less than two live phases carry, too
            Map.entry("regulator/short-current:fails", Set.of("alternator/phase-open", "rectifier/diode-short")),
            // water that loses a fiftieth of the fall in the holes goes through them faster than small creatures can
            // swim
            Map.entry("intake/screen-loss:fails", Set.of("intake/approach-velocity")),
            // nozzles too large for the dry months take what is to stay in the stream
            Map.entry("nozzle/set-covers-stream:fails", Set.of("site/kept-flow")),
            // a vent too narrow for the nozzles lets even less in where the pipe breaks
            Map.entry("intake/vent:fails-narrow", Set.of("penstock/drain-down")),
            // a pipe too wide for its money takes next to nothing of the fall
            Map.entry("penstock/oversized:fails", Set.of("penstock/friction-share")),
            // a root that holds a jet and a jam is many times what flying apart asks of it
            Map.entry("runner/runaway-strength:fails", Set.of("runner/bucket-root")),
            // to be below cut-in with a machine that suits the plant otherwise, the nozzles take all water there is
            Map.entry("alternator/cut-in:fails", Set.of("site/kept-flow")),
            // a runner that is not held runs past the torque peak, off its best speed, and does not come back by itself
            Map.entry(
                    "alternator/holds-runner:fails",
                    Set.of("alternator/torque-peak", "plant/restart", "rectifier/diode-short", "runner/speed-ratio")),
            // the wrong joints make the wrong volts per speed: the runner turns at the wrong share of the jet's
            // velocity, and more amperes than the fuses of the right joints carry for ever
            Map.entry("alternator/star-or-delta:fails", Set.of("runner/speed-ratio", "protection/continuous-load")),
            // jets that let the column hold are thin for the screen and the buckets
            Map.entry(
                    "penstock/hose-rating:fails-where-the-column-holds",
                    Set.of("intake/opening-against-nozzle", "nozzle/jet-against-bucket", "runner/bucket-count")),
            // a wheel too small for its jet, and a place too hot for the plastic, are odd ones too
            Map.entry("runner/pitch-against-jet:fails", Set.of("plausibility/sizes")),
            Map.entry("runner/printed-material:fails", Set.of("plausibility/sizes")),
            // near the peak a gust past it is not recovered
            Map.entry("alternator/torque-peak:fails", Set.of("plant/restart", "rectifier/diode-short")),
            // the water side's plant sheds its load nowhere: its bus rises beyond any inverter
            Map.entry("plant/maintenance-plan:fails", Set.of("inverter/input-window")),
            // necks that must be looked at every day are those of a wheel that is weak and of the wrong stuff
            Map.entry(
                    "plant/maintenance-plan:fails-printed",
                    Set.of("inverter/input-window", "runner/bucket-root", "runner/printed-material")),
            Map.entry("plant/restart:fails", Set.of("alternator/torque-peak", "rectifier/diode-short")),
            // a bank of another voltage than the bus is also outside the inverter's window
            Map.entry("battery/bus-voltage-match:fails", Set.of("inverter/input-window")),
            // a bank so small that it turns round every day is also emptied soon by a dump load that stays on
            Map.entry("battery/cycle-life:fails", Set.of("dump/stuck-on")),
            Map.entry("battery/cycle-life:fails-one-flow", Set.of("dump/stuck-on")),
            // a set point that cells must never see is also none that they stand
            Map.entry("battery/equalise:fails-sealed", Set.of("regulator/set-points")),
            // what never fills the bank is also too little to keep lead from sulphating, and the bank an odd one
            Map.entry("battery/never-full:fails-one-flow", Set.of("battery/least-current", "plausibility/sizes")),
            // a bank that a day's use takes deeper than it bears is empty of an evening
            Map.entry("battery/depth-of-discharge:fails", Set.of("loads/energy-balance")),
            // weeks in which lead is not full are weeks in which it is empty at last
            Map.entry("battery/never-full:fails", Set.of("battery/least-current", "loads/energy-balance")),
            // a pipe whose rating only the standing water passes, and no blow, is longer than such plants have
            Map.entry("penstock/static-pressure:fails", Set.of("plausibility/pipe-over-fall", "plausibility/sizes")),
            // the dump load is lost without harm only where a second line holds
            Map.entry("dump/lost:fails", Set.of("dump/second-line")),
            Map.entry("dump/second-line:fails", Set.of("dump/lost")),
            // only a wheel far too fast for its machine meets it twice, and its runaway is no extra-low voltage
            Map.entry(
                    "alternator/second-speed:fails",
                    Set.of(
                            "alternator/phase-open",
                            "protection/continuous-load",
                            "protection/touch-voltage",
                            "rectifier/diode-short",
                            "runner/speed-ratio")),
            // what exceeds a limit with three leads exceeds it with the two that are left
            Map.entry("alternator/winding-current:fails", Set.of("alternator/phase-open", "rectifier/diode-short")),
            Map.entry("alternator/winding-temperature:fails", Set.of("alternator/phase-open", "rectifier/diode-short")),
            Map.entry(
                    "protection/short-circuit-brake:fails-heat",
                    Set.of("alternator/phase-open", "rectifier/diode-short")),
            // nor does a winding that stands less, or a bridge that does, stand what just does not open the fuse of a
            // shorted diode
            Map.entry("alternator/magnet-temperature:fails", Set.of("rectifier/diode-short")),
            Map.entry("alternator/phase-open:fails", Set.of("rectifier/diode-short")),
            Map.entry("protection/short-circuit-brake:fails", Set.of("rectifier/diode-short")),
            Map.entry("rectifier/current:fails", Set.of("rectifier/diode-short")),
            Map.entry("regulator/short-current:fails-bridge", Set.of("rectifier/diode-short")),
            // a guard that is too small is one that does not hold what it guards
            Map.entry("dump/lost:fails-guard-too-small", Set.of("dump/guard-alone")),
            // water fast enough to carry the air down strikes hard
            Map.entry("penstock/air-pockets:fails-in-the-drawer", Set.of("penstock/thrust")),
            // a fuse that the alternator never blows does not open on a shorted diode either
            Map.entry("protection/alternator-cannot-trip:fails", Set.of("rectifier/diode-short")),
            // a winding of that much resistance lets too little through for a fuse that it works with
            Map.entry("alternator/loaded-efficiency:fails", Set.of("rectifier/diode-short")),
            // a run that leads from the battery wants a fuse there
            Map.entry("cable/joined-as-said:fails", Set.of("cable/protection")),
            // a stop so slow that nobody makes it is one that the pipe does not stand as it is
            Map.entry("penstock/closing-time:fails-nobody", Set.of("penstock/surge-pressure")),
            // what burns the magnets has burnt the winding
            Map.entry(
                    "alternator/magnet-temperature:fails-burns",
                    Set.of("alternator/phase-open", "alternator/winding-temperature", "rectifier/diode-short")),
            // a regulator that fails short harms only where no second line holds
            Map.entry("regulator/failed-short:fails", Set.of("dump/second-line")),
            // what stands less than the clamp's trigger does not stand the runaway either
            Map.entry("regulator/input-clamp:fails-late", Set.of("bus/overvoltage", "dump/guard-alone", "dump/lost")),
            // that a tired fuse is an error is because of what does not stand that it opens
            Map.entry(
                    "protection/continuous-load:fails-lets-go",
                    Set.of("rectifier/capacitor", "dump/side-of-bridge", "protection/turbine-not-fused-open")),
            // a fuse that leaves the turbine alone leaves it with its capacitor, and the dump load on the other side
            Map.entry("protection/turbine-not-fused-open:fails", Set.of("rectifier/capacitor", "dump/side-of-bridge")));

    @Test
    void a_failing_example_breaks_its_own_rule_only() throws IOException {
        Map<String, Set<String>> neighbours = new TreeMap<>();
        // a plant judged on a number that cannot be meant fails here and there
        List<Example> failing = PackExamples.failing()
                .filter(example -> !component(example.rule()).equals("plausibility"))
                .toList();
        for (Example example : failing) {
            Set<String> failed = failed(kit, example);
            assertThat(failed.remove(example.rule())).as(example.id()).isTrue();
            if (!failed.isEmpty()) {
                neighbours.put(example.id(), failed);
            }
        }
        assertThat(failing).hasSizeGreaterThan(100);
        assertThat(neighbours).containsAllEntriesOf(TIED);
        TIED.keySet().forEach(neighbours::remove);
        assertThat(neighbours).isEmpty();
    }

    @Test
    void what_is_tied_to_a_rule_of_the_electric_side_is_expected_with_it() throws IOException {
        PackExamples.failing()
                .filter(e -> !WATER.contains(component(e.rule())))
                .filter(e -> !e.rule().equals("plant/maintenance-plan")) // a plant of the water side
                .forEach(example -> assertThat(example.listed())
                        .as(example.id())
                        .containsAll(TIED.getOrDefault(example.id(), Set.of())));
    }

    /** {@return the rules that fail with that of an example, and may} */
    static Set<String> tied(Example example) {
        return TIED.getOrDefault(example.id(), Set.of());
    }

    /** {@return the rules that an example fails, but for notes on what it says nothing of} */
    static Set<String> failed(RuleTestKit kit, Example example) throws IOException {
        boolean water = WATER.contains(component(example.rule()));
        return kit.check(example).findings().stream()
                .filter(finding -> finding.outcome().kind() == Kind.FAIL)
                .filter(finding -> isOf(example, finding) || counts(finding, water))
                .map(finding -> finding.outcome().rule())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static boolean isOf(Example example, Finding finding) {
        return finding.outcome().rule().equals(example.rule());
    }

    /** Notes on parts of the plant that the example says nothing of do not count. */
    private static boolean counts(Finding finding, boolean water) {
        return finding.outcome().level() != Level.NOTE
                || (water && WATER.contains(component(finding.outcome().rule())));
    }

    private static String component(String rule) {
        return rule.substring(0, rule.indexOf('/'));
    }
}
