package org.leat.pack;

import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Area;
import org.leat.catalogue.CellChemistryCatalogue;
import org.leat.catalogue.CellProperty;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.Chemistry;
import org.leat.design.Ventilation;
import org.leat.electrics.HydrogenVentilation;
import org.leat.plant.cases.BatteryFull;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;
import org.leat.quantity.VolumeFlow;

/** Air that keeps the hydrogen of lead from exploding. */
final class BatteryVentilation implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("battery/ventilation", Level.ERROR)
            .title("air that keeps the hydrogen of lead from exploding")
            .why(
                    "Lead at absorption voltage gives off hydrogen, and a stream charges day and night. Four per cent of it in air"
                            + " explode on the spark of a relay.")
            .formula("Q = 0.05 m³/(A h) · n · I_gas of air from a fan, or two openings of A = Q / 0.1 m/s")
            .judged("absorption voltage; with nothing that limits the voltage, all the turbine gives")
            .source("IEC 62485-2 clauses 7.2 to 7.5 (formula and opening read in reproductions)")
            .message("enough-air", "gas")
            .message("too-little-air", "gas")
            .message("large-enough", "gas")
            .message("too-small", "gas")
            .message("same-air")
            .message("no-hydrogen")
            .message("more", "rating")
            .message("apart")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Spot spot = j.at("/battery/ventilation");
        if (!Lead.is(j)) {
            return List.of(spot.notApplicable("no-hydrogen"));
        }
        Ventilation air = j.design().battery().ventilation();
        if (air == null || (air.airFlow() == null && air.openingArea() == null)) {
            return List.of(spot.notGiven(spot.path()));
        }
        Chemistry chemistry = j.design().battery().chemistry();
        if (chemistry == Chemistry.FLOODED_LEAD_ACID && Boolean.TRUE.equals(air.livingSpace())) {
            return List.of(j.at("/battery/ventilation/living-space").fail("same-air"));
        }
        if (j.cases().batteryFull().isEmpty()) {
            return Open.unsolved(j);
        }
        double gas = HydrogenVentilation.gasCurrent(
                CellChemistryCatalogue.usual(chemistry, CellProperty.BOOST_GAS_CURRENT),
                j.plant().numbers().battery().capacity());
        BatteryFull most = Worst.most(j.cases().batteryFull(), BatteryFull::turbineCurrent);
        if (most.answer() == BatteryFull.Answer.OVERCHARGED) {
            gas = Math.max(gas, most.turbineCurrent());
        }
        double flow = HydrogenVentilation.airFlow(j.design().battery().cellsInSeries(), gas);
        Arg told = Arg.of("gas", gas, QuantityKind.CURRENT);
        return List.of(
                air.airFlow() != null
                        ? j.at("/battery/ventilation/air-flow")
                                .compare(
                                        Comparison.atLeast(Si.of(air.airFlow()), flow, QuantityKind.VOLUME_FLOW),
                                        "enough-air",
                                        "too-little-air",
                                        told)
                        : j.at("/battery/ventilation/opening-area")
                                .compare(
                                        Comparison.atLeast(
                                                Si.of(Objects.requireNonNull(air.openingArea())),
                                                HydrogenVentilation.openingArea(flow),
                                                QuantityKind.AREA),
                                        "large-enough",
                                        "too-small",
                                        told));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        Comparison comparison = failure.comparison();
        if (comparison == null) {
            return List.of(j.advice("apart"));
        }
        return comparison.kind() == QuantityKind.AREA
                ? Rated.larger(this, j, failure, "more", "cm²", Area.class, Math.ceil(comparison.low() * 1e3) * 10 + 10)
                : Rated.larger(
                        this,
                        j,
                        failure,
                        "more",
                        "L/s",
                        VolumeFlow.class,
                        Math.ceil(comparison.low() * 1e4) / 10 + 0.1);
    }
}
