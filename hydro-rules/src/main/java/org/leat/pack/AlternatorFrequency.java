package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.leat.check.Arg;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.pack.Search.Candidate;
import org.leat.plant.cases.Running;
import org.leat.quantity.QuantityKind;

/** Electrical frequency against what the laminations are made for. */
final class AlternatorFrequency implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("alternator/frequency", Level.NOTE)
            .title("electrical frequency against what the laminations are made for")
            .why(
                    "Iron loss grows faster than the frequency. A machine of many poles geared up heats its iron before its"
                            + " copper.")
            .formula("f = p n, pole pairs times speed ≤ frequency limit")
            .judged("running, the nozzle set that turns fastest")
            .source(RuleCard.COMMON_PRACTICE)
            .message("low-enough", "speed")
            .message("too-high", "speed")
            .message("slower", "gear")
            .message("fewer-poles")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        Running worst = Worst.most(j.cases().running(), r -> r.operatingPoint().frequency());
        return List.of(Rated.atMost(
                j.at("/alternator/frequency-limit").during(worst.id()),
                worst.operatingPoint().frequency(),
                Rated.si(j.design().alternator().frequencyLimit()),
                QuantityKind.FREQUENCY,
                "low-enough",
                "too-high",
                Arg.of("speed", worst.operatingPoint().alternatorSpeed(), QuantityKind.ROTATIONAL_SPEED)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        double now = j.plant().numbers().alternator().gearRatio();
        List<WayOut> ways = new ArrayList<>();
        Search.first(
                        this,
                        j,
                        failure,
                        DoubleStream.of(4, 3, 2.5, 2, 1.5, 1.25, 1)
                                .filter(gear -> gear < now - 0.01)
                                .mapToObj(gear -> Candidate.of(
                                        "slower",
                                        new Edit("/alternator/gear-ratio", gear),
                                        Arg.of("gear", gear, QuantityKind.RATIO))))
                .ifPresent(ways::add);
        ways.add(j.advice("fewer-poles"));
        return ways;
    }
}
