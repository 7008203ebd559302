package org.leat.pack;

import java.util.List;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Spot;
import org.leat.plant.numbers.Amount;

/** Open answers that many rules give. */
final class Open {

    private Open() {}

    /** {@return open, for the reason that the plant has no number} */
    static Outcome because(Spot spot, Amount amount) {
        if (amount instanceof Amount.Unknown unknown) {
            return spot.unknownOf(unknown);
        }
        throw new IllegalArgumentException("known: " + amount);
    }

    /** {@return open, because the plant could not be solved; for rules that look at situations} */
    static List<Outcome> unsolved(Judgement j) {
        Amount.Unknown reason = j.plant().unsolvable().get(0);
        return List.of(j.at(reason.path()).unknownOf(reason));
    }
}
