package org.leat.pack;

import org.leat.check.Judgement;
import org.leat.plant.EnergyAccount;
import org.leat.plant.Operation;

/**
 * Temperature of a winding from its losses: T = T_air + R_th (P_fe + P_cu (234.5 + T)/(234.5 + T_w)), temperatures in °C,
 * with P_cu at the temperature T_w the plant was solved with. Copper warms, its loss grows with it: where the loss grows
 * faster than the heat leaves there is no temperature and the answer is infinite.
 *
 * <p>Source: heat balance; resistance of copper by IEC 60034-1.
 */
final class WindingHeat {

    private static final double COPPER = 234.5;
    private static final double ZERO_CELSIUS = 273.15;

    private WindingHeat() {}

    /** {@return K} Air as hot as it gets; thermal resistance of winding to air in K/W. */
    static double temperature(Judgement j, Operation operation, double thermalResistance) {
        double copper = operation.energy().lostBefore(EnergyAccount.Stage.TERMINALS);
        double iron = operation.energy().lostBefore(EnergyAccount.Stage.AIR_GAP);
        double solved = j.plant().numbers().alternator().windingTemperature() - ZERO_CELSIUS;
        double air = j.plant().numbers().site().highestAirTemperature() - ZERO_CELSIUS;
        double perKelvin = thermalResistance * copper / (COPPER + solved);
        return perKelvin >= 1
                ? Double.POSITIVE_INFINITY
                : (air + thermalResistance * iron + perKelvin * COPPER) / (1 - perKelvin) + ZERO_CELSIUS;
    }
}
