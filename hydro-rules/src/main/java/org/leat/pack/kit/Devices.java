package org.leat.pack.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leat.check.Arg;
import org.leat.design.Cable;
import org.leat.design.Design;
import org.leat.design.DeviceKind;
import org.leat.design.ElementPath;
import org.leat.design.Place;
import org.leat.design.ProtectiveDevice;
import org.leat.plant.loads.DeviceRatings;
import org.leat.quantity.Si;

/** Fuses, breakers and switches of a design, by the runs they sit in. */
public final class Devices {

    private Devices() {}

    /**
     * A device with its place in the design.
     *
     * @param device as the design states it
     * @param path of the device
     */
    public record Placed(ProtectiveDevice device, String path) {
        public boolean joins(Place place) {
            return device.from() == place || device.to() == place;
        }

        public boolean sitsIn(Cable cable) {
            return (device.from() == cable.from() && device.to() == cable.to())
                    || (device.from() == cable.to() && device.to() == cable.from());
        }

        /** {@return whether it sits in the same run} */
        public boolean sharesRun(Placed other) {
            ProtectiveDevice that = other.device();
            return (device.from() == that.from() && device.to() == that.to())
                    || (device.from() == that.to() && device.to() == that.from());
        }

        /** {@return whether it opens by itself} */
        public boolean opens() {
            return device.kind() != DeviceKind.SWITCH;
        }

        /** {@return whether it is a fuse for back-up alone, which does not break every current that melts it} */
        public boolean backUp() {
            return device.kind() == DeviceKind.FUSE && Boolean.FALSE.equals(device.fullRange());
        }

        /** {@return current that surely opens it, A} Of a fuse of which nothing is told, as if it broke every current that melts it. */
        public double surelyOpens() {
            double rating = Si.of(device.ratedCurrent());
            return backUp() ? DeviceRatings.backUpBreaks(rating) : DeviceRatings.surelyOpens(device.kind(), rating);
        }

        public Arg name() {
            return Arg.of("device", device.name());
        }
    }

    /** {@return every device, in the design's order} */
    public static List<Placed> all(Design design) {
        List<Placed> placed = new ArrayList<>();
        for (int i = 0; i < design.devices().size(); i++) {
            placed.add(new Placed(design.devices().get(i), ElementPath.item("/protection", design.devices(), i)));
        }
        return placed;
    }

    /** {@return those that open by themselves in the leads between alternator and bridge} */
    public static Stream<Placed> inLeads(Design design) {
        return all(design).stream().filter(d -> d.opens() && d.joins(Place.ALTERNATOR) && d.joins(Place.RECTIFIER));
    }

    /** {@return of those in the leads the one that surely opens first; null where there is none} */
    public static @Nullable Placed firstInLeads(Design design) {
        return inLeads(design)
                .min(Comparator.comparingDouble(Placed::surelyOpens))
                .orElse(null);
    }

    /** {@return those that open by themselves in runs at the battery} */
    public static List<Placed> atBattery(Design design) {
        return all(design).stream()
                .filter(d -> d.opens() && d.joins(Place.BATTERY))
                .toList();
    }

    /** {@return fuse or breaker in a run; null where there is none} */
    public static @Nullable Placed in(Design design, Cable cable) {
        return all(design).stream()
                .filter(d -> d.opens() && d.sitsIn(cable))
                .findFirst()
                .orElse(null);
    }

    /**
     * {@return the device at a path or above it}
     *
     * @throws java.util.NoSuchElementException if there is none
     */
    public static Placed at(Design design, String path) {
        return all(design).stream()
                .filter(device -> path.equals(device.path()) || path.startsWith(device.path() + "/"))
                .findFirst()
                .orElseThrow();
    }

    public static boolean joins(Cable cable, Place place) {
        return cable.from() == place || cable.to() == place;
    }
}
