package org.leat.check;

/** A few words that several texts share, mostly constants of an enum. Meant to be implemented. */
public interface Worded {

    /** {@return what machines know it by, as in {@code cause.runaway}; never changes} */
    String key();

    /** {@return what people read; no placeholders} */
    String text();
}
