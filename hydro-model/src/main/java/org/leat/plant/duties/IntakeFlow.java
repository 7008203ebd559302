package org.leat.plant.duties;

import org.leat.design.Screen;
import org.leat.design.SettlingBasin;
import org.leat.hydraulics.FrazilIce;
import org.leat.hydraulics.PerforatedPlate;
import org.leat.hydraulics.SettlingVelocity;
import org.leat.hydraulics.Submergence;
import org.leat.hydraulics.WireMesh;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.plant.numbers.WaterNumbers;
import org.leat.quantity.Si;

/** What a flow does at the intake: through the screen, in the settling basin, over the pipe's inlet. */
public final class IntakeFlow {

    private IntakeFlow() {}

    /**
     * {@return velocity through the openings of a screen, m/s; infinite where all are blocked}
     *
     * @param blocked share of the openings
     * @param flow m³/s
     */
    public static double screenVelocity(Screen screen, double blocked, double flow) {
        return flow / (openArea(screen) * (1 - blocked));
    }

    private static double openArea(Screen screen) {
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

    /** {@return the finest grain of sand, m, that a basin catches from a flow above zero, m³/s} */
    public static double finestGrainCaught(SettlingBasin basin, WaterNumbers water, double flow) {
        return SettlingVelocity.finestGrainCaught(
                flow, Si.of(basin.length()), Si.of(basin.width()), water.kinematicViscosity());
    }

    /** {@return how long, m, a basin of that width must be to catch a grain of sand, m, from a flow, m³/s} */
    public static double basinLength(SettlingBasin basin, WaterNumbers water, double grain, double flow) {
        return flow / SettlingVelocity.ofSand(grain, water.kinematicViscosity()) / Si.of(basin.width());
    }

    /**
     * {@return least depth of water over the crown of the inlet that keeps air out, m; water from the side}
     *
     * @param first section of the penstock
     * @param velocity in it, m/s
     */
    public static double leastSubmergence(SectionNumbers first, double velocity) {
        return Submergence.leastAboveCrown(Submergence.LATERAL_APPROACH, velocity, first.bore());
    }

    /** {@return whether frazil ice is to be reckoned with at an air temperature, K} See {@link FrazilIce}. */
    public static boolean frazilPossible(double air) {
        return FrazilIce.possible(air);
    }
}
