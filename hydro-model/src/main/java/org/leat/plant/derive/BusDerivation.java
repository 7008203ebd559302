package org.leat.plant.derive;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.leat.design.ChargeRegulator;
import org.leat.design.DumpLoad;
import org.leat.design.Rectifier;
import org.leat.design.RegulatorKind;
import org.leat.plant.numbers.Amount;
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
                Amount.stated(
                        bridge == null ? null : bridge.repetitivePeakReverseVoltage(),
                        "/rectifier/repetitive-peak-reverse-voltage"),
                Amount.stated(bridge == null ? null : bridge.averageCurrent(), "/rectifier/average-current"),
                Amount.stated(bridge == null ? null : bridge.capacitorVoltage(), "/rectifier/capacitor-voltage"),
                bridge == null ? 0 : Si.of(bridge.capacitance(), 0));
    }

    static RegulatorNumbers regulator(@Nullable ChargeRegulator regulator, double batteryVoltage, Assume assume) {
        if (regulator == null) {
            return RegulatorNumbers.none();
        }
        Amount rating = Amount.stated(regulator.currentRating(), "/regulator/current-rating");
        Amount limit = Amount.stated(regulator.inputVoltageLimit(), "/regulator/input-voltage-limit");
        OptionalDouble equalising = Si.optional(regulator.equalisingVoltage());
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
            double most = limit.or(3 * batteryVoltage);
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
        OptionalDouble cold = Si.optional(dump.resistance());
        OptionalDouble hot = Si.optional(dump.resistanceHot());
        if (cold.isEmpty() && hot.isEmpty()) {
            if (dump.powerRating() == null || dump.ratedVoltage() == null) {
                return null;
            }
            double volts = Si.of(dump.ratedVoltage());
            hot = OptionalDouble.of(volts * volts / Si.of(dump.powerRating()));
        }
        double warms = cold.isPresent() && hot.isPresent()
                ? 1
                : assume.sound(
                        cold.isEmpty() ? "/dump-load/resistance" : "/dump-load/resistance-hot",
                        QuantityKind.RATIO,
                        WARMS_BY,
                        1,
                        1.15,
                        "assumed/element-warms");
        double coldOhms = cold.isPresent() ? cold.getAsDouble() : hot.orElseThrow() / warms;
        double hotOhms = hot.isPresent() ? hot.getAsDouble() : coldOhms * warms;
        return new DumpLoadNumbers(
                coldOhms,
                hotOhms,
                Amount.stated(dump.powerRating(), "/dump-load/power-rating"),
                Amount.stated(dump.triggerVoltage(), "/dump-load/trigger-voltage"),
                dump.side());
    }
}
