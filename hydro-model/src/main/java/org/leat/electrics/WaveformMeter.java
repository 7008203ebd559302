package org.leat.electrics;

/** Collects means and extremes of a time-stepped run. */
final class WaveformMeter {

    private double time;
    private double direct;
    private double least = Double.POSITIVE_INFINITY;
    private double greatest = Double.NEGATIVE_INFINITY;
    private double volts;
    private double highest = Double.NEGATIVE_INFINITY;
    private double emfPower;
    private double directPower;
    private final double[] squares = new double[3];
    private final double[] forward = new double[3];
    private final double[] backward = new double[3];
    private final double[] cosine = new double[3];
    private final double[] sine = new double[3];

    private static final int[] ORDERS = {1, 2, 6};

    /** Adds the means of one step of h seconds at an electrical angle. */
    void add(
            double h,
            double angle,
            double directCurrent,
            double directVoltage,
            double emf,
            double ia,
            double ib,
            double ic) {
        time += h;
        direct += h * directCurrent;
        least = Math.min(least, directCurrent);
        greatest = Math.max(greatest, directCurrent);
        volts += h * directVoltage;
        highest = Math.max(highest, directVoltage);
        emfPower += h * emf;
        directPower += h * directVoltage * directCurrent;
        squares[0] += h * ia * ia;
        squares[1] += h * ib * ib;
        squares[2] += h * ic * ic;
        oneWay(0, h * ia);
        oneWay(1, h * ib);
        oneWay(2, h * ic);
        for (int k = 0; k < 3; k++) {
            cosine[k] += h * directCurrent * Math.cos(ORDERS[k] * angle);
            sine[k] += h * directCurrent * Math.sin(ORDERS[k] * angle);
        }
    }

    private void oneWay(int phase, double charge) {
        forward[phase] += Math.max(0, charge);
        backward[phase] += Math.max(0, -charge);
    }

    private double mostOneWay() {
        double most = 0;
        for (int k = 0; k < 3; k++) {
            most = Math.max(most, Math.max(forward[k], backward[k]));
        }
        return most;
    }

    private double ripple(int k) {
        return 2 * Math.hypot(cosine[k], sine[k]) / time;
    }

    BridgeWaveform read(double speed, double windingResistance) {
        double most = Math.max(squares[0], Math.max(squares[1], squares[2]));
        return new BridgeWaveform(
                direct / time,
                least,
                greatest,
                volts / time,
                highest,
                Math.sqrt(most / time),
                mostOneWay() / time,
                emfPower / time,
                emfPower / time / speed,
                windingResistance * (squares[0] + squares[1] + squares[2]) / time,
                directPower / time,
                ripple(0),
                ripple(1),
                ripple(2));
    }
}
