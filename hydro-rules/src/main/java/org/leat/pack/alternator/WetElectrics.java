package org.leat.pack.alternator;

import static org.leat.check.Level.ERROR;
import static org.leat.check.NamedLimit.Safer.HIGHER;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.Optional;
import org.leat.check.Change;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.DesignParts;

/** Housing of the alternator against spray. */
final class WetElectrics {

    static final Rule RULE = Rule.of("alternator/wet-electrics", ERROR, "housing of the alternator against spray")
            .why(
                    "The alternator stands an arm's length from a jet of water. Spray in the winding shorts it, and wet leads"
                            + " are live leads.")
            .formula(
                    "IP code: first numeral ≥ 5 (dust); second ≥ 4 (splashes), where a jet can strike 5 or 6 (jets): 7, 8"
                            + " and 9 do not stand for 5 and 6")
            .judged("as built")
            .source(
                    "IEC 60529 degrees of protection: clause 6 and table 3, numerals above 6 not for jets unless both are"
                            + " marked (from memory)")
            .source(COMMON_PRACTICE)
            .limit("dust", RATIO, 5, "", COMMON_PRACTICE, HIGHER)
            .limit("splash", RATIO, 4, "", COMMON_PRACTICE, HIGHER)
            .limit("jet", RATIO, 5, "", "IEC 60529 table 3, water jets (from memory)", HIGHER)
            .passes("tight", "The housing is {code}.")
            .fails("leaks", "The housing is {code}, too little beside a jet: IP54 is the least.")
            .fails(
                    "not-for-jets",
                    "The housing is {code}, and a jet can strike it: that takes a second numeral of 5 or 6, which 7 and 8 do"
                            + " not stand for.")
            .open("not-a-code", "Cannot be judged: \"{code}\" does not tell the protection against water.")
            .notApplicable("dry-place", "Not judged: the alternator stands in the dry.")
            .judge(WetElectrics::judge)
            .wayOut(
                    "housing",
                    "A housing of {code}, or a wall between jet and alternator.",
                    Change.of("/alternator/protection", "IP55").with("code", "IP55"))
            .build();

    private WetElectrics() {}

    private static Outcome judge(Judgement j) {
        Spot spot = j.at("/alternator/protection");
        if (Boolean.FALSE.equals(DesignParts.safeguards(j).wetPlace())) {
            return spot.says("dry-place");
        }
        String code = spot.given(j.design().alternator().protection());
        Spot told = spot.with("code", code);
        Optional<IpCode> housing = IpCode.of(code);
        return housing.isEmpty() ? told.open(spot.path(), "not-a-code") : judge(j, told, housing.get());
    }

    private static Outcome judge(Judgement j, Spot spot, IpCode housing) {
        Comparison splash = Comparison.atLeast(housing.splash(), j.limit("splash"));
        Comparison dust = Comparison.atLeast(housing.dust(), j.limit("dust"));
        if (!splash.holds() || !dust.holds()) {
            return spot.compare(splash.holds() ? dust : splash);
        }
        if (housing.jets() >= j.limit("jet").value()) {
            return spot.compare(dust);
        }
        boolean strikes = spot.given(
                "/safeguards/jet-can-strike", DesignParts.safeguards(j).jetCanStrike());
        return strikes ? spot.says("not-for-jets") : spot.compare(dust);
    }
}
