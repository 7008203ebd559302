package org.leat.design;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** One set of nozzles opened together. */
@API(status = API.Status.STABLE, since = "0.1")
@About("One set of nozzles opened together")
public record NozzleChoice(
        @About("bores") @Limits(atLeast = 1e-4, atMost = 1, items = 1, mostItems = 40)
        List<Quantity<Length>> open,

        @About("what to call it") @CanBeAbsent @Nullable String name) {

    public NozzleChoice {
        open = List.copyOf(open);
        Demand.limits(NozzleChoice.class, open, name).hold();
    }
}
