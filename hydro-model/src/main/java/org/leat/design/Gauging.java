package org.leat.design;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** What was read at the stream, by one method or several, before there is a design. */
@API(status = API.Status.STABLE, since = "0.1")
@About("What was read at the stream, by one method or several, before there is a design")
public record Gauging(
        @About("version of the file format") @Limits(atLeast = 1, atMost = 1)
        int format,

        @About("of the stream or the day") @CanBeAbsent @Nullable
        String name,

        @About("readings of the stream's flow, each by one method")
        List<StreamFlow> flow,

        @About("readings of the fall, each by one method") List<GrossHead> head,

        @About("of the water, for the weight of what stands in a pipe") @CanBeAbsent @Nullable
        Quantity<Temperature> waterTemperature) {

    public Gauging {
        flow = List.copyOf(flow);
        head = List.copyOf(head);
        Demand.limits(Gauging.class, format, name, flow, head, waterTemperature)
                .that(!flow.isEmpty() || !head.isEmpty(), "flow", "no readings", "readings of flow, of head or of both")
                .hold();
    }

    /** {@return the readings that a design's site holds} */
    public static Gauging of(Site site) {
        Stream stream = site.stream();
        TemperatureRange water = site.waterTemperature();
        return new Gauging(
                1,
                null,
                stream == null ? List.of() : List.of(stream.flow()),
                List.of(site.grossHead()),
                water == null ? null : water.lowest());
    }
}
