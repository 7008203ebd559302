package org.example.kettlehill;

import static org.leat.check.Level.NOTE;
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
import org.leat.quantity.Si;

/** A smaller nozzle in the drawer for a dry summer. */
final class SpareNozzle {

    private static final String PATH = "/nozzles/available";

    static final Rule RULE = Rule.of("kettlehill/spare-nozzle", NOTE, "smallest nozzle on hand against the smallest open")
            .why("In a dry summer a pipe that does not stay full gives next to nothing; a smaller nozzle does.")
            .formula("d_hand / d_open")
            .judged("as built")
            .source("Kettle Hill works manual, chapter 4")
            .limit("share", RATIO, 0.8, "", "Kettle Hill works manual, chapter 4")
            .passes("there", "The smallest nozzle on hand is {value} of the smallest open.")
            .fails("none", "The smallest nozzle on hand is {value} of the smallest open; for a dry summer have {limit}.")
            .judge(SpareNozzle::judge)
            .wayOut("drill", "A nozzle of {bore} in the drawer.", SpareNozzle::drilled)
            .build();

    private SpareNozzle() {}

    private static Outcome judge(Judgement j) {
        List<Quantity<Length>> onHand = j.design().nozzles().available();
        j.at("/nozzles").given(PATH, onHand.isEmpty() ? null : onHand);
        return j.at(PATH)
                .atMost(least(onHand) / least(j.design().nozzles().open()), j.limit("share"));
    }

    private static Stream<Change> drilled(Judgement j, Outcome.Fail failure) {
        double millimetres = Math.floor(1000 * j.limit("share").value() * least(j.design().nozzles().open()));
        List<Quantity<Length>> bores = new ArrayList<>(j.design().nozzles().available());
        bores.add(Si.quantity(millimetres, "mm", Length.class));
        return millimetres < 1
                ? Stream.empty()
                : Stream.of(Change.of(PATH, bores).with("bore", millimetres / 1000, LENGTH));
    }

    private static double least(List<Quantity<Length>> bores) {
        return bores.stream().mapToDouble(Si::of).min().orElseThrow();
    }
}
