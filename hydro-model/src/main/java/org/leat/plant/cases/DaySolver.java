package org.leat.plant.cases;

import java.util.List;
import org.leat.catalogue.tables.CellChemistryCatalogue;
import org.leat.catalogue.tables.CellProperty;
import org.leat.design.BatteryBank;
import org.leat.design.BatteryManagement;
import org.leat.design.ChargeRegulator;
import org.leat.design.Design;
import org.leat.design.MagnetGrade;
import org.leat.design.RegulatorKind;
import org.leat.electrics.MagnetTemperature;
import org.leat.electrics.WindingTemperature;
import org.leat.law.Answer;
import org.leat.plant.cases.BusSituation.BatteryRemoved;
import org.leat.plant.cases.Day.Bus;
import org.leat.plant.cases.Day.Charging;
import org.leat.plant.cases.Day.Season;
import org.leat.plant.cases.Day.Temperatures;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.CableNumbers;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.SiteNumbers;
import org.leat.plant.numbers.WaterNumbers;
import org.leat.plant.solve.RunnerCharacteristic;
import org.leat.plant.solved.EnergyAccount;
import org.leat.plant.solved.OperatingPoint;
import org.leat.quantity.Celsius;
import org.leat.quantity.Si;

/** A plant on its coldest or hottest day. */
final class DaySolver {

    private static final double COPPER = 234.5;
    private static final double CORE_ABOVE_AIR = 15;
    private static final int PASSES = 3;

    private final Design design;
    private final PlantNumbers numbers;
    private final Season season;

    private DaySolver(Design design, PlantNumbers numbers, Season season) {
        this.design = design;
        this.numbers = numbers;
        this.season = season;
    }

    /** {@return the day} Removed: the battery lost on the nozzles as built. */
    static Day of(Design design, PlantNumbers numbers, Season season, BatteryRemoved removed) {
        return new DaySolver(design, numbers, season).day(removed);
    }

    private Day day(BatteryRemoved removed) {
        SiteNumbers site = numbers.site();
        boolean cold = season == Season.COLDEST;
        double air = cold ? site.lowestAirTemperature() : site.highestAirTemperature();
        double water = cold ? site.lowestWaterTemperature() : site.highestWaterTemperature();
        Amount resistance = Amount.stated(design.alternator().thermalResistance(), "/alternator/thermal-resistance");
        double winding = numbers.alternator().windingTemperature();
        PlantNumbers today = numbers;
        double magnets = air;
        double flux = 1;
        Running running = null;
        for (int pass = 0; running == null || (resistance.isKnown() && pass < PASSES); pass++) {
            magnets = cold ? air : Math.max(air, winding);
            flux = MagnetTemperature.factor(coefficient(), within(Celsius.of(magnets), -60, 200));
            today = numbers(water, air, winding, flux);
            SituationSolver solver = SituationSolver.of(today, SolutionCache.nothing());
            running = solver.running(today.nozzles().asBuilt());
            if (resistance instanceof Amount.Known known) {
                winding = settled(running.operatingPoint(), air, winding, known.value());
            }
        }
        double battery = batteryTemperature(air);
        Charging charging = charging(battery);
        BatteryManagement management = design.battery().management();
        boolean opens = cold
                && charging == Charging.REFUSED
                && management != null
                && Boolean.TRUE.equals(management.opensOnCold());
        Temperatures temperatures = new Temperatures(
                water,
                air,
                resistance.isKnown()
                        ? Amount.of(winding)
                        : Amount.missing("/alternator/thermal-resistance", "unknown/winding-heat"),
                magnets,
                air + CORE_ABOVE_AIR,
                stated() ? Amount.of(battery) : Amount.missing("/battery/lowest-temperature", "unknown/battery-room"));
        BusSituation lasting = opens ? removed : running;
        Bus bus = new Bus(
                lasting.holder(),
                lasting.lastingVoltage(),
                lasting.batteryVoltage(),
                lasting.runnerSpeed(),
                today.alternator().peakLineVoltage(runaway(today, running)));
        return new SolvedDay(season, temperatures, flux, charging, absorption(battery), running, bus);
    }

    private double runaway(PlantNumbers today, Running running) {
        return new RunnerCharacteristic(today.runner(), today.water().density(), running.water()).runawaySpeed()
                * today.alternator().gearRatio();
    }

    private double coefficient() {
        return numbers.alternator()
                .fluxCoefficient()
                .or(
                        design.alternator().magnetGrade() == MagnetGrade.FERRITE
                                ? MagnetTemperature.FERRITE
                                : MagnetTemperature.NEODYMIUM);
    }

    /** Settled at the copper loss of the running current; as hot as copper is reckoned with where there is no such point. */
    private static double settled(OperatingPoint operatingPoint, double air, double solved, double resistance) {
        double copper = operatingPoint.energy().lostBefore(EnergyAccount.Stage.TERMINALS);
        double iron = operatingPoint.energy().lostBefore(EnergyAccount.Stage.AIR_GAP);
        double at20 = copper * (COPPER + 20) / (COPPER + Celsius.of(solved));
        double around = Celsius.of(air) + resistance * iron;
        return WindingTemperature.of(around, at20, resistance) instanceof Answer.Value v
                ? Celsius.toKelvin(within(v.value(), -60, 250))
                : Celsius.toKelvin(250);
    }

    private PlantNumbers numbers(double water, double air, double winding, double flux) {
        AlternatorNumbers a = numbers.alternator();
        double cold = a.winding().resistanceCold();
        AlternatorNumbers alternator = a.withMagnets(new AlternatorNumbers.Magnets(
                        a.fluxLinkage() * flux, 1, Amount.notStated("/alternator/flux-coefficient")))
                .withWinding(a.winding()
                        .withResistance(cold * copper(winding) / (COPPER + 20))
                        .withTemperature(winding)
                        .withThermalResistance(Amount.notStated("/alternator/thermal-resistance")));
        double warm = air + CORE_ABOVE_AIR;
        List<CableNumbers> cables = numbers.cables().stream()
                .map(c -> c.withCoreResistance(c.coreResistance() * copper(warm) / copper(c.conductorTemperature()))
                        .withConductorTemperature(warm))
                .toList();
        boolean regulated = numbers.regulator().kind() != RegulatorKind.NONE;
        PlantNumbers.BusResistance bus =
                PlantNumbers.BusResistance.of(cables, regulated).orElse(numbers.busResistance());
        return numbers.withWater(WaterNumbers.at(water))
                .withAlternator(alternator)
                .withCables(cables)
                .withBusResistance(bus);
    }

    private static double copper(double kelvin) {
        return Math.max(1, COPPER + Celsius.of(kelvin));
    }

    private static double within(double value, double low, double high) {
        return Math.max(low, Math.min(high, value));
    }

    private boolean stated() {
        return season == Season.COLDEST && design.battery().lowestTemperature() != null;
    }

    /** Only the lowest temperature of the battery's room can be stated. */
    private double batteryTemperature(double air) {
        BatteryBank bank = design.battery();
        if (season == Season.COLDEST && bank.lowestTemperature() != null) {
            return Si.of(bank.lowestTemperature());
        }
        return season == Season.COLDEST && Boolean.TRUE.equals(bank.heated())
                ? Math.max(air, limit(CellProperty.LOWEST_CHARGE_TEMPERATURE))
                : air;
    }

    private Charging charging(double battery) {
        return battery >= limit(CellProperty.LOWEST_CHARGE_TEMPERATURE)
                        && battery <= limit(CellProperty.HIGHEST_CHARGE_TEMPERATURE)
                ? Charging.ALLOWED
                : Charging.REFUSED;
    }

    private double limit(CellProperty property) {
        return CellChemistryCatalogue.usual(design.battery().chemistry(), property);
    }

    private Amount absorption(double battery) {
        double set = numbers.battery().absorptionVoltage();
        double asked = limit(CellProperty.TEMPERATURE_COMPENSATION);
        ChargeRegulator regulator = design.regulator();
        if (asked == 0) {
            return Amount.of(set);
        }
        if (regulator == null || regulator.temperatureCompensation() == null) {
            return Amount.missing("/regulator/temperature-compensation", "unknown/compensation");
        }
        double perCell = Si.of(regulator.temperatureCompensation());
        return Amount.of(set + numbers.battery().cellsInSeries() * perCell * (Celsius.of(battery) - 25));
    }
}
