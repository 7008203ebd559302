package org.leat.catalogue;

import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apiguardian.api.API;
import org.leat.catalogue.rows.CatalogueException;
import org.leat.catalogue.rows.PipeMaterial;
import org.leat.catalogue.rows.PipeStandard;
import org.leat.catalogue.rows.PlasticPipe;
import org.leat.catalogue.rows.Spread;
import org.leat.catalogue.tables.FittingLoss;
import org.leat.catalogue.tables.PipeCatalogue;
import org.leat.design.FittingKind;

/**
 * The tables a plant is derived with: those of this artifact, or some of them in one's own words. Immutable; tables are
 * read when they are first asked for, and every method throws {@link CatalogueException} where one cannot be read.
 *
 * <p>Diameters in m, pressures in Pa.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class Catalogue {

    private static final Catalogue SHIPPED = new Catalogue(List.of(), Map.of());

    private final List<PlasticPipe> pipes;
    private final Map<FittingKind, Spread> fittings;

    private Catalogue(List<PlasticPipe> pipes, Map<FittingKind, Spread> fittings) {
        this.pipes = pipes;
        this.fittings = fittings;
    }

    /** {@return the tables of this artifact} */
    public static Catalogue shipped() {
        return SHIPPED;
    }

    /**
     * {@return the same with pipes of one's own} Of each standard and material among them only these are offered; what a
     * design names beside them still has the wall and rating of its standard.
     *
     * @param own the pipes at hand, in any order; walls and ratings as their maker states them
     */
    public Catalogue withPipes(List<PlasticPipe> own) {
        return new Catalogue(List.copyOf(own), fittings);
    }

    /** {@return the same with a loss coefficient of one's own for one kind of fitting, on its own bore} */
    public Catalogue withFitting(FittingKind kind, Spread loss) {
        Map<FittingKind, Spread> all = new EnumMap<>(FittingKind.class);
        all.putAll(fittings);
        all.put(kind, loss);
        return new Catalogue(pipes, Collections.unmodifiableMap(all));
    }

    /** {@return the pipe of a standard, by outside diameter and SDR as marked} */
    public PlasticPipe pipe(PipeStandard standard, PipeMaterial material, double outsideDiameter, double sdr) {
        return pipes.stream()
                .filter(pipe -> of(pipe, standard, material)
                        && same(pipe.dimensions().outsideDiameter(), outsideDiameter)
                        && same(pipe.sdr(), sdr))
                .findFirst()
                .orElseGet(() -> PipeCatalogue.pipe(standard, material, outsideDiameter, sdr));
    }

    /** {@return the thinnest pipe of a standard that carries a nominal pressure; empty where none does} */
    public Optional<PlasticPipe> pipeOfRating(
            PipeStandard standard, PipeMaterial material, double outsideDiameter, double nominalPressure) {
        return pipeSeries(standard, material, outsideDiameter).stream()
                .filter(pipe -> same(pipe.nominalPressure(), nominalPressure))
                .findFirst()
                .or(() -> PipeCatalogue.ofRating(standard, material, outsideDiameter, nominalPressure));
    }

    /** {@return outside diameters on offer, rising} */
    public List<Double> pipeSizes(PipeStandard standard, PipeMaterial material) {
        return owns(standard, material)
                ? pipes.stream()
                        .filter(pipe -> of(pipe, standard, material))
                        .map(pipe -> pipe.dimensions().outsideDiameter())
                        .sorted()
                        .distinct()
                        .toList()
                : PipeCatalogue.sizes(standard);
    }

    /** {@return every pipe on offer of one outside diameter, thinnest wall first} */
    public List<PlasticPipe> pipeSeries(PipeStandard standard, PipeMaterial material, double outsideDiameter) {
        return owns(standard, material)
                ? pipes.stream()
                        .filter(pipe -> of(pipe, standard, material)
                                && same(pipe.dimensions().outsideDiameter(), outsideDiameter))
                        .sorted(Comparator.comparingDouble(PlasticPipe::sdr).reversed())
                        .toList()
                : PipeCatalogue.series(standard, material, outsideDiameter);
    }

    /** {@return loss coefficient of a fitting, on the velocity in its own bore} */
    public Spread fittingLoss(FittingKind kind) {
        Spread own = fittings.get(kind);
        return own == null ? FittingLoss.of(kind) : own;
    }

    private boolean owns(PipeStandard standard, PipeMaterial material) {
        return pipes.stream().anyMatch(pipe -> of(pipe, standard, material));
    }

    private static boolean of(PlasticPipe pipe, PipeStandard standard, PipeMaterial material) {
        return pipe.standard() == standard && pipe.material() == material;
    }

    private static boolean same(double one, double other) {
        return Math.abs(one / other - 1) < 1e-3;
    }
}
