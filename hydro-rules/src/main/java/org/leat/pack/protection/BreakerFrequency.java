package org.leat.pack.protection;

import static org.leat.check.Level.WARNING;
import static org.leat.quantity.QuantityKind.FREQUENCY;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Frequency;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.design.DeviceKind;
import org.leat.design.Place;
import org.leat.pack.kit.Devices;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Running;
import org.leat.plant.solved.OperatingPoint;

/** A breaker between alternator and bridge at the frequency it meets there. */
final class BreakerFrequency {

    static final Rule RULE = Rule.of(
                    "protection/frequency",
                    WARNING,
                    "a breaker between alternator and bridge at the frequency it meets there")
            .warningsHurt()
            .why(
                    "A breaker is made for 50 and 60 Hz. A machine of many poles makes several hundred: its coil trips at a higher"
                            + " current, its metal heats, and what it still breaks nobody but its maker can say.")
            .formula("f = p n ≤ highest frequency the maker names")
            .judged("running, the nozzle set that turns fastest")
            .source(
                    "IEC 60898-1 clause 1: 50 Hz and 60 Hz; trip factors 1.1, 1.2, 1.5 at 100, 200, 400 Hz by makers (from"
                            + " memory)")
            .either("made-for-it", "too-high", "{device} meets {value}; it is made for {limit}.")
            .notApplicable("none", "Not judged: no breaker sits between alternator and bridge.")
            .judgeAll(BreakerFrequency::judge)
            .leastWayOut(
                    "higher",
                    "A breaker whose maker names {rating}.",
                    FieldChanges.raised("Hz", Frequency.class, 100, 200, 400))
            .wayOut("fuse", "A fuse in its place, which heat alone melts.", BreakerFrequency::fuse)
            .build();

    private BreakerFrequency() {}

    private static List<Outcome> judge(Judgement j) {
        return Devices.each(
                j, device -> device.isBreaker() && device.joins(Place.ALTERNATOR), "none", device -> judge(j, device));
    }

    private static Outcome judge(Judgement j, Devices.Placed breaker) {
        Running worst = Worst.running(j, OperatingPoint::frequency);
        return j.at(breaker.path() + "/highest-frequency")
                .during(worst)
                .with(breaker.name())
                .atMost(worst.operatingPoint().frequency(), breaker.device().highestFrequency(), FREQUENCY);
    }

    private static Stream<Change> fuse(Judgement j, Outcome.Fail failure) {
        String path = Devices.at(j.design(), failure.path()).path();
        return Stream.of(Change.of(path + "/trip-curve", null)
                .and(path + "/polarised", null)
                .and(path + "/highest-frequency", null)
                .and(path + "/kind", DeviceKind.FUSE));
    }
}
