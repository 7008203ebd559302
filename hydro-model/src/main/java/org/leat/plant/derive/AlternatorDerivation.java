package org.leat.plant.derive;

import static org.leat.plant.numbers.AlternatorNumbers.copper;

import org.leat.design.Alternator;
import org.leat.design.MagnetGrade;
import org.leat.design.NoLoadLoss;
import org.leat.design.OpenCircuit;
import org.leat.design.SpinDown;
import org.leat.design.VoltageAs;
import org.leat.design.VoltageBetween;
import org.leat.design.Winding;
import org.leat.electrics.AlternatorConstants;
import org.leat.electrics.Coasting;
import org.leat.electrics.EmfConstant;
import org.leat.electrics.IronLoss;
import org.leat.electrics.MagnetTemperature;
import org.leat.electrics.ShortCircuitTorque;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.Assumption;
import org.leat.quantity.Celsius;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Alternator of a plant, from what was measured between its leads. */
final class AlternatorDerivation {

    /** Drop of one diode at the small current of a meter, V. */
    private static final double METER_DROP = 0.5;

    /** Where the search for the winding's temperature begins, K; it does not hang on it. */
    private static final double SEARCH_FROM = Celsius.toKelvin(80);

    private static final double TWENTY = Celsius.toKelvin(20);
    private static final double TIME_CONSTANT = 2.2e-3;

    private AlternatorDerivation() {}

    static AlternatorNumbers of(Alternator alternator, double coldest, Assume assume) {
        int pairs = alternator.polePairs() != null
                ? alternator.polePairs()
                : (int) Math.max(
                        1,
                        Math.round(assume.placeholder(
                                "/alternator/pole-pairs", QuantityKind.RATIO, 16, 4, 28, "assumed/pole-pairs")));
        double gear = alternator.gearRatio() == null ? 1 : alternator.gearRatio();
        Winding winding = alternator.winding();
        double measuredAt = assume.stated(
                winding.resistanceTemperature(),
                "/alternator/winding/resistance-temperature",
                QuantityKind.TEMPERATURE,
                Celsius.toKelvin(20),
                Celsius.toKelvin(5),
                Celsius.toKelvin(30),
                "assumed/resistance-read-indoors");
        Amount resistance = winding.temperature() == null
                ? Amount.stated(alternator.thermalResistance(), "/alternator/thermal-resistance")
                : Amount.notStated("/alternator/thermal-resistance");
        double running = resistance.isKnown()
                ? SEARCH_FROM
                : assume.stated(
                        winding.temperature(),
                        "/alternator/winding/temperature",
                        QuantityKind.TEMPERATURE,
                        Celsius.toKelvin(80),
                        Celsius.toKelvin(30),
                        Celsius.toKelvin(120),
                        "assumed/winding-temperature");
        double atTwenty = winding.resistanceBetweenLeads().si() / 2 * copper(TWENTY) / copper(measuredAt);
        double flux = linePeakPerSpeed(alternator.openCircuit(), assume) / (Math.sqrt(3) * pairs);
        double inductance = inductance(winding, pairs, flux, atTwenty, assume);
        IronLoss loss = ironLoss(alternator, new AlternatorConstants(pairs, flux, atTwenty, inductance), assume);
        return new AlternatorNumbers(
                pairs,
                gear,
                new AlternatorNumbers.Magnets(
                        flux,
                        coldFactor(alternator, Celsius.of(coldest), assume),
                        Amount.stated(alternator.fluxCoefficient(), "/alternator/flux-coefficient")),
                new AlternatorNumbers.Winding(
                        atTwenty * copper(running) / copper(TWENTY), atTwenty, inductance, 0, running, resistance),
                new AlternatorNumbers.NoLoadTorque(loss.constantTorque(), loss.eddyTorquePerSpeed()),
                new AlternatorNumbers.Limits(
                        Amount.stated(alternator.currentLimit(), "/alternator/current-limit"),
                        Amount.stated(alternator.speedLimit(), "/alternator/speed-limit")));
    }

    private static double linePeakPerSpeed(OpenCircuit read, Assume assume) {
        if (read instanceof OpenCircuit.VoltsAtSpeed volts) {
            double u = volts.voltage().si();
            double speed = Si.of(volts.speed());
            if (volts.between() == VoltageBetween.BRIDGE_OUTPUT) {
                return EmfConstant.fromBridgeWithCapacitor(u, speed, METER_DROP);
            }
            boolean rms = volts.as() == null || volts.as() == VoltageAs.RMS;
            if (volts.between() == VoltageBetween.LEAD_AND_STAR_POINT) {
                return rms ? EmfConstant.fromPhaseRms(u, speed) : EmfConstant.fromPhasePeak(u, speed);
            }
            return rms ? EmfConstant.fromLineRms(u, speed) : EmfConstant.fromLinePeak(u, speed);
        }
        OpenCircuit.SpeedPerVolt marked = (OpenCircuit.SpeedPerVolt) read;
        double speedPerVolt = Si.of(marked.speedPerVolt());
        double leads = marked.between() == VoltageBetween.LEAD_AND_STAR_POINT ? Math.sqrt(3) : 1;
        if (marked.as() == VoltageAs.RMS) {
            return leads * EmfConstant.fromSpeedPerRmsVolt(speedPerVolt);
        }
        double peakPerVolt = marked.as() != null
                ? 1
                : assume.placeholder(
                        "/alternator/open-circuit/as",
                        QuantityKind.RATIO,
                        1,
                        1,
                        Math.sqrt(2),
                        "assumed/speed-per-peak-volt");
        return leads * peakPerVolt * EmfConstant.fromSpeedPerPeakVolt(speedPerVolt);
    }

    private static double inductance(Winding winding, int pairs, double flux, double resistance, Assume assume) {
        if (winding.inductanceBetweenLeads() != null) {
            return winding.inductanceBetweenLeads().si() / 2;
        }
        if (winding.shortCircuitCurrent() != null && winding.shortCircuitSpeed() != null) {
            double electrical = pairs * Si.of(winding.shortCircuitSpeed());
            double current = Si.of(winding.shortCircuitCurrent());
            double impedance = flux * electrical / (Math.sqrt(2) * current);
            if (impedance > resistance) {
                return ShortCircuitTorque.inductance(flux * electrical, current, resistance, electrical);
            }
        }
        double usual = TIME_CONSTANT * resistance;
        return assume.placeholder(
                        "/alternator/winding/inductance-between-leads",
                        QuantityKind.INDUCTANCE,
                        2 * usual,
                        usual,
                        5 * usual,
                        "assumed/inductance-from-resistance")
                / 2;
    }

    private static IronLoss ironLoss(Alternator alternator, AlternatorConstants machine, Assume assume) {
        NoLoadLoss read = alternator.noLoadLoss();
        if (read != null) {
            return read.powerAtSecondSpeed() == null || read.secondSpeed() == null
                    ? IronLoss.fromOneReading(Si.of(read.power()), Si.of(read.speed()))
                    : twoReadings(read, Si.of(read.powerAtSecondSpeed()), Si.of(read.secondSpeed()));
        }
        SpinDown coasted = alternator.spinDown();
        if (coasted != null) {
            return coasting(coasted);
        }
        double peak = ShortCircuitTorque.peak(machine);
        double torque = assume.sound(
                "/alternator/no-load-loss",
                QuantityKind.TORQUE,
                0.015 * peak,
                0.005 * peak,
                0.05 * peak,
                "assumed/no-load-torque");
        return new IronLoss(torque, 0);
    }

    private static IronLoss twoReadings(NoLoadLoss read, double power, double speed) {
        double first = Si.of(read.speed());
        double firstPower = Si.of(read.power());
        return first < speed
                ? IronLoss.fromTwoReadings(firstPower, first, power, speed)
                : IronLoss.fromTwoReadings(power, speed, firstPower, first);
    }

    private static IronLoss coasting(SpinDown read) {
        double inertia = Si.of(read.inertia());
        double from = Si.of(read.from());
        double to = Si.of(read.to());
        double time = Si.of(read.time());
        return read.toSecond() == null || read.secondTime() == null
                ? Coasting.fromOneTime(inertia, from, to, time)
                : Coasting.fromTwoTimes(inertia, from, to, Si.of(read.toSecond()), time, Si.of(read.secondTime()));
    }

    private static double coldFactor(Alternator alternator, double coldest, Assume assume) {
        if (coldest >= 20) {
            return 1;
        }
        if (alternator.fluxCoefficient() != null) {
            return 1 + Si.of(alternator.fluxCoefficient()) * (coldest - 20);
        }
        MagnetGrade grade = alternator.magnetGrade();
        double coefficient = grade == MagnetGrade.FERRITE ? MagnetTemperature.FERRITE : MagnetTemperature.NEODYMIUM;
        double factor = 1 + coefficient * (coldest - 20);
        return grade != null
                ? factor
                : assume.value(
                        "/alternator/magnet-grade",
                        QuantityKind.RATIO,
                        factor,
                        1 + 0.0011 * (20 - coldest),
                        1 + 0.002 * (20 - coldest),
                        "assumed/neodymium-magnets",
                        "magnet handbooks, from memory",
                        Assumption.Weight.SOUND_DEFAULT);
    }
}
