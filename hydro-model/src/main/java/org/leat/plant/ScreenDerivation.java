package org.leat.plant;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.jspecify.annotations.Nullable;
import org.leat.design.Intake;
import org.leat.design.Screen;
import org.leat.hydraulics.NozzleKind;
import org.leat.law.Gravity;
import org.leat.quantity.Si;

/**
 * Head lost at the screen over flow squared, s²/m⁵. Holes and meshes as jets through sharp holes whose velocity is lost;
 * bars by Kirschmer, on the approach velocity. A blocked share c takes that share of the openings away, so that the loss
 * grows as (1 − c)⁻² (common practice).
 */
final class ScreenDerivation {

    /** Kirschmer's factor of sharp-edged bars. */
    private static final double SHARP = 2.42;

    /** Kirschmer's factor of bars rounded upstream. */
    private static final double ROUNDED = 1.83;

    /** Of a screen that is blocked altogether, this share is left, so that the loss stays a number. */
    private static final double LEAST_OPEN = 1e-3;

    private ScreenDerivation() {}

    static double loss(@Nullable Intake intake) {
        Screen screen = intake == null ? null : intake.screen();
        if (screen == null) {
            return 0;
        }
        if (screen instanceof Screen.DrilledHoles holes) {
            double diameter = Si.of(holes.holeDiameter());
            return jets(holes.holes() * Math.PI / 4 * diameter * diameter, holes.blockedShare());
        }
        if (screen instanceof Screen.Mesh mesh) {
            double clear = Si.of(mesh.opening()) / (Si.of(mesh.opening()) + Si.of(mesh.wire()));
            return jets(Si.of(mesh.area()) * clear * clear, mesh.blockedShare());
        }
        return bars((Screen.Bars) screen);
    }

    private static double jets(double area, @Nullable Quantity<Dimensionless> blocked) {
        double through = NozzleKind.SHARP_HOLE.dischargeCoefficient() * area * open(blocked);
        return 1 / (2 * Gravity.STANDARD * through * through);
    }

    private static double bars(Screen.Bars bars) {
        double ratio = Si.of(bars.thickness()) / Si.of(bars.spacing());
        double slope = Math.sin(Math.min(Math.PI / 2, Si.of(bars.slope(), Math.PI / 2)));
        double factor = Boolean.TRUE.equals(bars.rounded()) ? ROUNDED : SHARP;
        double area = Si.of(bars.area()) * open(bars.blockedShare());
        return factor * Math.pow(ratio, 4.0 / 3) * slope / (2 * Gravity.STANDARD * area * area);
    }

    private static double open(@Nullable Quantity<Dimensionless> blocked) {
        return Math.max(LEAST_OPEN, 1 - Si.of(blocked, 0));
    }
}
