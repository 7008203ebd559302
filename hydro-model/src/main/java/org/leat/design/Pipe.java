package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.quantity.Si;

/** What a section of penstock is made of. */
@API(status = API.Status.STABLE, since = "0.1")
@About("What a section of penstock is made of")
@Sample("{ kind: polyethylene, material: pe100, outside-diameter: 63 mm, sdr: 17 }")
public sealed interface Pipe {

    /** {@return what it may stand inside, as marked; null where that is not told} */
    @Nullable
    Quantity<Pressure> pressureRating();

    /** {@return roughness inside, in place of the usual one; null where that is not told} */
    @Nullable
    Quantity<Length> roughness();

    /** Polyethylene pressure pipe. */
    @About("Polyethylene pressure pipe")
    @AlsoWritten({"PE", "HDPE", "MDPE", "PE80", "PE100"})
    public record Polyethylene(
            @About("the standard the pipe is marked with") @CanBeAbsent @Nullable
            String standard,

            @About("marked on the pipe") PolyethyleneGrade material,

            @About("nominal, as marked") @Limits(atLeast = 0.01, atMost = 10)
            Quantity<Length> outsideDiameter,

            @About("outside diameter over wall, as marked")
            @AlsoWritten("SDR #")
            @Limits(above = 3, atMost = 100)
            @CanBeAbsent
            @Nullable
            Double sdr,

            @About("least wall, where marked or measured") @Limits(atLeast = 1e-5, atMost = 1) @CanBeAbsent @Nullable
            Quantity<Length> wall,

            @About("PN as marked, at 20 °C") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
            Quantity<Pressure> pressureRating,

            @About("inside, in place of the usual value") @Limits(atLeast = 0) @CanBeAbsent @Nullable
            Quantity<Length> roughness)
            implements Pipe {

        public Polyethylene {
            Demand.limits(Polyethylene.class, standard, material, outsideDiameter, sdr, wall, pressureRating, roughness)
                    .that(sdr != null || wall != null, "sdr", null, "the SDR, or the wall thickness")
                    .that(
                            wall == null || Si.of(outsideDiameter) > 3 * Si.of(wall),
                            "outsideDiameter",
                            outsideDiameter,
                            "more than three times the wall, " + Demand.print(wall))
                    .that(
                            wall == null
                                    || sdr == null
                                    || Math.abs(Si.of(outsideDiameter) / Si.of(wall) - sdr) <= 0.25 * sdr,
                            "sdr",
                            sdr,
                            "outside diameter over wall to agree with the wall given, " + Demand.print(wall))
                    .hold();
        }
    }

    /** Unplasticised PVC pressure pipe. */
    @About("Unplasticised PVC pressure pipe")
    @AlsoWritten({"uPVC", "PVCU"})
    public record PvcU(
            @About("the standard the pipe is marked with") @CanBeAbsent @Nullable
            String standard,

            @About("nominal, as marked") @Limits(atLeast = 0.01, atMost = 10)
            Quantity<Length> outsideDiameter,

            @About("PN as marked, at 20 °C") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
            Quantity<Pressure> pressureRating,

            @About("least wall, where marked or measured") @Limits(atLeast = 1e-5, atMost = 1) @CanBeAbsent @Nullable
            Quantity<Length> wall,

            @About("inside, in place of the usual value") @Limits(atLeast = 0) @CanBeAbsent @Nullable
            Quantity<Length> roughness)
            implements Pipe {

        public PvcU {
            Demand.limits(PvcU.class, standard, outsideDiameter, pressureRating, wall, roughness)
                    .that(
                            pressureRating != null || wall != null,
                            "pressureRating",
                            null,
                            "the PN as marked, or the wall thickness")
                    .that(
                            wall == null || Si.of(outsideDiameter) > 3 * Si.of(wall),
                            "outsideDiameter",
                            outsideDiameter,
                            "more than three times the wall, " + Demand.print(wall))
                    .hold();
        }
    }

    /** Steel tube. */
    @About("Steel tube")
    @AlsoWritten({"galvanised steel", "galvanized steel"})
    public record Steel(
            @About("the standard the tube is made to") @CanBeAbsent @Nullable
            String standard,

            @About("as made") @Limits(atLeast = 0.001, atMost = 10)
            Quantity<Length> outsideDiameter,

            @About("as made") @Limits(atLeast = 1e-5, atMost = 1)
            Quantity<Length> wall,

            @About("of the steel") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
            Quantity<Pressure> yieldStrength,

            @About("where marked") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
            Quantity<Pressure> pressureRating,

            @About("inside, in place of the usual value") @Limits(atLeast = 0) @CanBeAbsent @Nullable
            Quantity<Length> roughness)
            implements Pipe {

        public Steel {
            Demand.limits(Steel.class, standard, outsideDiameter, wall, yieldStrength, pressureRating, roughness)
                    .that(
                            Si.of(outsideDiameter) > 2 * Si.of(wall),
                            "outsideDiameter",
                            outsideDiameter,
                            "more than twice the wall, " + Demand.print(wall))
                    .hold();
        }
    }

    /** Hose, by its marks. */
    @About("Hose, by its marks")
    public record Hose(
            @About("inside diameter") @Limits(atLeast = 0.001, atMost = 10)
            Quantity<Length> bore,

            @About("working pressure as marked") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
            Quantity<Pressure> pressureRating,

            @About("as marked") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
            Quantity<Pressure> burstPressure,

            @About("highest at the marked pressure") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
            Quantity<Temperature> ratedTemperature,

            @About("thickness") @Limits(above = 0) @CanBeAbsent @Nullable
            Quantity<Length> wall,

            @About("elastic, of the wall") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
            Quantity<Pressure> modulus,

            @About("whether a helix keeps it open under suction") @Fact @CanBeAbsent @Nullable
            Boolean suctionProof,

            @About("inside, in place of the usual value") @Limits(atLeast = 0) @CanBeAbsent @Nullable
            Quantity<Length> roughness)
            implements Pipe {

        public Hose {
            Demand.limits(
                            Hose.class,
                            bore,
                            pressureRating,
                            burstPressure,
                            ratedTemperature,
                            wall,
                            modulus,
                            suctionProof,
                            roughness)
                    .hold();
        }
    }

    /** Pipe of one's own, by its numbers. */
    @About("Pipe of one's own, by its numbers")
    public record OtherPipe(
            @About("inside diameter") @Limits(atLeast = 0.001, atMost = 10)
            Quantity<Length> bore,

            @About("thickness") @Limits(above = 0) Quantity<Length> wall,

            @About("at 20 °C") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
            Quantity<Pressure> pressureRating,

            @About("elastic, short-term") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
            Quantity<Pressure> modulus,

            @About("elastic, under standing load") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
            Quantity<Pressure> longTermModulus,

            @About("of the wall") @Limits(atLeast = 0, atMost = 0.5) @CanBeAbsent @Nullable
            Double poissonRatio,

            @About("the wall may take") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
            Quantity<Temperature> highestTemperature,

            @About("inside") @Limits(atLeast = 0) @CanBeAbsent @Nullable
            Quantity<Length> roughness)
            implements Pipe {

        public OtherPipe {
            Demand.limits(
                            OtherPipe.class,
                            bore,
                            wall,
                            pressureRating,
                            modulus,
                            longTermModulus,
                            poissonRatio,
                            highestTemperature,
                            roughness)
                    .hold();
        }
    }
}
