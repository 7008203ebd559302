package org.leat.choice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.Checker;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Report;
import org.leat.choice.UsualSearch.CandidatePlant;
import org.leat.design.Design;
import org.leat.law.Gravity;
import org.leat.plant.Plant;
import org.leat.plant.Screening;
import org.leat.plant.numbers.SiteNumbers;
import org.leat.plant.numbers.StreamNumbers.StreamLevel;
import org.leat.quantity.Si;
import org.leat.season.DesignYear;

/**
 * From a place to plants that could stand there: complete designs of parts in usual sizes, solved, judged and without an error, the
 * few best of many; or why such a plant is the wrong one there. Immutable and safe to share between threads.
 *
 * <p>A proposal is a design to begin with, no offer: its parts are of usual sizes, those that are bought will be others, and what was
 * taken for granted (even slope, buried pipe, a guarded wheel) has to be made so.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class Proposals {

    /** Below it the fall is a low head: DOE, Planning a Microhydropower System, 10 ft (from memory). */
    private static final double LOW_HEAD = 3;

    /** Of the water's power: net head in feet times gallons a minute over ten, in watts, DOE as above; 53 per cent. */
    private static final double EFFICIENCY = 0.53;

    /** Mean of the year below which regulator and inverter take a great share: common practice. */
    private static final double LEAST_POWER = 25;

    /** The thickest pipe that is usual, PN 25, with room for blows: 25 bar over 1.33. */
    private static final double HIGHEST_HEAD = 190;

    /** Where the usual machines end and alternating current from the generator is the rule: common practice. */
    private static final double MOST_POWER = 3000;

    private static final double DAY = 86_400;

    /** Designs judged in search of one without an error, for each reason to propose one. */
    private static final int TRIES = 72;

    private static final double NEARLY_AS_MUCH = 0.75;

    private final Checker checker;
    private final UsualParts parts = UsualParts.shipped();
    private final UsualPlant plant = UsualPlant.shipped();

    private Proposals(Checker checker) {
        this.checker = checker;
    }

    /** {@return proposals that these rules find no error in} */
    public static Proposals judgedBy(Checker checker) {
        return new Proposals(checker);
    }

    /** What comes of a place. */
    public sealed interface Answer {}

    /**
     * Plants that could stand there.
     *
     * @param best the one that gives most first; at least one
     * @param solved sets of parts that were solved
     * @param judged designs that were judged
     */
    public record Found(List<Proposal> best, int solved, int judged) implements Answer {
        public Found {
            best = List.copyOf(best);
        }
    }

    /**
     * Such a plant is the wrong one there.
     *
     * @param reasons at least one
     * @param solved sets of parts that were solved
     * @param errors where all that were judged have errors: how many designs, by rule
     */
    public record Wrong(List<Reason> reasons, int solved, Map<String, Integer> errors) implements Answer {
        public Wrong {
            reasons = List.copyOf(reasons);
            errors = Collections.unmodifiableMap(new TreeMap<>(errors));
        }
    }

    /** Why such a plant is the wrong one. */
    public enum Cause {
        /** m; too little fall for a free jet. */
        LOW_HEAD,
        /** m; more pressure than usual plastic pipe holds. */
        HIGH_HEAD,
        /** W, mean of the year; less than is worth a plant. */
        TOO_LITTLE,
        /** m³/s; nothing is left of the stream for half the year. */
        DRY,
        /** W, mean of the year; the loads want more than such a plant is built for. */
        TOO_MUCH_WANTED,
        /** m; the pipe cannot be shorter than its fall: one of the two is read wrongly. */
        PIPE_SHORTER,
        /** number of sets that were solved; no set of usual parts is without an error. */
        NO_PARTS
    }

    /**
     * Why such a plant is the wrong one.
     *
     * @param cause what speaks against it
     * @param value found, in the cause's unit
     * @param limit beyond which it is wrong
     */
    public record Reason(Cause cause, double value, double limit) {}

    /** Why a plant is proposed. */
    public enum Merit {
        /** none of those judged gives more in the year. */
        GIVES_MOST,
        /** a narrower pipe, and at least three quarters of the most. */
        NARROWER_PIPE,
        /** fewer cells in series: less voltage in reach. */
        LOWER_VOLTAGE,
        /** a smaller machine that still gives what the loads take. */
        SMALLER_MACHINE
    }

    /**
     * A plant that could stand there.
     *
     * @param merits why it is proposed; at least one
     * @param design whole
     * @param text of its design file, with what to measure next
     * @param meanPower at the battery's poles over the year, W, the set that gives most open at each flow
     * @param year hour by hour, nozzles changed on a weekly visit
     * @param report of all rules; no error
     */
    public record Proposal(
            List<Merit> merits, Design design, String text, double meanPower, DesignYear year, Report report) {
        public Proposal {
            merits = List.copyOf(merits);
        }
    }

    /** {@return what could stand at a place} */
    public Answer of(SiteSurvey survey) {
        SurveyNumbers numbers = numbers(survey);
        List<Reason> reasons = reasons(numbers);
        return reasons.isEmpty() ? new Sifting(survey, numbers).answer() : new Wrong(reasons, 0, Map.of());
    }

    /** {@return the one that gives most alone, for less time; empty where {@link #of} finds such a plant to be the wrong one} */
    Optional<Proposal> most(SiteSurvey survey) {
        SurveyNumbers numbers = numbers(survey);
        return reasons(numbers).isEmpty() ? new Sifting(survey, numbers).most() : Optional.empty();
    }

    private static SurveyNumbers numbers(SiteSurvey survey) {
        SiteNumbers site = Plant.of(UsualSearch.bare(survey.site())).numbers().site();
        return SurveyNumbers.of(survey, site);
    }

    private static List<Reason> reasons(SurveyNumbers numbers) {
        List<Reason> reasons = new ArrayList<>();
        double head = numbers.head();
        if (head <= LOW_HEAD) {
            reasons.add(new Reason(Cause.LOW_HEAD, head, LOW_HEAD));
        }
        if (head > HIGHEST_HEAD) {
            reasons.add(new Reason(Cause.HIGH_HEAD, head, HIGHEST_HEAD));
        }
        if (numbers.pipe() < head) {
            reasons.add(new Reason(Cause.PIPE_SHORTER, numbers.pipe(), head));
        }
        double wanted = numbers.daily() / DAY;
        if (wanted > MOST_POWER) {
            reasons.add(new Reason(Cause.TOO_MUCH_WANTED, wanted, MOST_POWER));
        }
        double half = numbers.stream().isEmpty() ? 0 : numbers.available(0.5);
        if (!(half > 0)) {
            reasons.add(new Reason(Cause.DRY, half, 0));
            return reasons;
        }
        double mean = EFFICIENCY * 1000 * Gravity.STANDARD * Math.max(0, head) * meanFlow(numbers.stream());
        if (mean < LEAST_POWER) {
            reasons.add(new Reason(Cause.TOO_LITTLE, mean, LEAST_POWER));
        }
        return reasons;
    }

    /** Straight between points of a duration curve. */
    private static double meanFlow(List<StreamLevel> levels) {
        double sum = 0;
        double reached = 0;
        double before = levels.get(0).available();
        for (StreamLevel level : levels) {
            if (level.kind() == StreamLevel.Kind.EXCEEDED) {
                sum += (level.at() - reached) * 0.5 * (before + level.available());
                reached = level.at();
                before = level.available();
            } else {
                sum += level.available() / levels.size();
            }
        }
        return levels.get(0).kind() == StreamLevel.Kind.EXCEEDED ? sum + (1 - reached) * before : sum;
    }

    /** The search for one place. */
    private final class Sifting {

        private final SurveyNumbers numbers;
        private final UsualSearch search;
        private final Map<CandidatePlant, Design> sound = new LinkedHashMap<>();
        private final Set<CandidatePlant> judged = new LinkedHashSet<>();
        private final Map<String, Integer> errors = new TreeMap<>();
        private final Map<CandidatePlant, Report> reports = new LinkedHashMap<>();

        Sifting(SiteSurvey survey, SurveyNumbers numbers) {
            this.numbers = numbers;
            this.search = new UsualSearch(parts, plant, survey, numbers);
        }

        Answer answer() {
            List<CandidatePlant> all = search.candidates();
            CandidatePlant most = first(all, each -> true);
            if (most == null) {
                return new Wrong(List.of(new Reason(Cause.NO_PARTS, search.solved(), 0)), search.solved(), errors);
            }
            Map<CandidatePlant, List<Merit>> chosen = new LinkedHashMap<>();
            add(chosen, most, Merit.GIVES_MOST);
            double enough = NEARLY_AS_MUCH * most.mean();
            List<CandidatePlant> narrow = new ArrayList<>(all);
            narrow.sort(Comparator.comparingDouble(
                    (CandidatePlant each) -> each.parts().outside()));
            add(
                    chosen,
                    first(narrow, e -> e.parts().outside() < most.parts().outside() && e.mean() >= enough),
                    Merit.NARROWER_PIPE);
            add(chosen, first(all, e -> e.parts().cells() < most.parts().cells()), Merit.LOWER_VOLTAGE);
            double wanted = 1.3 * numbers.daily() / DAY;
            add(
                    chosen,
                    first(all, e -> size(e) < size(most) && e.mean() >= Math.min(wanted, enough)),
                    Merit.SMALLER_MACHINE);
            List<Proposal> best = new ArrayList<>();
            chosen.forEach((candidate, merits) -> best.add(proposal(candidate, merits)));
            best.sort(Comparator.comparingDouble(Proposal::meanPower).reversed());
            return new Found(best, search.solved(), judged.size());
        }

        Optional<Proposal> most() {
            CandidatePlant most = first(search.candidates(), each -> true);
            return most == null ? Optional.empty() : Optional.of(proposal(most, List.of(Merit.GIVES_MOST)));
        }

        private static double size(CandidatePlant candidate) {
            return Si.of(candidate.parts().machine().size());
        }

        private static void add(
                Map<CandidatePlant, List<Merit>> chosen, @Nullable CandidatePlant candidate, Merit merit) {
            if (candidate != null) {
                chosen.computeIfAbsent(candidate, key -> new ArrayList<>()).add(merit);
            }
        }

        /** The first of its kind that has no error, within so many tries. */
        private @Nullable CandidatePlant first(List<CandidatePlant> all, Predicate<CandidatePlant> kind) {
            int tries = 0;
            for (CandidatePlant each : all) {
                if (!kind.test(each)) {
                    continue;
                }
                if (reports.containsKey(each)) {
                    return each;
                }
                if (tries++ == TRIES) {
                    return null;
                }
                if (sound(each)) {
                    return each;
                }
            }
            return null;
        }

        private boolean sound(CandidatePlant candidate) {
            if (!judged.add(candidate)) {
                return false; // judged before, and found wanting
            }
            Plant rough = Plant.of(search.design(candidate.parts(), candidate.duties()));
            Design design = search.design(candidate.parts(), UsualSearch.duties(rough));
            if (count(checker.outcomes(design))) {
                return false;
            }
            Report report = checker.check(design);
            if (count(report.findings().stream().map(f -> f.outcome()).toList())) {
                return false;
            }
            sound.put(candidate, design);
            reports.put(candidate, report);
            return true;
        }

        /** {@return whether there is an error} */
        private boolean count(List<Outcome> outcomes) {
            Set<String> failed = new LinkedHashSet<>();
            for (Outcome outcome : outcomes) {
                if (outcome instanceof Outcome.Fail && outcome.level() == Level.ERROR) {
                    failed.add(outcome.rule());
                }
            }
            failed.forEach(rule -> errors.merge(rule, 1, Integer::sum));
            return !failed.isEmpty();
        }

        private Proposal proposal(CandidatePlant candidate, List<Merit> merits) {
            Design design = Objects.requireNonNull(sound.get(candidate));
            Plant whole = Plant.of(design);
            double mean = Screening.near(whole).meanPower(design).orElse(0);
            String text = HEAD
                    + search.text(
                            candidate.parts(),
                            UsualSearch.duties(Plant.of(search.design(candidate.parts(), candidate.duties()))));
            return new Proposal(
                    merits,
                    design,
                    text,
                    mean,
                    DesignYear.of(whole, null, 7),
                    Objects.requireNonNull(reports.get(candidate)));
        }
    }

    private static final String HEAD = """
            # A plant proposed for this place, of parts in usual sizes; no offer, and nothing of it stands yet.
            # Measure next, in this order: the fall by a gauge on a filled, shut pipe or a water-filled tube; the stream in its driest month;
            # the machine you can get, volts at a known speed with open leads and ohms between leads. Write them here and check again.
            # What could not be measured yet is assumed, and the report says what hangs on it.
            """;
}
