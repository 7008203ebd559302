package org.leat.pack;

import org.leat.check.Judgement;
import org.leat.design.InsulationClass;
import org.leat.electrics.WindingTemperature;
import org.leat.law.Answer;
import org.leat.plant.solve.EnergyAccount;
import org.leat.plant.solve.OperatingPoint;

/**
 * Temperature of a winding from its losses, see {@link WindingTemperature}. Where the plant was solved with a temperature
 * that the design states, the copper loss is carried from it to the settled one; else this is what it settled at. Where the
 * loss grows faster than the heat leaves there is no temperature and the answer is infinite.
 */
final class WindingHeat {

    private static final double ZERO_CELSIUS = 273.15;

    private WindingHeat() {}

    /** {@return K} Air as hot as it gets; thermal resistance of winding to air in K/W. */
    static double temperature(Judgement j, OperatingPoint operatingPoint, double thermalResistance) {
        if (j.plant().numbers().alternator().thermalResistance().isKnown()) {
            return operatingPoint.windingTemperature();
        }
        double copper = operatingPoint.energy().lostBefore(EnergyAccount.Stage.TERMINALS);
        double iron = operatingPoint.energy().lostBefore(EnergyAccount.Stage.AIR_GAP);
        return settled(j, iron, copper, operatingPoint.windingTemperature(), thermalResistance);
    }

    /** {@return K} Losses in W, the copper's at a temperature of the winding, K; air as hot as it gets. */
    static double settled(Judgement j, double iron, double copper, double takenAt, double thermalResistance) {
        Answer settled = WindingTemperature.of(
                j.plant().numbers().site().highestAirTemperature() - ZERO_CELSIUS,
                iron,
                copper,
                takenAt - ZERO_CELSIUS,
                thermalResistance);
        return settled instanceof Answer.Value value ? value.value() + ZERO_CELSIUS : Double.POSITIVE_INFINITY;
    }

    /** {@return the highest temperature of a class, K; IEC 60085} */
    static double highest(InsulationClass insulation) {
        return 273.15
                + switch (insulation) {
                    case A -> 105;
                    case E -> 120;
                    case B -> 130;
                    case F -> 155;
                    case H -> 180;
                };
    }
}
