package org.leat.design;

import org.apiguardian.api.API;

/** A part of the plant that may be bought or built already. */
@API(status = API.Status.STABLE, since = "0.1")
@About("A part of the plant that may be bought or built already")
public enum PlantPart {
    /** screen, basin, vent. */
    INTAKE,
    /** pipe or hose with its fittings. */
    PENSTOCK,
    /** all that are listed. */
    NOZZLES,
    /** wheel with its buckets and bearings. */
    RUNNER,
    /** machine on the shaft. */
    ALTERNATOR,
    /** bridge with its heat sink. */
    RECTIFIER,
    /** every run. */
    CABLES,
    /** charge regulator. */
    REGULATOR,
    /** element and switch. */
    DUMP_LOAD,
    /** cells and management. */
    BATTERY,
    /** with what it stands. */
    INVERTER,
    /** every fuse, breaker and switch. */
    PROTECTION
}
