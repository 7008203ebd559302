package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.design.NozzleSet;
import org.leat.pack.Search.Candidate;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Steps between neighbours among the nozzles on hand. */
final class NozzleStepSize implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("nozzle/step-size", Level.NOTE)
            .title("steps between the nozzles on hand")
            .why("Between two nozzles far apart lies a season in which one starves and the other wastes.")
            .formula("area of a nozzle / area of the next smaller one")
            .judged("all bores on hand, by size")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("step", QuantityKind.RATIO, 1.6, "", RuleCard.COMMON_PRACTICE)
            .message("even", "small", "large")
            .message("gap", "small", "large")
            .message("between", "bore")
            .build();

    private static final String PATH = "/nozzles/available";

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        double[] bores = bores(j);
        if (bores.length < 2) {
            return List.of(j.at("/nozzles").notGiven(PATH));
        }
        int widest = 1;
        for (int i = 2; i < bores.length; i++) {
            if (bores[i] / bores[i - 1] > bores[widest] / bores[widest - 1]) {
                widest = i;
            }
        }
        double step = Math.pow(bores[widest] / bores[widest - 1], 2);
        return List.of(j.at(PATH)
                .compare(
                        Comparison.atMost(step, j.limit("step")),
                        "even",
                        "gap",
                        Arg.of("small", bores[widest - 1], QuantityKind.LENGTH),
                        Arg.of("large", bores[widest], QuantityKind.LENGTH)));
    }

    private static double[] bores(Judgement j) {
        NozzleSet nozzles = j.design().nozzles();
        return Stream.concat(nozzles.available().stream(), nozzles.open().stream())
                .mapToDouble(Si::of)
                .map(bore -> Math.rint(bore * 1e5) / 1e5)
                .sorted()
                .distinct()
                .toArray();
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        double[] bores = bores(j);
        List<Quantity<Length>> more = new ArrayList<>(j.design().nozzles().available());
        double first = 0;
        for (int i = 1; i < bores.length; i++) {
            double step = Math.pow(bores[i] / bores[i - 1], 2);
            int pieces =
                    (int) Math.ceil(Math.log(step) / Math.log(j.limit("step").value()) - 1e-9);
            for (int k = 1; k < pieces; k++) {
                double bore =
                        Math.rint(bores[i - 1] * Math.pow(bores[i] / bores[i - 1], (double) k / pieces) * 1e4) / 10;
                more.add(Si.quantity(bore, "mm", Length.class));
                first = first == 0 ? bore / 1000 : first;
            }
        }
        Candidate between = Candidate.of("between", new Edit(PATH, more), Arg.of("bore", first, QuantityKind.LENGTH));
        return Search.first(this, j, failure, Stream.of(between)).stream().toList();
    }
}
