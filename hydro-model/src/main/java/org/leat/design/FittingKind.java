package org.leat.design;

import org.apiguardian.api.API;

/** Kinds of fitting. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Kinds of fitting")
public enum FittingKind {
    /** pipe end flush with a wall. */
    ENTRANCE_SHARP,
    /** pipe end standing into the water. */
    ENTRANCE_PROJECTING,
    /** bell mouth. */
    ENTRANCE_ROUNDED,
    /** long bend through 90 degrees. */
    @AlsoWritten({"90 bend", "90° bend", "bend 90°"})
    BEND_90,
    /** long bend through 45 degrees. */
    @AlsoWritten({"45 bend", "45° bend", "bend 45°"})
    BEND_45,
    /** tight elbow through 90 degrees. */
    @AlsoWritten({"90 elbow", "90° elbow", "elbow 90°"})
    ELBOW_90,
    /** tight elbow through 45 degrees. */
    @AlsoWritten({"45 elbow", "45° elbow", "elbow 45°"})
    ELBOW_45,
    /** tee, straight through. */
    TEE_THROUGH,
    /** tee, into or out of the branch. */
    TEE_BRANCH,
    /** ball valve, fully open. */
    @AlsoWritten("ball cock")
    BALL_VALVE,
    /** gate valve, fully open. */
    GATE_VALVE,
    /** globe valve, fully open. */
    GLOBE_VALVE,
    /** butterfly valve, fully open. */
    @AlsoWritten("butterfly")
    BUTTERFLY_VALVE,
    /** check valve. */
    @AlsoWritten({"non return valve", "one way valve"})
    CHECK_VALVE,
    /** plastic compression coupler. */
    COMPRESSION_COUPLER,
    /** barbed hose tail. */
    BARBED_TAIL,
    /** step to a smaller bore. */
    REDUCER,
    /** step to a larger bore. */
    ENLARGER,
    /** union or flange. */
    UNION
}
