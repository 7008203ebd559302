package org.leat.pack.kit;

import static org.leat.quantity.Quantities.mm;
import static org.leat.quantity.Quantities.squareMetres;
import static org.leat.quantity.QuantityKind.AREA;
import static org.leat.quantity.QuantityKind.LENGTH;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.design.Screen;
import org.leat.quantity.Si;

/** A screen's openings, and larger or finer ones of its kind as changes of the design. */
public final class Screens {

    /** Of the screen. */
    public static final String PATH = "/intake/screen";

    /** What {@link #moreHoles} says. */
    public static final String MORE_HOLES = "A screen of {holes} holes of the same size.";

    /** What {@link #moreArea} says. */
    public static final String MORE_AREA = "A screen of {area:m²}.";

    /** Screens a little larger than what should do, in case it does not. */
    private static final List<Double> MORE = List.of(1.0, 1.1, 1.3);

    private Screens() {}

    /** {@return the screen; null where none is stated} */
    public static @Nullable Screen of(Judgement j) {
        return DesignParts.intake(j).screen();
    }

    /** {@return the screen; open at the intake where none is stated} */
    public static Screen given(Judgement j) {
        return j.at("/intake").given(PATH, of(j));
    }

    /** {@return share of the openings blocked between cleanings; null where it is not stated} */
    public static @Nullable Quantity<Dimensionless> blockedShare(Screen screen) {
        if (screen instanceof Screen.DrilledHoles holes) {
            return holes.blockedShare();
        }
        return screen instanceof Screen.Mesh mesh ? mesh.blockedShare() : ((Screen.Bars) screen).blockedShare();
    }

    /** {@return share of the openings blocked between cleanings; open at the screen where it is not stated} */
    public static double blocked(Judgement j, Screen screen) {
        return j.at(PATH).si(PATH + "/blocked-share", blockedShare(screen));
    }

    /** {@return the largest grain that passes, m} */
    public static double opening(Screen screen) {
        if (screen instanceof Screen.DrilledHoles holes) {
            return Si.of(holes.holeDiameter());
        }
        return screen instanceof Screen.Mesh mesh ? Si.of(mesh.opening()) : Si.of(((Screen.Bars) screen).spacing());
    }

    /** {@return drilled screens of so many times the holes, told with {@code holes}} */
    public static Stream<Change> moreHoles(Judgement j, double times) {
        return of(j) instanceof Screen.DrilledHoles holes
                ? MORE.stream().map(more -> {
                    int count = (int) Math.min(1e9, Math.ceil(holes.holes() * (times * more) / 10 - 1e-9) * 10);
                    return Change.of(PATH + "/holes", count).with("holes", count);
                })
                : Stream.empty();
    }

    /** {@return screens of mesh or bars of so many times the area, told with {@code area}} */
    public static Stream<Change> moreArea(Judgement j, double times) {
        Screen screen = of(j);
        if (screen == null || screen instanceof Screen.DrilledHoles) {
            return Stream.empty();
        }
        double now = Si.of(screen instanceof Screen.Mesh mesh ? mesh.area() : ((Screen.Bars) screen).area());
        return MORE.stream().map(more -> {
            double area = Math.ceil(now * (times * more) * 1e3 - 1e-9) / 1e3;
            return Change.of(PATH + "/area", squareMetres(area)).with("area", area, AREA);
        });
    }

    /** {@return a finer screen of at least the same open area, told with {@code opening}} */
    public static Change finer(Screen screen, double opening) {
        double millimetres = Math.max(0.5, Math.floor(opening * 2000 + 1e-9) / 2);
        Quantity<Length> size = mm(millimetres);
        Change finer;
        if (screen instanceof Screen.DrilledHoles holes) {
            double times = Math.pow(Si.of(holes.holeDiameter()) / (millimetres / 1000), 2);
            finer = Change.of(PATH + "/hole-diameter", size).and(PATH + "/holes", (int)
                    Math.min(1e9, Math.ceil(holes.holes() * times)));
        } else {
            finer = Change.of(PATH + (screen instanceof Screen.Mesh ? "/opening" : "/spacing"), size);
        }
        return finer.with("opening", millimetres / 1000, LENGTH);
    }
}
