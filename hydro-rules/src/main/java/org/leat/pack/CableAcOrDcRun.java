package org.leat.pack;

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
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.CableNumbers;
import org.leat.plant.solve.EnergyAccount;
import org.leat.plant.solve.OperatingPoint;
import org.leat.quantity.QuantityKind;

/** Which side of the bridge is cheaper to run long. */
final class CableAcOrDcRun implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("cable/ac-or-dc-run", Level.NOTE)
            .title("which side of the bridge is cheaper to run long")
            .why("The long way from the stream to the battery can be walked by three cores before the bridge or by two"
                    + " behind it. For the same copper one of them loses less.")
            .formula(
                    "same copper: three cores of area A lose 3 r I_ph², two of 1.5 A lose 2 (r/1.5) I_dc²; the excess of the"
                            + " run as it is, as a share of the bridge's power ≤ limit")
            .judged("running on the nozzles open as built, the longer of the two runs")
            .source("Ohm's law; IEC 60364-5-52 annex G")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("worth-it", QuantityKind.RATIO, 1, "%", RuleCard.COMMON_PRACTICE)
            .message("as-good", "run", "lost", "other")
            .message("better", "run", "lost", "other")
            .message("bridge-at-battery")
            .message("bridge-at-stream")
            .message("no-current")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        Running running = j.cases().running().get(0);
        CableNumbers longest = longest(j);
        if (longest == null) {
            return List.of(j.at("/cables").notGiven("/cables"));
        }
        OperatingPoint operatingPoint = running.operatingPoint();
        double power = operatingPoint.energy().at(EnergyAccount.Stage.DIRECT_CURRENT);
        Spot spot = j.at("/cables[" + longest.index() + "]").during(running.id());
        if (!(power > 0)) {
            return List.of(spot.notApplicable("no-current"));
        }
        boolean alternating = alternating(longest);
        double core = longest.coreResistance();
        double phase = operatingPoint.phaseCurrent();
        double direct = operatingPoint.directCurrent();
        // the same copper in two cores in place of three, or in three in place of two
        double lost = alternating ? 3 * core * phase * phase : 2 * core * direct * direct;
        double other = alternating ? 2 * core / 1.5 * direct * direct : 3 * core * 1.5 * phase * phase;
        return List.of(spot.compare(
                Comparison.atMost((lost - other) / power, j.limit("worth-it")),
                "as-good",
                "better",
                Runs.arg("run", j.design().cables().get(longest.index())),
                Arg.of("lost", lost, QuantityKind.POWER),
                Arg.of("other", other, QuantityKind.POWER)));
    }

    private static @Nullable CableNumbers longest(Judgement j) {
        CableNumbers longest = null;
        for (CableNumbers cable : j.plant().numbers().cables()) {
            boolean onTheWay = alternating(cable)
                    || cable.joins(Place.RECTIFIER, Place.REGULATOR)
                    || cable.joins(Place.RECTIFIER, Place.BATTERY);
            if (onTheWay && (longest == null || cable.length() > longest.length())) {
                longest = cable;
            }
        }
        return longest;
    }

    private static boolean alternating(CableNumbers cable) {
        return cable.joins(Place.ALTERNATOR, Place.RECTIFIER);
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        CableNumbers longest = longest(j);
        return longest == null
                ? List.of()
                : List.of(j.advice(alternating(longest) ? "bridge-at-stream" : "bridge-at-battery"));
    }
}
