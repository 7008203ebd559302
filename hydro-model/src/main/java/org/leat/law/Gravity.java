package org.leat.law;

import org.apiguardian.api.API;

/** Acceleration of free fall. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class Gravity {

    /** Standard acceleration, m/s²; source: ISO 80000-3. It differs from the local one by less than 0.3 %. */
    public static final double STANDARD = 9.80665;

    private Gravity() {}
}
