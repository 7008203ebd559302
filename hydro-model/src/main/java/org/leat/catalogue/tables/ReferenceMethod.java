package org.leat.catalogue.tables;

import org.leat.design.LayingMethod;

/** Reference methods of IEC 60364-5-52 for laying a cable. */
public enum ReferenceMethod {
    /** multi-core cable in conduit or trunking on a wall. */
    B2,
    /** clipped direct to a surface. */
    C,
    /** multi-core cable in a duct in the ground. */
    D1,
    /** multi-core cable laid direct in the ground. */
    D2,
    /** multi-core cable in free air, clear of the wall by at least 0.3 of its diameter. */
    E,
    /** single cores in free air, touching; three of them in trefoil. From 25 mm². */
    F,
    /** three single cores in free air, flat and touching. From 25 mm². */
    F_FLAT;

    /** {@return the same method of a design} */
    public static ReferenceMethod of(LayingMethod method) {
        return valueOf(method.name());
    }

    /** {@return whether what is around the cable is soil} */
    public boolean buried() {
        return this == D1 || this == D2;
    }
}
