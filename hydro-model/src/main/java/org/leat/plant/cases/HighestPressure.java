package org.leat.plant.cases;

import org.leat.plant.numbers.Amount;

/**
 * The highest pressure that the penstock sees in any case: standing, or in the moment of a stop. An unknown one goes before
 * any known: it may be higher.
 *
 * @param pressure Pa at the lowest point; unknown where a wave speed is
 * @param during id of the case
 */
public record HighestPressure(Amount pressure, String during) {

    /** {@return that of a section, by its place in the list} */
    public static HighestPressure of(Cases cases, int section) {
        Shut shut = cases.shut();
        HighestPressure highest = new HighestPressure(Amount.of(shut.sections().get(section)), shut.id());
        for (Closing closing : cases.closing()) {
            highest = highest.or(new HighestPressure(closing.sections().get(section), closing.id()));
        }
        return highest;
    }

    /** {@return that of the whole penstock} */
    public static HighestPressure anywhere(Cases cases) {
        HighestPressure highest = of(cases, 0);
        for (int i = 1; i < cases.numbers().penstock().sections().size(); i++) {
            highest = highest.or(of(cases, i));
        }
        return highest;
    }

    private HighestPressure or(HighestPressure other) {
        if (!(pressure instanceof Amount.Known here)) {
            return this;
        }
        return other.pressure instanceof Amount.Known there && there.value() <= here.value() ? this : other;
    }
}
