package org.leat.design;

import org.apiguardian.api.API;

/** Reference methods of IEC 60364-5-52. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Reference methods of IEC 60364-5-52")
public enum LayingMethod {
    /** in conduit or trunking on a wall. */
    B2,
    /** clipped direct to a surface. */
    C,
    /** multi-core cable in a duct in the ground. */
    D1,
    /** multi-core cable laid direct in the ground. */
    D2,
    /** multi-core cable in free air, clear of the wall. */
    E,
    /** single cores in free air, touching; from 25 mm². */
    F
}
