package org.leat.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.catalogue.Catalogue;
import org.leat.check.Baseline.AbsentFinding;
import org.leat.check.Settings.LevelChange;
import org.leat.check.Settings.LimitChange;
import org.leat.check.Settings.RuleSettings;
import org.leat.check.Settings.Switch;
import org.leat.design.Design;
import org.leat.file.Position;
import org.leat.file.Positions;
import org.leat.file.Reading;
import org.leat.plant.Plant;

/**
 * Runs rules over designs. Immutable and safe to share between threads. What takes long to solve is kept for the next design that has
 * it in common ({@link Plant.Factory}): the same design checked again, or a variant of it, takes a fraction of the first check, and says the same.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class Checker {

    private final List<RuleRun> runs;
    private final Rulebook rulebook;

    private final Settings settings;
    private final @Nullable LocalDate today;
    private final @Nullable Baseline baseline;
    private final Plant.Factory plants;

    private Checker(
            List<RuleRun> runs,
            Rulebook rulebook,
            Settings settings,
            @Nullable LocalDate today,
            @Nullable Baseline baseline,
            Plant.Factory plants) {
        this.runs = runs;
        this.rulebook = rulebook;
        this.settings = settings;
        this.today = today;
        this.baseline = baseline;
        this.plants = plants;
    }

    /** {@return a checker of the packs' rules as they are} */
    public static Checker of(List<? extends RulePack> packs) {
        return of(packs, Settings.NONE);
    }

    /**
     * {@return a checker of the packs' rules under settings}
     *
     * @throws IllegalArgumentException if two rules share an id, the settings name a rule or limit that no pack has, or
     *     they switch off or play down errors that can hurt someone, or loosen a limit that protects, and nobody
     *     answers for it, or they move a safety factor below one
     */
    public static Checker of(List<? extends RulePack> packs, Settings settings) {
        Map<String, RuleRun> byId = new TreeMap<>();
        Map<String, String> texts = new TreeMap<>(CommonTexts.read());
        Map<String, LoadedPack> from = new TreeMap<>();
        for (RulePack given : packs) {
            LoadedPack pack = LoadedPack.of(given);
            for (int i = 0; i < pack.rules().size(); i++) {
                RuleCard card = pack.rules().get(i).card();
                RuleInForce inForce =
                        RuleInForce.of(card, pack.name(), settings.rules().get(card.id()));
                LoadedPack other = from.put(card.id(), pack);
                if (other != null) {
                    throw new IllegalArgumentException(
                            "two rules are called " + card.id() + ": in " + other.told() + " and in " + pack.told());
                }
                byId.put(card.id(), new RuleRun(pack.rules().get(i), inForce));
                card.texts().forEach((text, said) -> texts.put(card.id() + "." + text, said.text()));
            }
        }
        settings.rules().forEach((id, change) -> known(byId.get(id), id, change));
        List<RuleRun> runs = List.copyOf(byId.values());
        Rulebook rulebook = new Rulebook(runs.stream().map(RuleRun::inForce).toList(), texts);
        return new Checker(runs, rulebook, settings, null, null, Plant.Factory.with(Catalogue.shipped()));
    }

    /** {@return the same checker on a day} Suppressions that end are compared with it; without a day none of them holds. */
    public Checker on(LocalDate day) {
        return new Checker(runs, rulebook, settings, day, baseline, plants);
    }

    /** {@return the same checker against findings accepted once} */
    public Checker against(Baseline accepted) {
        return new Checker(runs, rulebook, settings, today, accepted, plants);
    }

    /**
     * {@return the same checker with tables of one's own} Plants are derived with them, and a way out by another pipe is one
     * of theirs.
     */
    public Checker with(Catalogue own) {
        return new Checker(runs, rulebook, settings, today, baseline, Plant.Factory.with(own));
    }

    private static void known(@Nullable RuleRun run, String id, RuleSettings change) {
        if (run == null) {
            throw new IllegalArgumentException("settings change a rule that no pack has: " + id);
        }
        change.limits().forEach((name, to) -> {
            Limit limit = run.inForce().limits().get(name);
            if (limit == null) {
                throw new IllegalArgumentException("settings change a limit that " + id + " does not have: " + name);
            }
            if (!limit.named().allows(to.value())) {
                throw new IllegalArgumentException("settings ask for less than nobody may of " + id + ": " + name);
            }
        });
        if (run.inForce().playsDownDanger() && !answered(run.inForce(), change)) {
            throw new IllegalArgumentException("nobody answers for what settings hide of " + id);
        }
    }

    private static boolean answered(RuleInForce rule, RuleSettings change) {
        for (Limit loosened : rule.loosened()) {
            LimitChange to = change.limits().get(loosened.name());
            if (to == null || !to.grounds().answersForDanger()) {
                return false;
            }
        }
        Switch off = change.off();
        if (off != null && off.off()) {
            return off.grounds().answersForDanger();
        }
        LevelChange level = change.level();
        return level == null
                || level.level().compareTo(rule.card().level()) >= 0
                || level.grounds().answersForDanger();
    }

    /** {@return the rules in force and all texts} */
    public Rulebook rulebook() {
        return rulebook;
    }

    /** {@return what comes of checking a design built in code} */
    public Report check(Design design) {
        return examined(design).report();
    }

    /**
     * {@return what every rule answers for a design at the values assumed, by rule} No assumption is moved through its range, no way out
     * is sought, alternatives and suppressions are not looked at: to sift many designs before checking a few.
     */
    public List<Outcome> outcomes(Design design) {
        return Verdict.all(runs, plants.plant(design)).stream()
                .map(Verdict::outcome)
                .toList();
    }

    /** {@return the same with the plant at hand, for trying changes on it} */
    public Examined examined(Design design) {
        return examined(design, Positions.unknown(design.name()));
    }

    /** {@return what comes of checking a file that was read, be it only why it could not be} */
    public Report check(Reading reading) {
        return examined(reading).report();
    }

    /** {@return the same with the plant at hand, for trying changes on it} */
    public Examined examined(Reading reading) {
        Design design = reading.design();
        if (design == null) {
            return new Examined(Report.unreadable(reading.source(), reading.problems()), null);
        }
        return examined(design, reading.positions());
    }

    /**
     * {@return a design judged at the values assumed, for trying many changes on it} Its report has the findings and whether they
     * count, but no ways out, no alternatives, and no assumption moved through its range.
     *
     * @throws IllegalArgumentException if the file could not be read as a design
     */
    public Examined atAssumedValues(Reading reading) {
        Design design = reading.design();
        if (design == null) {
            throw new IllegalArgumentException("the design could not be read");
        }
        Positions positions = reading.positions();
        Trials trials = new Trials(plants.plant(design));
        List<Finding> findings = new ArrayList<>();
        for (Verdict verdict : Verdict.all(runs, trials)) {
            Outcome outcome = verdict.outcome();
            boolean danger =
                    outcome.kind().needsAttention() && verdict.run().inForce().hurts(outcome.level());
            Identity stable = new Identity(outcome.rule(), StablePath.path(design, outcome.path()), outcome.during());
            findings.add(Finding.of(outcome, positions.of(outcome.path()))
                    .broken(verdict.broke())
                    .known(stable, danger)
                    .ofInput(verdict.run().inForce().card().judgesInput()));
        }
        findings.sort(Comparator.naturalOrder());
        Report report = Report.of(
                new Report.Subject(positions.file(), design.name(), ""),
                findings,
                new Report.SolvedPlant(
                        List.of(),
                        trials.plant().unsolvable(),
                        trials.plant().solve().running(),
                        trials.plant().solve().pressureProfile(),
                        trials.plant().numbers().regulator().kind(),
                        trials.plant().solve().busSituations()),
                List.of());
        return new Examined(accepted(report, suppressions(design, positions)), new Trial(runs, trials));
    }

    private Examined examined(Design design, Positions positions) {
        List<Report> alternatives = new ArrayList<>();
        for (Variants.Variant variant : Variants.of(design)) {
            Trials trials = new Trials(plants.plant(variant.design()));
            alternatives.add(one(trials, variant.name(), positions, variant::standsAt, List.of()));
        }
        Trials trials = new Trials(plants.plant(design));
        Report report = one(trials, "", positions, path -> path, alternatives);
        return new Examined(accepted(report, suppressions(design, positions)), new Trial(runs, trials));
    }

    /** What the design's own file says first, then what settings say of it. */
    private List<Suppression> suppressions(Design design, Positions positions) {
        List<Suppression> all = new ArrayList<>(OwnSuppressions.of(design, positions));
        all.addAll(settings.suppressions());
        return all;
    }

    private Report accepted(Report report, List<Suppression> suppressions) {
        Suppressing.Result result = Suppressing.of(
                report.findings(),
                report.design(),
                suppressions,
                today,
                rulebook.rules().stream().map(r -> r.card().id()).toList());
        List<Finding> findings = result.findings();
        List<AbsentFinding> absent = List.of();
        if (baseline != null) {
            Baseline known = baseline;
            findings = findings.stream()
                    .map(f -> f.against(known.state(report.design(), f)))
                    .toList();
            absent = known.absent(report.design(), findings);
        }
        boolean dayMattered = suppressions.stream().anyMatch(s -> s.until() != null);
        return report.accepted(findings, result.idle(), absent, dayMattered ? today : null);
    }

    private Report one(
            Trials trials,
            String alternative,
            Positions positions,
            UnaryOperator<String> standsAt,
            List<Report> alternatives) {
        Plant plant = trials.plant();
        Design design = plant.design();
        List<Verdict> verdicts = Verdict.all(runs, trials);
        AssumptionRanges ranges = AssumptionRanges.explore(runs, plant, verdicts);
        List<Finding> findings = findings(runs, design, verdicts, ranges, path -> positions.of(standsAt.apply(path)));
        return Report.of(
                new Report.Subject(positions.file(), design.name(), alternative),
                findings,
                new Report.SolvedPlant(
                        ranges.assumed(path -> positions.of(standsAt.apply(path))),
                        plant.unsolvable(),
                        plant.solve().running(),
                        plant.solve().pressureProfile(),
                        plant.numbers().regulator().kind(),
                        plant.solve().busSituations()),
                alternatives);
    }

    /** {@return what is found of verdicts, with the ways out of those that are failures} */
    static List<Finding> findings(
            List<RuleRun> runs,
            Design design,
            List<Verdict> verdicts,
            AssumptionRanges ranges,
            Function<String, Position> positions) {
        List<Finding> findings = new ArrayList<>();
        Failures before = Failures.of(verdicts.stream().map(Verdict::outcome).toList());
        Map<String, String> lasting = new TreeMap<>();
        for (Verdict verdict : ranges.settled()) {
            Position position = positions.apply(verdict.outcome().path());
            Verdict.Ways ways = verdict.waysOut(runs, before);
            Outcome outcome = verdict.outcome();
            boolean danger =
                    outcome.kind().needsAttention() && verdict.run().inForce().hurts(outcome.level());
            Identity stable = new Identity(
                    outcome.rule(),
                    lasting.computeIfAbsent(outcome.path(), path -> StablePath.path(design, path)),
                    outcome.during());
            findings.add(Finding.of(outcome, position)
                    .with(ways.holding(), ways.rejected())
                    .restingOn(ranges.under(outcome.identity()))
                    .broken(verdict.broke() || ways.broke())
                    .known(stable, danger)
                    .ofInput(verdict.run().inForce().card().judgesInput()));
        }
        findings.sort(Comparator.naturalOrder());
        return findings;
    }
}
