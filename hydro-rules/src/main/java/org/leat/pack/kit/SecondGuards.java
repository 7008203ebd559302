package org.leat.pack.kit;

import static org.leat.quantity.Quantities.volts;

import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Spot;
import org.leat.design.DumpSide;
import org.leat.design.Safeguards.GuardKind;
import org.leat.design.Safeguards.SecondGuard;
import org.leat.plant.cases.BatteryFull;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.BatteryNumbers;
import org.leat.plant.numbers.DumpLoadNumbers;

/** The second means against overvoltage, and whether it is able alone. The plant is solved. */
public final class SecondGuards {

    /** Whether there is one. */
    public static final String STATED = "/safeguards/second-overvoltage-guard";

    /** What it is. */
    public static final String PATH = "/safeguards/second-guard";

    /** Over what a battery may be charged to, for the moment until a guard has come in: common practice, no published source. */
    private static final double BATTERY_STANDS = 1.15;

    /** What a rule that asks whether the second means is able says of where {@code 1.15} is from. */
    public static final String SOURCE =
            "common practice, no published source: a battery that does not open by itself stands 1.15"
                    + " times what it may be charged with until a guard has come in";

    private SecondGuards() {}

    /** {@return whether there is a second means; null where the design does not say} */
    public static @Nullable Boolean stated(Judgement j) {
        return DesignParts.safeguards(j).secondOvervoltageGuard();
    }

    /** {@return what it is; open where the design does not say} */
    public static SecondGuard told(Judgement j, Spot spot) {
        return spot.given(PATH, DesignParts.safeguards(j).secondGuard());
    }

    /** {@return whether a guard watches the battery's node, another than the bridge's} */
    public static boolean atBattery(Judgement j, SecondGuard guard) {
        return j.numbers().regulator().divides() && guard.side() == DumpSide.BATTERY;
    }

    /**
     * {@return the highest voltage at which a guard may come in, V: the least rating of what hangs on the node that it watches, and, where
     * the battery hangs there and does not open by itself, what that stands for a moment} A battery that holds the node below the trigger
     * is overcharged for ever. Open for the first rating that is not told.
     */
    public static double most(Judgement j, Spot spot, SecondGuard guard) {
        boolean divides = j.numbers().regulator().divides();
        boolean atBattery = atBattery(j, guard);
        OptionalDouble parts = BusPart.all(j.design()).stream()
                .filter(part -> !divides || (part.node() == BusNode.BATTERY) == atBattery)
                .mapToDouble(part -> spot.si(part.path(), part.rating()))
                .min();
        if ((divides && !atBattery) || opens(j)) {
            return parts.orElseThrow(); // the regulator's input, or the battery's management
        }
        double battery = batteryStands(j);
        return Math.min(parts.orElse(battery), battery);
    }

    /** {@return whether the battery opens by itself} */
    public static boolean opens(Judgement j) {
        return !LeadAcid.is(j) && j.design().battery().management() != null;
    }

    private static double batteryStands(Judgement j) {
        BatteryNumbers battery = j.numbers().battery();
        return BATTERY_STANDS * battery.chargeVoltageLimit().or(battery.absorptionVoltage());
    }

    /** {@return the highest voltage at which a node works day by day, a dump load's trigger there among them, V} */
    public static double working(Judgement j, boolean atBattery) {
        double working = atBattery
                ? j.numbers().battery().absorptionVoltage()
                : j.numbers().fullVoltage();
        for (Running running : j.solved().running()) {
            working = Math.max(working, atBattery ? running.batteryVoltage() : running.lastingVoltage());
        }
        DumpLoadNumbers dump = j.numbers().dumpLoad();
        return dump != null
                        && (dump.side() == DumpSide.BATTERY) == atBattery
                        && dump.triggerVoltage() instanceof Amount.Known trigger
                ? Math.max(working, trigger.value())
                : working;
    }

    /** {@return the most that a set makes with the battery full or running, W} */
    public static double mostPower(Judgement j) {
        double full =
                Worst.most(j.solved().batteryFull(), BatteryFull::turbinePower).turbinePower();
        return Math.max(
                full,
                Worst.most(j.solved().running(), r -> r.operatingPoint().batteryPower())
                        .operatingPoint()
                        .batteryPower());
    }

    /**
     * {@return whether the second means is able to hold the voltage of a lost dump load alone: it watches the bridge, comes in above
     * what the plant works at and below what its parts stand, and takes all that the turbine makes or stops the water} Open for the first
     * number that is not told.
     */
    public static boolean ableWithoutDump(Judgement j, Spot spot) {
        SecondGuard guard = told(j, spot);
        DumpLoadNumbers dump = j.numbers().dumpLoad();
        boolean sees = !atBattery(j, guard) || (dump != null && dump.side() == DumpSide.BATTERY);
        return sees && able(j, spot, guard);
    }

    /**
     * {@return whether it is able to hold the one node of a regulator that has failed short} What the battery stands is not passed, or
     * the battery's management opens and everything at its poles stands the trigger. Open for the first number that is not told.
     */
    public static boolean ableOnOneNode(Judgement j, Spot spot) {
        SecondGuard guard = told(j, spot);
        double trigger = spot.si(PATH + "/trigger-voltage", guard.triggerVoltage());
        boolean stood = opens(j)
                ? BusPart.all(j.design()).stream()
                        .filter(part -> part.node() == BusNode.BATTERY)
                        .allMatch(part -> trigger < spot.si(part.path(), part.rating()))
                : trigger <= batteryStands(j);
        return stood && able(j, spot, guard);
    }

    private static boolean able(Judgement j, Spot spot, SecondGuard guard) {
        double trigger = spot.si(PATH + "/trigger-voltage", guard.triggerVoltage());
        boolean takes = guard.kind() == GuardKind.DEFLECTOR || spot.si(PATH + "/power", guard.power()) >= mostPower(j);
        return takes && trigger > working(j, atBattery(j, guard)) && trigger <= most(j, spot, guard);
    }

    /** {@return a deflector that drops in a tenth above what the bridge works at, and that there is a second means} */
    public static Stream<Change> deflector(Judgement j, Outcome.Fail failure) {
        return watching(j, null);
    }

    /** {@return the same at the battery} */
    public static Stream<Change> deflectorAtBattery(Judgement j, Outcome.Fail failure) {
        return watching(j, DumpSide.BATTERY);
    }

    private static Stream<Change> watching(Judgement j, @Nullable DumpSide side) {
        double volts = Math.ceil(1.1 * working(j, side == DumpSide.BATTERY));
        SecondGuard guard = new SecondGuard(GuardKind.DEFLECTOR, side, volts(volts), null);
        return Stream.of(Change.of(STATED, true).and(PATH, guard));
    }
}
