package org.leat.pack.kit;

import java.util.ArrayList;
import java.util.List;
import org.leat.design.RegulatorKind;
import org.leat.plant.cases.Cases;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.PlantNumbers;

/**
 * The voltages at the bridge, before a tracking or series regulator, between which what hangs there may be switched on: above
 * every one at which the plant works, below the least that a part there stands.
 *
 * @param working the highest while it charges, V
 * @param during the situation of that
 */
public record BridgeWindow(double working, Running during) {

    /** Above every working voltage, and rounded up to whole volts, a trigger is suggested by these factors. */
    private static final List<Double> ABOVE = List.of(1.15, 1.1, 1.25, 1.4, 1.05);

    /** Of a product of what is whole. */
    private static final double ROUNDING = 1e-9;

    /** {@return the window of a solved plant whose regulator divides the bus} */
    public static BridgeWindow of(Cases cases) {
        PlantNumbers numbers = cases.numbers();
        // a series regulator is closed until its set point
        double set = numbers.regulator().kind() == RegulatorKind.SERIES
                ? Math.max(
                        numbers.battery().absorptionVoltage(),
                        numbers.regulator().equalisingVoltage().orElse(0))
                : 0;
        Running highest = Worst.most(cases.running(), Running::lastingVoltage);
        return new BridgeWindow(Math.max(set, highest.lastingVoltage()), highest);
    }

    /** A part at the bridge and what it stands, V. */
    public record RatedPart(PartWord part, Amount rating) {

        boolean stands(double voltage) {
            return !(rating instanceof Amount.Known known) || voltage < known.value();
        }
    }

    /** {@return what hangs on the bridge, before the regulator} */
    public static List<RatedPart> parts(PlantNumbers numbers) {
        List<RatedPart> parts = new ArrayList<>();
        parts.add(new RatedPart(PartWord.REGULATOR, numbers.regulator().inputVoltageLimit()));
        parts.add(new RatedPart(PartWord.DIODES, numbers.rectifier().reverseVoltageRating()));
        if (numbers.rectifier().capacitance() > 0) {
            parts.add(new RatedPart(PartWord.CAPACITOR, numbers.rectifier().capacitorVoltageRating()));
        }
        return parts;
    }

    /** {@return triggers in the window, V, the best first} Ratings that are not known do not count. */
    public List<Double> triggers(PlantNumbers numbers) {
        List<RatedPart> parts = parts(numbers);
        return ABOVE.stream()
                .map(factor -> Math.ceil(factor * working - ROUNDING))
                .filter(trigger -> trigger > working && parts.stream().allMatch(part -> part.stands(trigger)))
                .toList();
    }
}
