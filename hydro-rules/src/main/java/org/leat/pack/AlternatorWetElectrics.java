package org.leat.pack;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.Safeguards;
import org.leat.quantity.QuantityKind;

/** Housing of the alternator against spray. */
final class AlternatorWetElectrics implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("alternator/wet-electrics", Level.ERROR)
            .title("housing of the alternator against spray")
            .why(
                    "The alternator stands an arm's length from a jet of water. Spray in the winding shorts it, and wet leads"
                            + " are live leads.")
            .formula(
                    "IP code: first numeral ≥ 5 (dust); second ≥ 4 (splashes), where a jet can strike 5 or 6 (jets): 7, 8 and 9 do"
                            + " not stand for 5 and 6")
            .judged("as built")
            .source(
                    "IEC 60529 degrees of protection: clause 6 and table 3, numerals above 6 not for jets unless both are marked"
                            + " (from memory)")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("dust", QuantityKind.RATIO, 5, "", RuleCard.COMMON_PRACTICE)
            .limit("splash", QuantityKind.RATIO, 4, "", RuleCard.COMMON_PRACTICE)
            .limit("jet", QuantityKind.RATIO, 5, "", "IEC 60529 table 3, water jets (from memory)")
            .message("tight", "code")
            .message("not-for-jets", "code")
            .message("leaks", "code")
            .message("not-a-code", "code")
            .message("dry-place")
            .message("housing", "code")
            .build();

    private static final Pattern CODE = Pattern.compile("(?:IP ?)?([0-6X])([0-9X])[A-DHMSW]*");

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
        Arg told = Arg.of("code", code);
        double dust = 0;
        double splash = 0;
        double jets = 0;
        boolean water = false;
        for (String part : code.strip().split(" ?/ ?", -1)) {
            Matcher m = CODE.matcher(part);
            if (!m.matches()) {
                return List.of(spot.open(spot.path(), "not-a-code", told));
            }
            dust = Math.max(dust, numeral(m.group(1)));
            double second = numeral(m.group(2));
            splash = Math.max(splash, second);
            jets = Math.max(jets, second <= 6 ? second : 0);
            water |= !m.group(2).equals("X");
        }
        if (!water) {
            return List.of(spot.open(spot.path(), "not-a-code", told));
        }
        return List.of(judge(j, spot, new double[] {dust, splash, jets}, told));
    }

    private static Outcome judge(Judgement j, Spot spot, double[] numerals, Arg told) {
        Comparison splash = Comparison.atLeast(numerals[1], j.limit("splash"));
        Comparison dust = Comparison.atLeast(numerals[0], j.limit("dust"));
        if (!splash.holds() || !dust.holds()) {
            return spot.compare(splash.holds() ? dust : splash, "tight", "leaks", told);
        }
        Comparison jets = Comparison.atLeast(numerals[2], j.limit("jet"));
        Safeguards safeguards = j.design().safeguards();
        Boolean strikes = safeguards == null ? null : safeguards.jetCanStrike();
        if (strikes == null && !jets.holds()) {
            return spot.notGiven("/safeguards/jet-can-strike");
        }
        if (Boolean.TRUE.equals(strikes) && !jets.holds()) {
            return spot.fail("not-for-jets", told);
        }
        return spot.compare(dust, "tight", "leaks", told);
    }

    private static double numeral(String text) {
        return text.equals("X") ? 0 : Integer.parseInt(text);
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Stated.otherwise(this, j, failure, "housing", "IP55", Arg.of("code", "IP55"));
    }
}
