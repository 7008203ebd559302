package org.leat.plant.derive;

import java.util.List;
import org.leat.catalogue.Catalogue;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.Assumption;
import org.leat.plant.numbers.PlantNumbers;

/** What was derived from a design: its numbers, and what had to be assumed for them. Immutable. */
public final class Derived {

    private final PlantNumbers numbers;
    private final List<Assumption> assumptions;
    private final List<Amount.Unknown> unsolvable;
    private final Catalogue catalogue;
    private final List<Assume.Part<?>> parts;

    Derived(
            PlantNumbers numbers,
            List<Assumption> assumptions,
            List<Amount.Unknown> unsolvable,
            Catalogue catalogue,
            List<Assume.Part<?>> parts) {
        this.numbers = numbers;
        this.assumptions = List.copyOf(assumptions);
        this.unsolvable = List.copyOf(unsolvable);
        this.catalogue = catalogue;
        this.parts = parts;
    }

    /** {@return every number} */
    public PlantNumbers numbers() {
        return numbers;
    }

    /** {@return what had to be assumed, in the order of the design's fields} */
    public List<Assumption> assumptions() {
        return assumptions;
    }

    /** {@return the numbers without which nothing can be solved; empty where it can} */
    public List<Amount.Unknown> unsolvable() {
        return unsolvable;
    }

    /** {@return the tables it was derived with} */
    public Catalogue catalogue() {
        return catalogue;
    }

    /** {@return the same with other numbers, not those of the design} */
    public Derived with(PlantNumbers changed) {
        return new Derived(changed, assumptions, unsolvable, catalogue, parts);
    }

    List<Assume.Part<?>> parts() {
        return parts;
    }
}
