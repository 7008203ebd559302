package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Power;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.ChargeRegulator;
import org.leat.design.DumpLoad;
import org.leat.design.RegulatorKind;
import org.leat.pack.Search.Candidate;
import org.leat.plant.cases.BatteryFull;
import org.leat.plant.numbers.DumpLoadNumbers;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Dump load against everything the turbine gives. */
final class DumpAbsorbsAll implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("dump/absorbs-all", Level.ERROR)
            .title("dump load against everything the turbine gives")
            .why(
                    "What the dump load does not take goes into a battery that is full. A hot element takes less than its label,"
                            + " and wet seasons bring more water than was measured.")
            .formula(
                    "current of the hot element at the voltage that switches it on, else absorption voltage / current of the turbine there ≥ limit")
            .judged("battery full, loads off, the nozzle set that gives most")
            .source("P = V²/R: Ohm's law")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("least", QuantityKind.RATIO, 110, "%", RuleCard.COMMON_PRACTICE)
            .limit("good", QuantityKind.RATIO, 125, "%", RuleCard.COMMON_PRACTICE)
            .message("takes-all", "hot", "cold", "turbine")
            .message("little-room", "hot", "cold", "turbine")
            .message("too-small", "hot", "cold", "turbine")
            .message("larger", "resistance", "power")
            .message("none")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        ChargeRegulator regulator = j.design().regulator();
        if (j.design().dumpLoad() == null && (regulator == null || regulator.kind() == RegulatorKind.SHUNT)) {
            return List.of(j.at("/dump-load").notGiven("/dump-load"));
        }
        List<Outcome> without = Dumped.without(j, "none");
        if (without != null) {
            return without;
        }
        BatteryFull worst = Worst.least(j.cases().batteryFull(), DumpAbsorbsAll::share);
        BatteryFull.Diverted diverted = worst.diverted();
        Spot spot = j.at("/dump-load/resistance").during(worst.id());
        if (diverted == null) {
            return List.of(spot.notGiven(spot.path()));
        }
        double share = share(worst);
        boolean small = share < j.limit("least").value();
        return List.of(spot.compare(
                small ? Level.ERROR : Level.WARNING,
                Comparison.atLeast(share, j.limit(small ? "least" : "good")),
                "takes-all",
                small ? "too-small" : "little-room",
                Arg.of("hot", diverted.powerHot(), QuantityKind.POWER),
                Arg.of("cold", diverted.powerCold(), QuantityKind.POWER),
                Arg.of("turbine", worst.turbinePower(), QuantityKind.POWER)));
    }

    private static double share(BatteryFull full) {
        BatteryFull.Diverted diverted = full.diverted();
        return diverted == null ? 0 : Math.min(diverted.share(), 1e6);
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        DumpLoadNumbers dump = j.plant().numbers().dumpLoad();
        Comparison comparison = failure.comparison();
        if (dump == null || comparison == null) {
            return List.of();
        }
        double warms = dump.resistanceHot() / dump.resistanceCold();
        double cold = Math.floor(100
                        * dump.resistanceCold()
                        * comparison.value()
                        / (1.02 * j.limit("good").value()))
                / 100;
        double volts = j.plant().numbers().fullVoltage();
        double power = Math.ceil(1.2 * volts * volts / cold / 100) * 100;
        List<Edit> edits = new ArrayList<>();
        edits.add(new Edit("/dump-load/resistance", Si.quantity(cold, "ohm", ElectricResistance.class)));
        if (j.design().dumpLoad() != null && j.design().dumpLoad().resistanceHot() != null) {
            double hot = Math.rint(1000 * cold * warms) / 1000;
            edits.add(new Edit("/dump-load/resistance-hot", Si.quantity(hot, "ohm", ElectricResistance.class)));
        }
        edits.add(new Edit("/dump-load/power-rating", Si.quantity(power, "W", Power.class)));
        edits.addAll(switchFor(j, volts / cold));
        return Search.first(
                        this,
                        j,
                        failure,
                        Stream.of(new Candidate(
                                "larger",
                                edits,
                                List.of(
                                        Arg.of("resistance", cold, QuantityKind.RESISTANCE),
                                        Arg.of("power", power, QuantityKind.POWER)))))
                .map(List::of)
                .orElse(List.of());
    }

    private static List<Edit> switchFor(Judgement j, double current) {
        DumpLoad dump = j.design().dumpLoad();
        return dump == null || dump.switchRating() == null || Si.of(dump.switchRating()) >= 1.25 * current
                ? List.of()
                : List.of(new Edit(
                        "/dump-load/switch-rating",
                        Si.quantity(Math.ceil(1.25 * current / 5) * 5, "A", ElectricCurrent.class)));
    }
}
