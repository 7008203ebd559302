package org.leat.check;

import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.leat.plant.Plant;

/**
 * A plant with what was tried on it. Equal edits are solved once, whichever rule tries them, and each rule is asked once
 * about each plant: it is a pure function. Safe to share between threads.
 */
final class Trials {

    private final Plant plant;
    private final Map<List<Edit>, Trials> edited = Collections.synchronizedMap(new HashMap<>());
    private final Map<RuleRun, List<Verdict>> verdicts = Collections.synchronizedMap(new IdentityHashMap<>());

    Trials(Plant plant) {
        this.plant = plant;
    }

    Plant plant() {
        return plant;
    }

    /** {@return the plant of the edited design, with what was tried on that} Throws as {@link DesignEdits#apply}. */
    Trials with(List<Edit> edits) {
        return edited.computeIfAbsent(
                List.copyOf(edits), e -> new Trials(plant.like(DesignEdits.apply(plant.design(), e))));
    }

    /** {@return a rule's verdicts on the plant} */
    List<Verdict> verdicts(RuleRun run) {
        List<Verdict> known = verdicts.get(run);
        if (known == null) {
            known = run.judge(this);
            verdicts.put(run, known);
        }
        return known;
    }
}
