package org.leat.plant;

import java.util.Map;
import org.apiguardian.api.API;
import org.leat.catalogue.Catalogue;
import org.leat.design.Design;
import org.leat.plant.cases.Cases;
import org.leat.plant.cases.SolutionCache;
import org.leat.plant.derive.Derivation;
import org.leat.plant.derive.Derived;

/**
 * Makes plants that share work: what takes long to solve, and is equal in two of them to the last bit, is solved once. Each is the
 * plant that {@link Plant#of(Design, Catalogue)} gives, whatever was made before it. For a design that is changed and looked at again,
 * and for a folder of variants. Safe to share between threads; keeps some megabytes at most, however many plants it makes.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class PlantFactory {

    private final Catalogue catalogue;
    private final SolutionCache before = SolutionCache.nothing();

    private PlantFactory(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** {@return a maker of plants derived with some tables} */
    public static PlantFactory with(Catalogue catalogue) {
        return new PlantFactory(catalogue);
    }

    /** {@return the plant of a design} */
    public Plant plant(Design design) {
        Derived derived = Derivation.of(design, Map.of(), catalogue);
        return new Plant(design, derived, Cases.of(design, derived.numbers(), derived.unsolvable(), before));
    }
}
