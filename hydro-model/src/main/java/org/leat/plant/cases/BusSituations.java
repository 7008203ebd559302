package org.leat.plant.cases;

import java.util.List;
import java.util.function.Supplier;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.lazy.Once;

/**
 * Every situation of a plant that makes a voltage on the bus, solved when first looked at: some are stepped in time. Equal
 * where what they hold is. Safe to share between threads.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class BusSituations {

    /** None. */
    public static final BusSituations NONE = new BusSituations(List::of);

    private final Once<List<BusSituation>> situations;

    BusSituations(Supplier<List<BusSituation>> situations) {
        this.situations = new Once<>(situations);
    }

    /** {@return each situation on each nozzle set: running first, then the likelier before the rarer} */
    public List<BusSituation> list() {
        return situations.get();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return this == other || (other instanceof BusSituations that && list().equals(that.list()));
    }

    @Override
    public int hashCode() {
        return list().hashCode();
    }

    @Override
    public String toString() {
        return list().toString();
    }
}
