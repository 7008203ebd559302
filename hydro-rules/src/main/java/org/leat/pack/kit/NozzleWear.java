package org.leat.pack.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.leat.check.Judgement;
import org.leat.design.NozzleSet;
import org.leat.design.WornNozzle;
import org.leat.quantity.Si;

/**
 * The nozzles open as built, with the bores they have now.
 *
 * @param missing path of what is not told; null where every bore is
 * @param bores as they are now, in the order of those open; as drilled where {@code missing} is told
 * @param growth of the area of all of them, as a share
 */
public record NozzleWear(@Nullable String missing, List<Quantity<Length>> bores, double growth) {

    /** Of the list. */
    public static final String PATH = "/nozzles/worn";

    private static final double SAME = 1e-6;

    /** {@return the open nozzles as they are now} */
    public static NozzleWear of(Judgement j) {
        NozzleSet nozzles = j.design().nozzles();
        List<Quantity<Length>> bores = new ArrayList<>();
        double drilled = 0;
        double now = 0;
        for (Quantity<Length> open : nozzles.open()) {
            int widest = -1;
            for (int i = 0; i < nozzles.worn().size(); i++) {
                WornNozzle worn = nozzles.worn().get(i);
                if (isOf(worn, open)) {
                    Quantity<Length> bore = now(worn);
                    if (bore == null) {
                        return new NozzleWear(at(i) + "/measured", nozzles.open(), 0);
                    }
                    widest =
                            widest < 0 || Si.of(bore) > Si.of(now(nozzles.worn().get(widest)), 0) ? i : widest;
                }
            }
            Quantity<Length> bore = widest < 0 ? null : now(nozzles.worn().get(widest));
            if (bore == null) {
                return new NozzleWear(PATH, nozzles.open(), 0);
            }
            bores.add(bore);
            drilled += Si.of(open) * Si.of(open);
            now += Si.of(bore) * Si.of(bore);
        }
        return new NozzleWear(null, List.copyOf(bores), now / drilled - 1);
    }

    /** {@return path of the running time that an open nozzle lacks; null where none does} The bores are told. */
    public static @Nullable String untimed(Judgement j) {
        NozzleSet nozzles = j.design().nozzles();
        for (int i = 0; i < nozzles.worn().size(); i++) {
            if (isOpen(nozzles, nozzles.worn().get(i)) && nozzles.worn().get(i).runningTime() == null) {
                return at(i) + "/running-time";
            }
        }
        return null;
    }

    /**
     * {@return running time in which the fastest growing has grown by a share of its area, s; empty where none has grown} The
     * times are told.
     */
    public static OptionalDouble time(Judgement j, double share) {
        NozzleSet nozzles = j.design().nozzles();
        return nozzles.worn().stream()
                .filter(worn -> isOpen(nozzles, worn) && growth(worn) > 0)
                .mapToDouble(worn -> Si.of(worn.runningTime(), 0) * share / growth(worn))
                .min();
    }

    private static double growth(WornNozzle worn) {
        return Math.pow(Si.of(worn.measured(), 0) / Si.of(worn.drilled()), 2) - 1;
    }

    /** {@return whether a nozzle of that bore is open as built} */
    public static boolean isOpen(NozzleSet nozzles, WornNozzle worn) {
        return nozzles.open().stream().anyMatch(open -> isOf(worn, open));
    }

    /** {@return path of a reading by its place in the list} */
    public static String at(int index) {
        return PATH + "[" + index + "]";
    }

    private static boolean isOf(WornNozzle worn, Quantity<Length> open) {
        return Math.abs(Si.of(worn.drilled()) - Si.of(open)) < SAME;
    }

    /** A nozzle that has not run yet is as drilled. */
    private static @Nullable Quantity<Length> now(WornNozzle worn) {
        boolean fresh = worn.runningTime() != null && Si.of(worn.runningTime()) == 0;
        return worn.measured() == null && fresh ? worn.drilled() : worn.measured();
    }
}
