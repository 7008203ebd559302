package org.leat.pack.battery;

import static org.leat.check.Level.WARNING;
import static org.leat.quantity.QuantityKind.CURRENT;
import static org.leat.quantity.QuantityKind.LENGTH;

import javax.measure.quantity.Length;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Ventilation;
import org.leat.pack.kit.ChangesForText;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.LeadAcid;
import org.leat.plant.duties.HydrogenAir;

/** Distance of what glows or sparks from the vents of lead cells. */
final class SparkDistance {

    /** Of a block of 12 V with one vent; cells of their own have less. */
    private static final int BLOCK = 6;

    static final Rule RULE = Rule.of(
                    "battery/spark-distance", WARNING, "distance of what glows or sparks from the vents of lead cells")
            .warningsHurt()
            .why(
                    "Air in the room thins the hydrogen only some way off. Right at the vent it always explodes: on the spark of a"
                            + " relay, a fuse, a brush or a switch.")
            .formula(
                    "d ≥ 28.8 mm · ∛(N I), N cells behind one vent, I gas current of one string in mA at the highest charge stage"
                            + " that is set")
            .judged(
                    "absorption, or equalising where it is set; with nothing that limits the voltage, all the turbine gives")
            .source(
                    "IEC 62485-2 clause 7.6 (from memory); currents of the stages from its table 1 and EN 50272-3 (read in"
                            + " reproductions)")
            .either(
                    "far-enough",
                    "too-near",
                    "What glows or sparks is {value} from the vents; {limit} are needed (gas current {gas}).")
            .fails(
                    "equalising",
                    "What glows or sparks is {value} from the vents; while equalising {limit} are needed (gas current {gas}).")
            .notApplicable("no-hydrogen", "Not judged: such cells give off no hydrogen in normal use.")
            .judge(SparkDistance::judge)
            .leastWayOut(
                    "farther",
                    "Relays, switches, fuses and brushes {rating} from the vents, or on the other side of a wall.",
                    FieldChanges.raised("m", Length.class, 0.5, 0.6, 0.8, 1, 1.25, 1.5, 2, 2.5, 3))
            .wayOut(
                    "no-equalising",
                    "Equalising switched off.",
                    ChangesForText.only("equalising", Change.of("/regulator/equalising-voltage", null)))
            .build();

    private SparkDistance() {}

    private static Outcome judge(Judgement j) {
        Spot spot = j.at("/battery/ventilation/spark-distance");
        if (!LeadAcid.is(j)) {
            return spot.says("no-hydrogen");
        }
        Ventilation air = j.design().battery().ventilation();
        double distance = spot.si(air == null ? null : air.sparkDistance());
        HydrogenAir gas = HydrogenAir.of(j.solved());
        int cells = air == null || air.cellsBehindOneVent() == null
                ? Math.min(BLOCK, j.numbers().battery().cellsInSeries())
                : air.cellsBehindOneVent();
        Integer strings = j.design().battery().strings();
        double needed = gas.sparkDistance(cells, strings == null ? 1 : strings);
        return spot.saying("far-enough", gas.equalising() ? "equalising" : "too-near")
                .with("gas", gas.gasCurrent(), CURRENT)
                .atLeast(distance, needed, LENGTH);
    }
}
