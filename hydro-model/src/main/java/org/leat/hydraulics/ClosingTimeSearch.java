package org.leat.hydraulics;

import java.util.List;
import java.util.function.DoubleFunction;
import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Least time in which a valve at the nozzles may be shut without any section seeing more than it is allowed, found by bracketing
 * and halving on {@link Characteristics}; the answer keeps the limit and is at most one per cent longer than needed. A longer
 * time is taken never to make a higher peak.
 */
public final class ClosingTimeSearch {

    private static final double NEARNESS = 1.01;
    private static final double FIRST_SHARE = 0.25;

    private ClosingTimeSearch() {}

    /**
     * {@return least closing time, s; 0 where even an instant stop is allowed} {@link Answer.Outside} where the longest time is
     * not enough, as when the standing water alone is too much.
     *
     * @param flow steady, m³/s
     * @param allowed highest pressure head of each section, m, in order
     * @param longest time tried, s
     */
    public static Answer least(SurgeLine line, double flow, List<Double> allowed, double longest) {
        return least(line, flow, allowed, longest, time -> NozzleOpening.linear(1, 0, time));
    }

    /**
     * {@return the same for a valve of which the open area is known for every closing time}
     *
     * @param closing the open area of the nozzles against time, for a closing time, s
     */
    public static Answer least(
            SurgeLine line, double flow, List<Double> allowed, double longest, DoubleFunction<NozzleOpening> closing) {
        Physical.positive("longest", longest);
        if (allowed.size() != line.sections().size()) {
            throw new IllegalArgumentException("one limit for each section");
        }
        if (holds(line, flow, allowed, closing.apply(0))) {
            return Answer.of(0);
        }
        double tooShort = Math.min(longest, FIRST_SHARE * line.returnTime());
        double enough = tooShort;
        while (!holds(line, flow, allowed, closing.apply(enough))) {
            if (enough >= longest) {
                return Answer.outside("closing time search", "closingTime", longest, 0, longest, "s");
            }
            tooShort = enough;
            enough = Math.min(longest, 2 * enough);
        }
        while (enough > NEARNESS * tooShort) {
            double middle = Math.sqrt(tooShort * enough);
            if (holds(line, flow, allowed, closing.apply(middle))) {
                enough = middle;
            } else {
                tooShort = middle;
            }
        }
        return Answer.of(enough);
    }

    private static boolean holds(SurgeLine line, double flow, List<Double> allowed, NozzleOpening closing) {
        HeadEnvelope envelope = SurgeStudy.envelope(line, flow, closing);
        for (int i = 0; i < allowed.size(); i++) {
            if (envelope.highestPressureHead(i) > allowed.get(i)) {
                return false;
            }
        }
        return true;
    }
}
