package org.leat.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.leat.check.Checker;
import org.leat.check.DesignEdits;
import org.leat.check.Edit;
import org.leat.check.Examined;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Trial;
import org.leat.design.Design;
import org.leat.file.DesignReader;
import org.leat.file.Reading;
import org.leat.pack.BuiltInPack;
import org.leat.plant.Plant;
import org.leat.prices.PriceList;
import org.leat.season.FlowClasses;

/** Parts chosen for a demo plant, against solving and judging every set. */
class PartsSearchTest {

    /** The whole price list of the demo plant in place of a part of it: {@code -Dleat.every-set=true}. */
    private static final boolean WHOLE = Boolean.getBoolean("leat.every-set");

    private static final Path EXAMPLES = Path.of("..", "hydro-examples");
    private static Reading hut;
    private static Examined examined;
    private static PriceList list;
    private static FlowClasses flows;

    @BeforeAll
    static void read() {
        hut = DesignReader.read(EXAMPLES.resolve("designs/rowan-ghyll.yaml"));
        examined = Checker.of(List.of(new BuiltInPack())).atAssumedValues(hut);
        PriceList all =
                Objects.requireNonNull(PriceList.read(EXAMPLES.resolve("prices/rowan-ghyll.yaml"), "list", design())
                        .list());
        List<PriceList.Choice> some = new ArrayList<>();
        for (PriceList.Choice choice : all.choices()) {
            some.add(new PriceList.Choice(
                    choice.name(), choice.paths(), choice.parts().subList(0, 3)));
        }
        list = WHOLE ? all : new PriceList(all.currency(), some);
        flows = FlowClasses.stated(trial().plant().numbers().site()).orElseThrow();
    }

    private static Design design() {
        return Objects.requireNonNull(hut.design());
    }

    private static Trial trial() {
        return Objects.requireNonNull(examined.trial());
    }

    private static PartsSearch.Extent extent(int threads, long checks) {
        return new PartsSearch.Extent(threads, Integer.MAX_VALUE, checks, progress -> true);
    }

    private record Seen(double price, double energy, int warnings) {
        boolean beats(Seen other) {
            return price <= other.price
                    && energy >= other.energy
                    && warnings <= other.warnings
                    && (price < other.price || energy > other.energy || warnings < other.warnings);
        }
    }

    /** Every set: its plant derived and solved anew, and every rule asked. */
    private static List<Seen> everySet() {
        List<List<PriceList.Part>> sets = new ArrayList<>(List.of(List.of()));
        for (PriceList.Choice choice : list.choices()) {
            List<List<PriceList.Part>> more = new ArrayList<>();
            for (List<PriceList.Part> begun : sets) {
                for (PriceList.Part part : choice.parts()) {
                    List<PriceList.Part> set = new ArrayList<>(begun);
                    set.add(part);
                    more.add(set);
                }
            }
            sets = more;
        }
        List<Seen> seen = new ArrayList<>();
        for (List<PriceList.Part> set : sets) {
            List<Edit> edits = new ArrayList<>();
            set.forEach(part -> edits.addAll(part.edits()));
            Design changed = DesignEdits.apply(design(), edits);
            List<Outcome> outcomes = trial().assuming(edits, Map.of()).outcomes();
            boolean forbidden = outcomes.stream()
                    .anyMatch(o -> o.level() == Level.ERROR && (o.kind() == Kind.FAIL || o.kind() == Kind.OPEN));
            if (!forbidden) {
                seen.add(new Seen(
                        set.stream().mapToDouble(p -> p.price().doubleValue()).sum(),
                        flows.made(Plant.of(changed)),
                        (int) outcomes.stream()
                                .filter(o -> o.kind() == Kind.FAIL && o.level() == Level.WARNING)
                                .count()));
            }
        }
        return seen;
    }

    @Test
    void the_front_of_a_demo_plant_is_that_of_judging_every_set() {
        // the demo plant has no error and no open question of one: none may come
        assertThat(trial().outcomes())
                .noneMatch(o -> o.level() == Level.ERROR && (o.kind() == Kind.FAIL || o.kind() == Kind.OPEN));
        PartsFront front = PartsSearch.of(examined, list, flows).front(extent(2, Long.MAX_VALUE));
        assertThat(front.end()).isEqualTo(PartsFront.End.WHOLE);
        List<Seen> all = everySet();
        Set<Seen> best = new HashSet<>(all);
        best.removeIf(one -> all.stream().anyMatch(other -> other.beats(one)));
        Set<Seen> found = new HashSet<>();
        front.points()
                .forEach(p -> found.add(new Seen(
                        p.price().doubleValue(), p.energy(), p.warnings().size())));
        assertThat(found).isEqualTo(best).hasSize(front.points().size());
        assertThat(best).hasSizeGreaterThan(5);
        assertThat(front.checked()).isLessThan((int) (list.sets() / 2));
        assertThat(all.size()).isLessThan((int) list.sets());
    }

    @Test
    void the_answer_and_the_counts_are_the_same_for_any_number_of_threads() {
        PartsFront one = PartsSearch.of(examined, list, flows).front(extent(1, 0));
        PartsFront more = PartsSearch.of(examined, list, flows).front(extent(3, 0));
        assertThat(more).isEqualTo(one);
        assertThat(one.end()).isEqualTo(PartsFront.End.OF_PRICE_AND_ENERGY);
        assertThat(one.checked()).isLessThan(one.solved());
    }

    @Test
    void a_search_that_is_stopped_keeps_what_it_has_and_bounds_what_it_has_not() {
        AtomicInteger asked = new AtomicInteger();
        PartsFront front = PartsSearch.of(examined, list, flows)
                .front(new PartsSearch.Extent(1, Integer.MAX_VALUE, 0, progress -> asked.incrementAndGet() < 1));
        assertThat(front.end()).isEqualTo(PartsFront.End.STOPPED);
        assertThat(front.points()).isEmpty();
        assertThat(front.possible().orElseThrow()).isGreaterThan(flows.made(trial().plant()));
        assertThat(front.settledBelow()).isNotNull();
    }

    @Test
    void where_every_set_has_an_error_there_is_none_to_choose_from() {
        PriceList weak = Objects.requireNonNull(PriceList.read(
                        "format: 1\ncurrency: EUR\nchoices: { name: motor, at: /alternator, fields: current-limit, parts: {"
                                + " name: weak, price: 3, sets: { current-limit: 1 A } } }",
                        "list.yaml",
                        design())
                .list());
        PartsFront front = PartsSearch.of(examined, weak, flows).front(extent(1, 9));
        assertThat(front.points()).isEmpty();
        assertThat(front.end()).isEqualTo(PartsFront.End.WHOLE);
        assertThat(front.forbidden()).isOne();
    }

    @Test
    void the_cheapest_change_that_mends_is_that_of_judging_every_set() {
        Examined sluice = Checker.of(List.of(new BuiltInPack()))
                .atAssumedValues(DesignReader.read(EXAMPLES.resolve("designs/orchard-sluice.yaml")));
        Trial before = Objects.requireNonNull(sluice.trial());
        PriceList prices = Objects.requireNonNull(
                PriceList.read(EXAMPLES.resolve("prices/orchard-sluice.yaml"), "list", before.design())
                        .list());
        FlowClasses stream = FlowClasses.stated(before.plant().numbers().site()).orElseThrow();
        PartsSearch search = PartsSearch.of(sluice, prices, stream);
        PartsFront mended = search.mend(extent(2, 1000));
        List<List<Edit>> sets = new ArrayList<>(List.of(List.of()));
        List<Double> costs = new ArrayList<>(List.of(0.0));
        for (PriceList.Choice choice : prices.choices()) {
            int begun = sets.size();
            for (int i = 0; i < begun; i++) {
                for (PriceList.Part part : choice.parts()) {
                    List<Edit> more = new ArrayList<>(sets.get(i));
                    more.addAll(part.edits());
                    sets.add(more);
                    costs.add(costs.get(i) + part.price().doubleValue());
                }
            }
        }
        double cheapest = Double.POSITIVE_INFINITY;
        Set<FindingPlace> openBefore = open(before);
        for (int i = 0; i < sets.size(); i++) {
            Trial changed = before.assuming(sets.get(i), Map.of());
            boolean error =
                    changed.outcomes().stream().anyMatch(o -> o.level() == Level.ERROR && o.kind() == Kind.FAIL);
            if (!error && openBefore.containsAll(open(changed))) {
                cheapest = Math.min(cheapest, costs.get(i));
            }
        }
        assertThat(sets).hasSize((int) mended.sets());
        assertThat(mended.end()).isEqualTo(PartsFront.End.WHOLE);
        assertThat(mended.points()).hasSize(1);
        assertThat(mended.points().get(0).price().doubleValue())
                .isEqualTo(cheapest)
                .isPositive();
        assertThat(mended.checked()).isLessThan((int) mended.sets());
        assertThat(search.mend(extent(1, 1000))).isEqualTo(mended);
        PartsFront cut = search.mend(extent(1, 0));
        assertThat(cut.end()).isEqualTo(PartsFront.End.STOPPED);
        assertThat(cut.points()).isEmpty();
    }

    private static Set<FindingPlace> open(Trial trial) {
        return trial.outcomes().stream()
                .filter(o -> o.level() == Level.ERROR && o.kind() == Kind.OPEN)
                .map(FindingPlace::of)
                .collect(Collectors.toSet());
    }

    @Test
    void a_design_without_error_needs_no_change_and_where_none_helps_that_is_proven() {
        PartsFront nothing = PartsSearch.of(examined, list, flows).mend(extent(1, 10));
        assertThat(nothing.points()).hasSize(1);
        assertThat(nothing.points().get(0).price()).isZero();
        assertThat(nothing.points().get(0).edits()).isEmpty();
        Reading yard = DesignReader.read(EXAMPLES.resolve("designs/tannery-yard.yaml"));
        PriceList cable = Objects.requireNonNull(PriceList.read(
                        "format: 1\ncurrency: EUR\nchoices: { name: cable, at: '/cables[0]/conductor', fields: area, parts: [ {"
                                + " name: thick, price: 80, sets: { area: 6 mm² } }, { name: thicker, price: 130, sets: {"
                                + " area: 10 mm² } } ] }",
                        "list.yaml",
                        Objects.requireNonNull(yard.design()))
                .list());
        PartsFront none = PartsSearch.of(
                        Checker.of(List.of(new BuiltInPack())).atAssumedValues(yard), cable, FlowClasses.alwaysFull())
                .mend(extent(1, 100));
        assertThat(none.end()).isEqualTo(PartsFront.End.WHOLE);
        assertThat(none.points()).isEmpty();
        assertThat(none.checked()).isEqualTo(3);
        // the cable is thick enough then, and what stands is told
        PartsFront.Refused refused = Objects.requireNonNull(none.refused());
        assertThat(refused.parts().stream().map(PriceList.Part::name)).containsExactly("thicker");
        assertThat(refused.because().stream().map(Outcome::rule))
                .contains("penstock/static-pressure", "regulator/kind-for-hydro")
                .doesNotContain("cable/ampacity");
    }
}
