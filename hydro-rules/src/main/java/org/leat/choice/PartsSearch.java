package org.leat.choice;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.Edit;
import org.leat.check.Examined;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Report;
import org.leat.check.Trial;
import org.leat.prices.PriceList;
import org.leat.season.FlowClasses;

/**
 * Chooses parts for a design: every set of parts of a price list is a design of its own, solved for its energy of the year and, only
 * where that could matter, judged by every rule. The same answer for any number of threads.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class PartsSearch {

    /** Sets solved together. */
    private static final int PORTION = 256;

    /** Sets judged together at most where one is wanted: beyond it there is waste. */
    private static final int PORTION_OF_ONE = 16;

    private final Trial trial;
    private final FlowClasses flows;
    private final Set<FindingPlace> uncounted;
    private final PriceList list;

    private PartsSearch(Trial trial, FlowClasses flows, Set<FindingPlace> uncounted, PriceList list) {
        this.trial = trial;
        this.flows = flows;
        this.uncounted = uncounted;
        this.list = list;
    }

    /**
     * How far to go.
     *
     * @param threads that work at once; the answer does not depend on it
     * @param warnings that a set may have at most
     * @param checks after which no fewer warnings are looked for; the front of price and energy is not cut short by it
     * @param goOn asked again and again; the search ends with what it has where it says no
     */
    public record Extent(int threads, int warnings, long checks, Predicate<Progress> goOn) {}

    /**
     * How far a search is.
     *
     * @param sets in all
     * @param solved so far
     * @param checked so far
     * @param points on the front so far
     */
    public record Progress(long sets, int solved, int checked, int points) {}

    /**
     * {@return a search for a design that was examined}
     *
     * @param list read for that design
     * @param flows of the year
     * @throws IllegalArgumentException if the design could not be read
     */
    public static PartsSearch of(Examined examined, PriceList list, FlowClasses flows) {
        Trial trial = examined.trial();
        if (trial == null) {
            throw new IllegalArgumentException("the design could not be read");
        }
        return new PartsSearch(trial, flows, uncounted(examined.report()), list);
    }

    /** Where what fails does not count by someone's word, and nothing that counts fails too. */
    private static Set<FindingPlace> uncounted(Report report) {
        Set<FindingPlace> counted = report.worstFirst(Kind.FAIL).stream()
                .map(f -> FindingPlace.of(f.outcome()))
                .collect(Collectors.toSet());
        return report.findings().stream()
                .filter(f -> !f.counts())
                .map(Finding::outcome)
                .map(FindingPlace::of)
                .filter(p -> !counted.contains(p))
                .collect(Collectors.toSet());
    }

    /** {@return the sets worth choosing from} */
    public PartsFront front(Extent extent) {
        PartsSelection problem = new PartsSelection(list, trial, flows, uncounted);
        FrontSearch.Front front = new FrontSearch(problem, PORTION)
                .search(new FrontSearch.SearchExtent(
                        extent.threads(), extent.warnings(), extent.checks(), goOn(extent, list.sets())));
        return new PartsFront(
                front.points().stream()
                        .map(p -> point(problem, list, p.set(), p.gain()))
                        .toList(),
                switch (front.end()) {
                    case WHOLE -> PartsFront.End.WHOLE;
                    case OF_TWO_AIMS -> PartsFront.End.OF_PRICE_AND_ENERGY;
                    case STOPPED -> PartsFront.End.STOPPED;
                },
                list.sets(),
                front.counts().solved(),
                front.counts().checked(),
                front.counts().forbidden(),
                front.reached() == SelectionProblem.NONE ? null : PartsSelection.price(front.reached()),
                front.possible(),
                front.fewer(),
                refused(problem, list, front));
    }

    /**
     * {@return the cheapest change after which no error is left, where each choice may stay as the design has it} Of equally cheap
     * ones that of the fewest parts. A front of one point, whose parts that stay have no name; of none where no set of these parts
     * will do, which is proven, or where {@link Extent#checks()} sets were judged or the search was stopped before.
     */
    public PartsFront mend(Extent extent) {
        PriceList staying = MendSelection.withStaying(list);
        PartsSelection problem = new PartsSelection(staying, trial, flows, uncounted);
        Predicate<FrontSearch.Counts> goOn = goOn(extent, staying.sets());
        FrontSearch.Front front = new FrontSearch(new MendSelection(problem), PORTION_OF_ONE)
                .search(new FrontSearch.SearchExtent(
                        extent.threads(),
                        Integer.MAX_VALUE,
                        0,
                        counts -> counts.checked() < extent.checks() && goOn.test(counts)));
        return new PartsFront(
                front.points().stream()
                        .map(p -> point(problem, staying, p.set(), Double.NaN))
                        .toList(),
                front.end() == FrontSearch.SearchEnd.STOPPED ? PartsFront.End.STOPPED : PartsFront.End.WHOLE,
                staying.sets(),
                0,
                front.counts().checked(),
                front.counts().forbidden(),
                front.reached() == SelectionProblem.NONE
                        ? null
                        : PartsSelection.price(front.reached() / MendSelection.A_CHANGE_IN),
                OptionalDouble.empty(),
                OptionalInt.of(0),
                refused(problem, staying, front));
    }

    private static PartsFront.@Nullable Refused refused(PartsSelection problem, PriceList of, FrontSearch.Front front) {
        if (!front.points().isEmpty() || front.refused().isEmpty()) {
            return null;
        }
        List<PriceList.Part> parts = parts(problem, of, front.refused());
        List<Edit> edits = parts.stream().flatMap(part -> part.edits().stream()).toList();
        return new PartsFront.Refused(parts, problem.forbidding(edits));
    }

    private static List<PriceList.Part> parts(PartsSelection problem, PriceList of, List<Integer> set) {
        Map<String, PriceList.Part> byChoice = problem.parts(set);
        return of.choices().stream()
                .map(choice -> Objects.requireNonNull(byChoice.get(choice.name())))
                .toList();
    }

    private static Predicate<FrontSearch.Counts> goOn(Extent extent, long sets) {
        return counts -> extent.goOn().test(new Progress(sets, counts.solved(), counts.checked(), counts.kept()));
    }

    /** A set of a list's parts, with its energy where that is known already. */
    private static PartsFront.Point point(PartsSelection problem, PriceList of, List<Integer> set, double known) {
        List<PriceList.Part> parts = parts(problem, of, set);
        List<Edit> edits = parts.stream().flatMap(part -> part.edits().stream()).toList();
        BigDecimal price = parts.stream().map(PriceList.Part::price).reduce(BigDecimal.ZERO, BigDecimal::add);
        double energy = Double.isNaN(known) ? problem.energy(edits) : known;
        return new PartsFront.Point(parts, price, energy, problem.failures(edits), edits);
    }
}
