package org.leat.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.apiguardian.api.API;
import org.leat.design.Design;
import org.leat.plant.Plant;

/**
 * A design on which changes are tried: each is carried out, the plant solved and every rule asked, once for equal changes.
 * What it answers is what rules say at the values assumed: no assumption is moved through its range. Safe to share between
 * threads.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class Trial {

    private final List<RuleRun> runs;
    private final Trials trials;

    Trial(List<RuleRun> runs, Trials trials) {
        this.runs = runs;
        this.trials = trials;
    }

    /** {@return the design, changed as far as it was} */
    public Design design() {
        return trials.plant().design();
    }

    /** {@return the plant of that design} */
    public Plant plant() {
        return trials.plant();
    }

    /**
     * {@return the design with changes carried out}
     *
     * @throws IllegalArgumentException if an edit leads nowhere or its value does not fit there
     * @throws org.leat.design.ImpossibleValueException if the edited design can never be
     */
    public Trial with(List<Edit> edits) {
        return edits.isEmpty() ? this : new Trial(runs, trials.with(edits));
    }

    /**
     * {@return the design with changes carried out and assumptions moved} Nothing of it is kept for the next call.
     *
     * @param assumedInstead by the path of an assumption: the value to take in its place, SI; paths that nothing is assumed for
     *     have no effect
     * @throws IllegalArgumentException as {@link #with}
     */
    public Trial assuming(List<Edit> edits, Map<String, Double> assumedInstead) {
        Plant changed = edits.isEmpty() ? trials.plant() : trials.plant().like(DesignEdits.apply(design(), edits));
        return new Trial(runs, new Trials(assumedInstead.isEmpty() ? changed : changed.like(assumedInstead)));
    }

    /**
     * {@return what every rule answers, one after the other as it is asked for: who has heard enough asks no further}
     *
     * @param first ids of rules to be asked before the others, in that order
     */
    public Stream<Outcome> answers(List<String> first) {
        List<RuleRun> order = new ArrayList<>(runs);
        order.sort(Comparator.comparingInt((RuleRun run) -> {
            int at = first.indexOf(run.inForce().card().id());
            return at < 0 ? first.size() : at;
        }));
        return order.stream().flatMap(run -> trials.verdicts(run).stream()).map(Verdict::outcome);
    }

    /** {@return what every rule answers, by rule; a rule that breaks leaves its question open} */
    public List<Outcome> outcomes() {
        return outcomes(rule -> true);
    }

    /** {@return the same of those rules alone whose ids are asked for} */
    public List<Outcome> outcomes(Predicate<String> rules) {
        List<RuleRun> asked = runs.stream()
                .filter(run -> rules.test(run.inForce().card().id()))
                .toList();
        return Verdict.all(asked, trials).stream().map(Verdict::outcome).toList();
    }

    /**
     * {@return changes that take a failure away, each carried out and judged; also those that bring another rule's failure}
     *
     * @param failure one of {@link #outcomes()}; of any other there are none
     */
    public List<WayOut> changesAgainst(Outcome.Fail failure) {
        List<Verdict> verdicts = Verdict.all(runs, trials);
        Failures before = Failures.of(verdicts.stream().map(Verdict::outcome).toList());
        for (Verdict verdict : verdicts) {
            if (verdict.outcome().equals(failure)) {
                Verdict.Ways ways = verdict.waysOut(runs, before);
                List<WayOut> changes = new ArrayList<>(ways.holding());
                ways.rejected().forEach(r -> changes.add(r.way()));
                changes.removeIf(way -> way.edits().isEmpty());
                return changes;
            }
        }
        return List.of();
    }

    /** {@return power at the battery with the nozzles open as built, W; empty where the plant could not be solved} */
    public OptionalDouble batteryPower() {
        return trials.plant().solve().running().stream()
                .limit(1)
                .mapToDouble(r -> r.operatingPoint().batteryPower())
                .findFirst();
    }

    /** {@return how many changed designs were solved so far, of the design as it was and of all that came of it} */
    public int solved() {
        return trials.solved();
    }
}
