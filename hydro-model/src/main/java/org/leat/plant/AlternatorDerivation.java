package org.leat.plant;

import org.jspecify.annotations.Nullable;
import org.leat.design.Alternator;
import org.leat.design.MagnetGrade;
import org.leat.design.NoLoadLoss;
import org.leat.design.OpenCircuit;
import org.leat.design.VoltageAs;
import org.leat.design.VoltageBetween;
import org.leat.design.Winding;
import org.leat.electrics.AlternatorConstants;
import org.leat.electrics.EmfConstant;
import org.leat.electrics.MagnetTemperature;
import org.leat.electrics.ShortCircuitTorque;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Alternator of a plant, from what was measured between its leads. */
final class AlternatorDerivation {

    /** Drop of one diode at the small current of a meter, V. */
    private static final double METER_DROP = 0.5;

    private static final double COPPER = 234.5;
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
        double measuredAt = Celsius.of(assume.stated(
                winding.resistanceTemperature(),
                "/alternator/winding/resistance-temperature",
                QuantityKind.TEMPERATURE,
                Celsius.toKelvin(20),
                Celsius.toKelvin(5),
                Celsius.toKelvin(30),
                "assumed/resistance-read-indoors"));
        double running = Celsius.of(assume.stated(
                winding.temperature(),
                "/alternator/winding/temperature",
                QuantityKind.TEMPERATURE,
                Celsius.toKelvin(80),
                Celsius.toKelvin(30),
                Celsius.toKelvin(120),
                "assumed/winding-temperature"));
        double atTwenty = winding.resistanceBetweenLeads().si() / 2 * copper(20) / copper(measuredAt);
        double flux = linePeakPerSpeed(alternator.openCircuit(), assume) / (Math.sqrt(3) * pairs);
        double inductance = inductance(winding, pairs, flux, atTwenty, assume);
        double noLoad = noLoadTorque(
                alternator.noLoadLoss(), new AlternatorConstants(pairs, flux, atTwenty, inductance), assume);
        return new AlternatorNumbers(
                pairs,
                gear,
                flux,
                coldFactor(alternator.magnetGrade(), Celsius.of(coldest), assume),
                atTwenty * copper(running) / copper(20),
                atTwenty,
                inductance,
                Celsius.toKelvin(running),
                noLoad,
                0,
                alternator.currentLimit() == null ? null : Si.of(alternator.currentLimit()),
                alternator.speedLimit() == null ? null : Si.of(alternator.speedLimit()));
    }

    /** Copper's resistance is in proportion to this; far below any winter it ends. */
    private static double copper(double celsius) {
        return Math.max(1, COPPER + celsius);
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

    private static double noLoadTorque(@Nullable NoLoadLoss read, AlternatorConstants machine, Assume assume) {
        if (read != null) {
            return Si.of(read.power()) / Si.of(read.speed());
        }
        double peak = ShortCircuitTorque.peak(machine);
        return assume.sound(
                "/alternator/no-load-loss",
                QuantityKind.TORQUE,
                0.015 * peak,
                0.005 * peak,
                0.05 * peak,
                "assumed/no-load-torque");
    }

    private static double coldFactor(@Nullable MagnetGrade grade, double coldest, Assume assume) {
        if (coldest >= 20) {
            return 1;
        }
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
