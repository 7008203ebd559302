package org.leat.pack;

import java.util.List;
import java.util.Objects;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;

/** A thermostat or switch for alternating current in the dump load. */
final class DumpAcSwitch implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("dump/ac-switch", Level.ERROR)
            .title("a thermostat or switch for alternating current in the dump load")
            .why(
                    "Water heaters come with a thermostat made for alternating current. On direct current its contacts draw an"
                            + " arc, weld or burn, and when it opens as it should the turbine is let go.")
            .formula("none in the circuit, as stated")
            .judged("as built")
            .source("IEC 60947-1: making and breaking capacity are stated for a.c. and d.c. apart")
            .source(RuleCard.COMMON_PRACTICE)
            .message("without")
            .message("there")
            .message("none")
            .message("take-out")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        List<Outcome> without = Dumped.without(j, "none");
        if (without != null) {
            return without;
        }
        Boolean there = Objects.requireNonNull(j.design().dumpLoad()).alternatingCurrentSwitch();
        return List.of(Stated.so(
                j.at("/dump-load/alternating-current-switch"), there == null ? null : !there, "without", "there"));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Stated.otherwise(this, j, failure, "take-out", false);
    }
}
