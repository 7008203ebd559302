package org.leat.hydraulics;

import org.leat.law.Answer;

/**
 * A surge by the method of characteristics, and the closed form beside it.
 *
 * @param closedFormHead highest head by the closed form named where the result was made, m above the nozzle axis
 * @param envelope highest and lowest heads along the line
 */
public record SurgeResult(double closedFormHead, HeadEnvelope envelope) {

    /** {@return highest head anywhere, m above the nozzle axis} */
    public double highestHead() {
        double highest = Double.NEGATIVE_INFINITY;
        for (int node = 0; node < envelope.nodes(); node++) {
            highest = Math.max(highest, envelope.highest(node));
        }
        return highest;
    }

    /** {@return lowest pressure head anywhere, m; below 0 under the atmosphere's pressure} Void below the vapour head. */
    public double lowestPressureHead() {
        int node = envelope.lowestPressureNode();
        return envelope.lowest(node) - envelope.elevation(node);
    }

    /**
     * {@return highest pressure head in a section, m} {@link Answer.Outside} where the water boils anywhere in the line: the peak
     * of the collapsing vapour pocket is then unknown and may be higher than any closed form.
     *
     * @param vapourHead of {@link VapourHead}, with whatever margin the caller wants, m
     */
    public Answer highestPressureHead(int section, double vapourHead) {
        return unlessBoiling(envelope.highestPressureHead(section), vapourHead);
    }

    /** {@return lowest pressure head in a section, m} {@link Answer.Outside} where the water boils anywhere in the line. */
    public Answer lowestPressureHead(int section, double vapourHead) {
        return unlessBoiling(envelope.lowestPressureHead(section), vapourHead);
    }

    private Answer unlessBoiling(double pressureHead, double vapourHead) {
        if (envelope.cavitates(vapourHead)) {
            return Answer.below(
                    "method of characteristics", "lowestPressureHead", lowestPressureHead(), vapourHead, "m");
        }
        return Answer.of(pressureHead);
    }
}
