package org.leat.expression;

import org.jspecify.annotations.Nullable;
import org.leat.plant.numbers.Amount;

/** An expression met a value that the design does not give or the plant does not have. */
public final class MissingValueException extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final String path;
    private final transient Amount.@Nullable Unknown unknown;

    /** @param path of the field of the design that would settle it, and that is just not given */
    public MissingValueException(String path) {
        super(path);
        this.path = path;
        this.unknown = null;
    }

    /** @param unknown what the plant says instead of a number */
    public MissingValueException(Amount.Unknown unknown) {
        super(unknown.path());
        this.path = unknown.path();
        this.unknown = unknown;
    }

    /** {@return the path of the field that would settle it} */
    public String path() {
        return path;
    }

    /** {@return what the plant says instead of a number; null where the field is just not given} */
    public Amount.@Nullable Unknown unknown() {
        return unknown;
    }
}
