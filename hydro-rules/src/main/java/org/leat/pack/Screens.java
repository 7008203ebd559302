package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.leat.check.Arg;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.design.Intake;
import org.leat.design.Screen;
import org.leat.hydraulics.PerforatedPlate;
import org.leat.hydraulics.WireMesh;
import org.leat.pack.Search.Candidate;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** A screen's openings, and larger or finer ones of its kind as edits of the design. */
final class Screens {

    static final String PATH = "/intake/screen";

    private Screens() {}

    /** {@return the screen; null where none is stated} */
    static @Nullable Screen of(Judgement j) {
        Intake intake = j.design().intake();
        return intake == null ? null : intake.screen();
    }

    /** {@return share of the openings blocked between cleanings; null where it is not stated} */
    static @Nullable Double blockedShare(Screen screen) {
        Quantity<Dimensionless> share;
        if (screen instanceof Screen.DrilledHoles holes) {
            share = holes.blockedShare();
        } else if (screen instanceof Screen.Mesh mesh) {
            share = mesh.blockedShare();
        } else {
            share = ((Screen.Bars) screen).blockedShare();
        }
        return share == null ? null : (Double) Si.of(share);
    }

    /** {@return area of the clean openings, m²} */
    static double openArea(Screen screen) {
        if (screen instanceof Screen.DrilledHoles holes) {
            return PerforatedPlate.holeArea(holes.holes(), Si.of(holes.holeDiameter()));
        }
        if (screen instanceof Screen.Mesh mesh) {
            return Si.of(mesh.area()) * WireMesh.openShare(Si.of(mesh.opening()), Si.of(mesh.wire()));
        }
        Screen.Bars bars = (Screen.Bars) screen;
        double gap = Si.of(bars.spacing());
        return Si.of(bars.area()) * gap / (gap + Si.of(bars.thickness()));
    }

    /** {@return the largest grain that passes, m} */
    static double opening(Screen screen) {
        if (screen instanceof Screen.DrilledHoles holes) {
            return Si.of(holes.holeDiameter());
        }
        return screen instanceof Screen.Mesh mesh ? Si.of(mesh.opening()) : Si.of(((Screen.Bars) screen).spacing());
    }

    /** {@return the same openings on so many times the area; the rule says {@code more-holes} or {@code more-area}} */
    static Candidate larger(Screen screen, double times) {
        if (screen instanceof Screen.DrilledHoles holes) {
            int count = (int) Math.min(1e9, Math.ceil(holes.holes() * times / 10) * 10);
            return Candidate.of("more-holes", new Edit(PATH + "/holes", count), Arg.of("holes", (long) count));
        }
        double now = Si.of(screen instanceof Screen.Mesh mesh ? mesh.area() : ((Screen.Bars) screen).area());
        double area = Math.ceil(now * times * 1e3 - 1e-9) / 1e3;
        return Candidate.of(
                "more-area",
                new Edit(PATH + "/area", Si.quantity(area, "m²", Area.class)),
                Arg.of("area", area, QuantityKind.AREA));
    }

    /** {@return a finer screen of at least the same open area; the rule says {@code finer}} */
    static Candidate finer(Screen screen, double opening) {
        double millimetres = Math.max(0.5, Math.floor(opening * 2000 + 1e-9) / 2);
        Quantity<Length> size = Si.quantity(millimetres, "mm", Length.class);
        List<Edit> edits = new ArrayList<>();
        if (screen instanceof Screen.DrilledHoles holes) {
            double times = Math.pow(Si.of(holes.holeDiameter()) / (millimetres / 1000), 2);
            edits.add(new Edit(PATH + "/hole-diameter", size));
            edits.add(new Edit(PATH + "/holes", (int) Math.min(1e9, Math.ceil(holes.holes() * times))));
        } else {
            edits.add(new Edit(PATH + (screen instanceof Screen.Mesh ? "/opening" : "/spacing"), size));
        }
        return new Candidate("finer", edits, List.of(Arg.of("opening", millimetres / 1000, QuantityKind.LENGTH)));
    }
}
