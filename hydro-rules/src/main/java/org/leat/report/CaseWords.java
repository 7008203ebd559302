package org.leat.report;

import org.apiguardian.api.API;
import org.leat.design.RegulatorKind;
import org.leat.plant.cases.BatteryFull;
import org.leat.plant.cases.BrokenBridge;
import org.leat.plant.cases.BusSituation;
import org.leat.plant.cases.BusSituation.BatteryRemoved;
import org.leat.plant.cases.BusSituation.BusHolder;
import org.leat.plant.cases.BusSituation.DumpLoadLost;
import org.leat.plant.cases.BusSituation.ManagementOpens;
import org.leat.plant.cases.BusSituation.RegulatorFailedShort;
import org.leat.plant.cases.Day;
import org.leat.plant.cases.LoadLost;
import org.leat.plant.cases.Running;
import org.leat.plant.solved.EnergyAccount;

/** What people call the cases of a plant and what belongs to them. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class CaseWords {

    private CaseWords() {}

    /** {@return a situation of the bus, its nozzle set not said} */
    public static String of(BusSituation situation) {
        if (situation instanceof Running) {
            return "running";
        }
        if (situation instanceof BatteryFull) {
            return "battery full";
        }
        if (situation instanceof BatteryRemoved) {
            return "battery removed";
        }
        if (situation instanceof ManagementOpens) {
            return "battery management opens";
        }
        if (situation instanceof DumpLoadLost) {
            return "dump load lost, battery full";
        }
        if (situation instanceof LoadLost) {
            return "load lost";
        }
        if (situation instanceof RegulatorFailedShort) {
            return "regulator failed short";
        }
        if (situation instanceof BrokenBridge broken) {
            return switch (broken.fault()) {
                case PHASE_OPEN -> "one phase open";
                case DIODE_OPEN -> "one diode open";
                case DIODE_SHORT -> "one diode shorted";
            };
        }
        return ((Day) situation).season() == Day.Season.COLDEST ? "coldest day" : "hottest day";
    }

    /** {@return what keeps the bus from rising} */
    public static String of(BusHolder holder) {
        return switch (holder) {
            case BATTERY -> "battery";
            case REGULATOR -> "regulator";
            case DUMP_LOAD -> "dump load";
            case NOTHING -> "nothing";
        };
    }

    /** {@return a kind of regulator, and what it does when the battery is full} */
    public static String of(RegulatorKind kind) {
        return switch (kind) {
            case NONE -> "none";
            case SERIES -> "in series, lets go of the turbine when the battery is full";
            case SHUNT -> "shunt, diverts into a dump load when the battery is full";
            case TRACKING -> "tracking, chooses the voltage of most power, lets go when the battery is full";
        };
    }

    /** {@return where power is counted, behind a regulator of that kind} */
    public static String of(EnergyAccount.Stage stage, RegulatorKind regulator) {
        return switch (stage) {
            case WATER -> "water, gross head";
            case NOZZLE -> "nozzle, net head";
            case JET -> "jet";
            case SHAFT -> "runner shaft";
            case AIR_GAP -> "air gap";
            case TERMINALS -> "alternator terminals";
            case DIRECT_CURRENT -> "behind the bridge";
            case REGULATOR -> regulator == RegulatorKind.NONE ? "cable's end" : "regulator input";
            case BATTERY -> "battery poles";
            case STORED -> "stored in the battery";
        };
    }
}
