package org.leat.turbine;

/**
 * Kinds of impulse runner with what is usual for them. Every number is common practice of the trade (no single source)
 * unless the comment beside it names one; efficiencies are jet to shaft for small machines of workshop make, best point.
 */
@SuppressWarnings("ImmutableEnumChecker") // Span is two final doubles
public enum RunnerType {
    /**
     * Split double buckets. Width 2.8 to 3.6 jet diameters and pitch diameter from 9 (6 with loss): handbook ranges, as
     * Nechleba, Hydraulic Turbines, 1957 (from memory). nq 3 to 10 a jet: textbooks (from memory).
     */
    PELTON(0.78, 0.60, 0.90, 0.87, 0, 1.80, 6, new Span(2.8, 3.6), new Span(6, 30), new Span(3, 10)),

    /**
     * Jet from the side at 18 to 25 degrees. Jet up to a quarter of the pitch diameter, nq 10 to 25: textbooks (from
     * memory). Bucket width here is the wheel's radial blade width.
     */
    TURGO(0.75, 0.55, 0.87, 0.85, Math.toRadians(20), 1.80, 4, new Span(1.8, 3.0), new Span(4, 12), new Span(10, 25)),

    /** Simple round cups, not split: part of the water comes back into the next cup. */
    CUPS(0.55, 0.40, 0.70, 0.50, 0, 1.75, 4, new Span(2.5, 4.0), new Span(6, 30), new Span(3, 10)),

    /** Flat paddles: nothing is turned back, half of the jet's power is the most by momentum. */
    FLAT(0.35, 0.20, 0.45, 0, 0, 1.75, 4, new Span(3.0, 5.0), new Span(6, 30), new Span(2, 10));

    /**
     * A usual range.
     *
     * @param low least, included
     * @param high greatest, included
     */
    public record Span(double low, double high) {
        /** {@return whether a value lies inside} */
        public boolean holds(double value) {
            return value >= low && value <= high;
        }
    }

    private final double efficiency;
    private final Span efficiencyRange;
    private final double returnFactor;
    private final double jetAngle;
    private final double runawayFactor;
    private final int maxJets;
    private final Span bucketWidthRatio;
    private final Span pitchToJetRatio;
    private final Span specificSpeed;

    RunnerType(
            double efficiency,
            double leastEfficiency,
            double mostEfficiency,
            double returnFactor,
            double jetAngle,
            double runawayFactor,
            int maxJets,
            Span bucketWidthRatio,
            Span pitchToJetRatio,
            Span specificSpeed) {
        this.efficiency = efficiency;
        this.efficiencyRange = new Span(leastEfficiency, mostEfficiency);
        this.returnFactor = returnFactor;
        this.jetAngle = jetAngle;
        this.runawayFactor = runawayFactor;
        this.maxJets = maxJets;
        this.bucketWidthRatio = bucketWidthRatio;
        this.pitchToJetRatio = pitchToJetRatio;
        this.specificSpeed = specificSpeed;
    }

    /** {@return best efficiency to assume, jet to shaft [1]} */
    public double efficiency() {
        return efficiency;
    }

    /** {@return best efficiencies seen on small machines, jet to shaft [1]} */
    public Span efficiencyRange() {
        return efficiencyRange;
    }

    /** {@return k cos b2: how much of the relative speed leaves backward [1]} */
    public double returnFactor() {
        return returnFactor;
    }

    /** {@return usual angle of the jet to the wheel's plane [rad]} */
    public double jetAngle() {
        return jetAngle;
    }

    /** {@return runaway over best speed to assume [1]} Handbooks: 1.75 to 1.9 for split double buckets (from memory). */
    public double runawayFactor() {
        return runawayFactor;
    }

    /** {@return most jets on one wheel} */
    public int maxJets() {
        return maxJets;
    }

    /** {@return bucket width over jet diameter [1]} */
    public Span bucketWidthRatio() {
        return bucketWidthRatio;
    }

    /** {@return pitch diameter over jet diameter [1]} */
    public Span pitchToJetRatio() {
        return pitchToJetRatio;
    }

    /** {@return specific speed nq per jet: rpm, m3/s, m} */
    public Span specificSpeed() {
        return specificSpeed;
    }

    /** {@return bucket speed over jet speed for most power [1], with this type's late entry} */
    public double bestSpeedRatio() {
        return FittedRunner.usual(this, 1, RunnerParameters.ROUND_DENSITY).bestSpeedRatio();
    }
}
