package org.leat.plant.derive;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leat.catalogue.Catalogue;
import org.leat.design.Design;
import org.leat.design.RegulatorKind;
import org.leat.design.TemperatureRange;
import org.leat.law.Gravity;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.Assumption;
import org.leat.plant.numbers.BatteryNumbers;
import org.leat.plant.numbers.CableNumbers;
import org.leat.plant.numbers.DumpLoadNumbers;
import org.leat.plant.numbers.NozzleNumbers;
import org.leat.plant.numbers.PenstockNumbers;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.RectifierNumbers;
import org.leat.plant.numbers.RegulatorNumbers;
import org.leat.plant.numbers.RunnerNumbers;
import org.leat.plant.numbers.SiteNumbers;
import org.leat.plant.numbers.WaterNumbers;
import org.leat.quantity.Celsius;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Turns a design into numbers. */
public final class Derivation {

    private static final double USUAL_WATER = Celsius.toKelvin(10);

    /** Open-circuit voltage over bus voltage at which an alternator charges well. */
    private static final double WELL_ABOVE_BUS = 1.35;

    /** Share of the gross head that a sound penstock leaves at the nozzle. */
    private static final double USUAL_NET_HEAD = 0.85;

    private static final List<String> ORDER = List.of(
            "site",
            "intake",
            "penstock",
            "nozzles",
            "runner",
            "alternator",
            "rectifier",
            "cables",
            "regulator",
            "dump-load",
            "battery");

    private Derivation() {}

    /**
     * {@return the numbers of a design}
     *
     * @param assumedInstead by the path of an assumption: the value to take in its place, SI; paths that nothing is
     *     assumed for have no effect
     * @param catalogue the tables to derive it with
     */
    public static Derived of(Design design, Map<String, Double> assumedInstead, Catalogue catalogue) {
        return of(design, assumedInstead, catalogue, List.of());
    }

    /**
     * {@return the numbers of a design that may have much in common with another}
     *
     * @param assumedInstead as in {@link #of(Design, Map, Catalogue)}
     * @param near what was derived from the other: its tables are taken, and its parts where nothing has changed
     */
    public static Derived of(Design design, Map<String, Double> assumedInstead, Derived near) {
        return of(design, assumedInstead, near.catalogue(), near.parts());
    }

    private static Derived of(
            Design design, Map<String, Double> assumedInstead, Catalogue catalogue, List<Assume.Part<?>> parts) {
        Assume assume = new Assume(assumedInstead, parts);
        TemperatureRange range = design.site().waterTemperature();
        Waters waters = assume.part(Arrays.asList(range), () -> waters(range, assume));
        SiteNumbers site = assume.part(
                Arrays.asList(design.site(), waters),
                () -> SiteDerivation.of(design.site(), waters.lowest(), waters.highest(), assume));
        PenstockNumbers penstock = assume.part(
                Arrays.asList(design.penstock(), design.intake(), site, waters),
                () -> PenstockDerivation.of(design, site, waters.coldest(), catalogue, assume));
        NozzleNumbers nozzles =
                assume.part(Arrays.asList(design.nozzles()), () -> NozzleDerivation.of(design.nozzles(), assume));
        double coldAir = site.lowestAirTemperature();
        AlternatorNumbers alone = assume.part(
                Arrays.asList(design.alternator(), coldAir),
                () -> AlternatorDerivation.of(design.alternator(), coldAir, assume));
        double run = assume.part(
                Arrays.asList(design.cables(), alone.winding().inductance()),
                () -> RunInductanceDerivation.of(
                        design.cables(), alone.winding().inductance(), assume));
        AlternatorNumbers alternator = assume.part(
                Arrays.asList(alone, run),
                () -> alone.withWinding(alone.winding().withRunInductance(run)));
        RectifierNumbers rectifier = assume.part(
                Arrays.asList(design.rectifier()), () -> BusDerivation.rectifier(design.rectifier(), assume));
        BatteryNumbers battery = assume.part(
                Arrays.asList(design.battery(), design.regulator()),
                () -> BatteryDerivation.of(design.battery(), design.regulator(), assume));
        List<CableNumbers> cables =
                assume.part(Arrays.asList(design.cables()), () -> CableDerivation.cables(design.cables(), assume));
        RegulatorNumbers regulator = assume.part(
                Arrays.asList(design.regulator(), battery.absorptionVoltage()),
                () -> BusDerivation.regulator(design.regulator(), battery.absorptionVoltage(), assume));
        double clamp = WELL_ABOVE_BUS * (battery.restingVoltage() + 2 * rectifier.threshold());
        double jet = nozzles.velocityCoefficient()
                * Math.sqrt(2 * Gravity.STANDARD * USUAL_NET_HEAD * Math.max(0.1, site.grossHead()));
        double suiting = alternator.speedAt(clamp) / alternator.gearRatio();
        RunnerNumbers runner = assume.part(
                Arrays.asList(design.runner(), suiting, jet),
                () -> RunnerDerivation.of(design.runner(), suiting, jet, assume));
        boolean regulated = regulator.kind() != RegulatorKind.NONE;
        PlantNumbers.BusResistance bus =
                assume.part(Arrays.asList(cables, regulated), () -> CableDerivation.bus(cables, regulated, assume));
        Optional<DumpLoadNumbers> dump = assume.part(
                Arrays.asList(design.dumpLoad()),
                () -> Optional.ofNullable(BusDerivation.dumpLoad(design.dumpLoad(), assume)));
        PlantNumbers numbers = new PlantNumbers(
                site,
                waters.usual(),
                penstock,
                nozzles,
                runner,
                alternator,
                rectifier,
                cables,
                bus,
                regulator,
                dump.orElse(null),
                battery);
        List<Assumption> assumptions = new ArrayList<>(assume.list());
        assumptions.sort(Comparator.comparingInt(Derivation::rank));
        return new Derived(numbers, assumptions, unsolvable(design, site), catalogue, assume.parts());
    }

    /**
     * Water of the year.
     *
     * @param lowest temperature, K
     * @param highest temperature, K
     * @param usual while running
     * @param coldest in which a pressure wave runs fastest
     */
    private record Waters(double lowest, double highest, WaterNumbers usual, WaterNumbers coldest) {}

    private static Waters waters(@Nullable TemperatureRange range, Assume assume) {
        double lowest = range != null
                ? Si.of(range.lowest())
                : assume.sound(
                        "/site/water-temperature",
                        QuantityKind.TEMPERATURE,
                        USUAL_WATER,
                        Celsius.toKelvin(1),
                        Celsius.toKelvin(25),
                        "assumed/water-temperature");
        double highest = range != null ? Si.of(range.highest()) : lowest;
        return new Waters(lowest, highest, WaterNumbers.at(0.5 * (lowest + highest)), WaterNumbers.at(lowest));
    }

    private static List<Amount.Unknown> unsolvable(Design design, SiteNumbers site) {
        List<Amount.Unknown> reasons = new ArrayList<>();
        if (!site.falls()) {
            reasons.add(new Amount.Missing("/site/gross-head", "unknown/head-not-above-zero"));
        }
        if (!WaterDerivation.liquid(design.site().waterTemperature())) {
            reasons.add(new Amount.Missing("/site/water-temperature", "unknown/water-not-liquid"));
        }
        return reasons;
    }

    private static int rank(Assumption assumption) {
        String path = assumption.path();
        int end = path.indexOf('/', 1);
        return ORDER.indexOf(end < 0 ? path.substring(1) : path.substring(1, end));
    }
}
