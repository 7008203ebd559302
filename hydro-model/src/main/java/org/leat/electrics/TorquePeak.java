package org.leat.electrics;

import org.leat.law.Answer;

/**
 * Greatest torque of an alternator on a bus, and its speed. Above it torque falls while the current goes on towards its
 * saturation: a bus does not hold a runner that has passed the peak. Only the air-gap torque; friction and iron come on
 * top.
 *
 * <p>Found by a golden-section search over the logarithm of speed between cut-in and 1000 times the greater of cut-in
 * and R/(pL); the torque of a sine machine on a stiff bus has one maximum there (checked by a property test). Without
 * inductance torque rises without end: the answer is then outside.
 *
 * @param speed rad/s
 * @param torque N·m
 */
public record TorquePeak(double speed, double torque) {

    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    /** {@return the peak's speed as an answer: outside where the winding has no inductance} */
    public static Answer speedOf(BatteryClamp bus) {
        double inductance = bus.alternator().phaseInductance();
        return inductance > 0
                ? Answer.of(of(bus).speed())
                : Answer.below("torque peak", "phase inductance", inductance, Double.MIN_VALUE, "H");
    }

    /**
     * {@return the peak}
     *
     * @throws IllegalArgumentException if the winding has no inductance
     */
    public static TorquePeak of(BatteryClamp bus) {
        AlternatorConstants machine = bus.alternator();
        if (machine.phaseInductance() <= 0) {
            throw new IllegalArgumentException("without inductance torque has no peak");
        }
        double cutIn = CutInSpeed.of(bus);
        double resistance =
                machine.phaseResistance() + bus.leadResistance() + bus.diode().slope() + bus.busResistance();
        double corner = resistance / (machine.polePairs() * machine.phaseInductance());
        double low = Math.log(Math.max(cutIn, 1e-3 * corner));
        double high = Math.log(1000 * Math.max(cutIn, corner));
        double a = high - GOLDEN * (high - low);
        double b = low + GOLDEN * (high - low);
        double atA = bus.at(Math.exp(a)).torque();
        double atB = bus.at(Math.exp(b)).torque();
        while (high - low > 1e-6) {
            if (atA > atB) {
                high = b;
                b = a;
                atB = atA;
                a = high - GOLDEN * (high - low);
                atA = bus.at(Math.exp(a)).torque();
            } else {
                low = a;
                a = b;
                atA = atB;
                b = low + GOLDEN * (high - low);
                atB = bus.at(Math.exp(b)).torque();
            }
        }
        double speed = Math.exp(0.5 * (low + high));
        return new TorquePeak(speed, bus.at(speed).torque());
    }
}
