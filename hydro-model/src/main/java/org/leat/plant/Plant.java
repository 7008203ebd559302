package org.leat.plant;

import java.util.List;
import java.util.Map;
import org.leat.design.Design;

/**
 * A design as SI numbers, with every default it took written down, and solved on demand. Immutable and safe to share
 * between threads.
 *
 * <p>{@code with…} gives the same plant with one part's numbers replaced, for trying out a way out: what the change
 * does not touch is not solved again.
 */
public final class Plant {

    private final Design design;
    private final PlantNumbers numbers;
    private final List<Assumption> assumptions;
    private final List<Amount.Unknown> unsolvable;
    private final Solver solver;
    private final List<Assume.Part<?>> parts;
    private final Once<Cases> cases;

    Plant(
            Design design,
            PlantNumbers numbers,
            List<Assumption> assumptions,
            List<Amount.Unknown> unsolvable,
            Solver solver,
            List<Assume.Part<?>> parts) {
        this.design = design;
        this.numbers = numbers;
        this.assumptions = List.copyOf(assumptions);
        this.unsolvable = List.copyOf(unsolvable);
        this.solver = solver;
        this.parts = parts;
        this.cases = new Once<>(() -> new Cases(this, solver));
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
        return Derivation.of(design, assumedInstead, null);
    }

    /** {@return the plant of another design} What both have in common is not solved again. */
    public Plant like(Design other) {
        return Derivation.of(other, Map.of(), this);
    }

    /**
     * {@return the plant of the same design with some assumptions moved} What that does not touch is not solved again.
     *
     * @param assumedInstead as in {@link #of(Design, Map)}
     */
    public Plant like(Map<String, Double> assumedInstead) {
        return Derivation.of(design, assumedInstead, this);
    }

    /** {@return what the plant was derived from} */
    public Design design() {
        return design;
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

    /** {@return the plant in each situation; solved once, piece by piece as it is asked for} */
    public Cases solve() {
        return cases.get();
    }

    /**
     * {@return running on one nozzle set, on hand or not, with the most water the stream has}
     *
     * @throws IllegalStateException where {@link #unsolvable()} is not empty
     */
    public Running running(NozzleGroup nozzles) {
        return solver.running(nozzles);
    }

    /** {@return the same plant with another penstock} */
    public Plant withPenstock(PenstockNumbers penstock) {
        return with(new PlantNumbers(
                numbers.site(),
                numbers.water(),
                penstock,
                numbers.nozzles(),
                numbers.runner(),
                numbers.alternator(),
                numbers.rectifier(),
                numbers.cables(),
                numbers.busResistance(),
                numbers.regulator(),
                numbers.dumpLoad(),
                numbers.battery()));
    }

    /** {@return the same plant with another runner} */
    public Plant withRunner(RunnerNumbers runner) {
        return with(new PlantNumbers(
                numbers.site(),
                numbers.water(),
                numbers.penstock(),
                numbers.nozzles(),
                runner,
                numbers.alternator(),
                numbers.rectifier(),
                numbers.cables(),
                numbers.busResistance(),
                numbers.regulator(),
                numbers.dumpLoad(),
                numbers.battery()));
    }

    /** {@return the same plant with another alternator, or the same one wound or joined otherwise} */
    public Plant withAlternator(AlternatorNumbers alternator) {
        return with(new PlantNumbers(
                numbers.site(),
                numbers.water(),
                numbers.penstock(),
                numbers.nozzles(),
                numbers.runner(),
                alternator,
                numbers.rectifier(),
                numbers.cables(),
                numbers.busResistance(),
                numbers.regulator(),
                numbers.dumpLoad(),
                numbers.battery()));
    }

    /** {@return the same plant with another battery} */
    public Plant withBattery(BatteryNumbers battery) {
        return with(new PlantNumbers(
                numbers.site(),
                numbers.water(),
                numbers.penstock(),
                numbers.nozzles(),
                numbers.runner(),
                numbers.alternator(),
                numbers.rectifier(),
                numbers.cables(),
                numbers.busResistance(),
                numbers.regulator(),
                numbers.dumpLoad(),
                battery));
    }

    /** {@return the same plant with another regulator} */
    public Plant withRegulator(RegulatorNumbers regulator) {
        return with(new PlantNumbers(
                numbers.site(),
                numbers.water(),
                numbers.penstock(),
                numbers.nozzles(),
                numbers.runner(),
                numbers.alternator(),
                numbers.rectifier(),
                numbers.cables(),
                numbers.busResistance(),
                regulator,
                numbers.dumpLoad(),
                numbers.battery()));
    }

    /** {@return the same plant with other cable resistances} */
    public Plant withBusResistance(PlantNumbers.BusResistance busResistance) {
        return with(new PlantNumbers(
                numbers.site(),
                numbers.water(),
                numbers.penstock(),
                numbers.nozzles(),
                numbers.runner(),
                numbers.alternator(),
                numbers.rectifier(),
                numbers.cables(),
                busResistance,
                numbers.regulator(),
                numbers.dumpLoad(),
                numbers.battery()));
    }

    private Plant with(PlantNumbers changed) {
        return new Plant(design, changed, assumptions, unsolvable, solver.with(changed), parts);
    }

    Solver solver() {
        return solver;
    }

    List<Assume.Part<?>> parts() {
        return parts;
    }
}
