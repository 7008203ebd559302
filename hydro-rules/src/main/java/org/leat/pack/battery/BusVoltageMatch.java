package org.leat.pack.battery;

import static org.leat.check.Level.ERROR;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.ChargeRegulator;
import org.leat.design.Inverter;
import org.leat.design.VoltageRange;
import org.leat.pack.kit.BankVoltage;
import org.leat.pack.kit.Regulators;
import org.leat.quantity.Si;

/** Cells in series against what hangs on the bus. */
final class BusVoltageMatch {

    static final Rule RULE = Rule.of(
                    "battery/bus-voltage-match", ERROR, "cells in series against what hangs on the bus")
            .why(
                    "A bank of one cell more or less than the inverter was made for starts it at no charge, or destroys it at full"
                            + " charge.")
            .formula(
                    "nominal voltage of the bank within the inverter's range; set point of absorption at least nominal")
            .judged("battery at its nominal voltage")
            .source(COMMON_PRACTICE)
            .passes("inverter-fits", "The bank of {value} suits the inverter.")
            .fails("inverter-does-not-fit", "The bank of {value} does not suit the inverter ({limit}).")
            .passes("regulator-fits", "The bank of {value} suits the regulator's setting.")
            .fails(
                    "regulator-does-not-fit",
                    "The bank of {value} does not suit the regulator's setting, which is for {limit}.")
            .notApplicable("nothing-on-bus", "Not judged: neither regulator nor inverter is stated.")
            .judgeAll(BusVoltageMatch::judge)
            .wayOut("cells", "A bank of {cells} cells in series.", BusVoltageMatch::otherCells)
            .build();

    private BusVoltageMatch() {}

    private static List<Outcome> judge(Judgement j) {
        Spot spot = j.at("/battery/cells-in-series");
        double nominal = j.numbers().battery().nominalVoltage();
        List<Supplier<Outcome>> questions = new ArrayList<>();
        Inverter inverter = j.design().inverter();
        if (inverter != null) {
            questions.add(() -> {
                VoltageRange range = spot.given("/inverter/input-voltage", inverter.inputVoltage());
                return spot.during("inverter")
                        .saying("inverter-fits", "inverter-does-not-fit")
                        .within(nominal, Si.of(range.from()), Si.of(range.to()), VOLTAGE);
            });
        }
        ChargeRegulator regulator = Regulators.by(j);
        if (regulator != null) {
            questions.add(() -> {
                double absorption = spot.si("/regulator/absorption-voltage", regulator.absorptionVoltage());
                return spot.during("regulator")
                        .saying("regulator-fits", "regulator-does-not-fit")
                        .within(nominal, 0.75 * absorption, absorption, VOLTAGE);
            });
        }
        return questions.isEmpty() ? List.of(spot.says("nothing-on-bus")) : j.all(questions);
    }

    private static Stream<Change> otherCells(Judgement j, Outcome.Fail failure) {
        int now = j.design().battery().cellsInSeries();
        return IntStream.of(now - 1, now + 1, now / 2, now * 2, now - 2, now + 2, now / 4, now * 4)
                .filter(cells -> cells >= 1)
                .mapToObj(
                        cells -> Change.of(BankVoltage.edits(j.design(), cells)).with("cells", cells));
    }
}
