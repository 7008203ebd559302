package org.leat.pack;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.Safeguards;
import org.leat.quantity.QuantityKind;

/** Housing of the alternator against spray. */
final class AlternatorWetElectrics implements Rule {

    private static final RuleCard CARD = RuleCard.of("alternator/wet-electrics", Level.ERROR)
            .title("housing of the alternator against spray")
            .why(
                    "The alternator stands an arm's length from a jet of water. Spray in the winding shorts it, and wet leads"
                            + " are live leads.")
            .formula("IP code: first numeral ≥ 5 (dust), second ≥ 4 (splashes)")
            .judged("as built")
            .source("IEC 60529 degrees of protection")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("dust", QuantityKind.RATIO, 5, "", RuleCard.COMMON_PRACTICE)
            .limit("splash", QuantityKind.RATIO, 4, "", RuleCard.COMMON_PRACTICE)
            .message("tight", "code")
            .message("leaks", "code")
            .message("not-a-code", "code")
            .message("dry-place")
            .message("housing", "code")
            .build();

    private static final Pattern CODE = Pattern.compile("IP ?([0-6X])([0-9X])[A-DHMSW]*");

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Spot spot = j.at("/alternator/protection");
        Safeguards safeguards = j.design().safeguards();
        if (safeguards != null && Boolean.FALSE.equals(safeguards.wetPlace())) {
            return List.of(spot.notApplicable("dry-place"));
        }
        String code = j.design().alternator().protection();
        if (code == null) {
            return List.of(spot.notGiven(spot.path()));
        }
        Matcher m = CODE.matcher(code.strip());
        Arg told = Arg.of("code", code);
        if (!m.matches() || m.group(2).equals("X")) {
            return List.of(spot.open(spot.path(), "not-a-code", told));
        }
        double dust = m.group(1).equals("X") ? 0 : Integer.parseInt(m.group(1));
        double splash = Integer.parseInt(m.group(2));
        Comparison water = Comparison.atLeast(splash, j.limit("splash"));
        return List.of(spot.compare(
                water.holds() ? Comparison.atLeast(dust, j.limit("dust")) : water, "tight", "leaks", told));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Stated.otherwise(this, j, failure, "housing", "IP55", Arg.of("code", "IP55"));
    }
}
