package org.leat.pack.regulator;

import static org.leat.check.Level.ERROR;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.leat.check.Arg;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.DumpLoad;
import org.leat.design.DumpSide;
import org.leat.pack.kit.BridgeElement;
import org.leat.pack.kit.BridgeWindow;
import org.leat.pack.kit.BridgeWindow.RatedPart;

/** When a dump load or clamp before a tracking or series regulator comes on. */
final class InputClamp {

    private static final String PATH = "/dump-load/trigger-voltage";

    static final Rule RULE = Rule.of(
                    "regulator/input-clamp",
                    ERROR,
                    "when a dump load or clamp before a tracking or series regulator comes on")
            .why(
                    "Before a tracking regulator the bridge runs at the voltage of most power, far above the battery's. What is set"
                            + " by the battery's voltage is on there for ever and takes all the power; what is set above the weakest"
                            + " part comes on when that is already dead.")
            .formula(
                    "highest working voltage at the bridge ≤ trigger ≤ least of what regulator's input, diodes and capacitor"
                            + " stand")
            .judged("running, the nozzle set with the highest voltage at the bridge; load lost")
            .source(COMMON_PRACTICE)
            .passes(
                    "above-working",
                    "The dump load at the bridge comes on at {value}, above the {working} at which the bridge works.")
            .fails(
                    "always-on",
                    "The dump load at the bridge comes on at {value}, but the bridge works at {working}: it is on for ever and"
                            + " takes what the battery should get.")
            .passes("in-time", "It comes on at {value}; the weakest part there, the {part}, stands {limit}.")
            .fails("too-late", "It comes on at {value}, but the {part} stands {limit}.")
            .notApplicable("none", "Not judged: no dump load hangs before a tracking or series regulator.")
            .judgeAll(InputClamp::judge)
            .wayOut(
                    "other",
                    "A controller that switches it on at {trigger} at the bridge, with elements of {resistance} cold for {power}.",
                    InputClamp::other)
            .build();

    private InputClamp() {}

    private static List<Outcome> judge(Judgement j) {
        DumpLoad dump = j.design().dumpLoad();
        Spot spot = j.at(PATH);
        if (dump == null || !j.numbers().regulator().divides() || dump.side() == DumpSide.BATTERY) {
            return List.of(spot.says("none"));
        }
        j.solved();
        spot.given("/dump-load/side", dump.side());
        double trigger = spot.si(dump.triggerVoltage());
        List<Supplier<Outcome>> questions = List.of(() -> above(j, trigger), () -> below(j, trigger));
        return j.all(questions);
    }

    private static Outcome above(Judgement j, double trigger) {
        BridgeWindow window = BridgeWindow.of(j.solved());
        return j.at(PATH)
                .during(window.during())
                .saying("above-working", "always-on")
                .with("working", window.working(), VOLTAGE)
                .atLeast(trigger, window.working(), VOLTAGE);
    }

    private static Outcome below(Judgement j, double trigger) {
        Spot spot = j.at(PATH).during("load-lost").saying("in-time", "too-late");
        RatedPart weakest = BridgeWindow.parts(j.numbers()).stream()
                .min(Comparator.comparingDouble(part -> spot.known(part.rating())))
                .orElseThrow();
        return spot.with(Arg.phrase("part", weakest.part())).atMost(trigger, spot.known(weakest.rating()), VOLTAGE);
    }

    private static Stream<Change> other(Judgement j, Outcome.Fail failure) {
        DumpLoad now = Objects.requireNonNull(j.design().dumpLoad());
        return BridgeElement.in(j.solved()).stream().map(element -> element.inPlaceOf(now));
    }
}
