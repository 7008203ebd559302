package org.leat.plant.solve;

import java.util.ArrayList;
import java.util.List;
import org.leat.electrics.BridgeOperatingPoint;
import org.leat.law.Gravity;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.solved.EnergyAccount;
import org.leat.plant.solved.EnergyAccount.Entry;
import org.leat.plant.solved.EnergyAccount.Stage;
import org.leat.plant.solved.WaterSide;
import org.leat.plant.solved.WaterSide.Jet;

/** Adds up where the power goes. Each stage is counted by its own law; what the one before has more is its loss. */
final class EnergyAccounting {

    /** Share of the power up to which a difference is that of a root's last digits. */
    private static final double ROUNDING = 1e-9;

    private final List<Entry> entries = new ArrayList<>();

    private EnergyAccounting() {}

    /**
     * {@return the account}
     *
     * @param shaft power at the runner's shaft, W
     * @param point electric side; its currents are nil where nothing flows
     */
    static EnergyAccount of(
            PlantNumbers numbers, WaterSide water, double shaft, BridgeOperatingPoint point, ChargingPath charging) {
        double perHead = numbers.water().density() * Gravity.STANDARD;
        double nozzle = 0;
        for (Jet jet : water.jets()) {
            nozzle += perHead * jet.flow() * jet.head();
        }
        EnergyAccounting account = new EnergyAccounting();
        account.add(Stage.WATER, perHead * water.flow() * water.grossHead());
        account.add(Stage.NOZZLE, nozzle);
        account.add(Stage.JET, water.jetPower());
        account.add(Stage.SHAFT, shaft);
        account.add(Stage.AIR_GAP, point.airGapPower());
        account.add(Stage.TERMINALS, point.airGapPower() - point.copperLoss());
        account.add(Stage.DIRECT_CURRENT, point.directPower());
        account.add(Stage.REGULATOR, charging.regulator());
        account.add(Stage.BATTERY, charging.battery());
        account.add(Stage.STORED, charging.stored());
        return new EnergyAccount(account.entries);
    }

    /** Rounding of roots must not make power out of nothing, nor a loss. */
    private void add(Stage stage, double power) {
        double before =
                entries.isEmpty() ? power : entries.get(entries.size() - 1).power();
        boolean none = before - power < ROUNDING * before;
        double here = none ? before : Math.max(0, power);
        entries.add(new Entry(stage, here, before - here));
    }
}
