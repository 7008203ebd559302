package org.leat.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.leat.check.Comparison;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.testing.Example;
import org.leat.check.testing.RuleTestKit;
import org.leat.design.AlternatorBuilder;
import org.leat.design.Design;
import org.leat.design.DesignBuilder;
import org.leat.design.NozzleChoice;
import org.leat.design.NozzleSet;
import org.leat.design.NozzleSetBuilder;
import org.leat.design.WindingBuilder;
import org.leat.plant.Plant;
import org.leat.plant.cases.BatteryFull;
import org.leat.plant.cases.BusSituation.RegulatorFailedShort;
import org.leat.plant.cases.Cases;
import org.leat.quantity.Quantities;
import org.leat.quantity.Si;

/** What is wrong on the nozzles that are fitted is found as well while they lie in the drawer. */
class SetsInTheDrawerTest {

    private final RuleTestKit kit = new RuleTestKit(PackExamples.CHECKER);

    /** How much smaller or larger the nozzles are that take the place of those moved to the drawer. */
    private static final List<Double> OTHER = List.of(0.9, 1.1, 0.6, 1.5);

    /** Rules of which some failing example passes with other nozzles fitted, and why that is earned. Shrinks only. */
    private static final Map<String, String> OF_THE_SET_FITTED = Map.ofEntries(
            Map.entry("alternator/cut-in", "a share of the power of the set fitted"),
            Map.entry("alternator/loaded-efficiency", "waste on the set fitted"),
            Map.entry("alternator/star-or-delta", "gain on the set fitted, a note"),
            Map.entry("battery/never-full", "days of charging on the set fitted"),
            Map.entry("cable/ac-or-dc-run", "cheaper side for the set fitted, a note"),
            Map.entry("loads/energy-balance", "days of use on the set fitted"),
            Map.entry("nozzle/step-size", "another nozzle between two is what it asks for, a note"),
            Map.entry("nozzle/worn", "nozzles in use, a note"),
            Map.entry("penstock/friction-share", "waste on the set fitted"),
            Map.entry("plant/efficiency-chain", "waste on the set fitted, a note"),
            Map.entry("plant/left-on-the-table", "gain over the set fitted, a note"),
            Map.entry("plausibility/reading-of-volts", "how a number was read, seen on the set fitted"),
            Map.entry(
                    "runner/bucket-count", "usual for the thickest jet: a thin one on the same wheel is usual as well"),
            Map.entry("site/flow-available", "water that the set fitted asks for"),
            Map.entry("site/kept-flow", "water that the set fitted takes"));

    /** Rules of what breaks: the failure is no smaller either. */
    private static final Set<String> NO_LESS = Set.of(
            "alternator/phase-open",
            "alternator/winding-current",
            "alternator/winding-temperature",
            "alternator/overspeed",
            "bus/overvoltage",
            "dump/absorbs-all",
            "dump/branch-protection",
            "dump/own-rating",
            "dump/switch-rating",
            "inverter/input-window",
            "penstock/air-pockets",
            "penstock/collapse",
            "penstock/surge-pressure",
            "penstock/thrust",
            "plant/maintenance-plan",
            "plant/restart",
            "rectifier/current",
            "rectifier/diode-short",
            "regulator/failed-short",
            "runner/bucket-root",
            "runner/printed-material",
            "runner/runaway-strength");

    /** What is wrong on the nozzles as built, or in spite of them, is wrong as well while they lie in the drawer. */
    @Test
    void a_nozzle_moved_to_the_drawer_never_turns_a_failure_into_a_pass() throws IOException {
        Set<String> lost = new TreeSet<>();
        Set<String> smaller = new TreeSet<>();
        Set<String> asked = new TreeSet<>();
        for (Example example : PackExamples.failing().toList()) {
            for (double other : others(example)) {
                Design design = Objects.requireNonNull(kit.read(example).design());
                Map<String, Failing> before = failing(design);
                Map<String, Failing> after = failing(takenOut(design, other));
                for (Map.Entry<String, Failing> failing : before.entrySet()) {
                    String rule = failing.getKey();
                    Failing then = after.get(rule);
                    asked.add(rule);
                    if (then == null
                            || then.level().compareTo(failing.getValue().level()) < 0) {
                        lost.add(rule);
                    } else if (NO_LESS.contains(rule)
                            && !(then.margin() <= failing.getValue().margin() + 1e-6)) {
                        smaller.add(rule + " of " + example.id() + " with " + other + " times");
                    }
                }
            }
        }
        assertThat(asked).hasSizeGreaterThan(EVERY ? 120 : 20);
        assertThat(lost).as("rules that pass").isSubsetOf(OF_THE_SET_FITTED.keySet());
        assertThat(smaller).as("failures that shrink").isEmpty();
        if (EVERY) {
            assertThat(asked).containsAll(NO_LESS);
            assertThat(lost).isEqualTo(OF_THE_SET_FITTED.keySet());
        }
    }

    private static final Set<String> ALWAYS = Set.of(
            "dump/branch-protection",
            "dump/own-rating",
            "dump/switch-rating",
            "inverter/input-window",
            "penstock/thrust",
            "plant/maintenance-plan",
            "plant/restart");

    private static final boolean EVERY = Boolean.getBoolean("leat.every-example");

    /** Everything with {@code -Dleat.every-example=true}; else one share for the examples of some rules, by their names. */
    private static List<Double> others(Example example) {
        int hash = Math.floorMod(example.id().hashCode(), 5 * OTHER.size());
        if (EVERY) {
            return OTHER;
        }
        return ALWAYS.contains(example.rule())
                ? List.of(0.6)
                : hash < OTHER.size() ? List.of(OTHER.get(hash)) : List.of();
    }

    /** The gravest level of a rule's failures, and the margin that is farthest beyond its limit. */
    private record Failing(Level level, double margin) {

        static Failing of(Outcome outcome) {
            Comparison comparison = outcome.comparison();
            return new Failing(outcome.level(), comparison == null ? 0 : comparison.margin());
        }

        Failing and(Failing other) {
            return new Failing(level.compareTo(other.level) > 0 ? level : other.level, Math.min(margin, other.margin));
        }
    }

    private static Map<String, Failing> failing(Design design) {
        Map<String, Failing> failing = new TreeMap<>();
        for (Outcome outcome : PackExamples.CHECKER.outcomes(design)) {
            if (outcome.kind() == Kind.FAIL) {
                failing.merge(outcome.rule(), Failing.of(outcome), Failing::and);
            }
        }
        return failing;
    }

    /** What is not stated of sets is each bore on hand in every position. */
    private static Design takenOut(Design design, double other) {
        NozzleSet nozzles = design.nozzles();
        List<Quantity<Length>> open = new ArrayList<>();
        for (Quantity<Length> bore : nozzles.open()) {
            open.add(Si.quantity(Math.rint(other * 1e4 * Si.of(bore)) / 10, "mm", Length.class));
        }
        NozzleSetBuilder moved = NozzleSetBuilder.builder(nozzles).open(open);
        if (nozzles.sets().isEmpty() && alike(nozzles.open())) {
            List<Quantity<Length>> drawer = new ArrayList<>(nozzles.available());
            drawer.add(nozzles.open().get(0));
            moved.available(drawer);
        } else {
            List<NozzleChoice> sets = new ArrayList<>(nozzles.sets());
            if (sets.isEmpty()) {
                for (Quantity<Length> bore : nozzles.available()) {
                    sets.add(new NozzleChoice(Collections.nCopies(nozzles.open().size(), bore), null));
                }
            }
            sets.add(new NozzleChoice(nozzles.open(), null));
            moved.sets(sets);
        }
        return DesignBuilder.builder(design).nozzles(moved.build()).build();
    }

    private static boolean alike(List<Quantity<Length>> open) {
        return open.stream().mapToDouble(Si::of).distinct().count() == 1;
    }

    /** Cold or hot, a winding is as warm as its own set makes it. */
    @Test
    void what_a_set_does_with_the_battery_full_and_the_regulator_short_is_the_same_whether_it_is_fitted_or_not()
            throws IOException {
        Map<String, Design> plants = new TreeMap<>();
        for (String id : List.of("dump/own-rating:fails", "regulator/failed-short:fails")) {
            Example example = PackExamples.ofRules().stream()
                    .filter(each -> each.id().equals(id))
                    .findFirst()
                    .orElseThrow();
            Design design = Objects.requireNonNull(kit.read(example).design());
            plants.put(
                    id,
                    DesignBuilder.builder(design)
                            .alternator(AlternatorBuilder.builder(design.alternator())
                                    .winding(WindingBuilder.builder(
                                                    design.alternator().winding())
                                            .temperature(null)
                                            .build())
                                    .thermalResistance(Si.quantity(0.8, "K/W", Quantities.ThermalResistance.class))
                                    .build())
                            .build());
        }
        for (Map.Entry<String, Design> plant : plants.entrySet()) {
            Cases fitted = Plant.of(plant.getValue()).solve();
            Cases inTheDrawer = Plant.of(takenOut(plant.getValue(), 1.5)).solve();
            assertThat(inTheDrawer.running().get(0).operatingPoint().windingTemperature())
                    .isGreaterThan(10 + fitted.running().get(0).operatingPoint().windingTemperature());
            String built = fitted.running().get(0).nozzles().name();
            int at = IntStream.range(0, inTheDrawer.running().size())
                    .filter(n -> inTheDrawer.running().get(n).nozzles().name().equals(built))
                    .findFirst()
                    .orElseThrow();
            BatteryFull one = fitted.batteryFull().get(0);
            BatteryFull other = inTheDrawer.batteryFull().get(at);
            assertThat(other.elementPower()).as(plant.getKey()).isEqualTo(one.elementPower());
            assertThat(other.runnerSpeed()).isEqualTo(one.runnerSpeed());
            assertThat(other.dumpVoltage()).isEqualTo(one.dumpVoltage());
            if (!fitted.regulatorFailedShort().isEmpty()) {
                RegulatorFailedShort shorted = fitted.regulatorFailedShort().get(0);
                assertThat(inTheDrawer.regulatorFailedShort().get(at).phaseCurrent())
                        .isEqualTo(shorted.phaseCurrent());
            }
        }
    }
}
