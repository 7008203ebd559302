package org.leat.electrics;

/** What is broken between the winding and the d.c. output. */
public enum BridgeFault {
    /** Nothing. */
    NONE,
    /** One lead or winding is interrupted: leaves 30 to 43 % of the current at equal speed, ripple at twice f. */
    PHASE_OPEN,
    /** One diode does not conduct: leaves 65 to 73 % of the current at equal speed, ripple at f. */
    DIODE_OPEN,
    /** One diode conducts both ways: its phase lies on the rail, the machine is braked by circulating current. */
    DIODE_SHORT
}
