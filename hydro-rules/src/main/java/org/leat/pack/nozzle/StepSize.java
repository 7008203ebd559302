package org.leat.pack.nozzle;

import static org.leat.check.Level.NOTE;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.Quantities.mm;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.design.NozzleSet;
import org.leat.quantity.Si;

/** Steps between neighbours among the nozzles on hand. */
final class StepSize {

    private static final String PATH = "/nozzles/available";

    static final Rule RULE = Rule.of("nozzle/step-size", NOTE, "steps between the nozzles on hand")
            .why("Between two nozzles far apart lies a season in which one starves and the other wastes.")
            .formula("area of a nozzle / area of the next smaller one")
            .judged("all bores on hand, by size")
            .source(COMMON_PRACTICE)
            .limit("step", RATIO, 1.6, "", COMMON_PRACTICE)
            .passes("even", "The widest step on hand, {small:mm} to {large:mm}, is {value} times in area.")
            .fails("gap", "Between {small:mm} and {large:mm} the area grows {value} times; good is {limit} times.")
            .judge(StepSize::judge)
            .wayOut("between", "A further nozzle of {bore:mm}, and so on evenly between them.", StepSize::between)
            .build();

    private StepSize() {}

    private static Outcome judge(Judgement j) {
        double[] bores = bores(j);
        if (bores.length < 2) {
            return j.at("/nozzles").notGiven(PATH);
        }
        int widest = 1;
        for (int i = 2; i < bores.length; i++) {
            if (bores[i] / bores[i - 1] > bores[widest] / bores[widest - 1]) {
                widest = i;
            }
        }
        return j.at(PATH)
                .with("small", bores[widest - 1], LENGTH)
                .with("large", bores[widest], LENGTH)
                .atMost(Math.pow(bores[widest] / bores[widest - 1], 2), j.limit("step"));
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

    private static Stream<Change> between(Judgement j, Outcome.Fail failure) {
        double[] bores = bores(j);
        List<Quantity<Length>> more = new ArrayList<>(j.design().nozzles().available());
        int before = more.size();
        for (int i = 1; i < bores.length; i++) {
            double step = Math.pow(bores[i] / bores[i - 1], 2);
            int pieces =
                    (int) Math.ceil(Math.log(step) / Math.log(j.limit("step").value()) - 1e-9);
            for (int k = 1; k < pieces; k++) {
                more.add(mm(Math.rint(bores[i - 1] * Math.pow(bores[i] / bores[i - 1], (double) k / pieces) * 1e4)
                        / 10));
            }
        }
        return more.size() == before
                ? Stream.empty()
                : Stream.of(Change.of(PATH, more).with("bore", Si.of(more.get(before)), LENGTH));
    }
}
