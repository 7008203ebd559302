package org.leat.readings;

import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.SectionNumbers;

/**
 * The pipe of a plant computed a second time, by other means than the plant's own solver: friction after Haaland (J. Fluids Eng. 105
 * (1983) 89), a leak as a hole half-way down, the flow by bisection.
 *
 * @param n numbers of the plant
 * @param screen added loss of the screen, s²/m⁵
 * @param pinch loss coefficient below the middle, on the last bore
 * @param hole conductance of a hole half-way down, m^2.5/s over √(2 g)
 * @param air head that air takes, m
 */
record SecondPipe(PlantNumbers n, double screen, double pinch, double hole, double air) {

    private static final double G = 9.80665;

    static SecondPipe sound(PlantNumbers n) {
        return new SecondPipe(n, 0, 0, 0, 0);
    }

    /** {@return the pipe with a fault of its own; sound where the fault is elsewhere} The plant's numbers have its head. */
    static SecondPipe of(PlantNumbers n, FaultKind kind, double size, double builtFlow) {
        double head = n.site().grossHead();
        double velocity = builtFlow / n.penstock().last().area();
        return new SecondPipe(
                n,
                kind == FaultKind.SCREEN_BLOCKED ? size * head / (builtFlow * builtFlow) : 0,
                kind == FaultKind.PIPE_PINCHED ? size * head * 2 * G / (velocity * velocity) : 0,
                kind == FaultKind.LEAK ? size * builtFlow / Math.sqrt(G * head) : 0,
                kind == FaultKind.AIR_IN_PIPE ? size * head : 0);
    }

    /** Head left at the nozzles when so much goes through them, m; the leak counted above the middle. */
    private double left(double flow) {
        double head = n.site().grossHead() - air;
        double above = flow + leak(flow);
        head -= (n.penstock().screenLoss() + screen) * above * above;
        double from = 0;
        double middle = n.penstock().length() / 2;
        for (SectionNumbers s : n.penstock().sections()) {
            double share = Math.max(0, Math.min(1, (middle - from) / s.length()));
            head -= share * loss(s, above) + (1 - share) * loss(s, flow);
            from += s.length();
        }
        double velocity = flow / n.penstock().last().area();
        return head - pinch * velocity * velocity / (2 * G);
    }

    private double loss(SectionNumbers s, double flow) {
        double velocity = flow / s.area();
        if (velocity <= 0) {
            return 0;
        }
        double reynolds = velocity * s.bore() / n.water().kinematicViscosity();
        double haaland = -1.8 * Math.log10(Math.pow(s.roughness() / s.bore() / 3.7, 1.11) + 6.9 / reynolds);
        return (s.length() / s.bore() / (haaland * haaland) + s.lossCoefficient()) * velocity * velocity / (2 * G);
    }

    /** Through a hole half-way down, by the pressure that a pipe without loss has there. */
    double leak(double flow) {
        double pressure = n.site().grossHead() / 2 - 0.02 * flow / 0.002;
        return hole * Math.sqrt(2 * G * Math.max(0, pressure));
    }

    /** {@return what goes through the nozzles, m³/s} */
    double flow(NozzleGroup set) {
        double perRoot = n.nozzles().velocityCoefficient() * n.nozzles().contractionCoefficient() * set.area();
        double branch = n.nozzles().branchBore().isPresent()
                ? Math.PI
                        / 4
                        * Math.pow(n.nozzles().branchBore().getAsDouble(), 2)
                        * set.bores().size()
                : Double.POSITIVE_INFINITY;
        double low = 0;
        double high = 2 * perRoot * Math.sqrt(2 * G * n.site().grossHead());
        for (int i = 0; i < 50; i++) {
            double flow = 0.5 * (low + high);
            double head = left(flow) - n.nozzles().branchLoss() * Math.pow(flow / branch, 2) / (2 * G);
            if (head > 0 && perRoot * Math.sqrt(2 * G * head) > flow) {
                low = flow;
            } else {
                high = flow;
            }
        }
        return low;
    }

    /** {@return gauge pressure by the nozzles, Pa} */
    double pressure(double flow) {
        double velocity = flow / n.penstock().last().area();
        return n.water().density() * (G * left(flow) - velocity * velocity / 2);
    }
}
