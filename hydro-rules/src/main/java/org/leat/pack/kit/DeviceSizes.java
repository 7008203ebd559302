package org.leat.pack.kit;

import static org.leat.quantity.Quantities.amps;
import static org.leat.quantity.QuantityKind.CURRENT;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.ElectricCurrent;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.design.Design;
import org.leat.design.DeviceKind;
import org.leat.design.Place;
import org.leat.design.ProtectiveDevice;
import org.leat.design.ProtectiveDeviceBuilder;
import org.leat.plant.loads.DeviceRatings;

/** Fuses and breakers of the ratings in which they are sold, as changes of the design; told with {@code rating}. */
public final class DeviceSizes {

    private DeviceSizes() {}

    /** {@return the ratings from one on, A, smallest first} */
    public static Stream<Double> from(double least) {
        return DeviceRatings.standard().stream().filter(rating -> rating >= least);
    }

    /** {@return the ratings up to one, A, largest first} */
    public static Stream<Double> upTo(double most) {
        return DeviceRatings.standard().stream()
                .filter(rating -> rating <= most)
                .sorted(Comparator.reverseOrder());
    }

    /** {@return the two least that reach the limit of a rating that failed} */
    public static Stream<Change> larger(Judgement j, Outcome.Fail failure) {
        return from(failure.limit()).limit(2).map(rating -> rated(failure.path(), rating));
    }

    /** {@return the two greatest within the limit of a rating that failed} */
    public static Stream<Change> smaller(Judgement j, Outcome.Fail failure) {
        return upTo(failure.limit()).limit(2).map(rating -> rated(failure.path(), rating));
    }

    /**
     * {@return a device of another rating}
     *
     * @param path of its rated current
     * @param rating A
     */
    public static Change rated(String path, double rating) {
        return FieldChanges.rated(path, rating, "A", ElectricCurrent.class);
    }

    /**
     * {@return a fuse more in the list of protection}
     *
     * @param rating A
     */
    public static Change withFuse(Design design, String name, Place from, Place to, double rating) {
        List<ProtectiveDevice> devices = new ArrayList<>(design.devices());
        devices.add(ProtectiveDeviceBuilder.builder()
                .name(name)
                .kind(DeviceKind.FUSE)
                .from(from)
                .to(to)
                .ratedCurrent(amps(rating))
                .build());
        return Change.of("/protection", devices).with("rating", rating, CURRENT);
    }
}
