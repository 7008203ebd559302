package org.leat.design;

/** How a nozzle is shaped inside. */
@About("How a nozzle is shaped inside")
public enum NozzleForm {
    /** converging and smooth, the jet as wide as the bore. */
    SMOOTH,
    /** hole in a flat plate. */
    SHARP_HOLE,
    /** short straight tube. */
    SHORT_TUBE
}
