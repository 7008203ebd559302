package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** What keeps leaves and stones out of the pipe. */
@API(status = API.Status.STABLE, since = "0.1")
@About("What keeps leaves and stones out of the pipe")
@Sample("{ kind: drilled-holes, holes: 900, hole-diameter: 3 mm }")
public sealed interface Screen {

    /** Drilled plate, bottle or pipe. */
    @About("Drilled plate, bottle or pipe")
    public record DrilledHoles(
            @About("how many") @Limits(atLeast = 1) int holes,
            @About("of each") @Limits(above = 0) Quantity<Length> holeDiameter,

            @About("share of the openings blocked between cleanings")
            @Limits(atLeast = 0, atMost = 1)
            @CanBeAbsent
            @Nullable
            Quantity<Dimensionless> blockedShare,

            @About("drilled surface; for the open share") @Limits(above = 0) @CanBeAbsent @Nullable
            Quantity<Area> surface)
            implements Screen {

        public DrilledHoles {
            Demand.limits(DrilledHoles.class, holes, holeDiameter, blockedShare, surface)
                    .hold();
        }
    }

    /** Woven wire mesh. */
    @About("Woven wire mesh")
    public record Mesh(
            @About("whole mesh surface") @Limits(above = 0) Quantity<Area> area,

            @About("clear distance between wires") @Limits(above = 0)
            Quantity<Length> opening,

            @About("wire thickness") @Limits(above = 0) Quantity<Length> wire,

            @About("share of the openings blocked between cleanings")
            @Limits(atLeast = 0, atMost = 1)
            @CanBeAbsent
            @Nullable
            Quantity<Dimensionless> blockedShare)
            implements Screen {

        public Mesh {
            Demand.limits(Mesh.class, area, opening, wire, blockedShare).hold();
        }
    }

    /** Bar rack. */
    @About("Bar rack")
    public record Bars(
            @About("approach cross-section of the rack") @Limits(above = 0)
            Quantity<Area> area,

            @About("clear distance between bars") @Limits(above = 0)
            Quantity<Length> spacing,

            @About("of a bar across the flow") @Limits(above = 0)
            Quantity<Length> thickness,

            @About("of the rack against the horizontal") @Limits(above = 0) @CanBeAbsent @Nullable
            Quantity<Angle> slope,

            @About("whether the bars are round or rounded upstream") @CanBeAbsent @Nullable
            Boolean rounded,

            @About("share of the openings blocked between cleanings")
            @Limits(atLeast = 0, atMost = 1)
            @CanBeAbsent
            @Nullable
            Quantity<Dimensionless> blockedShare)
            implements Screen {

        public Bars {
            Demand.limits(Bars.class, area, spacing, thickness, slope, rounded, blockedShare)
                    .hold();
        }
    }
}
