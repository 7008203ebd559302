package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Greatest voltage drop from the origin of an installation to a load, as a share of the nominal voltage: 3 % for lighting
 * and 5 % for other uses where the supply is public; 6 % and 8 % where it is private (a plant of one's own); for the part
 * of a run beyond 100 m, 0.005 % more for each metre, at most 0.5 % more.
 *
 * <p>Source: IEC 60364-5-52:2009, annex G, table G.52.1 (read in a reproduction). It is meant for alternating current in
 * buildings; for a generator's line of low voltage it is a guide, no law.
 */
public final class PermittedVoltageDrop {

    private PermittedVoltageDrop() {}

    /**
     * {@return share of the nominal voltage}
     *
     * @param privateSupply whether the plant is the owner's
     * @param lighting whether lamps hang on the run
     * @param length one way, m
     */
    public static double share(boolean privateSupply, boolean lighting, double length) {
        Physical.notNegative("length", length);
        double base = (lighting ? 0.03 : 0.05) + (privateSupply ? 0.03 : 0);
        return base + Math.min(0.005, 5e-5 * Math.max(0, length - 100));
    }
}
