package org.leat.pack;

import org.leat.catalogue.CellChemistryCatalogue;
import org.leat.check.Judgement;
import org.leat.electrics.BatteryFaultCurrent;
import org.leat.plant.numbers.BatteryNumbers;

/** Current of a battery whose poles are joined by a fault. */
final class BatteryFault {

    private BatteryFault() {}

    /** {@return A; the battery full, the loop's resistance in Ω beside its own} */
    static double current(Judgement j, double loop) {
        BatteryNumbers battery = j.plant().numbers().battery();
        double full = battery.cellsInSeries() * CellChemistryCatalogue.openCircuitVoltage(battery.chemistry(), 1);
        return BatteryFaultCurrent.at(full, battery.internalResistance(), loop);
    }
}
