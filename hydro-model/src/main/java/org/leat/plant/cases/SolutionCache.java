package org.leat.plant.cases;

import org.leat.lazy.OncePerKey;
import org.leat.plant.solve.PartedStop;
import org.leat.plant.solve.Rejoining;

/**
 * What takes long to solve and comes again and again among plants that have much in common: a change of a plant tries the same
 * stop and the same broken bridge as another change. Handed from a plant to those made like it, and gone with the last of them.
 */
record SolutionCache(
        OncePerKey<PartedStop, Rejoining> partedStops, OncePerKey<BridgeSearch, BridgeSearch.Found> brokenBridges) {

    /** {@return a place where nothing is kept yet} */
    static SolutionCache nothing() {
        return new SolutionCache(new OncePerKey<>(PartedStop::rejoining), new OncePerKey<>(BridgeSearch::found));
    }
}
