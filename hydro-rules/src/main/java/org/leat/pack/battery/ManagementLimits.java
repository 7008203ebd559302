package org.leat.pack.battery;

import static org.leat.check.Level.ERROR;
import static org.leat.check.NamedLimit.Safer.LOWER;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.CURRENT;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import org.leat.catalogue.rows.Spread;
import org.leat.catalogue.tables.CellChemistryCatalogue;
import org.leat.catalogue.tables.CellProperty;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.BatteryBank;
import org.leat.design.BatteryManagement;
import org.leat.design.ChargeRegulator;
import org.leat.design.Inverter;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.LeadAcid;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Running;
import org.leat.plant.solved.OperatingPoint;
import org.leat.quantity.Si;

/** Where the battery's management opens, against what the plant asks of it every day. */
final class ManagementLimits {

    private static final String OPENS_ABOVE = "/battery/management/opens-above";
    private static final String CURRENT_LIMIT = "/battery/management/current-limit";

    static final Rule RULE = Rule.of(
                    "battery/management-limits",
                    ERROR,
                    "where the battery's management opens, against set points and currents")
            .why(
                    "A management that opens at a voltage or a current that every full day or every kettle brings takes the battery"
                            + " off the turbine while it runs: the wheel runs away again and again, until something does not"
                            + " stand it. One that opens above what the cells stand opens too late.")
            .formula(
                    "highest set point of regulator and dump load ≤ voltage at which it opens ≤ factor · cells · highest"
                            + " charging voltage of a cell; charging current on the nozzle set that charges most, and the"
                            + " inverter's continuous power at its cut-off voltage and efficiency ≤ current at which it opens")
            .judged("as set; running, no load taking anything; the inverter at its continuous power")
            .source("cells' highest charging voltage: makers' data as tabled; I = P/(η V)")
            .source(COMMON_PRACTICE)
            .limit("above-highest", RATIO, 1.05, "", COMMON_PRACTICE, LOWER)
            .passes("between", "The management opens at {value}: above every set point, below what the cells stand.")
            .fails(
                    "opens-daily",
                    "The management opens at {value}; the set points ask {limit}: it opens whenever the bank is full.")
            .fails("opens-late", "The management opens at {value}; cells that are charged stand {limit}.")
            .passes("charges", "The bank is charged with {value}; its management opens at {opens}.")
            .fails(
                    "opens-charging",
                    "The bank is charged with {value}; its management lets {limit} pass and opens in the middle of it.")
            .passes("supplies", "The inverter draws up to {value}; the bank's management opens at {opens}.")
            .fails(
                    "opens-supplying",
                    "The inverter draws up to {value}; the bank's management lets {limit} pass and opens in the middle of"
                            + " it.")
            .notApplicable("no-management", "Not judged: lead has no management that opens.")
            .judgeAll(ManagementLimits::judge)
            .leastWayOut(
                    "voltage",
                    "One that opens at {rating}.",
                    FieldChanges.onlyAt(OPENS_ABOVE, ManagementLimits::anotherVoltage))
            .leastWayOut(
                    "current",
                    "One that opens at {rating}.",
                    FieldChanges.onlyAt(
                            CURRENT_LIMIT,
                            FieldChanges.ratings(
                                    "A", ElectricCurrent.class, 20, 50, 100, 150, 200, 250, 300, 400, 500)))
            .build();

    private ManagementLimits() {}

    private static List<Outcome> judge(Judgement j) {
        BatteryManagement management = j.design().battery().management();
        if (management == null) {
            Spot spot = j.at("/battery/management");
            return List.of(LeadAcid.is(j) ? spot.says("no-management") : spot.notGiven("/battery/management"));
        }
        List<Supplier<Outcome>> questions = new ArrayList<>();
        questions.add(() -> voltage(j, management));
        questions.add(() -> charging(j, management));
        Inverter inverter = j.design().inverter();
        if (inverter != null) {
            questions.add(() -> supplying(j, management, inverter));
        }
        return j.all(questions);
    }

    private static Outcome voltage(Judgement j, BatteryManagement management) {
        Spot spot = j.at(OPENS_ABOVE);
        double opens = spot.si(management.opensAbove());
        double set = highestSetPoint(j);
        if (opens < set) {
            return spot.saying("between", "opens-daily").atLeast(opens, set, VOLTAGE);
        }
        return spot.saying("between", "opens-late").atMost(opens, mostOfCells(j), VOLTAGE);
    }

    private static double highestSetPoint(Judgement j) {
        ChargeRegulator regulator = j.design().regulator();
        double absorption = j.numbers().battery().absorptionVoltage();
        // behind a tracking or series regulator the dump load's trigger is another node's
        double set = j.numbers().regulator().divides()
                ? absorption
                : Math.max(j.numbers().fullVoltage(), absorption);
        return regulator == null ? set : Math.max(set, Si.of(regulator.equalisingVoltage(), 0));
    }

    private static double mostOfCells(Judgement j) {
        BatteryBank bank = j.design().battery();
        Spread highest = CellChemistryCatalogue.find(bank.chemistry(), CellProperty.HIGHEST_CHARGE_VOLTAGE)
                .orElseThrow();
        return j.limit("above-highest").value()
                * Si.of(bank.chargeVoltageLimit(), bank.cellsInSeries() * highest.high());
    }

    private static Outcome charging(Judgement j, BatteryManagement management) {
        Running worst = Worst.running(j, OperatingPoint::batteryCurrent);
        Spot spot = j.at(CURRENT_LIMIT).during(worst).saying("charges", "opens-charging");
        double limit = spot.si(management.currentLimit());
        return spot.with("opens", limit, CURRENT).atMost(worst.operatingPoint().batteryCurrent(), limit, CURRENT);
    }

    private static Outcome supplying(Judgement j, BatteryManagement management, Inverter inverter) {
        Spot spot = j.at(CURRENT_LIMIT).during("inverter at full power").saying("supplies", "opens-supplying");
        double limit = spot.si(management.currentLimit());
        double power = spot.si("/inverter/continuous-power", inverter.continuousPower());
        double efficiency = spot.si("/inverter/efficiency", inverter.efficiency());
        double volts = Si.of(inverter.cutOffVoltage(), j.numbers().battery().restingVoltage());
        return spot.with("opens", limit, CURRENT).atMost(power / (efficiency * volts), limit, CURRENT);
    }

    private static Stream<Change> anotherVoltage(Judgement j, Outcome.Fail failure) {
        double most = Math.floor(10 * mostOfCells(j) / j.limit("above-highest").value()) / 10;
        return Stream.of(most, Math.ceil(10 * highestSetPoint(j)) / 10 + 0.2)
                .map(volts -> FieldChanges.rated(failure.path(), volts, "V", ElectricPotential.class));
    }
}
