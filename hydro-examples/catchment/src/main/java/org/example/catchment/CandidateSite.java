package org.example.catchment;

import java.util.List;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.plant.numbers.SiteNumbers;
import org.leat.plant.numbers.StreamNumbers.StreamLevel;

/**
 * A place in the catchment where a plant could stand. Places are invented: spread evenly by the golden ratio, so that the same number
 * is always the same place.
 *
 * @param number of the place
 * @param head fall, m
 * @param pipe length, m
 * @param flow there is for a plant, m³/s
 */
record CandidateSite(long number, double head, double pipe, double flow) {

    private static final double GOLDEN = 0.618033988749895;

    static CandidateSite of(long number) {
        double head = 8 + 52 * spread(number, GOLDEN);
        double pipe = head * (2.5 + 4 * spread(number, GOLDEN * GOLDEN));
        double flow = 1e-3 * (1 + 9 * spread(number, Math.sqrt(2) - 1));
        return new CandidateSite(number, head, pipe, flow);
    }

    private static double spread(long number, double step) {
        double turned = (number + 1) * step;
        return turned - Math.floor(turned);
    }

    /** {@return the plant with this site and the penstock that reaches down to it} */
    PlantNumbers with(PlantNumbers numbers) {
        SiteNumbers site = numbers.site()
                .withGrossHead(head)
                .withFlows(numbers.site()
                        .flows()
                        .withLevels(List.of(new StreamLevel(StreamLevel.Kind.CONSTANT, 1, flow, 0, flow))));
        SectionNumbers last = numbers.penstock().last();
        SectionNumbers laid = last.withLength(pipe).withFromElevation(head).withToElevation(0);
        return numbers.withSite(site).withPenstock(numbers.penstock().withSections(List.of(laid)));
    }
}
