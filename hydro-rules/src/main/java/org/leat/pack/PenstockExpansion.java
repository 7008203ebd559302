package org.leat.pack;

import java.util.List;
import javax.measure.quantity.Length;
import org.leat.catalogue.MaterialData;
import org.leat.catalogue.MaterialProperty;
import org.leat.catalogue.PipeMaterial;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.design.Penstock;
import org.leat.design.Sunlight;
import org.leat.hydraulics.ThermalLengthChange;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Change of length with temperature against what the run can take. */
final class PenstockExpansion implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("penstock/expansion", Level.WARNING)
            .title("change of length with temperature")
            .why("A plastic pipe in the open grows by a hand's breadth for each ten metres from frost to full sun. Held"
                    + " straight it pulls couplers apart in the cold and buckles out in the heat.")
            .formula("ΔL = α L (hottest wall − coldest air)")
            .judged("empty on the coldest night to standing on the hottest day; a buried pipe is held by the ground")
            .source(
                    "α of polyethylene, PVC-U and steel: PPI Handbook of PE Pipe, ch. 3; Uni-Bell; EN 1993-1-1 (from memory)")
            .message("buried")
            .message("taken", "longest", "shortest")
            .message("not-taken", "longest", "shortest")
            .message("allow", "length")
            .message("bury")
            .build();

    private static final String PATH = "/penstock/expansion-allowance";

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Penstock penstock = j.design().penstock();
        if (penstock.sunlight() == Sunlight.BURIED) {
            return List.of(j.at("/penstock").pass("buried"));
        }
        if (penstock.expansionAllowance() == null) {
            return List.of(j.at("/penstock").notGiven(PATH));
        }
        double coldest = j.plant().numbers().site().lowestAirTemperature();
        double hottest = j.plant().numbers().penstock().sections().get(0).highestWallTemperature();
        return List.of(j.at(PATH)
                .compare(
                        Comparison.atMost(
                                change(j, hottest - coldest),
                                Si.of(penstock.expansionAllowance()),
                                QuantityKind.LENGTH),
                        "taken",
                        "not-taken",
                        Arg.of("longest", hottest, QuantityKind.TEMPERATURE),
                        Arg.of("shortest", coldest, QuantityKind.TEMPERATURE)));
    }

    /** A pipe of one's own is taken as polyethylene, which grows most; hose takes up its own. */
    private static double change(Judgement j, double difference) {
        double sum = 0;
        for (SectionNumbers section : j.plant().numbers().penstock().sections()) {
            PipeMaterial material = section.material() == null ? PipeMaterial.PE100 : section.material();
            if (material != PipeMaterial.HOSE) {
                double expansion = MaterialData.usual(material, MaterialProperty.THERMAL_EXPANSION);
                sum += Math.abs(ThermalLengthChange.free(expansion, section.length(), difference));
            }
        }
        return sum;
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        Comparison comparison = failure.comparison();
        if (comparison == null) {
            return List.of();
        }
        double metres = Math.ceil(comparison.value() * 20 - 1e-9) / 20;
        Edit allow = new Edit(PATH, Si.quantity(metres, "m", Length.class));
        return List.of(
                j.wayOut("bury", List.of(new Edit("/penstock/sunlight", Sunlight.BURIED))),
                j.wayOut("allow", List.of(allow), Arg.of("length", metres, QuantityKind.LENGTH)));
    }
}
