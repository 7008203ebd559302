package org.leat.pack.dump;

import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.WARNING;
import static org.leat.check.NamedLimit.Safer.HIGHER;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.Quantities.amps;
import static org.leat.quantity.Quantities.ohms;
import static org.leat.quantity.Quantities.watts;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.RESISTANCE;

import java.util.Objects;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.ChargeRegulator;
import org.leat.design.DumpLoad;
import org.leat.design.RegulatorKind;
import org.leat.pack.kit.StandardSizes;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.BatteryFull;
import org.leat.plant.numbers.DumpLoadNumbers;
import org.leat.quantity.Si;

/** Dump load against everything the turbine gives. */
final class AbsorbsAll {

    static final Rule RULE = Rule.of("dump/absorbs-all", ERROR, "dump load against everything the turbine gives")
            .why(
                    "What the dump load does not take goes into a battery that is full. A hot element takes less than its label,"
                            + " and wet seasons bring more water than was measured.")
            .formula(
                    "current of the hot element at the voltage that switches it on, else absorption voltage / current of the turbine there ≥ limit")
            .judged("battery full, loads off, the nozzle set that gives most")
            .source("P = V²/R: Ohm's law")
            .source(COMMON_PRACTICE)
            .limit("least", RATIO, 110, "%", COMMON_PRACTICE, HIGHER)
            .limit("good", RATIO, 125, "%", COMMON_PRACTICE, HIGHER)
            .passes(
                    "takes-all",
                    "The dump load takes {value} of what the turbine gives ({hot} hot, {cold} cold, of {turbine}).")
            .fails(
                    "little-room",
                    "The dump load takes {value} of what the turbine gives ({hot} hot, {cold} cold, of {turbine});"
                            + " good is {limit}.")
            .fails(
                    "too-small",
                    "The dump load takes only {value} of what the turbine gives ({hot} hot, {cold} cold, of"
                            + " {turbine}); safe is {limit}.")
            .notApplicable("none", DumpLoads.NONE)
            .judge(AbsorbsAll::judge)
            .wayOut("larger", "Elements of {resistance} cold for {power}.", AbsorbsAll::larger)
            .build();

    private AbsorbsAll() {}

    private static Outcome judge(Judgement j) {
        ChargeRegulator regulator = j.design().regulator();
        if (j.design().dumpLoad() == null && (regulator == null || regulator.kind() == RegulatorKind.SHUNT)) {
            return j.at("/dump-load").notGiven("/dump-load");
        }
        return DumpLoads.judge(AbsorbsAll::judge).apply(j);
    }

    private static Outcome judge(Judgement j, DumpLoad dump) {
        BatteryFull worst = Worst.least(j.solved().batteryFull(), AbsorbsAll::share);
        Spot spot = j.at("/dump-load/resistance").during(worst);
        BatteryFull.Diverted diverted = spot.given(worst.diverted());
        double share = share(worst);
        boolean small = share < j.limit("least").value();
        return spot.as(small ? ERROR : WARNING)
                .saying("takes-all", small ? "too-small" : "little-room")
                .with("hot", diverted.powerHot(), POWER)
                .with("cold", diverted.powerCold(), POWER)
                .with("turbine", worst.turbinePower(), POWER)
                .atLeast(share, j.limit(small ? "least" : "good"));
    }

    private static double share(BatteryFull full) {
        BatteryFull.Diverted diverted = full.diverted();
        return diverted == null ? 0 : Math.min(diverted.share().orElse(1e6), 1e6);
    }

    private static Stream<Change> larger(Judgement j, Outcome.Fail failure) {
        DumpLoad stated = Objects.requireNonNull(j.design().dumpLoad());
        DumpLoadNumbers dump = Objects.requireNonNull(j.numbers().dumpLoad());
        double wanted = 1.02 * j.limit("good").value();
        double cold = StandardSizes.resistance(dump.resistanceCold() * failure.value() / wanted);
        double volts = j.numbers().fullVoltage();
        double power = Math.ceil(1.2 * volts * volts / cold / 100) * 100;
        Change change = Change.of("/dump-load/resistance", ohms(cold));
        if (stated.resistanceHot() != null) {
            double hot = Math.rint(1000 * cold * (dump.resistanceHot() / dump.resistanceCold())) / 1000;
            change = change.and("/dump-load/resistance-hot", ohms(hot));
        }
        change = change.and("/dump-load/power-rating", watts(power));
        double current = 1.25 * volts / cold;
        if (stated.switchRating() != null && Si.of(stated.switchRating()) < current) {
            double rating = Math.ceil(current / 5) * 5;
            change = change.and("/dump-load/switch-rating", amps(rating));
        }
        return Stream.of(change.with("resistance", cold, RESISTANCE).with("power", power, POWER));
    }
}
