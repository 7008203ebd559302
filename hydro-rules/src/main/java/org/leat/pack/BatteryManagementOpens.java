package org.leat.pack;

import java.util.List;
import javax.measure.quantity.ElectricPotential;
import org.leat.check.Arg;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.BatteryManagement;
import org.leat.plant.cases.BusHolder;
import org.leat.plant.cases.ManagementOpens;
import org.leat.plant.numbers.Amount;
import org.leat.quantity.QuantityKind;

/** The battery's own management opens while the turbine generates. */
final class BatteryManagementOpens implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("battery/management-opens", Level.ERROR)
            .title("the battery's own management opens while the turbine generates")
            .why(
                    "A management opens on one full or one cold cell, in the middle of the night, under full current. Its switch and the"
                            + " rest of the bus then meet what the turbine makes of it.")
            .formula(
                    "bus voltage that follows ≤ rating of the management's switch: the settled runaway, or, with a dump load at"
                            + " the bridge that takes all, the moment of opening (1.27 times the peak at the working speed with 470 µF"
                            + " behind the bridge; stepped in time with less; open without)")
            .judged("battery opened by its management, each nozzle set on hand")
            .source("circuit simulation of a bridge whose battery opens under load")
            .message("stands-it", "cause")
            .message("breaks", "cause")
            .message("no-management")
            .message("higher", "rating")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Spot spot = j.at("/battery/management/voltage-rating");
        BatteryManagement management = j.design().battery().management();
        if (management == null) {
            return List.of(Lead.is(j) ? spot.notApplicable("no-management") : spot.notGiven("/battery/management"));
        }
        if (j.cases().loadLost().isEmpty()) {
            return Open.unsolved(j);
        }
        ManagementOpens worst = Worst.most(
                j.cases().managementOpens(),
                opens -> Math.max(opens.lastingVoltage(), opens.momentVoltage().or(0)));
        double lasting = worst.lastingVoltage();
        boolean moment = worst.momentVoltage().or(0) > lasting;
        Double rating = Rated.si(management.voltageRating());
        if (worst.momentVoltage() instanceof Amount.Unknown unknown && rating != null && lasting <= rating) {
            return List.of(Open.because(spot.during(worst), unknown));
        }
        return List.of(Rated.atMost(
                spot.during(worst),
                moment ? worst.momentVoltage().or(0) : lasting,
                rating,
                QuantityKind.VOLTAGE,
                "stands-it",
                "breaks",
                Arg.phrase(
                        "cause",
                        moment
                                ? "cause.opened-under-load"
                                : worst.holder() == BusHolder.DUMP_LOAD
                                        ? "cause.diverted"
                                        : "cause.management-opens")));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Rated.raised(this, j, failure, "higher", "V", ElectricPotential.class, 40, 60, 80, 100, 150, 200, 250);
    }
}
