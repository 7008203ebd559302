package org.leat.plant.cases;

import org.leat.plant.numbers.Amount;

/** See {@link Day}. */
record SolvedDay(
        Season season,
        Temperatures temperatures,
        double fluxFactor,
        Charging charging,
        Amount absorptionVoltage,
        Running running,
        Bus bus)
        implements Day {}
