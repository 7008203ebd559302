package org.leat.plant.derive;

import org.jspecify.annotations.Nullable;
import org.leat.design.ChargeRegulator;
import org.leat.design.DumpLoad;
import org.leat.design.Rectifier;
import org.leat.design.RegulatorKind;
import org.leat.plant.numbers.DumpLoadNumbers;
import org.leat.plant.numbers.RectifierNumbers;
import org.leat.plant.numbers.RegulatorNumbers;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Bridge, regulator and dump load of a plant. */
final class BusDerivation {

    private static final double WARMS_BY = 1.05;

    private BusDerivation() {}

    static RectifierNumbers rectifier(@Nullable Rectifier bridge, Assume assume) {
        double threshold = assume.stated(
                bridge == null ? null : bridge.dropPerDiode(),
                "/rectifier/drop-per-diode",
                QuantityKind.VOLTAGE,
                0.85,
                0.4,
                1.1,
                "assumed/silicon-diodes");
        return new RectifierNumbers(
                threshold,
                bridge == null ? 0 : Si.of(bridge.slopeResistance(), 0),
                bridge == null || bridge.repetitivePeakReverseVoltage() == null
                        ? null
                        : Si.of(bridge.repetitivePeakReverseVoltage()),
                bridge == null || bridge.averageCurrent() == null ? null : Si.of(bridge.averageCurrent()),
                bridge == null || bridge.capacitorVoltage() == null ? null : Si.of(bridge.capacitorVoltage()),
                bridge == null ? 0 : Si.of(bridge.capacitance(), 0));
    }

    static RegulatorNumbers regulator(@Nullable ChargeRegulator regulator, double batteryVoltage, Assume assume) {
        if (regulator == null) {
            return new RegulatorNumbers(RegulatorKind.NONE, 0, 0, 1, null, null, null);
        }
        Double rating = regulator.currentRating() == null ? null : Si.of(regulator.currentRating());
        Double limit = regulator.inputVoltageLimit() == null ? null : Si.of(regulator.inputVoltageLimit());
        Double equalising = regulator.equalisingVoltage() == null ? null : Si.of(regulator.equalisingVoltage());
        if (regulator.kind() != RegulatorKind.TRACKING) {
            return new RegulatorNumbers(regulator.kind(), 0, 0, 1, rating, limit, equalising);
        }
        double from;
        double to;
        if (regulator.trackingWindow() != null) {
            from = Si.of(regulator.trackingWindow().from());
            to = Si.of(regulator.trackingWindow().to());
        } else {
            double least = batteryVoltage + 3;
            double most = limit == null ? 3 * batteryVoltage : limit;
            from = assume.placeholder(
                    "/regulator/tracking-window/from",
                    QuantityKind.VOLTAGE,
                    least,
                    batteryVoltage,
                    1.5 * least,
                    "assumed/tracking-window");
            to = Math.max(
                    from,
                    assume.placeholder(
                            "/regulator/tracking-window/to",
                            QuantityKind.VOLTAGE,
                            most,
                            Math.min(most, 1.2 * least),
                            Math.max(most, 250),
                            "assumed/tracking-window"));
        }
        double efficiency = assume.stated(
                regulator.efficiency(),
                "/regulator/efficiency",
                QuantityKind.RATIO,
                0.95,
                0.9,
                0.98,
                "assumed/tracking-efficiency");
        return new RegulatorNumbers(regulator.kind(), from, to, efficiency, rating, limit, equalising);
    }

    static @Nullable DumpLoadNumbers dumpLoad(@Nullable DumpLoad dump, Assume assume) {
        if (dump == null) {
            return null;
        }
        Double cold = dump.resistance() == null ? null : Si.of(dump.resistance());
        Double hot = dump.resistanceHot() == null ? null : Si.of(dump.resistanceHot());
        if (cold == null && hot == null) {
            if (dump.powerRating() == null || dump.ratedVoltage() == null) {
                return null;
            }
            double volts = Si.of(dump.ratedVoltage());
            hot = volts * volts / Si.of(dump.powerRating());
        }
        if (cold == null || hot == null) {
            double warms = assume.sound(
                    cold == null ? "/dump-load/resistance" : "/dump-load/resistance-hot",
                    QuantityKind.RATIO,
                    WARMS_BY,
                    1,
                    1.15,
                    "assumed/element-warms");
            if (cold == null && hot != null) {
                cold = hot / warms;
            } else if (cold != null) {
                hot = cold * warms;
            }
        }
        if (cold == null || hot == null) {
            return null;
        }
        return new DumpLoadNumbers(
                cold,
                hot,
                dump.powerRating() == null ? null : Si.of(dump.powerRating()),
                dump.triggerVoltage() == null ? null : Si.of(dump.triggerVoltage()),
                dump.side());
    }
}
