package org.leat.hydraulics;

import java.util.List;
import org.leat.law.Gravity;
import org.leat.law.Physical;

/**
 * A penstock of sections in series from a tank of constant level to the nozzles, full of water.
 *
 * @param sections from the tank down, at least one
 * @param tankHead level of the tank above the nozzle axis, m
 */
public record SurgeLine(List<SurgeSection> sections, double tankHead) {

    public SurgeLine {
        sections = List.copyOf(sections);
        if (sections.isEmpty()) {
            throw new IllegalArgumentException("a line has at least one section");
        }
        Physical.positive("tankHead", tankHead);
    }

    /**
     * {@return the line with every section whose wave returns sooner than a time, s, taken as the length of its neighbour that has
     * the same inertia} So a short piece of narrow steel does not set the blow of a whole line whose stop takes longer than the wave
     * in that piece. The longest section always stays.
     */
    public SurgeLine withoutPieces(double leastReturnTime) {
        Physical.notNegative("leastReturnTime", leastReturnTime);
        return new SurgeLine(new ShortPieces(sections, leastReturnTime / 2).lasting, tankHead);
    }

    /** {@return time a wave takes from tank to nozzle and back, 2 L/a, s} A stop within it is as bad as an instant one. */
    public double returnTime() {
        return 2 * sections.stream().mapToDouble(SurgeSection::travelTime).sum();
    }

    /** {@return head before the nozzles at a steady flow, m} */
    public double workingHead(double flow) {
        double resistance =
                sections.stream().mapToDouble(SurgeSection::resistance).sum();
        return tankHead - resistance * flow * Math.abs(flow);
    }

    /** {@return rise of head, m, of an instant stop of a flow, m³/s, in the section where it is greatest} */
    public double joukowskyHead(double flow) {
        return sections.stream()
                .mapToDouble(s -> Joukowsky.head(s.waveSpeed(), flow / s.area()))
                .max()
                .orElseThrow();
    }

    /** {@return inertia of the column, Σ L/(g A), s²/m²: head needed for a change of flow of 1 m³/s in one second} */
    public double inertia() {
        return sections.stream()
                .mapToDouble(s -> s.length() / (Gravity.STANDARD * s.area()))
                .sum();
    }
}
