package org.leat.pack;

import java.util.List;
import java.util.stream.DoubleStream;
import javax.measure.quantity.ElectricCharge;
import org.leat.catalogue.CellChemistryCatalogue;
import org.leat.catalogue.CellProperty;
import org.leat.check.Arg;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Outcome;
import org.leat.check.WayOut;
import org.leat.electrics.EnergyBalance;
import org.leat.pack.Search.Candidate;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.BatteryNumbers;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** The season with least power. */
final class Lean {

    private Lean() {}

    /** {@return running at the flow of the year that gives least, else as built; the plant is solved} */
    static Running of(Judgement j) {
        List<Running> year = j.cases().overTheYear();
        return year.isEmpty()
                ? j.cases().running().get(0)
                : Worst.least(year, r -> r.operatingPoint().batteryPower());
    }

    /** {@return what is left of a day there, J} */
    static EnergyBalance balance(Judgement j, Running lean, EnergyBalance.Use use) {
        double efficiency =
                CellChemistryCatalogue.usual(j.design().battery().chemistry(), CellProperty.ENERGY_EFFICIENCY);
        return EnergyBalance.ofDay(Math.max(0, lean.operatingPoint().batteryPower()), use, 1, efficiency);
    }

    /** {@return energy of the bank, J} */
    static double stored(Judgement j) {
        BatteryNumbers battery = j.plant().numbers().battery();
        return battery.capacity()
                * battery.cellsInSeries()
                * CellChemistryCatalogue.usual(battery.chemistry(), CellProperty.NOMINAL_VOLTAGE);
    }

    /** {@return larger banks as ways out; the rule says {@code larger} of {@code capacity}} */
    static List<WayOut> largerBank(LegacyRule rule, Judgement j, Outcome failure) {
        double now = Si.of(j.design().battery().capacity()) / 3600;
        return Search.first(
                        rule,
                        j,
                        failure,
                        DoubleStream.of(1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10).mapToObj(times -> {
                            double hours = Math.ceil(now * times / 10) * 10;
                            return Candidate.of(
                                    "larger",
                                    new Edit("/battery/capacity", Si.quantity(hours, "Ah", ElectricCharge.class)),
                                    Arg.of("capacity", hours * 3600, QuantityKind.CHARGE));
                        }))
                .map(List::of)
                .orElse(List.of());
    }
}
