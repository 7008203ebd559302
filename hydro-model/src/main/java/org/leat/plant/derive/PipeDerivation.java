package org.leat.plant.derive;

import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.jspecify.annotations.Nullable;
import org.leat.catalogue.Catalogue;
import org.leat.catalogue.rows.PipeDimensions;
import org.leat.catalogue.rows.PipeMaterial;
import org.leat.catalogue.rows.PipeStandard;
import org.leat.catalogue.rows.PlasticPipe;
import org.leat.catalogue.rows.Spread;
import org.leat.catalogue.tables.MaterialData;
import org.leat.catalogue.tables.MaterialModulus;
import org.leat.catalogue.tables.MaterialProperty;
import org.leat.catalogue.tables.PipeCatalogue;
import org.leat.catalogue.tables.PreferredWall;
import org.leat.catalogue.tables.PressureRating;
import org.leat.catalogue.tables.SurgeAllowance;
import org.leat.catalogue.tables.TemperatureReduction;
import org.leat.catalogue.tables.TemperatureTradition;
import org.leat.design.Pipe;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.SectionNumbers.PipeNumbers;
import org.leat.plant.numbers.SectionNumbers.PipeNumbers.Stiffness;
import org.leat.plant.numbers.SectionNumbers.PipeNumbers.Strength;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Pipe of one section: dimensions, ratings and stiffness from its marks and the catalogue. */
final class PipeDerivation {

    private static final double STEEL_WALL_LEFT = 0.875;
    private static final double STEEL_SAFETY = 2;

    /** Names of pressures are rounded: the wall that carries PN 10 at dn 110 holds 9.93 bar (ISO 4065, ISO 1452-2). */
    private static final double NAME_ROUNDED = 1.03;

    private final String path;
    private final double wallTemperature;
    private final double coldest;
    private final Catalogue catalogue;
    private final Assume assume;

    /**
     * @param path of the pipe in the design
     * @param wallTemperature highest, K
     * @param coldest water, K
     * @param catalogue the tables to take walls and ratings from
     */
    PipeDerivation(String path, double wallTemperature, double coldest, Catalogue catalogue, Assume assume) {
        this.path = path;
        this.wallTemperature = wallTemperature;
        this.coldest = coldest;
        this.catalogue = catalogue;
        this.assume = assume;
    }

    PipeNumbers of(Pipe pipe) {
        if (pipe instanceof Pipe.Polyethylene polyethylene) {
            return of(polyethylene);
        } else if (pipe instanceof Pipe.PvcU pvc) {
            return of(pvc);
        } else if (pipe instanceof Pipe.Steel steel) {
            return of(steel);
        } else if (pipe instanceof Pipe.Hose hose) {
            return of(hose);
        }
        return of((Pipe.OtherPipe) pipe);
    }

    private PipeNumbers of(Pipe.Polyethylene pipe) {
        PipeMaterial material = PipeMaterial.of(pipe.material());
        PipeStandard standard = standard(pipe.standard(), PipeStandard.ISO_4427);
        double outside = Si.of(pipe.outsideDiameter());
        double sdr = pipe.sdr() != null ? pipe.sdr() : outside / Si.of(pipe.wall(), outside / 11);
        PlasticPipe tabled = catalogue.pipe(standard, material, outside, sdr);
        PipeDimensions dimensions =
                pipe.wall() == null ? tabled.dimensions() : PreferredWall.ofWall(standard, outside, Si.of(pipe.wall()));
        double ofWall = pipe.sdr() != null ? tabled.nominalPressure() : calculated(standard, material, outside, sdr);
        // marked higher than its wall can hold: the wall counts
        double rating = Math.min(Si.of(pipe.pressureRating(), ofWall), ofWall);
        return plastic(material, dimensions, rating, TemperatureTradition.POLYETHYLENE_ISO, pipe.roughness());
    }

    private PipeNumbers of(Pipe.PvcU pipe) {
        PipeStandard standard = standard(pipe.standard(), PipeStandard.ISO_1452);
        double outside = Si.of(pipe.outsideDiameter());
        double wall = pipe.wall() != null ? Si.of(pipe.wall()) : pvcWall(pipe, standard, outside);
        PipeDimensions dimensions = PreferredWall.ofWall(standard, outside, wall);
        double rating = pvcRating(pipe, standard, outside, outside / wall);
        return plastic(PipeMaterial.PVC_U, dimensions, rating, TemperatureTradition.PVC_U, pipe.roughness());
    }

    /** As marked, yet never more than a stated wall can hold; by the wall alone where nothing is marked. */
    private static double pvcRating(Pipe.PvcU pipe, PipeStandard standard, double outside, double sdr) {
        if (pipe.pressureRating() == null) {
            return told(pipe.standard())
                    ? calculated(standard, PipeMaterial.PVC_U, outside, sdr)
                    : Math.min(
                            calculated(PipeStandard.ISO_1452, PipeMaterial.PVC_U, outside, sdr),
                            calculated(PipeStandard.DIN_8062, PipeMaterial.PVC_U, outside, sdr));
        }
        double marked = Si.of(pipe.pressureRating());
        if (pipe.wall() == null) {
            return marked;
        }
        double ofWall = calculated(standard, PipeMaterial.PVC_U, outside, sdr);
        return marked <= NAME_ROUNDED * ofWall ? marked : ofWall;
    }

    private static boolean told(@Nullable String mark) {
        return mark != null
                && PipeStandard.find(mark).filter(found -> !polyethylene(found)).isPresent();
    }

    /** The wall the standard tables for a nominal pressure, else the one its design stress asks for. */
    private double pvcWall(Pipe.PvcU pipe, PipeStandard standard, double outside) {
        double nominal = Si.of(pipe.pressureRating(), 0);
        Optional<PlasticPipe> tabled = catalogue.pipeOfRating(standard, PipeMaterial.PVC_U, outside, nominal);
        if (tabled.isPresent()) {
            return tabled.get().dimensions().minimumWall();
        }
        double stress = MaterialData.usual(PipeMaterial.PVC_U, MaterialProperty.MINIMUM_REQUIRED_STRENGTH)
                / PipeCatalogue.designCoefficient(standard, outside);
        double wall = Math.min(0.3 * outside, outside * nominal / (2 * stress + nominal));
        return assume.placeholder(
                path + "/wall", QuantityKind.LENGTH, wall, 0.8 * wall, 1.25 * wall, "assumed/wall-from-rating");
    }

    private PipeNumbers of(Pipe.Steel pipe) {
        double outside = Si.of(pipe.outsideDiameter());
        double wall = Si.of(pipe.wall());
        double least = STEEL_WALL_LEFT * wall;
        Amount rating = Amount.of(steelRating(pipe, 2 / STEEL_SAFETY * least / outside));
        return new PipeNumbers(
                PipeMaterial.STEEL,
                outside,
                least,
                outside - 2 * wall,
                roughness(PipeMaterial.STEEL, pipe.roughness()),
                new Strength(rating, rating, SurgeAllowance.recurring(PipeMaterial.STEEL)),
                stiffness(PipeMaterial.STEEL));
    }

    /**
     * As marked, yet never more than the wall can hold; by the wall alone where nothing is marked. Of a steel that is not told the
     * weakest that tube is made of counts, and is named as assumed only where the wall and not the mark decides.
     *
     * @param wallShare what the wall holds over the yield strength of its steel
     */
    private double steelRating(Pipe.Steel pipe, double wallShare) {
        Spread yields = spread(PipeMaterial.STEEL, MaterialProperty.YIELD_STRENGTH);
        OptionalDouble marked = Si.optional(pipe.pressureRating());
        if (marked.isPresent() && marked.getAsDouble() <= wallShare * Si.of(pipe.yieldStrength(), yields.low())) {
            return marked.getAsDouble();
        }
        double yield = assume.tabled(
                pipe.yieldStrength(),
                path + "/yield-strength",
                QuantityKind.PRESSURE,
                yields,
                "assumed/material-property");
        double held = wallShare * yield;
        return Math.min(marked.orElse(held), held);
    }

    private PipeNumbers of(Pipe.Hose hose) {
        double bore = Si.of(hose.bore());
        Amount rating = stated(hose.pressureRating(), "/pressure-rating", "unknown/hose-rating");
        Amount hot = rating;
        if (hose.ratedTemperature() == null) {
            hot = Amount.missing(path + "/rated-temperature", "unknown/hose-rated-temperature");
        } else if (Si.of(hose.ratedTemperature()) < wallTemperature) {
            hot = Amount.missing(path + "/rated-temperature", "unknown/hose-hotter-than-rated");
        }
        double wall = Si.of(hose.wall(), 0);
        Amount modulus = hose.wall() == null
                ? Amount.missing(path + "/wall", "unknown/hose-wall")
                : stated(hose.modulus(), "/modulus", "unknown/hose-modulus");
        return new PipeNumbers(
                PipeMaterial.HOSE,
                bore + 2 * wall,
                wall,
                bore,
                roughness(PipeMaterial.HOSE, hose.roughness()),
                new Strength(
                        rating,
                        rating instanceof Amount.Unknown ? rating : hot,
                        SurgeAllowance.recurring(PipeMaterial.HOSE)),
                new Stiffness(
                        modulus,
                        modulus,
                        modulus,
                        MaterialData.usual(PipeMaterial.HOSE, MaterialProperty.POISSON_RATIO)));
    }

    private PipeNumbers of(Pipe.OtherPipe pipe) {
        double bore = Si.of(pipe.bore());
        double wall = Si.of(pipe.wall());
        Amount rating = stated(pipe.pressureRating(), "/pressure-rating", "unknown/rating-not-stated");
        Amount hot = rating;
        if (pipe.highestTemperature() == null) {
            hot = Amount.missing(path + "/highest-temperature", "unknown/temperature-limit-not-stated");
        } else if (Si.of(pipe.highestTemperature()) < wallTemperature) {
            hot = Amount.missing(path + "/highest-temperature", "unknown/rating-above-temperature");
        }
        return new PipeNumbers(
                null,
                bore + 2 * wall,
                wall,
                bore,
                roughness(PipeMaterial.PE100, pipe.roughness()),
                new Strength(rating, rating instanceof Amount.Unknown ? rating : hot, 1),
                new Stiffness(
                        stated(pipe.modulus(), "/modulus", "unknown/modulus-not-stated"),
                        stated(pipe.modulus(), "/modulus", "unknown/modulus-not-stated"),
                        stated(pipe.longTermModulus(), "/long-term-modulus", "unknown/modulus-not-stated"),
                        pipe.poissonRatio() == null ? 0.4 : pipe.poissonRatio()));
    }

    private PipeNumbers plastic(
            PipeMaterial material,
            PipeDimensions dimensions,
            double rating,
            TemperatureTradition tradition,
            @Nullable Quantity<Length> roughness) {
        Amount reduction = Amount.of(
                TemperatureReduction.factor(tradition, wallTemperature), "/penstock/highest-wall-temperature");
        return new PipeNumbers(
                material,
                dimensions.outsideDiameter(),
                dimensions.minimumWall(),
                dimensions.boreForLoss(),
                roughness(material, roughness),
                new Strength(Amount.of(rating), reduction.times(rating), SurgeAllowance.recurring(material)),
                stiffness(material));
    }

    private Stiffness stiffness(PipeMaterial material) {
        return new Stiffness(
                fast(material, coldest, "/site/water-temperature"),
                fast(material, wallTemperature, "/penstock/highest-wall-temperature"),
                standing(material),
                MaterialData.usual(material, MaterialProperty.POISSON_RATIO));
    }

    private static double calculated(PipeStandard standard, PipeMaterial material, double outside, double sdr) {
        return PressureRating.calculated(
                MaterialData.usual(material, MaterialProperty.MINIMUM_REQUIRED_STRENGTH),
                PipeCatalogue.designCoefficient(standard, outside),
                sdr);
    }

    private static PipeStandard standard(@Nullable String mark, PipeStandard usual) {
        if (mark == null) {
            return usual;
        }
        // a polyethylene pipe marked with a standard of PVC-U, or the other way round, keeps its material's own
        PipeStandard found = PipeStandard.find(mark).orElse(usual);
        return polyethylene(found) == polyethylene(usual) ? found : usual;
    }

    private static boolean polyethylene(PipeStandard standard) {
        return standard == PipeStandard.ISO_4427 || standard == PipeStandard.DIN_8074;
    }

    private static Amount fast(PipeMaterial material, double temperature, String statedAt) {
        return Amount.of(MaterialModulus.dynamic(material, temperature), statedAt);
    }

    private Amount standing(PipeMaterial material) {
        return Amount.of(MaterialModulus.longTerm(material, wallTemperature), "/penstock/highest-wall-temperature");
    }

    private Amount stated(@Nullable Quantity<Pressure> stated, String field, String reason) {
        return stated == null ? Amount.missing(path + field, reason) : Amount.of(Si.of(stated));
    }

    private double roughness(PipeMaterial material, @Nullable Quantity<Length> stated) {
        Spread aged = spread(material, MaterialProperty.ROUGHNESS_AGED);
        Spread made = spread(material, MaterialProperty.ROUGHNESS_NEW);
        return assume.tabled(
                stated,
                path + "/roughness",
                QuantityKind.LENGTH,
                new Spread(made.low(), aged.usual(), aged.high(), aged.source()),
                "assumed/roughness");
    }

    private static Spread spread(PipeMaterial material, MaterialProperty property) {
        return MaterialData.find(material, property).orElseThrow();
    }
}
