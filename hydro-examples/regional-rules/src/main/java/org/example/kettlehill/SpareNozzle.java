package org.example.kettlehill;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** A smaller nozzle in the drawer for a dry summer. */
final class SpareNozzle implements Rule {

    static final Map<String, String> TEXTS = Map.of(
            "kettlehill/spare-nozzle.there", "The smallest nozzle on hand is {value} of the smallest open.",
            "kettlehill/spare-nozzle.none",
                    "The smallest nozzle on hand is {value} of the smallest open; for a dry summer have {limit}.",
            "kettlehill/spare-nozzle.drill", "A nozzle of {bore} in the drawer.");

    private static final RuleCard CARD = RuleCard.of("kettlehill/spare-nozzle", Level.NOTE)
            .title("smallest nozzle on hand against the smallest open")
            .why("In a dry summer a pipe that does not stay full gives next to nothing; a smaller nozzle does.")
            .formula("d_hand / d_open")
            .judged("as built")
            .source("Kettle Hill works manual, chapter 4")
            .limit("share", QuantityKind.RATIO, 0.8, "", "Kettle Hill works manual, chapter 4")
            .message("there")
            .message("none")
            .message("drill", "bore")
            .build();

    private static final String PATH = "/nozzles/available";

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.design().nozzles().available().isEmpty()) {
            return List.of(j.at("/nozzles").notGiven(PATH));
        }
        double share = least(j.design().nozzles().available())
                / least(j.design().nozzles().open());
        return List.of(j.at(PATH).compare(Comparison.atMost(share, j.limit("share")), "there", "none"));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        double millimetres = Math.floor(1000 * j.limit("share").value() * least(j.design().nozzles().open()));
        if (millimetres < 1) {
            return List.of();
        }
        List<Quantity<Length>> bores = new ArrayList<>(j.design().nozzles().available());
        bores.add(Si.quantity(millimetres, "mm", Length.class));
        return List.of(j.wayOut(
                "drill", List.of(new Edit(PATH, bores)), Arg.of("bore", millimetres / 1000, QuantityKind.LENGTH)));
    }

    private static double least(List<Quantity<Length>> bores) {
        return bores.stream().mapToDouble(Si::of).min().orElseThrow();
    }
}
