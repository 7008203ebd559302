package org.leat.report;

import org.leat.design.GrossHead;
import org.leat.design.StreamFlow;

/**
 * How a stream's flow or fall was read.
 *
 * @param name in plain words
 * @param law what makes a number of the readings
 * @param source where the law stands
 */
record Method(String name, String law, String source) {

    static Method of(StreamFlow readings) {
        if (readings instanceof StreamFlow.Bucket) {
            return new Method("bucket and stopwatch", "Q = V/t, t the mean filling time", "by definition");
        } else if (readings instanceof StreamFlow.Floats) {
            return new Method("float", "Q = k A L/t, k mean over surface velocity", "ISO 748, float method");
        } else if (readings instanceof StreamFlow.SaltSlug) {
            return new Method("salt slug", "Q = M/(c ∫(EC − EC0) dt)", "ISO 9555-1, integration method");
        } else if (readings instanceof StreamFlow.VNotchWeir) {
            return new Method(
                    "V-notch weir",
                    "Q = Ce (8/15) tan(θ/2) √(2g) (h + kh)^2.5",
                    "ISO 1438:2017, clause 10 (Ce and kh from memory)");
        } else if (readings instanceof StreamFlow.RectangularWeir) {
            return new Method(
                    "rectangular weir",
                    "Q = Ce (2/3) √(2g) (b + kb) (h + 0.001)^1.5",
                    "ISO 1438:2017, clause 9 (table from memory)");
        }
        return new Method("stated", "as stated", "as stated");
    }

    static Method of(GrossHead readings) {
        if (readings instanceof GrossHead.Tube) {
            return new Method("water-filled tube", "H = Σ step", "by definition");
        } else if (readings instanceof GrossHead.Gauge) {
            return new Method("pressure gauge", "H = p/(ρ g) + z, water standing", "hydrostatics");
        } else if (readings instanceof GrossHead.Clinometer) {
            return new Method("clinometer and tape", "H = Σ L sin α", "trigonometry");
        }
        return new Method("stated", "as stated", "as stated");
    }
}
