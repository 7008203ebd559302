package org.leat.choice;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.leat.prices.PriceList;

/**
 * The same sets where each choice may stay as the design has it, for nothing: the first set without error is wanted, the cheapest,
 * among equals that with the fewest changes. No set gains more than another, so the search ends with the first.
 */
final class MendSelection implements SelectionProblem {

    /** More than there are choices: so many changes never cost as much as the smallest coin. */
    static final long A_CHANGE_IN = 64;

    private final PartsSelection of;
    private final int[] options;

    MendSelection(PartsSelection of) {
        this.of = of;
        this.options = of.options();
    }

    /** {@return the list with staying as it is before each choice's parts} */
    static PriceList withStaying(PriceList list) {
        List<PriceList.Choice> choices = new ArrayList<>();
        for (PriceList.Choice choice : list.choices()) {
            List<PriceList.Part> parts = new ArrayList<>();
            parts.add(new PriceList.Part("", BigDecimal.ZERO, List.of(), true));
            choice.parts().stream().filter(part -> !part.asDesigned()).forEach(parts::add);
            choices.add(new PriceList.Choice(choice.name(), choice.paths(), parts));
        }
        return new PriceList(list.currency(), choices);
    }

    private static long changes(int[] set, int known) {
        long changes = 0;
        for (int i = 0; i < known; i++) {
            changes += set[i] == 0 ? 0 : 1;
        }
        return changes;
    }

    @Override
    public int[] options() {
        return options.clone();
    }

    @Override
    public long cost(int[] set) {
        return of.cost(set) * A_CHANGE_IN + changes(set, set.length);
    }

    @Override
    public long leastCost(int[] set, int known, double gain) {
        // whatever is still free may stay, for nothing
        return gain >= 0 ? NONE : of.cost(set, known) * A_CHANGE_IN + changes(set, known);
    }

    @Override
    public double mostGain(int[] set, int known) {
        return 0;
    }

    @Override
    public double gain(int[] set) {
        return 0;
    }

    @Override
    public int check(int[] set) {
        return of.check(set) == FORBIDDEN ? FORBIDDEN : 0;
    }
}
