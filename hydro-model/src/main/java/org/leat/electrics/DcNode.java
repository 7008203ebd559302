package org.leat.electrics;

/**
 * The d.c. side during one time step as a source: voltage at the step's end = α + β times the direct current at its end.
 * Capacitors by the trapezoidal rule, a choke by the backward one (its voltage may jump).
 */
final class DcNode {

    private final DcLoad load;
    private double voltage;
    private double current;
    private double alpha;
    private double beta;

    DcNode(DcLoad load) {
        this.load = load;
        this.voltage =
                load instanceof DcLoad.Capacitor c ? c.charged() : load instanceof DcLoad.Battery b ? b.voltage() : 0;
    }

    /** Prepares a step of h seconds that ends at {@code time}. */
    void prepare(double time, double h) {
        if (load instanceof DcLoad.Battery b) {
            alpha = b.voltage();
            beta = b.resistance();
        } else if (load instanceof DcLoad.Resistor r) {
            alpha = 0;
            beta = r.resistance();
        } else if (load instanceof DcLoad.Choke k) {
            alpha = -k.inductance() / h * current;
            beta = k.resistance() + k.inductance() / h;
        } else if (load instanceof DcLoad.Capacitor c) {
            boolean closed = time < c.opensAfter();
            double leak = 1 / c.resistance() + (closed ? 1 / c.batteryResistance() : 0);
            double feed = closed ? c.battery() / c.batteryResistance() : 0;
            double storing = 2 * c.capacitance() / h;
            beta = 1 / (storing + leak);
            alpha = beta * (voltage * (storing - leak) + current + 2 * feed);
        }
    }

    double alpha() {
        return alpha;
    }

    double beta() {
        return beta;
    }

    /** Takes over the state of another node of the same load. */
    void set(DcNode other) {
        voltage = other.voltage;
        current = other.current;
        alpha = other.alpha;
        beta = other.beta;
    }

    /** Ends the step that was prepared. */
    void accept(double directCurrent) {
        current = directCurrent;
        voltage = alpha + beta * directCurrent;
    }

    double voltage() {
        return voltage;
    }

    double current() {
        return current;
    }
}
