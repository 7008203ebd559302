package org.leat.plant.cases;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.leat.design.Design;
import org.leat.design.Inverter;
import org.leat.design.Load;
import org.leat.design.LoadSupply;
import org.leat.design.Place;
import org.leat.electrics.DumpElement;
import org.leat.plant.numbers.CableNumbers;
import org.leat.plant.numbers.DumpLoadNumbers;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.quantity.Si;

/** What each run of a solved plant carries for long. */
final class CableDutySolver {

    private final Design design;
    private final PlantNumbers numbers;
    private final List<Running> running;
    private final List<BatteryFull> full;

    CableDutySolver(Design design, PlantNumbers numbers, List<Running> running, List<BatteryFull> full) {
        this.design = design;
        this.numbers = numbers;
        this.running = running;
        this.full = full;
    }

    List<CableDuty> all() {
        return running.isEmpty()
                ? List.of()
                : numbers.cables().stream().map(this::duty).toList();
    }

    private CableDuty duty(CableNumbers cable) {
        if (cable.joins(Place.ALTERNATOR)) {
            return running(cable, r -> r.operatingPoint().phaseCurrent(), true);
        }
        if (cable.joins(Place.DUMP_LOAD)) {
            return dumped(cable);
        }
        if (cable.joins(Place.LOADS)) {
            return loads(cable);
        }
        if (cable.joins(Place.INVERTER)) {
            return inverted(cable);
        }
        return cable.joins(Place.REGULATOR, Place.BATTERY)
                ? running(cable, r -> r.operatingPoint().batteryCurrent(), false)
                : running(cable, r -> r.operatingPoint().directCurrent(), false);
    }

    private CableDuty running(CableNumbers cable, ToDoubleFunction<Running> current, boolean threePhase) {
        Running most = first(running, current);
        return new CableDuty.Carries(cable, current.applyAsDouble(most), threePhase, most.id());
    }

    private CableDuty dumped(CableNumbers cable) {
        DumpLoadNumbers element = numbers.dumpLoad();
        if (element == null) {
            return new CableDuty.NotStated(cable, "/dump-load");
        }
        BatteryFull most = first(full, BatteryFull::dumpVoltage);
        double current = DumpElement.current(element.resistanceCold(), most.dumpVoltage());
        return new CableDuty.Carries(cable, current, false, most.id());
    }

    private CableDuty inverted(CableNumbers cable) {
        Inverter inverter = design.inverter();
        if (inverter == null || inverter.continuousPower() == null) {
            return new CableDuty.NotStated(cable, "/inverter/continuous-power");
        }
        if (inverter.efficiency() == null) {
            return new CableDuty.NotStated(cable, "/inverter/efficiency");
        }
        double volts = Si.of(inverter.cutOffVoltage(), numbers.battery().restingVoltage());
        double current = Si.of(inverter.continuousPower()) / (Si.of(inverter.efficiency()) * volts);
        // loads that are clamped to the inverter's input are fed by the same run
        boolean both = numbers.cables().stream().anyMatch(run -> run.joins(Place.INVERTER, Place.LOADS));
        return both && loads(cable) instanceof CableDuty.Carries fed
                ? new CableDuty.Carries(
                        cable,
                        current + fed.current(),
                        false,
                        "inverter at its continuous power and all direct-current loads at once, battery nearly empty")
                : new CableDuty.Carries(
                        cable, current, false, "inverter at its continuous power, battery nearly empty");
    }

    private CableDuty loads(CableNumbers cable) {
        List<Load> fed = design.loads().stream()
                .filter(load -> load.supply() == LoadSupply.BUS)
                .toList();
        if (fed.isEmpty()) {
            return new CableDuty.NotLoaded(cable);
        }
        double power = 0;
        for (Load load : fed) {
            power += Si.of(load.power()) * (load.count() == null ? 1 : load.count());
        }
        double current = power / numbers.battery().restingVoltage();
        return new CableDuty.Carries(cable, current, false, "all direct-current loads at once");
    }

    /** The first of those with the greatest value. */
    private static <S> S first(List<S> situations, ToDoubleFunction<S> value) {
        return situations.stream()
                .max(Comparator.comparingDouble(value))
                .flatMap(most -> situations.stream()
                        .filter(s -> value.applyAsDouble(s) >= value.applyAsDouble(most))
                        .findFirst())
                .orElseThrow();
    }
}
