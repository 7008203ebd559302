package org.leat.plant.duties;

import java.util.Collections;
import java.util.Comparator;
import java.util.Objects;
import java.util.OptionalDouble;
import org.leat.design.InsulationClass;
import org.leat.design.MagnetGrade;
import org.leat.electrics.NeodymiumGrade;
import org.leat.electrics.ThermalClass;
import org.leat.electrics.WindingTemperature;
import org.leat.law.Answer;
import org.leat.plant.cases.BrokenBridge;
import org.leat.plant.cases.Cases;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.solved.EnergyAccount.Stage;
import org.leat.plant.solved.OperatingPoint;
import org.leat.quantity.Celsius;

/**
 * The winding after days of running on one nozzle set, in air as hot as it gets.
 *
 * @param running on one nozzle set
 * @param temperature mean of the winding, K; empty where the loss grows faster than the heat leaves
 */
public record SettledWinding(Running running, OptionalDouble temperature) {

    /** °C. */
    private static final double FERRITE = 250;

    /** °C: above the highest numbered class, 250, by as much again as classes are apart (IEC 60085). */
    private static final double BURNT = 300;

    /**
     * {@return the winding, warmed by copper, iron and friction} Where the plant was solved with a temperature that the design
     * states, the copper loss is carried from it to the settled one, see {@link WindingTemperature}; else this is what it
     * settled at.
     *
     * @param thermalResistance of winding to air, K/W
     */
    public static SettledWinding of(PlantNumbers numbers, Running running, double thermalResistance) {
        OperatingPoint point = running.operatingPoint();
        if (numbers.alternator().thermalResistance() instanceof Amount.Known) {
            return new SettledWinding(running, OptionalDouble.of(point.windingTemperature()));
        }
        OptionalDouble temperature = under(
                numbers,
                point.windingTemperature(),
                point.energy().lostBefore(Stage.AIR_GAP),
                point.energy().lostBefore(Stage.TERMINALS),
                thermalResistance);
        return new SettledWinding(running, temperature);
    }

    /**
     * {@return temperature at which a winding settles, K; empty where the loss grows faster than the heat leaves}
     *
     * @param windingTemperature at which the copper loss is meant, K
     * @param idleLoss iron and friction, W
     * @param copperLoss W
     * @param thermalResistance of winding to air, K/W
     */
    public static OptionalDouble under(
            PlantNumbers numbers,
            double windingTemperature,
            double idleLoss,
            double copperLoss,
            double thermalResistance) {
        Answer settled = WindingTemperature.of(
                Celsius.of(numbers.site().highestAirTemperature()),
                idleLoss,
                copperLoss,
                Celsius.of(windingTemperature),
                thermalResistance);
        return settled instanceof Answer.Value value
                ? OptionalDouble.of(Celsius.toKelvin(value.value()))
                : OptionalDouble.empty();
    }

    /**
     * {@return temperature at which a winding settles behind a broken bridge, K, every phase taken to be as hot as the hottest;
     * empty where the loss grows faster than the heat leaves}
     *
     * @param cases of the plant, among them running on the fault's nozzle set
     * @param thermalResistance of winding to air, K/W
     */
    public static OptionalDouble behind(Cases cases, BrokenBridge broken, double thermalResistance) {
        return behind(cases, broken, broken.phaseCurrent(), thermalResistance);
    }

    /**
     * {@return the same with less current, no more than that of the fault, at no higher speed: a bound}
     *
     * @param phaseCurrent rms of the phase that carries most, A
     */
    public static OptionalDouble behind(
            Cases cases, BrokenBridge broken, double phaseCurrent, double thermalResistance) {
        double kelvin = cases.running().stream()
                .filter(running -> Objects.equals(running.nozzles(), broken.nozzles()))
                .findFirst()
                .orElseThrow()
                .operatingPoint()
                .windingTemperature();
        AlternatorNumbers warm = cases.numbers().alternator().warmedTo(kelvin);
        double own = broken.runnerSpeed() * warm.gearRatio();
        return under(
                cases.numbers(),
                kelvin,
                warm.noLoad().at(own) * own,
                3 * warm.phaseResistance() * phaseCurrent * phaseCurrent,
                thermalResistance);
    }

    /**
     * {@return whether a winding that settles at a temperature, K, or at none, burns: above 300 °C no insulation is left to be judged}
     */
    public static boolean burns(OptionalDouble kelvin) {
        return kelvin.isEmpty() || Celsius.of(kelvin.getAsDouble()) > BURNT;
    }

    /** {@return the order of temperatures at which windings settle, those that settle at none last} */
    public static Comparator<OptionalDouble> coolestFirst() {
        return Comparator.<OptionalDouble, Boolean>comparing(OptionalDouble::isEmpty)
                .thenComparingDouble(kelvin -> kelvin.orElse(0));
    }

    /** {@return the hottest of all nozzle sets; the plant is solved} Thermal resistance of winding to air in K/W. */
    public static SettledWinding hottest(Cases cases, double thermalResistance) {
        return Collections.max(
                cases.running().stream()
                        .map(running -> of(cases.numbers(), running, thermalResistance))
                        .toList(),
                Comparator.comparing(SettledWinding::temperature, coolestFirst()));
    }

    /** {@return the highest temperature that a class of insulation stands, K; IEC 60085} */
    public static double limit(InsulationClass insulation) {
        return Celsius.toKelvin(ThermalClass.valueOf(insulation.name()).limit());
    }

    /** {@return hottest spot of the winding less its mean temperature by resistance, K: A and E 5, B and F 10, H 15} See {@link ThermalClass}. */
    public static double hotSpotAllowance(InsulationClass insulation) {
        return ThermalClass.valueOf(insulation.name()).hotSpotAllowance();
    }

    /** {@return the highest temperature that magnets of a grade stand, K} See {@link NeodymiumGrade}; ferrite 250 °C (from memory). */
    public static double magnetLimit(MagnetGrade grade) {
        return Celsius.toKelvin(
                grade == MagnetGrade.FERRITE
                        ? FERRITE
                        : NeodymiumGrade.valueOf(grade.name()).limit());
    }
}
