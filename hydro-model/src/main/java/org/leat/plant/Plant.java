package org.leat.plant;

import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.apiguardian.api.API;
import org.leat.catalogue.Catalogue;
import org.leat.design.Design;
import org.leat.plant.cases.Cases;
import org.leat.plant.cases.Running;
import org.leat.plant.derive.Derivation;
import org.leat.plant.derive.Derived;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.Assumption;
import org.leat.plant.numbers.BatteryNumbers;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.PenstockNumbers;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.RegulatorNumbers;
import org.leat.plant.numbers.RunnerNumbers;

/**
 * A design as SI numbers, with every default it took written down, and solved on demand. Immutable and safe to share
 * between threads.
 *
 * <p>{@code with…} gives the same plant with one part's numbers replaced, for trying out a way out: what the change
 * does not touch is not solved again.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class Plant {

    private final Design design;
    private final Derived derived;
    private final Cases cases;

    private Plant(Design design, Derived derived, Cases cases) {
        this.design = design;
        this.derived = derived;
        this.cases = cases;
    }

    /** {@return the plant of a design} */
    public static Plant of(Design design) {
        return of(design, Map.of());
    }

    /**
     * {@return the plant of a design with some assumptions moved}
     *
     * @param assumedInstead by the path of an assumption: the value to take in its place, SI; paths that nothing is
     *     assumed for have no effect
     */
    public static Plant of(Design design, Map<String, Double> assumedInstead) {
        return of(design, assumedInstead, Catalogue.shipped());
    }

    /** {@return the plant of a design, derived with tables of one's own} */
    public static Plant of(Design design, Catalogue catalogue) {
        return of(design, Map.of(), catalogue);
    }

    private static Plant of(Design design, Map<String, Double> assumedInstead, Catalogue catalogue) {
        Derived derived = Derivation.of(design, assumedInstead, catalogue);
        return new Plant(design, derived, Cases.of(design, derived.numbers(), derived.unsolvable()));
    }

    /** {@return the plant of another design} What both have in common is not solved again. */
    public Plant like(Design other) {
        return near(other, Derivation.of(other, Map.of(), derived));
    }

    /**
     * {@return the plant of the same design with some assumptions moved} What that does not touch is not solved again.
     *
     * @param assumedInstead as in {@link #of(Design, Map)}
     */
    public Plant like(Map<String, Double> assumedInstead) {
        return near(design, Derivation.of(design, assumedInstead, derived));
    }

    /** {@return what the plant was derived from} */
    public Design design() {
        return design;
    }

    /** {@return the tables it was derived with} */
    public Catalogue catalogue() {
        return derived.catalogue();
    }

    /** {@return every number} */
    public PlantNumbers numbers() {
        return derived.numbers();
    }

    /** {@return what had to be assumed, in the order of the design's fields} */
    public List<Assumption> assumptions() {
        return derived.assumptions();
    }

    /** {@return the numbers without which nothing can be solved; empty where it can} */
    public List<Amount.Unknown> unsolvable() {
        return derived.unsolvable();
    }

    /** {@return the plant in each situation; solved once, piece by piece as it is asked for} */
    public Cases solve() {
        return cases;
    }

    /**
     * {@return running on one nozzle set, on hand or not, with the most water the stream has}
     *
     * @throws IllegalStateException where {@link #unsolvable()} is not empty
     */
    public Running running(NozzleGroup nozzles) {
        return cases.running(nozzles);
    }

    /** {@return the same plant with other numbers} */
    public Plant withNumbers(PlantNumbers changed) {
        return near(design, derived.with(changed));
    }

    /** {@return the same plant with its numbers changed} */
    public Plant with(UnaryOperator<PlantNumbers> change) {
        return withNumbers(change.apply(numbers()));
    }

    /** {@return the same plant with another penstock} */
    public Plant withPenstock(PenstockNumbers penstock) {
        return withNumbers(numbers().withPenstock(penstock));
    }

    /** {@return the same plant with another runner} */
    public Plant withRunner(RunnerNumbers runner) {
        return withNumbers(numbers().withRunner(runner));
    }

    /** {@return the same plant with another alternator, or the same one wound or joined otherwise} */
    public Plant withAlternator(AlternatorNumbers alternator) {
        return withNumbers(numbers().withAlternator(alternator));
    }

    /** {@return the same plant with another battery} */
    public Plant withBattery(BatteryNumbers battery) {
        return withNumbers(numbers().withBattery(battery));
    }

    /** {@return the same plant with another regulator} */
    public Plant withRegulator(RegulatorNumbers regulator) {
        return withNumbers(numbers().withRegulator(regulator));
    }

    /** {@return the same plant with other cable resistances} */
    public Plant withBusResistance(PlantNumbers.BusResistance busResistance) {
        return withNumbers(numbers().withBusResistance(busResistance));
    }

    private Plant near(Design other, Derived changed) {
        return new Plant(other, changed, cases.near(other, changed.numbers(), changed.unsolvable()));
    }

    /**
     * Makes plants that share work: what takes long to solve, and is equal in two of them to the last bit, is solved once. Each is the
     * plant that {@link Plant#of(Design, Catalogue)} gives, whatever was made before it. For a design that is changed and looked at
     * again, and for a folder of variants. Safe to share between threads; keeps some megabytes at most, however many plants it makes.
     */
    public static final class Factory {

        private final Catalogue catalogue;
        private final Cases.Factory cases = new Cases.Factory();

        private Factory(Catalogue catalogue) {
            this.catalogue = catalogue;
        }

        /** {@return a maker of plants derived with some tables} */
        public static Factory with(Catalogue catalogue) {
            return new Factory(catalogue);
        }

        /** {@return the plant of a design} */
        public Plant plant(Design design) {
            Derived derived = Derivation.of(design, Map.of(), catalogue);
            return new Plant(design, derived, cases.of(design, derived.numbers(), derived.unsolvable()));
        }
    }
}
