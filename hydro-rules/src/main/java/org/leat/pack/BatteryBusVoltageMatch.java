package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.leat.catalogue.CellChemistryCatalogue;
import org.leat.catalogue.CellProperty;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.ChargeRegulator;
import org.leat.design.Inverter;
import org.leat.design.VoltageRange;
import org.leat.pack.Search.Candidate;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Cells in series against what hangs on the bus. */
final class BatteryBusVoltageMatch implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("battery/bus-voltage-match", Level.ERROR)
            .title("cells in series against what hangs on the bus")
            .why(
                    "A bank of one cell more or less than the inverter was made for starts it at no charge, or destroys it at full"
                            + " charge.")
            .formula(
                    "nominal voltage of the bank within the inverter's range; set point of absorption at least nominal")
            .judged("battery at its nominal voltage")
            .source(RuleCard.COMMON_PRACTICE)
            .message("inverter-fits")
            .message("inverter-does-not-fit")
            .message("regulator-fits")
            .message("regulator-does-not-fit")
            .message("nothing-on-bus")
            .message("cells", "cells")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        List<Outcome> outcomes = new ArrayList<>();
        double nominal = nominal(j);
        Inverter inverter = j.design().inverter();
        Spot spot = j.at("/battery/cells-in-series");
        if (inverter != null) {
            VoltageRange range = inverter.inputVoltage();
            outcomes.add(
                    range == null
                            ? spot.notGiven("/inverter/input-voltage")
                            : spot.during("inverter")
                                    .compare(
                                            Comparison.within(
                                                    nominal,
                                                    Si.of(range.from()),
                                                    Si.of(range.to()),
                                                    QuantityKind.VOLTAGE),
                                            "inverter-fits",
                                            "inverter-does-not-fit"));
        }
        ChargeRegulator regulator = j.design().regulator();
        if (regulator != null) {
            Double absorption = Rated.si(regulator.absorptionVoltage());
            outcomes.add(
                    absorption == null
                            ? spot.notGiven("/regulator/absorption-voltage")
                            : spot.during("regulator")
                                    .compare(
                                            Comparison.within(
                                                    nominal, 0.75 * absorption, absorption, QuantityKind.VOLTAGE),
                                            "regulator-fits",
                                            "regulator-does-not-fit"));
        }
        return outcomes.isEmpty() ? List.of(spot.notApplicable("nothing-on-bus")) : outcomes;
    }

    private static double nominal(Judgement j) {
        return j.design().battery().cellsInSeries()
                * CellChemistryCatalogue.usual(j.design().battery().chemistry(), CellProperty.NOMINAL_VOLTAGE);
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        int now = j.design().battery().cellsInSeries();
        return Search.first(
                        this,
                        j,
                        failure,
                        IntStream.of(now - 1, now + 1, now / 2, now * 2, now - 2, now + 2, now / 4, now * 4)
                                .filter(cells -> cells >= 1)
                                .mapToObj(cells -> new Candidate(
                                        "cells",
                                        BankVoltage.edits(j.design(), cells),
                                        List.of(Arg.of("cells", cells)))))
                .map(List::of)
                .orElse(List.of());
    }
}
