package org.leat.catalogue.rows;

import org.apiguardian.api.API;
import org.leat.law.Physical;

/**
 * Diameters and walls of a pipe, m. The loss is reckoned with the bore between mean walls, the strength with the least
 * wall: taking the outside diameter for the bore would make the loss about half of what it is.
 *
 * @param outsideDiameter nominal
 * @param minimumWall least wall the standard allows
 * @param meanWall least wall and half its tolerance
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record PipeDimensions(double outsideDiameter, double minimumWall, double meanWall) {

    public PipeDimensions {
        Physical.positive("minimumWall", minimumWall);
        Physical.within("meanWall", meanWall, minimumWall, outsideDiameter / 2);
        Physical.positive("boreForLoss", outsideDiameter - 2 * meanWall);
    }

    /** {@return bore between mean walls, m} */
    public double boreForLoss() {
        return outsideDiameter - 2 * meanWall;
    }

    /** {@return bore between least walls, m} */
    public double boreForStrength() {
        return outsideDiameter - 2 * minimumWall;
    }

    /** {@return outside diameter over least wall, as made} */
    public double diameterRatio() {
        return outsideDiameter / minimumWall;
    }
}
