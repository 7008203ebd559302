package org.leat.design;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.quantity.Measured;

/** Fall from intake water level to nozzle axis: a number or the readings it came from. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Fall from intake water level to nozzle axis: a number or the readings it came from")
public sealed interface GrossHead {

    /** A stated head. */
    @About("A stated head")
    @Plain
    public record Stated(
            @About("the fall") @Fact @Limits(atLeast = 0.01, atMost = 3000)
            Measured<Length> head) implements GrossHead {

        public Stated {
            Demand.limits(Stated.class, head).hold();
        }
    }

    /** Water-filled tube, step by step. */
    @About("Water-filled tube, step by step")
    public record Tube(
            @About("height of each step") @Limits(items = 1) List<Quantity<Length>> steps,

            @About("uncertainty of one step's reading") @Limits(atLeast = 0) @CanBeAbsent @Nullable
            Quantity<Length> reading)
            implements GrossHead {

        public Tube {
            steps = List.copyOf(steps);
            Demand.limits(Tube.class, steps, reading).hold();
        }
    }

    /** Pressure gauge on a filled standing pipe. */
    @About("Pressure gauge on a filled standing pipe")
    public record Gauge(
            @About("gauge reading, water standing") @Fact @Limits(above = 0)
            Measured<Pressure> pressure,

            @About("height of the gauge above the nozzle axis") @CanBeAbsent @Nullable
            Quantity<Length> gaugeAboveNozzle)
            implements GrossHead {

        public Gauge {
            Demand.limits(Gauge.class, pressure, gaugeAboveNozzle).hold();
        }
    }

    /** Clinometer and tape along the fall. */
    @About("Clinometer and tape along the fall")
    public record Clinometer(
            @About("each sighted leg") @Limits(items = 1) List<ClinometerLeg> legs,

            @About("uncertainty of one angle") @Limits(atLeast = 0) @CanBeAbsent @Nullable
            Quantity<Angle> angleReading)
            implements GrossHead {

        public Clinometer {
            legs = List.copyOf(legs);
            Demand.limits(Clinometer.class, legs, angleReading).hold();
        }
    }
}
