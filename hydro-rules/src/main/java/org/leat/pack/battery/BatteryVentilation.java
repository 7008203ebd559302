package org.leat.pack.battery;

import static org.leat.check.Level.ERROR;
import static org.leat.quantity.QuantityKind.AREA;
import static org.leat.quantity.QuantityKind.CURRENT;
import static org.leat.quantity.QuantityKind.VOLUME_FLOW;

import java.util.stream.Stream;
import javax.measure.quantity.Area;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Chemistry;
import org.leat.design.Ventilation;
import org.leat.pack.kit.ChangesForText;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.LeadAcid;
import org.leat.plant.duties.HydrogenAir;
import org.leat.quantity.Quantities.VolumeFlow;
import org.leat.quantity.Si;

/** Air that keeps the hydrogen of lead from exploding. */
final class BatteryVentilation {

    static final Rule RULE = Rule.of("battery/ventilation", ERROR, "air that keeps the hydrogen of lead from exploding")
            .why(
                    "Lead at absorption voltage gives off hydrogen, and a stream charges day and night. Four per cent of it in air"
                            + " explode on the spark of a relay.")
            .formula(
                    "Q = 0.05 m³/(A h) · n · I_gas of air from a fan, or two openings of A = Q / 0.1 m/s; I_gas of the highest"
                            + " charge stage that is set")
            .judged(
                    "absorption, or equalising where it is set; with nothing that limits the voltage, all the turbine gives")
            .source("IEC 62485-2 clauses 7.2 to 7.5 (formula and opening read in reproductions)")
            .source(
                    "EN 50272-3: without voltage limit 60 mA (sealed 15 mA) for each Ah, no more than what charges (read in a"
                            + " reproduction)")
            .passes("enough-air", "A fan moves {value} (gas current {gas}).")
            .fails("too-little-air", "A fan moves {value}; {limit} keep the hydrogen of {gas} from exploding.")
            .passes("large-enough", "Each opening has {value} (gas current {gas}).")
            .fails("too-small", "Each opening has {value}; {limit} keep the hydrogen of {gas} from exploding.")
            .fails("same-air", "Open lead cells stand in air where people sleep or sparks occur.")
            .notApplicable("no-hydrogen", "Not judged: such cells give off no hydrogen in normal use.")
            .judge(BatteryVentilation::judge)
            .leastWayOut("more", "{rating} of it.", ChangesForText.except("same-air", BatteryVentilation::more))
            .advice(
                    "apart",
                    "A room or cabinet of its own, vented to the outside.",
                    ChangesForText.only("same-air", Change.advice()))
            .build();

    private BatteryVentilation() {}

    private static Outcome judge(Judgement j) {
        Spot spot = j.at("/battery/ventilation");
        if (!LeadAcid.is(j)) {
            return spot.says("no-hydrogen");
        }
        Ventilation air = spot.given(j.design().battery().ventilation());
        if (air.airFlow() == null && air.openingArea() == null) {
            return spot.notGiven(spot.path());
        }
        boolean open = j.design().battery().chemistry() == Chemistry.FLOODED_LEAD_ACID;
        if (open && Boolean.TRUE.equals(air.livingSpace())) {
            return j.at("/battery/ventilation/living-space").says("same-air");
        }
        HydrogenAir needed = HydrogenAir.of(j.solved());
        Spot told = spot.with("gas", needed.gasCurrent(), CURRENT);
        return air.airFlow() != null
                ? told.at("/battery/ventilation/air-flow")
                        .saying("enough-air", "too-little-air")
                        .atLeast(Si.of(air.airFlow()), needed.airFlow(), VOLUME_FLOW)
                : told.at("/battery/ventilation/opening-area")
                        .saying("large-enough", "too-small")
                        .atLeast(spot.si(air.openingArea()), needed.openingArea(), AREA);
    }

    private static Stream<Change> more(Judgement j, Outcome.Fail failure) {
        double least = failure.limit();
        return Stream.of(
                failure.says("too-small")
                        ? FieldChanges.rated(failure.path(), Math.ceil(least * 1e3) * 10 + 10, "cm²", Area.class)
                        : FieldChanges.rated(
                                failure.path(), Math.ceil(least * 1e4) / 10 + 0.1, "L/s", VolumeFlow.class));
    }
}
