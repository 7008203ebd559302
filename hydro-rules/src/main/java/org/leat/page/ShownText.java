package org.leat.page;

import java.math.BigDecimal;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.leat.file.Names;
import org.leat.plant.numbers.Amount;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.QuantityText;
import org.leat.report.UsualUnits;

/** Numbers and words of the design as the page shows them. */
final class ShownText {

    /** Where there is no number. */
    static final String UNKNOWN = "unknown";

    private ShownText() {}

    static String volts(double volts) {
        return UsualUnits.show(volts, QuantityKind.VOLTAGE);
    }

    static String amps(double amps) {
        return UsualUnits.show(amps, QuantityKind.CURRENT);
    }

    static String watts(double watts) {
        return UsualUnits.show(watts, QuantityKind.POWER);
    }

    static String speed(double radiansPerSecond) {
        return UsualUnits.show(radiansPerSecond, QuantityKind.ROTATIONAL_SPEED);
    }

    static String flow(double cubicMetresPerSecond) {
        return UsualUnits.show(cubicMetresPerSecond, QuantityKind.VOLUME_FLOW);
    }

    static String torque(double newtonMetres) {
        return UsualUnits.show(newtonMetres, QuantityKind.TORQUE);
    }

    static String length(double metres) {
        return UsualUnits.show(metres, QuantityKind.LENGTH, "m", 3);
    }

    static String percent(double share) {
        return UsualUnits.show(share, QuantityKind.RATIO, "%", 2);
    }

    /** {@return a pressure to a hundredth of a bar: ten centimetres of water} */
    static String bar(double pascal) {
        return BigDecimal.valueOf((long) Math.rint(pascal / 1e3), 2)
                        .toPlainString()
                        .replace('-', '\u2212') + " bar";
    }

    static String bar(Amount amount) {
        return amount instanceof Amount.Known known ? bar(known.value()) : UNKNOWN;
    }

    /** {@return a quantity as the design states it; "" where it does not} */
    static String stated(@Nullable Quantity<?> quantity) {
        return quantity == null ? "" : QuantityText.print(quantity);
    }

    /** {@return a word of the file format in plain letters} */
    static String word(Enum<?> word) {
        return Names.ofConstant(word).replace('-', ' ');
    }

    /** {@return the look of watts won or lost, written with their sign} */
    static String gainClass(String watts) {
        return watts.startsWith("\u2212") ? "gain lost" : "gain";
    }
}
