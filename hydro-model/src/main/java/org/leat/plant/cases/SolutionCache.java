package org.leat.plant.cases;

import org.leat.lazy.OncePerKey;
import org.leat.plant.solve.PartedStop;
import org.leat.plant.solve.Rejoining;

/**
 * What takes long to solve and comes again and again among plants that have much in common: a change of a plant tries the same
 * stop and the same broken bridge as another change. Handed from a plant to those made like it, and gone with the last of them; of
 * either no more is kept than many plants need, so that thousands made like one another hold no more memory than some.
 */
final class SolutionCache {

    /** A check with many ways out and much assumed asks for some two hundred. */
    private static final int KEPT = 500;

    private final OncePerKey<PartedStop, Rejoining> partedStops = new OncePerKey<>(PartedStop::rejoining, KEPT);
    private final OncePerKey<BridgeSearch, BridgeSearch.Found> brokenBridges =
            new OncePerKey<>(BridgeSearch::found, KEPT);

    private SolutionCache() {}

    /** {@return a place where nothing is kept yet} */
    static SolutionCache nothing() {
        return new SolutionCache();
    }

    OncePerKey<PartedStop, Rejoining> partedStops() {
        return partedStops;
    }

    OncePerKey<BridgeSearch, BridgeSearch.Found> brokenBridges() {
        return brokenBridges;
    }
}
