package org.leat.plant.duties;

import java.util.Collections;
import java.util.Comparator;
import org.leat.plant.cases.Cases;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.solved.WaterSide.Jet;
import org.leat.turbine.BoltShear;
import org.leat.turbine.JetForce;

/** The torque that the joint of wheel and shaft must carry for a moment, N·m. */
public final class HubTorque {

    private HubTorque() {}

    /**
     * The greatest of all: the wheel held fast in the strongest jets of the sets on hand, or the leads shorted all at once.
     *
     * @param strongest nozzle set whose jets pull most on a wheel held fast
     * @param held that of its jets, N·m
     * @param shorted that of the leads, N·m
     */
    public record Greatest(Running strongest, double held, double shorted) {

        /** {@return the greater of the two, N·m} */
        public double torque() {
            return Math.max(held, shorted);
        }

        /** {@return the case that makes it} */
        public String during() {
            return held >= shorted ? "jammed/" + strongest.nozzles().name() : "leads-shorted-at-once";
        }
    }

    /** {@return the greatest; the plant is solved} */
    public static Greatest greatest(Cases cases) {
        PlantNumbers numbers = cases.numbers();
        Running strongest =
                Collections.max(cases.running(), Comparator.comparingDouble(running -> jammed(numbers, running)));
        return new Greatest(strongest, jammed(numbers, strongest), shorted(numbers));
    }

    /** {@return that of all jets of a set on the wheel held fast} */
    public static double jammed(PlantNumbers numbers, Running running) {
        double factor = Math.min(1, Math.max(0, numbers.runner().returnFactor()));
        double force = 0;
        for (Jet jet : running.water().jets()) {
            double area = Math.PI / 4 * jet.diameter() * jet.diameter();
            force += JetForce.running(numbers.water().density(), area, jet.velocity(), 0, factor);
        }
        return force * numbers.runner().pitchDiameter() / 2;
    }

    /**
     * {@return that of leads shorted all at once while the wheel turns: {@code 1.5 p ψ²/L}, twice the greatest that lasts; nil where the
     * winding has no inductance to reckon with} The share of the wheel's inertia is not taken off: a bound.
     */
    public static double shorted(PlantNumbers numbers) {
        AlternatorNumbers a = numbers.alternator();
        return a.phaseInductance() > 0
                ? a.gearRatio() * 1.5 * a.polePairs() * a.fluxLinkage() * a.fluxLinkage() / a.phaseInductance()
                : 0;
    }

    /**
     * {@return shear in the bolts that carry a torque, Pa} See {@link BoltShear}.
     *
     * @param torque N·m
     * @param diameter nominal, of the thread, m
     * @param circle diameter of the circle on which they sit, m
     */
    public static double shear(double torque, int bolts, double diameter, double circle) {
        return BoltShear.stress(torque, bolts, diameter, circle);
    }
}
