package org.leat.plant;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.leat.arbitraries.Designs;
import org.leat.design.Design;
import org.leat.design.DumpSide;
import org.leat.plant.cases.BatteryFull;
import org.leat.plant.cases.BusSituation;
import org.leat.plant.cases.BusSituation.BusHolder;
import org.leat.plant.cases.Cases;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.Assumption;
import org.leat.plant.numbers.DumpLoadNumbers;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.solve.RunnerCharacteristic;
import org.leat.plant.solved.EnergyAccount;

/** What holds for every plant that could be built. */
class PlantPropertyTest {

    @Provide
    Arbitrary<Design> plants() {
        return Designs.plausible();
    }

    @Property(tries = 400, shrinking = ShrinkingMode.OFF)
    void every_plant_has_an_answer_or_a_stated_reason(@ForAll("plants") Design design) {
        Plant plant = Plant.of(design);
        Cases cases = plant.solve();
        if (!cases.running().isEmpty()) {
            assertThat(cases.running()).hasSameSizeAs(plant.numbers().nozzles().sets());
            assertThat(cases.loadLost()).hasSameSizeAs(cases.running());
            assertThat(cases.batteryFull()).hasSameSizeAs(cases.running());
            assertThat(cases.closing()).isNotEmpty();
        } else {
            assertThat(cases.unsolved()).isNotEmpty();
        }
        assertNoNaN(cases.running());
        assertNoNaN(cases.overTheYear());
        assertNoNaN(cases.shut());
        assertNoNaN(cases.closing());
        assertNoNaN(cases.loadLost());
        assertNoNaN(cases.busSituations().list());
        assertNoNaN(plant.numbers());
    }

    @Property(tries = 300, shrinking = ShrinkingMode.OFF)
    void no_stage_has_more_power_than_the_one_before(@ForAll("plants") Design design) {
        for (Running running : Plant.of(design).solve().running()) {
            List<EnergyAccount.Entry> entries =
                    running.operatingPoint().energy().entries();
            assertThat(entries).hasSize(EnergyAccount.Stage.values().length);
            double sum = 0;
            for (int i = 0; i < entries.size(); i++) {
                assertThat(entries.get(i).stage()).isEqualTo(EnergyAccount.Stage.values()[i]);
                assertThat(entries.get(i).lost()).isNotNegative();
                sum += entries.get(i).lost();
            }
            double first = entries.get(0).power();
            double last = entries.get(entries.size() - 1).power();
            assertThat(last).isBetween(0.0, first);
            assertThat(sum + last).isCloseTo(first, org.assertj.core.api.Assertions.within(1e-9 * first + 1e-9));
        }
    }

    @Property(tries = 40, shrinking = ShrinkingMode.OFF)
    void every_assumption_can_be_moved_to_either_end_of_its_range(@ForAll("plants") Design design) {
        Plant plant = Plant.of(design);
        assertThat(plant.assumptions()).extracting(Assumption::path).doesNotHaveDuplicates();
        for (Assumption assumption : plant.assumptions()) {
            for (double end : new double[] {assumption.low(), assumption.high()}) {
                Plant moved = Plant.of(design, Map.of(assumption.path(), end));
                assertThat(moved.solve().running())
                        .as("%s at %s", assumption.path(), end)
                        .hasSameSizeAs(plant.solve().running());
                assertNoNaN(moved.solve().batteryFull());
            }
        }
    }

    @Property(tries = 60, shrinking = ShrinkingMode.OFF)
    void nothing_runs_faster_or_at_more_volts_than_when_the_load_is_lost(@ForAll("plants") Design design) {
        Cases cases = Plant.of(design).solve();
        for (int i = 0; i < cases.running().size(); i++) {
            double runaway = cases.loadLost().get(i).speed();
            assertThat(cases.running().get(i).operatingPoint().speed()).isLessThanOrEqualTo(runaway * (1 + 1e-9));
            assertThat(cases.batteryFull().get(i).runnerSpeed()).isLessThanOrEqualTo(runaway * (1 + 1e-9));
            double open = cases.loadLost().get(i).directVoltage();
            assertThat(List.of(
                            cases.batteryFull().get(i), cases.batteryRemoved().get(i)))
                    .allSatisfy(s -> assertThat(s.lastingVoltage()).isLessThanOrEqualTo(open * (1 + 1e-9)))
                    .allSatisfy(s -> assertThat(s.runnerSpeed()).isLessThanOrEqualTo(runaway * (1 + 1e-9)));
            assertThat(cases.touchVoltage().direct())
                    .isGreaterThanOrEqualTo(cases.loadLost().get(i).directVoltage());
        }
    }

    @Property(tries = 300, shrinking = ShrinkingMode.OFF)
    void speed_volts_and_watts_of_a_situation_agree(@ForAll("plants") Design design) {
        Cases cases = Plant.of(design).solve();
        PlantNumbers numbers = cases.numbers();
        List<BusSituation> all = new ArrayList<>(cases.onTheBus());
        all.addAll(cases.regulatorFailedShort());
        for (BusSituation situation : all) {
            boolean driven = switch (situation.holder()) {
                case NOTHING, REGULATOR -> true;
                case DUMP_LOAD -> !(situation instanceof BatteryFull full) || full.turbineCurrent() > 0;
                case BATTERY -> false;
            };
            if (driven) {
                double peak = numbers.alternator().coldMagnetFactor()
                        * numbers.alternator()
                                .peakLineVoltage(situation.runnerSpeed()
                                        * numbers.alternator().gearRatio());
                assertThat(situation.lastingVoltage())
                        .as("%s: no more volts than that speed makes", situation)
                        .isLessThanOrEqualTo(peak * (1 + 1e-6));
            }
        }
        for (int i = 0; i < cases.running().size(); i++) {
            RunnerCharacteristic runner = new RunnerCharacteristic(
                    numbers.runner(),
                    numbers.water().density(),
                    cases.running().get(i).water());
            BatteryFull full = cases.batteryFull().get(i);
            double shaft = runner.torque(full.runnerSpeed()) * full.runnerSpeed();
            DumpLoadNumbers dump = numbers.dumpLoad();
            if (numbers.regulator().divides()
                    && full.holder() == BusHolder.DUMP_LOAD
                    && dump != null
                    && dump.side() == DumpSide.BRIDGE) {
                assertThat(full.elementPower())
                        .as("%s: no more watts than the shaft's", full)
                        .isLessThanOrEqualTo(shaft * (1 + 1e-6));
            }
        }
    }

    /** Walks a record and all it holds. */
    private static void assertNoNaN(Object value) {
        if (value instanceof Double d) {
            assertThat(d).isNotNaN();
        } else if (value instanceof List<?> list) {
            list.forEach(PlantPropertyTest::assertNoNaN);
        } else if (value instanceof Record record) {
            for (RecordComponent component : record.getClass().getRecordComponents()) {
                try {
                    component.getAccessor().setAccessible(true);
                    Object inside = component.getAccessor().invoke(record);
                    if (inside instanceof Double d) {
                        assertThat(d)
                                .as("%s of %s", component.getName(), record)
                                .isNotNaN();
                    } else if (inside != null) {
                        assertNoNaN(inside);
                    }
                } catch (ReflectiveOperationException e) {
                    throw new AssertionError(e);
                }
            }
        }
    }
}
