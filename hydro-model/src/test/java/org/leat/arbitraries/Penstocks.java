package org.leat.arbitraries;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.leat.hydraulics.OpenNozzles;
import org.leat.hydraulics.PenstockSection;
import org.leat.hydraulics.SteadyPenstock;
import org.leat.hydraulics.WaterProperties;

/** Random penstocks of the size that feeds a battery. */
public final class Penstocks {

    public static final double VISCOSITY = WaterProperties.kinematicViscosity(10);
    public static final double DENSITY = WaterProperties.density(10);

    private Penstocks() {}

    public static Arbitrary<Double> between(double low, double high) {
        return Arbitraries.doubles().between(low, high).ofScale(9);
    }

    public static Arbitrary<PenstockSection> section() {
        return Combinators.combine(between(1, 800), between(0.01, 0.2), between(0, 3e-4), between(0, 8))
                .as(PenstockSection::new);
    }

    public static Arbitrary<List<PenstockSection>> sections() {
        return section().list().ofMinSize(1).ofMaxSize(5);
    }

    public static Arbitrary<SteadyPenstock> penstock() {
        return Combinators.combine(sections(), between(0, 2e5))
                .as((sections, screen) -> new SteadyPenstock(sections, screen, VISCOSITY));
    }

    public static Arbitrary<OpenNozzles> nozzles() {
        return Combinators.combine(
                        between(0.002, 0.05).list().ofMinSize(1).ofMaxSize(4),
                        between(0.9, 1),
                        between(0.6, 1),
                        between(0.03, 0.06),
                        between(0, 3))
                .as(OpenNozzles::new);
    }
}
