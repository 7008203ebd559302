package org.leat.expression;

/** An expression met a value that the design does not give or the plant does not have. */
public final class MissingValueException extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final String path;
    private final String reason;

    /**
     * @param path of the field of the design that would settle it
     * @param reason key of the plant's reason; "" where the field is just not given
     */
    public MissingValueException(String path, String reason) {
        super(path);
        this.path = path;
        this.reason = reason;
    }

    /** {@return the path of the field that would settle it} */
    public String path() {
        return path;
    }

    /** {@return the key of the plant's reason; "" where the field is just not given} */
    public String reason() {
        return reason;
    }
}
