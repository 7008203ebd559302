package org.leat.check;

import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.leat.plant.Plant;
import org.leat.season.DesignYear;

/**
 * A plant with what was tried on it. Equal edits are solved once, whichever rule tries them, and each rule is asked once
 * about each plant: it is a pure function. Safe to share between threads.
 */
final class Trials {

    private final Plant plant;
    private final AtomicInteger solved;
    private @Nullable DesignYear year;
    private final Map<List<Edit>, Trials> edited = Collections.synchronizedMap(new HashMap<>());
    private final Map<RuleRun, List<Verdict>> verdicts = Collections.synchronizedMap(new IdentityHashMap<>());

    Trials(Plant plant) {
        this(plant, new AtomicInteger());
    }

    private Trials(Plant plant, AtomicInteger solved) {
        this.plant = plant;
        this.solved = solved;
    }

    /** {@return how many edited designs were made plants so far, of this and of those that it was edited to} */
    int solved() {
        return solved.get();
    }

    Plant plant() {
        return plant;
    }

    /** {@return the plant of the edited design, with what was tried on that} Throws as {@link DesignEdits#apply}. */
    Trials with(List<Edit> edits) {
        return edited.computeIfAbsent(List.copyOf(edits), this::made);
    }

    private Trials made(List<Edit> edits) {
        Trials made = new Trials(plant.like(DesignEdits.apply(plant.design(), edits)), solved);
        solved.incrementAndGet();
        return made;
    }

    /** {@return the year of the plant by the flows that its design states} */
    synchronized DesignYear year() {
        if (year == null) {
            year = DesignYear.of(plant, null, DesignYear.USUAL_VISIT);
        }
        return year;
    }

    /** Forgets what rules said and keeps the plants, for asking a changed rule about them. */
    void forgetVerdicts() {
        verdicts.clear();
        List.copyOf(edited.values()).forEach(Trials::forgetVerdicts);
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
