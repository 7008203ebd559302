package org.leat.choice;

/**
 * What a {@link FrontSearch} is asked: of each choice one option is taken. Costs add up; what a whole set gains, and what is wrong
 * with it, only looking tells. Asked by several threads at once; equal questions have equal answers.
 */
interface SelectionProblem {

    /** Answer of {@link #check} for a set that must not be. */
    int FORBIDDEN = -1;

    /** Answer of {@link #leastCost} where no set will do. */
    long NONE = Long.MAX_VALUE;

    /** {@return how many options each choice has, one or more} */
    int[] options();

    /** {@return the cost of a whole set} */
    long cost(int[] set);

    /**
     * {@return a cost that no set costs less than which begins so and gains more; {@link #NONE} where no such set gains more} The
     * nearer the truth, the fewer sets are looked at.
     *
     * @param set its first {@code known} options are taken, the others are free
     * @param gain what must be exceeded; negative infinity at first
     */
    long leastCost(int[] set, int known, double gain);

    /** {@return a gain that no set exceeds which begins so} */
    double mostGain(int[] set, int known);

    /** {@return what a whole set gains; not a number where it can never be} Costly: asked once. */
    double gain(int[] set);

    /** {@return how many faults a whole set has that are allowed, or {@link #FORBIDDEN}} Costlier still: asked last. */
    int check(int[] set);
}
