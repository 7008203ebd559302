package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.Place;
import org.leat.plant.cases.LoadLost;
import org.leat.plant.numbers.RectifierNumbers;
import org.leat.quantity.QuantityKind;

/** What is left of the turbine's side when a device opens it. */
final class ProtectionTurbineNotFusedOpen implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("protection/turbine-not-fused-open", Level.ERROR)
            .title("what is left of the turbine's side when a device opens it")
            .why("A blown fuse or an open switch takes the load off the turbine: the wheel runs away and what is still"
                    + " joined to it meets the full voltage for as long as water runs.")
            .formula(
                    "settled runaway voltage ≤ least rating of diodes, capacitor and regulator on the turbine's side; or a"
                            + " dump load there that takes everything")
            .judged("load lost through each device between turbine and battery, the nozzle set that runs fastest")
            .source(RuleCard.COMMON_PRACTICE)
            .message("stands-it", "device", "part")
            .message("breaks-it", "device", "part")
            .message("dump-holds", "device")
            .message("nothing-opens")
            .message("needed", "voltage")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().loadLost().isEmpty()) {
            return Open.unsolved(j);
        }
        List<Outcome> outcomes = new ArrayList<>();
        for (Devices.Placed device : Devices.all(j.design())) {
            if (onTheWay(device)) {
                outcomes.add(judge(j, device));
            }
        }
        return outcomes.isEmpty() ? List.of(j.at("/protection").notApplicable("nothing-opens")) : outcomes;
    }

    private static boolean onTheWay(Devices.Placed device) {
        return device.joins(Place.ALTERNATOR)
                || (device.joins(Place.RECTIFIER) && !device.joins(Place.DUMP_LOAD))
                || (device.joins(Place.REGULATOR) && device.joins(Place.BATTERY));
    }

    private static Outcome judge(Judgement j, Devices.Placed device) {
        LoadLost worst = Worst.most(j.cases().loadLost(), LoadLost::directVoltage);
        Spot spot = j.at(device.path()).during(worst.id());
        if (!device.joins(Place.ALTERNATOR) && BridgeSideDump.holds(j)) {
            return spot.pass("dump-holds", device.name());
        }
        Comparison least = null;
        String weakest = "part.winding";
        for (Part part : parts(j, device)) {
            if (part.rating() == null) {
                return spot.notGiven(part.path());
            }
            Comparison comparison = Comparison.atMost(worst.directVoltage(), part.rating(), QuantityKind.VOLTAGE);
            if (least == null || comparison.high() < least.high()) {
                least = comparison;
                weakest = part.word();
            }
        }
        return least == null
                ? spot.pass("stands-it", device.name(), Arg.phrase("part", weakest))
                : spot.compare(least, "stands-it", "breaks-it", device.name(), Arg.phrase("part", weakest));
    }

    /** A part that stays joined to the turbine. */
    private record Part(String word, String path, @Nullable Double rating) {}

    private static List<Part> parts(Judgement j, Devices.Placed device) {
        List<Part> parts = new ArrayList<>();
        if (device.joins(Place.ALTERNATOR)) {
            return parts;
        }
        RectifierNumbers bridge = j.plant().numbers().rectifier();
        parts.add(new Part("part.diodes", "/rectifier/repetitive-peak-reverse-voltage", bridge.reverseVoltageRating()));
        if (bridge.capacitance() > 0) {
            parts.add(new Part("part.capacitor", "/rectifier/capacitor-voltage", bridge.capacitorVoltageRating()));
        }
        if (device.joins(Place.REGULATOR) && device.joins(Place.BATTERY)) {
            parts.add(new Part(
                    "part.regulator",
                    "/regulator/input-voltage-limit",
                    j.plant().numbers().regulator().inputVoltageLimit()));
        }
        return parts;
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        Comparison comparison = failure.comparison();
        return comparison == null
                ? List.of()
                : List.of(j.advice("needed", Arg.of("voltage", comparison.value(), QuantityKind.VOLTAGE)));
    }
}
