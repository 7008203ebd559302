package org.leat.plant;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.leat.design.Design;
import org.leat.design.RegulatorKind;
import org.leat.design.TemperatureRange;
import org.leat.law.Gravity;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Turns a design into numbers. */
final class Derivation {

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

    static Plant of(Design design, Map<String, Double> assumedInstead) {
        Assume assume = new Assume(assumedInstead);
        double lowest;
        double highest;
        TemperatureRange range = design.site().waterTemperature();
        if (range == null) {
            lowest = assume.sound(
                    "/site/water-temperature",
                    QuantityKind.TEMPERATURE,
                    USUAL_WATER,
                    Celsius.toKelvin(1),
                    Celsius.toKelvin(25),
                    "assumed/water-temperature");
            highest = lowest;
        } else {
            lowest = Si.of(range.lowest());
            highest = Si.of(range.highest());
        }
        WaterNumbers water = Water.at(0.5 * (lowest + highest));
        WaterNumbers coldest = Water.at(lowest);
        SiteNumbers site = SiteDerivation.of(design.site(), lowest, highest, assume);
        PenstockNumbers penstock = PenstockDerivation.of(design, site, coldest, assume);
        NozzleNumbers nozzles = NozzleDerivation.of(design.nozzles(), assume);
        AlternatorNumbers alternator =
                AlternatorDerivation.of(design.alternator(), site.lowestAirTemperature(), assume);
        RectifierNumbers rectifier = BusDerivation.rectifier(design.rectifier(), assume);
        BatteryNumbers battery = BatteryDerivation.of(design.battery(), design.regulator(), assume);
        List<CableNumbers> cables = CableDerivation.cables(design.cables(), assume);
        RegulatorNumbers regulator = BusDerivation.regulator(design.regulator(), battery.absorptionVoltage(), assume);
        double clamp = WELL_ABOVE_BUS * (battery.restingVoltage() + 2 * rectifier.threshold());
        double jet = nozzles.velocityCoefficient()
                * Math.sqrt(2 * Gravity.STANDARD * USUAL_NET_HEAD * Math.max(0.1, site.grossHead()));
        RunnerNumbers runner =
                RunnerDerivation.of(design.runner(), alternator.speedAt(clamp) / alternator.gearRatio(), jet, assume);
        PlantNumbers numbers = new PlantNumbers(
                site,
                water,
                penstock,
                nozzles,
                runner,
                alternator,
                rectifier,
                cables,
                CableDerivation.bus(cables, regulator.kind() != RegulatorKind.NONE, assume),
                regulator,
                BusDerivation.dumpLoad(design.dumpLoad(), assume),
                battery);
        List<Assumption> assumptions = new ArrayList<>(assume.list());
        assumptions.sort(Comparator.comparingInt(Derivation::rank));
        return new Plant(design, numbers, assumptions, unsolvable(design, site), Solver.of(numbers));
    }

    private static List<Amount.Unknown> unsolvable(Design design, SiteNumbers site) {
        List<Amount.Unknown> reasons = new ArrayList<>();
        if (!(site.grossHead() > 0)) {
            reasons.add(new Amount.Unknown("/site/gross-head", "unknown/head-not-above-zero"));
        }
        if (!Water.liquid(design.site().waterTemperature())) {
            reasons.add(new Amount.Unknown("/site/water-temperature", "unknown/water-not-liquid"));
        }
        return reasons;
    }

    private static int rank(Assumption assumption) {
        String path = assumption.path();
        int end = path.indexOf('/', 1);
        return ORDER.indexOf(end < 0 ? path.substring(1) : path.substring(1, end));
    }
}
