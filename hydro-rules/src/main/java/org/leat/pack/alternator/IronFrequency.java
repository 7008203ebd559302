package org.leat.pack.alternator;

import static org.leat.check.Level.NOTE;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.FREQUENCY;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.ROTATIONAL_SPEED;

import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Running;
import org.leat.plant.solved.OperatingPoint;

/** Electrical frequency against what the laminations are made for. */
final class IronFrequency {

    static final Rule RULE = Rule.of(
                    "alternator/frequency", NOTE, "electrical frequency against what the laminations are made for")
            .why(
                    "Iron loss grows faster than the frequency. A machine of many poles geared up heats its iron before its"
                            + " copper.")
            .formula("f = p n, pole pairs times speed ≤ frequency limit")
            .judged("running, the nozzle set that turns fastest")
            .source(COMMON_PRACTICE)
            .passes("low-enough", "The iron is turned over {value} ({speed:rpm}).")
            .fails("too-high", "The iron is turned over {value} ({speed:rpm}); its laminations are made for {limit}.")
            .judge(IronFrequency::judge)
            .wayOut("slower", "A gear ratio of {gear}.", IronFrequency::slower)
            .advice("fewer-poles", "A machine of fewer poles, or of thinner laminations.")
            .build();

    private IronFrequency() {}

    private static Outcome judge(Judgement j) {
        Running worst = Worst.running(j, OperatingPoint::frequency);
        OperatingPoint point = worst.operatingPoint();
        return j.at("/alternator/frequency-limit")
                .during(worst)
                .with("speed", point.alternatorSpeed(), ROTATIONAL_SPEED)
                .atMost(point.frequency(), j.design().alternator().frequencyLimit(), FREQUENCY);
    }

    private static Stream<Change> slower(Judgement j, Outcome.Fail failure) {
        double now = j.numbers().alternator().gearRatio();
        return DoubleStream.of(4, 3, 2.5, 2, 1.5, 1.25, 1)
                .filter(gear -> gear < now - 0.01)
                .mapToObj(gear -> Change.of("/alternator/gear-ratio", gear).with("gear", gear, RATIO));
    }
}
