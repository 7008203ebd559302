package org.leat.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.leat.design.Design;
import org.leat.file.Position;
import org.leat.plant.Plant;

/**
 * A design and one alternative after the other, solved once, about which a rule is asked again and again: the rule may be
 * another each time, the plants stay, those of ways out and of assumptions moved among them.
 */
public final class SolvedDesign {

    private final String alternative;
    private final Trials trials;
    private final Map<Map<String, Double>, Trials> moved = new HashMap<>();

    private SolvedDesign(String alternative, Design design) {
        this.alternative = alternative;
        this.trials = new Trials(Plant.of(design));
    }

    /** {@return a design and each of its alternatives} */
    public static List<SolvedDesign> of(Design design) {
        List<SolvedDesign> all = new ArrayList<>();
        all.add(new SolvedDesign("", design));
        Variants.of(design).forEach(variant -> all.add(new SolvedDesign(variant.name(), variant.design())));
        return List.copyOf(all);
    }

    /** {@return its name; "" for the design itself} */
    public String alternative() {
        return alternative;
    }

    /** {@return what the rule judges from} */
    public Judgement judgement(Rule rule) {
        return new Judgement(RuleInForce.of(rule.card(), "alone", null), trials);
    }

    /** {@return a number that a change says, in SI} */
    public static double told(Change change, Judgement changed, String name) {
        return change.args(changed).stream()
                .filter(arg -> arg.name().equals(name))
                .map(arg -> ((Arg.Amount) arg.value()).si())
                .findFirst()
                .orElseThrow();
    }

    /** {@return what the rule says, its ways out not asked for} */
    public List<Outcome> outcomes(Rule rule) {
        return rule.judge(judgement(rule));
    }

    /** {@return what a checker of that rule alone finds} */
    public List<Finding> findings(Rule rule) {
        trials.forgetVerdicts();
        moved.values().forEach(Trials::forgetVerdicts);
        List<RuleRun> runs = List.of(new RuleRun(rule, RuleInForce.of(rule.card(), "alone", null)));
        List<Verdict> verdicts = Verdict.all(runs, trials);
        Plant plant = trials.plant();
        AssumptionRanges ranges = AssumptionRanges.explore(
                runs, plant.assumptions(), verdicts, to -> moved.computeIfAbsent(to, t -> new Trials(plant.like(t))));
        return Checker.findings(runs, plant.design(), verdicts, ranges, path -> Position.startOf(path));
    }
}
