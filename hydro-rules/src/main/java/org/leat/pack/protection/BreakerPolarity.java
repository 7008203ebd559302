package org.leat.pack.protection;

import static org.leat.check.Level.ERROR;

import java.util.List;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Place;
import org.leat.pack.kit.Devices;
import org.leat.pack.kit.FieldChanges;

/** Breakers that break one way only, where current goes both ways. */
final class BreakerPolarity {

    static final Rule RULE = Rule.of(
                    "protection/polarity", ERROR, "breakers that break one way only, where current goes both ways")
            .why(
                    "A breaker with marked poles blows its arc into the chamber with a magnet. When the current turns, the magnet"
                            + " blows the arc the other way and the breaker burns. Between turbine and battery the charge flows one"
                            + " way and the battery's fault current the other.")
            .formula("no breaker bound to its polarity between alternator and battery, as stated")
            .judged("running, and a short circuit on the turbine's side, fed by the battery")
            .source(
                    "IEC 60947-2: makers mark breakers that are bound to a polarity; makers' instructions (from memory)")
            .passes("both-ways", "{device} breaks current that flows either way.")
            .fails(
                    "one-way",
                    "{device} breaks current that flows one way only; here the turbine charges one way and the battery feeds a"
                            + " fault the other.")
            .fails("alternating", "{device} breaks current that flows one way only; here it alternates.")
            .notApplicable("none", "Not judged: no breaker sits between the turbine and the battery.")
            .judgeAll(BreakerPolarity::judge)
            .wayOut(
                    "either-way",
                    "A breaker for direct current that is not bound to a polarity.",
                    FieldChanges.to(false))
            .build();

    private BreakerPolarity() {}

    private static List<Outcome> judge(Judgement j) {
        return Devices.each(
                j, device -> device.isBreaker() && device.carriesTheCharge(), "none", breaker -> judge(j, breaker));
    }

    private static Outcome judge(Judgement j, Devices.Placed breaker) {
        Spot spot = j.at(breaker.path() + "/polarised").with(breaker.name());
        return spot.saying("both-ways", breaker.joins(Place.ALTERNATOR) ? "alternating" : "one-way")
                .holds(!spot.given(breaker.device().polarised()));
    }
}
