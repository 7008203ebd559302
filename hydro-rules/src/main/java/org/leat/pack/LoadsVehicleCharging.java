package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.Load;
import org.leat.design.LoadSupply;
import org.leat.electrics.EnergyBalance;
import org.leat.electrics.VehicleChargingPlan;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Vehicle and tool packs charged at once. */
final class LoadsVehicleCharging implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("loads/vehicle-charging", Level.WARNING)
            .title("vehicle and tool packs charged at once")
            .why(
                    "Three chargers plugged in of an evening draw more than a small stream gives; what is missing comes out of the"
                            + " house battery, through its losses.")
            .formula(
                    "power of all chargers at the battery's poles ≤ mean generation less the mean of all other use; else one"
                            + " after the other")
            .judged("all packs at once, at the flow of the year that gives least")
            .source("energy balance; list scheduling: R. L. Graham, SIAM J. Appl. Math. 17 (1969) 416")
            .message("at-once", "spare")
            .message("too-much", "spare")
            .message("no-packs")
            .message("in-turn", "time", "packs")
            .message("too-strong", "pack")
            .build();

    private static final double DAY = 86_400;

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        DailyUse daily = DailyUse.of(j.design());
        Spot spot = j.at("/loads");
        if (daily.missing() != null) {
            return List.of(spot.notGiven(daily.missing()));
        }
        List<VehicleChargingPlan.Pack> packs = packs(j, daily.use());
        if (packs.isEmpty()) {
            return List.of(spot.notApplicable("no-packs"));
        }
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        double spare = spare(j, daily.use(), packs);
        double together =
                packs.stream().mapToDouble(VehicleChargingPlan.Pack::power).sum();
        return List.of(spot.during(Lean.of(j).id())
                .compare(
                        Comparison.atMost(together, spare, QuantityKind.POWER),
                        "at-once",
                        "too-much",
                        Arg.of("spare", spare, QuantityKind.POWER)));
    }

    /** Every pack with its charger's power at the battery's poles. */
    private static List<VehicleChargingPlan.Pack> packs(Judgement j, EnergyBalance.Use use) {
        List<VehicleChargingPlan.Pack> packs = new ArrayList<>();
        for (Load load : j.design().loads()) {
            double hours = Objects.requireNonNull(load.hoursPerDay());
            if (load.pack() != null && hours > 0) {
                double efficiency = load.supply() == LoadSupply.BUS ? 1 : use.inverterEfficiency();
                int count = load.count() == null ? 1 : load.count();
                for (int i = 1; i <= count; i++) {
                    packs.add(new VehicleChargingPlan.Pack(
                            count == 1 ? load.name() : load.name() + " " + i,
                            Si.of(load.power()) / efficiency,
                            hours * 3600));
                }
            }
        }
        return packs;
    }

    private static double spare(Judgement j, EnergyBalance.Use use, List<VehicleChargingPlan.Pack> packs) {
        double charging = packs.stream().mapToDouble(p -> p.power() * p.time()).sum();
        double others = (use.demand() - charging) / DAY;
        return Math.max(0, Lean.of(j).operatingPoint().batteryPower() - others);
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        EnergyBalance.Use use = DailyUse.of(j.design()).use();
        List<VehicleChargingPlan.Pack> packs = packs(j, use);
        VehicleChargingPlan plan = VehicleChargingPlan.of(packs, spare(j, use, packs));
        return List.of(
                plan.tooStrong().isEmpty()
                        ? j.advice(
                                "in-turn",
                                Arg.of("time", plan.length(), QuantityKind.TIME),
                                Arg.of("packs", plan.slots().size()))
                        : j.advice("too-strong", Arg.of("pack", plan.tooStrong().get(0))));
    }
}
