package org.leat.choice;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.design.About;
import org.leat.design.CanBeAbsent;
import org.leat.design.Demand;
import org.leat.design.GrossHead;
import org.leat.design.Limits;
import org.leat.design.Load;
import org.leat.design.Site;
import org.leat.quantity.Si;

/**
 * A place without a plant: what the stream brings, how far it falls, how far the pipe would go, and what is to be run.
 *
 * @param format version of the file format
 * @param name of the place
 * @param site stream, head and weather, as in a design
 * @param pipeLength from the intake to the wheel
 * @param cableLength from the wheel to the battery
 * @param loads what is to be run, as in a design
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@About("A place without a plant: stream, fall, the ways of pipe and cable, and what is to be run")
public record SiteSurvey(
        @About("version of the file format") @Limits(atLeast = 1, atMost = 1)
        int format,

        @About("what the place is called") String name,

        @About("stream, head and weather, as in a design") Site site,

        @About("way of the pipe from the intake to the wheel, along the ground") @Limits(above = 0, atMost = 10_000)
        Quantity<Length> pipeLength,

        @About("way of the cable from the wheel to the battery; 10 m if left out")
        @Limits(above = 0, atMost = 2000)
        @CanBeAbsent
        @Nullable
        Quantity<Length> cableLength,

        @About("what is to be run, as in a design") @Limits(items = 1, mostItems = 500)
        List<Load> loads) {

    public SiteSurvey {
        loads = List.copyOf(loads);
        Demand.limits(SiteSurvey.class, format, name, site, pipeLength, cableLength, loads)
                .that(
                        site.stream() != null,
                        "site",
                        "no stream",
                        "what the stream brings, under stream: without it nothing can be proposed")
                .that(
                        loads.stream().allMatch(load -> load.hoursPerDay() != null),
                        "loads",
                        "a load without hours",
                        "hours-per-day of each load")
                .that(
                        !(site.grossHead() instanceof GrossHead.Stated stated)
                                || Si.of(pipeLength) >= Si.of(stated.head().value()),
                        "pipeLength",
                        pipeLength,
                        "no less than the fall: one of the two is read wrongly")
                .hold();
    }
}
