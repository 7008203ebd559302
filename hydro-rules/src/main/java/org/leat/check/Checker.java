package org.leat.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leat.design.Design;
import org.leat.file.Position;
import org.leat.file.Positions;
import org.leat.file.Reading;
import org.leat.plant.Plant;

/** Runs rules over designs. Immutable and safe to share between threads. */
public final class Checker {

    private final List<RuleRun> runs;
    private final Rulebook rulebook;

    private Checker(List<RuleRun> runs, Rulebook rulebook) {
        this.runs = runs;
        this.rulebook = rulebook;
    }

    /** {@return a checker of the packs' rules as they are} */
    public static Checker of(List<? extends RulePack> packs) {
        return of(packs, Settings.NONE);
    }

    /**
     * {@return a checker of the packs' rules under settings}
     *
     * @throws IllegalArgumentException if two rules share an id, or the settings name a rule or limit that no pack has
     */
    public static Checker of(List<? extends RulePack> packs, Settings settings) {
        Map<String, RuleRun> byId = new TreeMap<>();
        Map<String, String> texts = new TreeMap<>(CommonTexts.read());
        Map<String, LoadedPack> from = new TreeMap<>();
        for (RulePack given : packs) {
            LoadedPack pack = LoadedPack.of(given);
            for (int i = 0; i < pack.rules().size(); i++) {
                RuleCard card = pack.cards().get(i);
                RuleInForce inForce =
                        RuleInForce.of(card, pack.name(), settings.rules().get(card.id()));
                LoadedPack other = from.put(card.id(), pack);
                if (other != null) {
                    throw new IllegalArgumentException(
                            "two rules are called " + card.id() + ": in " + other.told() + " and in " + pack.told());
                }
                byId.put(card.id(), new RuleRun(pack.rules().get(i), inForce));
            }
            // no pack words what an earlier one says
            pack.texts().forEach(texts::putIfAbsent);
        }
        settings.rules().forEach((id, change) -> known(byId.get(id), id, change));
        List<RuleRun> runs = List.copyOf(byId.values());
        return new Checker(
                runs, new Rulebook(runs.stream().map(RuleRun::inForce).toList(), texts));
    }

    private static void known(@Nullable RuleRun run, String id, RuleSettings change) {
        if (run == null) {
            throw new IllegalArgumentException("settings change a rule that no pack has: " + id);
        }
        for (String limit : change.limits().keySet()) {
            if (!run.inForce().limits().containsKey(limit)) {
                throw new IllegalArgumentException("settings change a limit that " + id + " does not have: " + limit);
            }
        }
    }

    /** {@return the rules in force and all texts} */
    public Rulebook rulebook() {
        return rulebook;
    }

    /** {@return what comes of checking a design built in code} */
    public Report check(Design design) {
        return check(design, Positions.unknown(design.name()));
    }

    /** {@return what comes of checking a file that was read, be it only why it could not be} */
    public Report check(Reading reading) {
        Design design = reading.design();
        if (design == null) {
            return Report.unreadable(reading.source(), reading.problems());
        }
        return check(design, reading.positions());
    }

    private Report check(Design design, Positions positions) {
        List<Report> alternatives = new ArrayList<>();
        for (Variants.Variant variant : Variants.of(design)) {
            alternatives.add(one(variant.design(), variant.name(), positions, variant::standsAt, List.of()));
        }
        return one(design, "", positions, path -> path, alternatives);
    }

    private static Set<String> failing(List<Verdict> verdicts, Level level) {
        return verdicts.stream()
                .map(Verdict::outcome)
                .filter(o -> o.kind() == Kind.FAIL && o.level().compareTo(level) >= 0)
                .map(o -> o.rule() + o.path())
                .collect(Collectors.toSet());
    }

    private Report one(
            Design design,
            String alternative,
            Positions positions,
            UnaryOperator<String> standsAt,
            List<Report> alternatives) {
        Plant plant = Plant.of(design);
        List<Verdict> verdicts = Verdict.all(runs, plant);
        AssumptionRanges ranges = AssumptionRanges.explore(runs, plant, verdicts);
        List<Finding> findings = new ArrayList<>();
        for (Verdict verdict : ranges.settled()) {
            Position position = positions.of(standsAt.apply(verdict.outcome().path()));
            Verdict.Ways ways =
                    verdict.waysOut(runs, failing(verdicts, verdict.outcome().level()));
            findings.add(new Finding(
                            verdict.outcome(),
                            position,
                            ways.holding(),
                            ranges.under(verdict.outcome().identity()),
                            verdict.broke() || ways.broke())
                    .withTried(ways.inVain()));
        }
        findings.sort(Comparator.naturalOrder());
        return new Report(
                positions.file(),
                design.name(),
                alternative,
                List.of(),
                findings,
                ranges.assumed(path -> positions.of(standsAt.apply(path))),
                plant.unsolvable(),
                plant.solve().running(),
                plant.solve().pressureProfile(),
                plant.numbers().regulator().kind(),
                alternatives);
    }
}
