package org.leat.plant.derive;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.jspecify.annotations.Nullable;
import org.leat.design.Intake;
import org.leat.design.Screen;
import org.leat.hydraulics.KirschmerRack;
import org.leat.hydraulics.PerforatedPlate;
import org.leat.hydraulics.WireMesh;
import org.leat.law.Answer;
import org.leat.law.Gravity;
import org.leat.quantity.Si;

/** Head lost at the screen over flow squared, s²/m⁵, with its blocked share, by the law of its kind. */
final class ScreenDerivation {

    /** Of a screen that is blocked altogether, this share is left, so that the loss stays a number. */
    private static final double LEAST_OPEN = 1e-3;

    private ScreenDerivation() {}

    static double loss(@Nullable Intake intake) {
        Screen screen = intake == null ? null : intake.screen();
        if (screen == null) {
            return 0;
        }
        if (screen instanceof Screen.DrilledHoles holes) {
            double clean = PerforatedPlate.holeArea(holes.holes(), Si.of(holes.holeDiameter()));
            double open = clean * open(holes.blockedShare());
            double surface = Si.of(holes.surface(), 0);
            double k = PerforatedPlate.lossCoefficientOnHoles(surface > open ? open / surface : 0);
            return k / (2 * Gravity.STANDARD * open * open);
        }
        if (screen instanceof Screen.Mesh mesh) {
            double share = WireMesh.openShare(Si.of(mesh.opening()), Si.of(mesh.wire())) * open(mesh.blockedShare());
            double area = Si.of(mesh.area());
            return WireMesh.lossCoefficient(share).orThrow() / (2 * Gravity.STANDARD * area * area);
        }
        return bars((Screen.Bars) screen);
    }

    private static double bars(Screen.Bars bars) {
        double slope = Math.min(Math.PI / 2, Si.of(bars.slope(), Math.PI / 2));
        double beta = Boolean.TRUE.equals(bars.rounded()) ? KirschmerRack.ROUNDED_NOSE : KirschmerRack.SHARP;
        Answer k = KirschmerRack.lossCoefficient(
                beta, Si.of(bars.thickness()), Si.of(bars.spacing()), slope, 1 - open(bars.blockedShare()));
        double area = Si.of(bars.area());
        return k.orThrow() / (2 * Gravity.STANDARD * area * area);
    }

    private static double open(@Nullable Quantity<Dimensionless> blocked) {
        return Math.max(LEAST_OPEN, 1 - Si.of(blocked, 0));
    }
}
