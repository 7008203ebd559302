package org.leat.plant.cases;

/** The plant solved in one situation that matters. */
public sealed interface Situation permits BusSituation, Shut, Closing, LeadsShorted {

    /** {@return what to call the situation, the same from run to run: {@code running/10 mm}, {@code shut}} */
    String id();
}
