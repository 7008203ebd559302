package org.leat.pack;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.ElectricPotential;
import org.jspecify.annotations.Nullable;
import org.leat.catalogue.CellChemistryCatalogue;
import org.leat.catalogue.CellProperty;
import org.leat.catalogue.Spread;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.ChargeRegulator;
import org.leat.design.Chemistry;
import org.leat.pack.Search.Candidate;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Set points of the charge regulator against chemistry and number of cells. */
final class RegulatorSetPoints implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("regulator/set-points", Level.ERROR)
            .title("set points of the charge regulator against chemistry and cells")
            .why(
                    "A tenth of a volt a cell too much gasses lead dry and opens or ignites lithium; too little starves lead. The"
                            + " default of a regulator is for somebody else's battery.")
            .formula(
                    "each set point / cells in series within the chemistry's range; above it an error, below it a warning")
            .judged("as set")
            .source("ranges by chemistry: makers' data and battery handbooks, as tabled with the cells' properties")
            .message("inside", "cell")
            .message("outside", "cell")
            .message("none-for-chemistry")
            .message("none")
            .message("set", "rating")
            .message("leave-out")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        ChargeRegulator regulator = j.design().regulator();
        if (regulator == null) {
            return List.of(j.at("/regulator").notApplicable("none"));
        }
        return List.of(
                judge(
                        j,
                        "absorption-voltage",
                        Rated.si(regulator.absorptionVoltage()),
                        CellProperty.ABSORPTION_VOLTAGE,
                        CellProperty.HIGHEST_CHARGE_VOLTAGE),
                judge(
                        j,
                        "float-voltage",
                        Rated.si(regulator.floatVoltage()),
                        CellProperty.FLOAT_VOLTAGE,
                        CellProperty.FLOAT_VOLTAGE),
                judge(
                        j,
                        "cut-off-voltage",
                        Rated.si(regulator.cutOffVoltage()),
                        CellProperty.LOW_VOLTAGE_DISCONNECT,
                        CellProperty.NOMINAL_VOLTAGE));
    }

    private static Outcome judge(
            Judgement j, String field, @Nullable Double set, CellProperty lowOf, CellProperty highOf) {
        Spot spot = j.at("/regulator/" + field);
        Chemistry chemistry = j.design().battery().chemistry();
        Spread low = CellChemistryCatalogue.find(chemistry, lowOf).orElse(null);
        Spread high = CellChemistryCatalogue.find(chemistry, highOf).orElse(null);
        if (low == null || high == null) {
            return set == null ? spot.notApplicable("none-for-chemistry") : spot.fail("none-for-chemistry");
        }
        if (set == null) {
            return spot.notGiven(spot.path());
        }
        int cells = j.design().battery().cellsInSeries();
        double most = cells * high.high();
        if (highOf == CellProperty.HIGHEST_CHARGE_VOLTAGE) {
            most = Math.min(most, Si.of(j.design().battery().chargeVoltageLimit(), most));
        }
        // a tenth of a per cent of grace for set points that are rounded
        Comparison comparison =
                Comparison.within(set, Math.min(0.999 * cells * low.low(), most), 1.001 * most, QuantityKind.VOLTAGE);
        return spot.compare(
                set > comparison.high() ? Level.ERROR : Level.WARNING,
                comparison,
                "inside",
                "outside",
                Arg.of("cell", set / cells, QuantityKind.VOLTAGE));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        Comparison comparison = failure.comparison();
        if (comparison == null) {
            return Search.first(this, j, failure, Stream.of(Candidate.of("leave-out", new Edit(failure.path(), null))))
                    .map(List::of)
                    .orElse(List.of());
        }
        double middle = Math.rint(5 * (comparison.low() + comparison.high())) / 10;
        return Rated.larger(this, j, failure, "set", "V", ElectricPotential.class, middle, comparison.low());
    }
}
