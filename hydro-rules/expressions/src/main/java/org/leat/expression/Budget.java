package org.leat.expression;

/**
 * What the expressions of one judgement may cost together, however they are nested and however many things they are asked
 * of. Counted in steps, not in time, so that the same rule ends at the same place on every machine. For one judgement, by
 * one thread.
 */
public final class Budget {

    /** The steps of one judgement: about a second of work. */
    public static final long STEPS = 1_000_000;

    private long left = STEPS;

    /** Takes steps. */
    void spend(long steps) {
        left -= steps;
        if (left < 0) {
            throw new SpentException();
        }
    }

    /** The steps are used up. */
    static final class SpentException extends RuntimeException {

        private static final long serialVersionUID = 1;

        SpentException() {
            super("the rule's expressions take more than " + STEPS + " steps", null, false, false);
        }
    }
}
