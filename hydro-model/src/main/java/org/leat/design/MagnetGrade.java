package org.leat.design;

import org.apiguardian.api.API;

/** Temperature grade of the magnets. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Temperature grade of the magnets")
public enum MagnetGrade {
    /** 80 °C. */
    N,
    /** 100 °C. */
    M,
    /** 120 °C. */
    H,
    /** 150 °C. */
    SH,
    /** 180 °C. */
    UH,
    /** 200 °C. */
    EH,
    /** ferrite. */
    FERRITE
}
