package org.leat.pack.kit;

import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.leat.check.Change;
import org.leat.check.Change.Changes;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Other values of the one field at which a rule failed. */
public final class FieldChanges {

    private FieldChanges() {}

    /** {@return the changes where a rule failed at a field, none where it failed elsewhere} */
    public static Changes onlyAt(String path, Changes changes) {
        return (j, failure) -> failure.path().equals(path) ? changes.of(j, failure) : Stream.empty();
    }

    /** {@return another value; null takes the field out} */
    public static Changes to(@Nullable Object value) {
        return (j, failure) -> Stream.of(Change.of(failure.path(), value));
    }

    /**
     * {@return the ratings that can be bought, told with {@code rating}}
     *
     * @param sizes from the least change to the greatest
     */
    public static <Q extends Quantity<Q>> Changes ratings(String unit, Class<Q> type, double... sizes) {
        return (j, failure) -> DoubleStream.of(sizes).mapToObj(rating -> rated(failure.path(), rating, unit, type));
    }

    /**
     * {@return the sizes that a field can be made in}
     *
     * @param path of the field
     * @param name under which the size is told
     * @param sizes from the least change to the greatest
     */
    public static <Q extends Quantity<Q>> Changes sizes(
            String path, String name, String unit, Class<Q> type, double... sizes) {
        return (j, failure) -> DoubleStream.of(sizes).mapToObj(size -> told(path, name, size, unit, type));
    }

    /** {@return as {@link #ratings}, where the field that failed is itself the limit: only those that reach the value} */
    public static <Q extends Quantity<Q>> Changes raised(String unit, Class<Q> type, double... sizes) {
        return (j, failure) -> failure.comparison() == null
                ? Stream.empty()
                : DoubleStream.of(sizes)
                        .filter(rating -> Si.of(Si.quantity(rating, unit, type)) >= failure.value())
                        .mapToObj(rating -> rated(failure.path(), rating, unit, type));
    }

    /** {@return a change of a rating, told with its value} */
    public static <Q extends Quantity<Q>> Change rated(String path, double rating, String unit, Class<Q> type) {
        return told(path, "rating", rating, unit, type);
    }

    /** {@return a change of a quantity, told with its value under a name} */
    public static <Q extends Quantity<Q>> Change told(
            String path, String name, double value, String unit, Class<Q> type) {
        Quantity<Q> quantity = Si.quantity(value, unit, type);
        return Change.of(path, quantity).with(name, Si.of(quantity), QuantityKind.of(type));
    }
}
