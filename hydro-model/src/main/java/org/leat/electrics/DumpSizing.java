package org.leat.electrics;

import org.leat.law.Physical;

/**
 * A dump load that takes everything the source gives while the bus stands at its regulation voltage: R ≤ V/(m I), with a margin m
 * over the greatest current I; it must be rated for P ≥ m V I and its switch for m I. Margin 1.10 to 1.25 [common practice]; one
 * code asks 1.5 of the source's rating and a second, independent means against overcharge: NEC 690.72(B) in issues to 2014, since then in
 * article 706 (from memory).
 *
 * <p>Source: Ohm's law. The resistance counts hot; cold it takes more, which the switch must stand.
 */
public final class DumpSizing {

    /** Margin that NEC asks over the rating of the source. */
    public static final double CODE_MARGIN = 1.5;

    private DumpSizing() {}

    /** {@return greatest resistance, Ω, at a regulation voltage, V, for a source current, A} */
    public static double greatestResistance(double regulationVoltage, double sourceCurrent, double margin) {
        Physical.positive("regulation voltage", regulationVoltage);
        return regulationVoltage / current(sourceCurrent, margin);
    }

    /** {@return least power rating, W, at the regulation voltage} */
    public static double leastPower(double regulationVoltage, double sourceCurrent, double margin) {
        Physical.positive("regulation voltage", regulationVoltage);
        return regulationVoltage * current(sourceCurrent, margin);
    }

    /** {@return current the load must take, A} */
    public static double current(double sourceCurrent, double margin) {
        Physical.positive("source current", sourceCurrent);
        Physical.within("margin", margin, 1, 3);
        return margin * sourceCurrent;
    }

    /** {@return share of the source's current that a load, Ω, takes at the regulation voltage} Below one it is too small. */
    public static double share(double regulationVoltage, double resistance, double sourceCurrent) {
        Physical.positive("source current", sourceCurrent);
        return DumpElement.current(resistance, regulationVoltage) / sourceCurrent;
    }
}
