package org.leat.catalogue.tables;

import java.util.Locale;

/** Properties tabled for one cell of a battery's chemistry, at 25 °C. */
public enum CellProperty {
    /** V. */
    NOMINAL_VOLTAGE(1, 0),
    /** V, regulation voltage while the battery takes what it still can. */
    ABSORPTION_VOLTAGE(1, 0),
    /** V, held for as long as one likes; none for lithium-ion. */
    FLOAT_VOLTAGE(1, 0),
    /** V, deliberate overcharge; open lead cells only. */
    EQUALISING_VOLTAGE(1, 0),
    /** V, at which loads are shed. */
    LOW_VOLTAGE_DISCONNECT(1, 0),
    /** V, never above. */
    HIGHEST_CHARGE_VOLTAGE(1, 0),
    /** 1/s, greatest charge current over capacity (A over A s). */
    CHARGE_RATE(1 / 3600.0, 0),
    /** K. */
    LOWEST_CHARGE_TEMPERATURE(1, 273.15),
    /** K. */
    HIGHEST_CHARGE_TEMPERATURE(1, 273.15),
    /** K. */
    LOWEST_DISCHARGE_TEMPERATURE(1, 273.15),
    /** K. */
    HIGHEST_DISCHARGE_TEMPERATURE(1, 273.15),
    /** V/K of the charge voltages, negative for lead, nil for lithium. */
    TEMPERATURE_COMPENSATION(1, 0),
    /** 1/s, current that makes gas over capacity, at float voltage. */
    FLOAT_GAS_CURRENT(1 / 3600.0, 0),
    /** 1/s, current that makes gas over capacity, at absorption voltage. */
    BOOST_GAS_CURRENT(1 / 3600.0, 0),
    /** charge out over charge in. */
    CHARGE_EFFICIENCY(1, 0),
    /** energy out over energy in, through the battery. */
    ENERGY_EFFICIENCY(1, 0),
    /** share of the capacity that may be used every day. */
    DEPTH_OF_DISCHARGE(1, 0),
    /** Ω·A·s: resistance of one cell times its capacity. */
    INTERNAL_RESISTANCE(3600, 0),
    /** share of the capacity lost in a month at rest. */
    SELF_DISCHARGE(1, 0);

    private final double factor;
    private final double offset;

    CellProperty(double factor, double offset) {
        this.factor = factor;
        this.offset = offset;
    }

    double toSi(double tabled) {
        return tabled * factor + offset;
    }

    String column() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
