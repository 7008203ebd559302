package org.leat.pack;

import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.design.Penstock;
import org.leat.quantity.QuantityKind;

/** Frost against a pipe that can stand full. */
final class SiteFreezing implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("site/freezing", Level.WARNING)
            .title("frost against a pipe that can stand full")
            .why(
                    "Water that runs does not freeze; water that stands in an exposed pipe freezes in a night and splits valves"
                            + " and joints. A plant stops at the worst time: when leaves or ice block the screen.")
            .formula("lowest air temperature ≥ 0 °C, or the pipe below frost depth, or emptied whenever it stands")
            .judged("the coldest night, the plant stopped")
            .source(RuleCard.COMMON_PRACTICE)
            .message("no-frost")
            .message("frost", "temperature")
            .message("buried")
            .message("drained")
            .message("bury")
            .message("drain")
            .build();

    private static final double FREEZING = 273.15;
    private static final String EXPOSED = "/penstock/exposed";

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.design().site().airTemperature() == null) {
            return List.of(j.at("/site").notGiven("/site/air-temperature"));
        }
        double coldest = j.plant().numbers().site().lowestAirTemperature();
        if (coldest >= FREEZING) {
            return List.of(j.at(EXPOSED).pass("no-frost"));
        }
        Penstock penstock = j.design().penstock();
        if (Boolean.FALSE.equals(penstock.exposed())) {
            return List.of(j.at(EXPOSED).pass("buried"));
        }
        if (Boolean.TRUE.equals(penstock.drained())) {
            return List.of(j.at(EXPOSED).pass("drained"));
        }
        return List.of(
                penstock.exposed() == null
                        ? j.at("/penstock").notGiven(EXPOSED)
                        : j.at(EXPOSED).fail("frost", Arg.of("temperature", coldest, QuantityKind.TEMPERATURE)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return List.of(
                j.wayOut("bury", List.of(new Edit(EXPOSED, false))),
                j.wayOut("drain", List.of(new Edit("/penstock/drained", true))));
    }
}
