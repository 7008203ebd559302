package org.leat.pack.battery;

import static org.leat.check.Level.ERROR;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import javax.measure.quantity.ElectricPotential;
import org.leat.check.Arg;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.BatteryManagement;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.LeadAcid;
import org.leat.pack.kit.VoltageCause;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.BusSituation.BusHolder;
import org.leat.plant.cases.BusSituation.ManagementOpens;

/** The battery's own management opens while the turbine generates. */
final class BatteryManagementOpens {

    static final Rule RULE = Rule.of(
                    "battery/management-opens", ERROR, "the battery's own management opens while the turbine generates")
            .why(
                    "A management opens on one full or one cold cell, in the middle of the night, under full current. Its switch and the"
                            + " rest of the bus then meet what the turbine makes of it.")
            .formula(
                    "voltage of the battery's node that follows ≤ rating of the management's switch: behind a tracking or series"
                            + " regulator its set point; else the settled runaway, or, with a dump load at"
                            + " the bridge that takes all, the moment of opening (1.27 times the peak at the working speed with 470 µF"
                            + " behind the bridge; stepped in time with less; open without)")
            .judged("battery opened by its management, each nozzle set on hand")
            .source("circuit simulation of a bridge whose battery opens under load")
            .passes("stands-it", "When the management opens its switch meets {value} ({cause}).")
            .fails("breaks", "When the management opens its switch meets {value} ({cause}) and stands {limit}.")
            .notApplicable("no-management", "Not judged: lead has no management that opens.")
            .judge(BatteryManagementOpens::judge)
            .leastWayOut(
                    "higher",
                    "A management whose switch stands {rating}, or one that only signals.",
                    FieldChanges.raised("V", ElectricPotential.class, 40, 60, 80, 100, 150, 200, 250))
            .build();

    private BatteryManagementOpens() {}

    private static Outcome judge(Judgement j) {
        Spot field = j.at("/battery/management/voltage-rating");
        BatteryManagement management = j.design().battery().management();
        if (management == null) {
            return LeadAcid.is(j) ? field.says("no-management") : field.notGiven("/battery/management");
        }
        ManagementOpens worst = Worst.most(
                j.solved().managementOpens(),
                opens -> Math.max(opens.batteryVoltage(), opens.batteryMoment().or(0)));
        Spot spot = field.during(worst);
        double rating = spot.si(management.voltageRating());
        double lasting = worst.batteryVoltage();
        // a moment that is not known does not matter where what lasts is too much already
        double moment = lasting > rating ? worst.batteryMoment().or(0) : spot.known(worst.batteryMoment());
        return spot.with(Arg.phrase("cause", moment > lasting ? VoltageCause.OPENED_UNDER_LOAD : lasting(j, worst)))
                .atMost(Math.max(moment, lasting), rating, VOLTAGE);
    }

    private static VoltageCause lasting(Judgement j, ManagementOpens opens) {
        if (j.numbers().regulator().divides()) {
            return VoltageCause.HELD;
        }
        return opens.holder() == BusHolder.DUMP_LOAD ? VoltageCause.DIVERTED : VoltageCause.MANAGEMENT_OPENS;
    }
}
