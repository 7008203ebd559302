package org.leat.pack;

import org.leat.check.Judgement;
import org.leat.electrics.WindingTemperature;
import org.leat.law.Answer;
import org.leat.plant.EnergyAccount;
import org.leat.plant.Operation;

/**
 * Temperature of a winding from its losses, see {@link WindingTemperature}. Where the plant was solved with a temperature
 * that the design states, the copper loss is carried from it to the settled one; else this is what it settled at. Where the
 * loss grows faster than the heat leaves there is no temperature and the answer is infinite.
 */
final class WindingHeat {

    private static final double ZERO_CELSIUS = 273.15;

    private WindingHeat() {}

    /** {@return K} Air as hot as it gets; thermal resistance of winding to air in K/W. */
    static double temperature(Judgement j, Operation operation, double thermalResistance) {
        if (j.plant().numbers().alternator().thermalResistance() != null) {
            return operation.windingTemperature();
        }
        Answer settled = WindingTemperature.of(
                j.plant().numbers().site().highestAirTemperature() - ZERO_CELSIUS,
                operation.energy().lostBefore(EnergyAccount.Stage.AIR_GAP),
                operation.energy().lostBefore(EnergyAccount.Stage.TERMINALS),
                operation.windingTemperature() - ZERO_CELSIUS,
                thermalResistance);
        return settled instanceof Answer.Value value ? value.value() + ZERO_CELSIUS : Double.POSITIVE_INFINITY;
    }
}
