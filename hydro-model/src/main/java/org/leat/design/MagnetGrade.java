package org.leat.design;

/** Temperature grade of the magnets. */
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
