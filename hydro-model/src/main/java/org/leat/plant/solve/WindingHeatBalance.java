package org.leat.plant.solve;

import org.jspecify.annotations.Nullable;
import org.leat.design.RegulatorKind;
import org.leat.electrics.BatteryClamp;
import org.leat.electrics.BridgeOperatingPoint;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.solved.EnergyAccount.Stage;
import org.leat.plant.solved.OperatingPoint;
import org.leat.plant.solved.OperatingPoint.Tracking;
import org.leat.plant.solved.WaterSide;

/**
 * Running until the winding's temperature no longer changes: losses warm it, and a warm winding loses more. Where the
 * thermal resistance to air is known the temperature is that of the heat balance, copper, iron and friction together,
 * in air as hot as it gets; else it stays as it is. The working point is solved anew at the settled temperature.
 */
public final class WindingHeatBalance {

    /** Of the heat balance, K. */
    private static final double ENOUGH = 0.05;

    private static final int ROUNDS = 6;
    private static final double SHARE = 1e-6;

    private final PlantNumbers numbers;
    private final ElectricSide cold;
    private final RunnerCharacteristic runner;
    private final WaterSide water;
    private final double gear;
    private final double air;

    public WindingHeatBalance(
            PlantNumbers numbers, ElectricSide machine, RunnerCharacteristic runner, WaterSide water) {
        this.numbers = numbers;
        this.cold = machine;
        this.runner = runner;
        this.water = water;
        this.gear = numbers.alternator().gearRatio();
        this.air = numbers.site().highestAirTemperature();
    }

    public OperatingPoint operatingPoint() {
        OperatingPoint now = at(cold);
        if (!(numbers.alternator().thermalResistance() instanceof Amount.Known resistance)) {
            return now;
        }
        for (int n = 0; n < ROUNDS; n++) {
            double heat = now.energy().lostBefore(Stage.AIR_GAP) + now.energy().lostBefore(Stage.TERMINALS);
            if (Math.abs(air + resistance.value() * heat - now.windingTemperature()) < ENOUGH) {
                break;
            }
            now = at(cold.warmedTo(settled(now, resistance.value())));
        }
        return now;
    }

    private OperatingPoint at(ElectricSide machine) {
        Tracking tracking = null;
        TorqueCurve curve = machine.onBattery();
        if (numbers.regulator().kind() == RegulatorKind.TRACKING) {
            tracking = new MaximumPowerTracker(numbers, machine, runner).track();
            curve = machine.curve(bus(machine, tracking));
        }
        return OperatingPointSolver.of(numbers, water, runner, curve, tracking);
    }

    private BatteryClamp bus(ElectricSide machine, @Nullable Tracking tracking) {
        return tracking == null
                ? machine.onItsBattery()
                : machine.bus(tracking.voltage(), numbers.busResistance().bridgeToRegulator());
    }

    /** Temperature at which the heat leaves, the bus as it is and the speed near what it is, K. */
    private double settled(OperatingPoint now, double resistance) {
        double most = air + resistance * Math.max(1, 2 * now.energy().at(Stage.JET));
        return FalsePosition.between(
                t -> air + resistance * heat(now, t) - t,
                air,
                resistance * heat(now, air),
                most,
                air + resistance * heat(now, most) - most,
                SHARE);
    }

    /** Copper, iron and friction at a temperature of the winding, K; in W. */
    private double heat(OperatingPoint now, double kelvin) {
        ElectricSide machine = cold.warmedTo(kelvin);
        BatteryClamp bus = bus(machine, now.tracking());
        double speed = speedNear(now.speed(), bus, machine);
        BridgeOperatingPoint point = bus.at(speed * gear);
        return point.copperLoss() + machine.noLoadTorque(speed * gear) * speed * gear;
    }

    /** The speed at which the torques are equal on a bus, by the secant, never far from a speed that is known. */
    private double speedNear(double known, BatteryClamp bus, ElectricSide machine) {
        double before = known;
        double atBefore = surplus(before, bus, machine);
        double here = known * 1.001;
        for (int n = 0; n < 8 && here > 0 && Math.abs(here - before) > SHARE * here; n++) {
            double atHere = surplus(here, bus, machine);
            double next = atHere == atBefore ? here : here - atHere * (here - before) / (atHere - atBefore);
            before = here;
            atBefore = atHere;
            here = Math.max(0.5 * known, Math.min(1.5 * known, next));
        }
        return here;
    }

    private double surplus(double speed, BatteryClamp bus, ElectricSide machine) {
        return runner.torque(speed) - gear * (bus.at(speed * gear).torque() + machine.noLoadTorque(speed * gear));
    }
}
