package org.leat.plant.duties;

import java.util.ArrayList;
import java.util.List;
import org.leat.electrics.VehicleChargingPlan;
import org.leat.plant.cases.Running;
import org.leat.plant.loads.DailyUse;
import org.leat.plant.loads.LoadNumbers;

/**
 * Vehicle and tool packs charged from what the other loads leave.
 *
 * @param together power of all chargers at once, at the battery's poles, W
 * @param spare mean power left for them, W
 * @param inTurn packs that can be charged from it, some after others
 * @param time until the last of these is full, s
 * @param tooStrong names of the packs whose charger alone draws more
 */
public record PackCharging(double together, double spare, int inTurn, double time, List<String> tooStrong) {

    private static final double DAY = 86_400;

    public PackCharging {
        tooStrong = List.copyOf(tooStrong);
    }

    /** {@return how the packs of a day are charged while the plant runs at one flow} */
    public static PackCharging of(Running running, DailyUse use) {
        List<VehicleChargingPlan.Pack> packs = packs(use);
        double charging = packs.stream().mapToDouble(p -> p.power() * p.time()).sum();
        double others = (use.demand() - charging) / DAY;
        double spare = Math.max(0, running.operatingPoint().batteryPower() - others);
        VehicleChargingPlan plan = VehicleChargingPlan.of(packs, spare);
        return new PackCharging(
                packs.stream().mapToDouble(VehicleChargingPlan.Pack::power).sum(),
                spare,
                plan.slots().size(),
                plan.length(),
                plan.tooStrong());
    }

    private static List<VehicleChargingPlan.Pack> packs(DailyUse use) {
        List<VehicleChargingPlan.Pack> packs = new ArrayList<>();
        for (LoadNumbers load : use.packs()) {
            for (int i = 1; i <= load.count(); i++) {
                String name = load.count() == 1 ? load.name() : load.name() + " " + i;
                packs.add(new VehicleChargingPlan.Pack(name, use.atPoles(load), load.time()));
            }
        }
        return packs;
    }
}
