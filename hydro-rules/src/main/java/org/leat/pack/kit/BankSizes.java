package org.leat.pack.kit;

import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import javax.measure.quantity.ElectricCharge;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.quantity.Si;

/** Banks of another capacity, in tens of ampere-hours; told with {@code capacity}. */
public final class BankSizes {

    private static final double HOUR = 3600;

    /** What {@link #larger} and {@link #smaller} say. */
    public static final String BANK = "A bank of {capacity:Ah}.";

    private BankSizes() {}

    /** {@return up to ten times as much, the least first} */
    public static Stream<Change> larger(Judgement j, Outcome.Fail failure) {
        return DoubleStream.of(1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10)
                .mapToObj(times -> of(Math.ceil(ampereHours(j) * times / 10) * 10));
    }

    /** {@return down to a fifth, the greatest first} */
    public static Stream<Change> smaller(Judgement j, Outcome.Fail failure) {
        return DoubleStream.of(0.8, 0.6, 0.5, 0.4, 0.3, 0.2)
                .mapToObj(times -> of(Math.floor(ampereHours(j) * times / 10) * 10));
    }

    /** {@return a bank of a capacity, A h} */
    public static Change of(double ampereHours) {
        return FieldChanges.told("/battery/capacity", "capacity", ampereHours, "Ah", ElectricCharge.class);
    }

    /** {@return capacity of the bank, A h} */
    public static double ampereHours(Judgement j) {
        return Si.of(j.design().battery().capacity()) / HOUR;
    }
}
