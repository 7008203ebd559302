package org.leat.pack.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leat.check.Arg;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
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

        /** {@return whether it opens by itself in a run at the battery} */
        public boolean opensAtBattery() {
            return opens() && joins(Place.BATTERY);
        }

        /** {@return whether it is a fuse for back-up alone, which does not break every current that melts it} */
        public boolean backUp() {
            return device.kind() == DeviceKind.FUSE && Boolean.FALSE.equals(device.fullRange());
        }

        /** {@return current that surely opens it, A} Of a fuse of which nothing is told, as if it broke every current that melts it. */
        public double surelyOpens() {
            return backUp() ? DeviceRatings.backUpBreaks(rating()) : DeviceRatings.surelyOpens(device.kind(), rating());
        }

        /** {@return path of its rated current} */
        public String ratingPath() {
            return path + "/rated-current";
        }

        /** {@return rated current, A} */
        public double rating() {
            return Si.of(device.ratedCurrent());
        }

        public boolean isBreaker() {
            return device.kind() == DeviceKind.BREAKER;
        }

        /** {@return whether it lies between turbine and battery, and in no branch of the bus} */
        public boolean carriesTheCharge() {
            return !joins(Place.DUMP_LOAD) && !joins(Place.INVERTER) && !joins(Place.LOADS);
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

    /**
     * {@return each device that is asked for, judged; one answer for the whole list where there is none of them}
     *
     * @param none text that is said then
     */
    public static List<Outcome> each(
            Judgement j, Predicate<Placed> which, String none, Function<Placed, Outcome> judge) {
        List<Placed> devices = all(j.design()).stream().filter(which).toList();
        return j.eachOr(j.at("/protection").says(none), devices, judge);
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
