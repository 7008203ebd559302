package org.leat.pack;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.RegulatorKind;
import org.leat.plant.cases.BatteryFull;

/** A regulator that lets go of the turbine. */
final class RegulatorKindForHydro implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("regulator/kind-for-hydro", Level.ERROR)
            .title("a regulator that lets go of the turbine")
            .why(
                    "A regulator made to disconnect its source when the battery is full takes the load off the turbine: wheel and voltage run away every time the battery is charged. A turbine needs its surplus diverted.")
            .formula(
                    "series or tracking regulator without a dump load on the bridge's side: the case battery full equals load lost")
            .judged("battery full")
            .source(RuleCard.COMMON_PRACTICE)
            .message("diverts")
            .message("no-surplus-path")
            .message("nothing-limits")
            .message("add-dump", "resistance", "power")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        RegulatorKind kind = j.plant().numbers().regulator().kind();
        boolean dump = j.design().dumpLoad() != null;
        Spot spot = j.at(j.design().regulator() == null ? "/battery" : "/regulator/kind")
                .during("battery-full");
        if (j.design().regulator() == null && !dump) {
            return List.of(j.at("/battery").notGiven("/regulator/kind"));
        }
        if (dump) {
            return List.of(withDump(j, spot, kind));
        }
        return switch (kind) {
            case SERIES, TRACKING, SHUNT -> List.of(spot.fail("no-surplus-path"));
            case NONE -> List.of(spot.fail("nothing-limits"));
        };
    }

    /** A dump load that hangs where nothing reaches it, or that nothing switches on, does not count. */
    private static Outcome withDump(Judgement j, Spot spot, RegulatorKind kind) {
        if (j.cases().batteryFull().isEmpty()) {
            return Open.unsolved(j).get(0);
        }
        if (kind == RegulatorKind.NONE) {
            boolean triggered = Objects.requireNonNull(j.design().dumpLoad()).triggerVoltage() != null;
            return triggered ? spot.pass("diverts") : spot.notGiven("/dump-load/trigger-voltage");
        }
        boolean runsAway = j.cases().batteryFull().stream().anyMatch(f -> f.answer() == BatteryFull.Answer.RUNAWAY);
        return runsAway ? spot.fail("no-surplus-path") : spot.pass("diverts");
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        if (j.cases().batteryFull().isEmpty()) {
            return List.of();
        }
        BatteryFull most = Worst.most(j.cases().batteryFull(), BatteryFull::turbineCurrent);
        double volts = j.plant().numbers().battery().absorptionVoltage();
        if (most.turbineCurrent() <= 0) {
            return List.of();
        }
        double ohms = volts / (1.2 * most.turbineCurrent());
        double watts = Math.ceil(1.5 * volts * volts / ohms / 50) * 50;
        return Search.first(this, j, failure, Stream.of(DumpLoads.added(j.design(), ohms, watts, volts, "add-dump")))
                .map(List::of)
                .orElse(List.of());
    }
}
