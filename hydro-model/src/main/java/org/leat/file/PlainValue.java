package org.leat.file;

import java.util.List;
import javax.measure.Quantity;
import org.apiguardian.api.API;
import org.leat.quantity.QuantityKind;

/**
 * A plain value whose meaning only its reader knows, as it stands in the file.
 *
 * @param text without quotation marks
 */
@API(status = API.Status.INTERNAL, since = "0.1")
public record PlainValue(String text) {

    /** What came of taking it for a quantity. */
    public sealed interface Taken {}

    /** It is one. */
    public record Understood(Quantity<?> quantity) implements Taken {}

    /** It is none; why is a problem at its place. */
    public record Refused(Problem problem) implements Taken {}

    /**
     * {@return this as a quantity of a kind}
     *
     * @param at where it stands
     * @param path of it in its file
     */
    public Taken as(QuantityKind kind, Position at, String path) {
        Problems problems = new Problems();
        Object taken = new Scalars(problems).quantity(new ValueType.OfQuantity(kind, false), text, at, path);
        List<Problem> found = problems.sorted();
        return found.isEmpty() ? new Understood((Quantity<?>) taken) : new Refused(found.get(0));
    }
}
