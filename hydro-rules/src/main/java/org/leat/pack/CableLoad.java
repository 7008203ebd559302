package org.leat.pack;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.check.Judgement;
import org.leat.design.Cable;
import org.leat.design.DumpLoad;
import org.leat.design.Inverter;
import org.leat.design.Load;
import org.leat.design.LoadSupply;
import org.leat.design.Place;
import org.leat.electrics.DumpElement;
import org.leat.plant.cases.BatteryFull;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.DumpLoadNumbers;
import org.leat.quantity.Si;

/**
 * The greatest lasting current of a run.
 *
 * @param current of one core (parallel cores together), A; rms where it alternates
 * @param threePhase whether it is the run from the alternator
 * @param during the case that makes it
 */
record CableLoad(double current, boolean threePhase, String during) {

    /** {@return the load of a run; null where the design does not say what flows there} The plant is solved. */
    static @Nullable CableLoad of(Judgement j, Cable cable) {
        if (joins(cable, Place.ALTERNATOR)) {
            Running most =
                    Worst.most(j.cases().running(), r -> r.operatingPoint().phaseCurrent());
            return new CableLoad(most.operatingPoint().phaseCurrent(), true, most.id());
        }
        if (joins(cable, Place.DUMP_LOAD)) {
            return dumped(j);
        }
        if (joins(cable, Place.INVERTER)) {
            return inverted(j);
        }
        if (joins(cable, Place.LOADS)) {
            return loads(j);
        }
        boolean output = joins(cable, Place.REGULATOR) && joins(cable, Place.BATTERY);
        Running most = Worst.most(j.cases().running(), r -> current(r, output));
        return new CableLoad(current(most, output), false, most.id());
    }

    /** {@return what the design does not say about the load of a run at the inverter or the dump load; null elsewhere} */
    static @Nullable String missing(Judgement j, Cable cable) {
        if (joins(cable, Place.INVERTER)) {
            Inverter inverter = j.design().inverter();
            return inverter == null || inverter.continuousPower() == null
                    ? "/inverter/continuous-power"
                    : "/inverter/efficiency";
        }
        return joins(cable, Place.DUMP_LOAD) ? "/dump-load" : null;
    }

    private static double current(Running running, boolean output) {
        return output
                ? running.operatingPoint().batteryCurrent()
                : running.operatingPoint().directCurrent();
    }

    private static @Nullable CableLoad dumped(Judgement j) {
        DumpLoad dump = j.design().dumpLoad();
        if (dump == null) {
            return null;
        }
        DumpLoadNumbers element = j.plant().numbers().dumpLoad();
        BatteryFull most = Worst.most(j.cases().batteryFull(), BatteryFull::dumpVoltage);
        return element == null
                ? null
                : new CableLoad(DumpElement.current(element.resistanceCold(), most.dumpVoltage()), false, most.id());
    }

    private static @Nullable CableLoad inverted(Judgement j) {
        Inverter inverter = j.design().inverter();
        if (inverter == null || inverter.continuousPower() == null || inverter.efficiency() == null) {
            return null;
        }
        double volts =
                Si.of(inverter.cutOffVoltage(), j.plant().numbers().battery().restingVoltage());
        double current = Si.of(inverter.continuousPower()) / (Si.of(inverter.efficiency()) * volts);
        return new CableLoad(current, false, "inverter at its continuous power, battery nearly empty");
    }

    private static @Nullable CableLoad loads(Judgement j) {
        List<Load> fed = j.design().loads().stream()
                .filter(load -> load.supply() == LoadSupply.BUS)
                .toList();
        if (fed.isEmpty()) {
            return null;
        }
        double power = 0;
        for (Load load : fed) {
            power += Si.of(load.power()) * (load.count() == null ? 1 : load.count());
        }
        return new CableLoad(
                power / j.plant().numbers().battery().restingVoltage(), false, "all direct-current loads at once");
    }

    private static boolean joins(Cable cable, Place place) {
        return cable.from() == place || cable.to() == place;
    }
}
