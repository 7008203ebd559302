package org.leat.pack.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.testing.Plants;
import org.leat.design.Screen;
import org.leat.plant.cases.Closing;
import org.leat.plant.numbers.Amount;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Screens, pipes, stops and flows, as several rules share them. */
class WaterOfKitTest {

    private static final String HOLES =
            "/intake/screen: { kind: drilled-holes, holes: 1000, hole-diameter: 4 mm, blocked-share: 20 % }";
    private static final String MESH =
            "/intake/screen: { kind: mesh, area: 0.2 m², opening: 5 mm, wire: 1 mm, blocked-share: 30 % }";
    private static final String BARS = "/intake/screen: { kind: bars, area: 0.4 m², spacing: 12 mm, thickness: 6 mm }";

    private static Screen screen(String kind) {
        return Objects.requireNonNull(Screens.of(Asked.of("brook", kind)));
    }

    private static List<String> at(String path, Stream<Change> changes) {
        return changes.map(change -> Plants.edits(change).get(path)).toList();
    }

    @Test
    void each_kind_of_screen_has_its_opening_and_its_blocked_share() {
        assertThat(Screens.opening(screen(HOLES))).isEqualTo(0.004);
        assertThat(Screens.opening(screen(MESH))).isEqualTo(0.005);
        assertThat(Screens.opening(screen(BARS))).isEqualTo(0.012);
        assertThat(Si.of(Objects.requireNonNull(Screens.blockedShare(screen(HOLES)))))
                .isEqualTo(0.2);
        assertThat(Si.of(Objects.requireNonNull(Screens.blockedShare(screen(MESH)))))
                .isEqualTo(0.3);
        assertThat(Screens.blockedShare(screen(BARS))).isNull();
    }

    @Test
    void a_larger_screen_has_so_many_times_the_holes_or_the_area_and_a_little_more() {
        assertThat(at("/intake/screen/holes", Screens.moreHoles(Asked.of("brook", HOLES), 1.5)))
                .containsExactly("1500", "1650", "1950");
        assertThat(Screens.moreHoles(Asked.of("brook", MESH), 1.5)).isEmpty();
        assertThat(at("/intake/screen/area", Screens.moreArea(Asked.of("brook", MESH), 1.5)))
                .containsExactly("0.3 m²", "0.33 m²", "0.39 m²");
        assertThat(at("/intake/screen/area", Screens.moreArea(Asked.of("brook", BARS), 2)))
                .containsExactly("0.8 m²", "0.88 m²", "1.04 m²");
        assertThat(Screens.moreArea(Asked.of("brook", HOLES), 1.5)).isEmpty();
        assertThat(Screens.moreArea(Asked.of("bare"), 1.5)).isEmpty();
    }

    @Test
    void a_finer_screen_is_in_half_millimetres_and_keeps_the_open_area_of_its_holes() {
        assertThat(Plants.edits(Screens.finer(screen(HOLES), 0.0021)))
                .containsExactly(
                        Map.entry("/intake/screen/hole-diameter", "2 mm"), Map.entry("/intake/screen/holes", "4000"));
        assertThat(Plants.edits(Screens.finer(screen(MESH), 0.0035)))
                .containsExactly(Map.entry("/intake/screen/opening", "3.5 mm"));
        assertThat(Plants.edits(Screens.finer(screen(BARS), 0.0002)))
                .containsExactly(Map.entry("/intake/screen/spacing", "0.5 mm"));
    }

    private static List<String> sizes(Stream<Change> changes) {
        return at("/penstock/sections[run]/pipe/outside-diameter", changes);
    }

    @Test
    void other_pipes_are_the_next_sizes_that_are_sold() {
        Judgement pe = Asked.of("brook");
        assertThat(sizes(PipeSizes.larger(pe, 1))).startsWith("75 mm", "90 mm", "110 mm");
        assertThat(sizes(PipeSizes.smaller(pe, 1))).startsWith("50 mm", "40 mm", "32 mm");
        Judgement pvc = Asked.of(
                "brook",
                "/penstock/sections[run]/pipe: { kind: pvc-u, outside-diameter: 63 mm, pressure-rating: 10 bar }");
        assertThat(sizes(PipeSizes.larger(pvc, 1))).startsWith("75 mm", "90 mm");
        assertThat(sizes(PipeSizes.smaller(pvc, 1))).startsWith("50 mm");
    }

    @Test
    void a_wall_that_was_measured_belongs_to_that_pipe_alone() {
        for (String pipe : List.of(
                "{ kind: pvc-u, outside-diameter: 63 mm, wall: 3 mm }",
                "{ kind: polyethylene, material: pe100, outside-diameter: 63 mm, wall: 4 mm }",
                "{ kind: hose, bore: 50 mm, pressure-rating: 10 bar }")) {
            Judgement j = Asked.of("brook", "/penstock/sections[run]/pipe: " + pipe);
            assertThat(PipeSizes.larger(j, 1)).as(pipe).isEmpty();
            assertThat(PipeSizes.smaller(j, 1)).as(pipe).isEmpty();
        }
    }

    @Test
    void a_hose_that_is_proof_against_suction_is_not_soft() {
        String hose =
                "/penstock/sections[run]/pipe: { kind: hose, bore: 50 mm, pressure-rating: 10 bar, suction-proof: ";
        assertThat(OutsidePressure.soft(Asked.of("brook"))).hasSize(2);
        assertThat(OutsidePressure.soft(Asked.of("brook", hose + "true }"))).hasSize(1);
        assertThat(OutsidePressure.soft(Asked.of("brook", hose + "false }"))).hasSize(2);
    }

    @Test
    void a_wall_that_buckles_is_an_error_and_one_short_of_the_factor_a_warning() {
        Judgement j = Asked.of("brook");
        Amount buckles = new Amount.Known(80_000);
        assertThat(OutsidePressure.stands(j, j.at("/"), 40_000, buckles).kind()).isEqualTo(Kind.PASS);
        assertThat(OutsidePressure.stands(j, j.at("/"), 60_000, buckles).level())
                .isEqualTo(Level.WARNING);
        assertThat(OutsidePressure.stands(j, j.at("/"), 80_000, buckles).level())
                .isEqualTo(Level.WARNING);
        assertThat(OutsidePressure.stands(j, j.at("/"), 80_001, buckles).level())
                .isEqualTo(Level.ERROR);
    }

    @Test
    void a_wall_stands_as_the_cube_of_its_thickness() {
        Judgement j = Asked.of("brook");
        // 63 mm of SDR 17 has a wall of 3.8 mm; six tenths of the middle diameter over the wall stand 0.6⁻³ as much
        assertThat(OutsidePressure.thickerWall(
                                j, Asked.failure(j, "/penstock/sections[run]", 1, 0.216, QuantityKind.PRESSURE))
                        .toList())
                .hasSize(1);
        assertThat(ratio(j, 0.216)).isEqualTo(9);
        assertThat(ratio(j, 0.99)).isEqualTo(13.6);
    }

    private static double ratio(Judgement j, double limit) {
        return OutsidePressure.thickerWall(
                        j, Asked.failure(j, "/penstock/sections[run]", 1, limit, QuantityKind.PRESSURE))
                .map(change -> Plants.told(change, j, "ratio"))
                .findFirst()
                .orElseThrow();
    }

    private static boolean notListed(String stop, String nozzles, String fitting) {
        return WorstStop.valveNotListed(Asked.of(
                "brook",
                "/safeguards/stop-water: " + stop,
                "/nozzles/open: " + nozzles,
                "/nozzles/available: null",
                "/penstock/sections[run]/fittings: [ " + fitting + " ]"));
    }

    @Test
    void a_valve_that_stops_several_nozzles_must_be_among_the_fittings() {
        String two = "[ 8 mm, 8 mm ]";
        String bend = "{ kind: bend-45, count: 2 }";
        String valve = "{ kind: gate-valve, closing-time: 14 s }";
        assertThat(notListed("quick-valve", two, bend)).isTrue();
        assertThat(notListed("slow-valve", two, bend)).isTrue();
        assertThat(notListed("deflector", two, bend)).isFalse();
        assertThat(notListed("quick-valve", "[ 10 mm ]", bend)).isFalse();
        assertThat(notListed("slow-valve", two, valve)).isFalse();
        assertThat(WorstStop.valveNotListed(Asked.of("bare", "/nozzles/open: " + two)))
                .isFalse();
    }

    @Test
    void a_valve_and_a_nozzle_that_is_shut_take_a_time_and_a_plug_takes_none() {
        for (Closing closing :
                Asked.of("brook", "/nozzles/available: null").solved().closing()) {
            boolean byHand = closing.cause() == Closing.Cause.VALVE || closing.cause() == Closing.Cause.NOZZLE_SHUT;
            assertThat(WorstStop.timed(closing)).as(closing.cause().name()).isEqualTo(byHand);
        }
        assertThat(Asked.of("brook", "/nozzles/available: null").solved().closing())
                .extracting(Closing::cause)
                .contains(Closing.Cause.VALVE)
                .anyMatch(cause -> cause != Closing.Cause.VALVE && cause != Closing.Cause.NOZZLE_SHUT);
    }

    @Test
    void the_flows_of_the_stream_are_those_stated_most_water_first() {
        assertThat(StreamFlows.of(Asked.of("brook"), "/site")).hasSize(1);
        assertThat(StreamFlows.of(Asked.of("sound"), "/site")).hasSizeGreaterThan(1);
    }

    @Test
    void the_lean_season_is_that_of_least_power_and_without_a_year_the_plant_as_built() {
        Judgement year = Asked.of("sound", "/nozzles/open: [ 14 mm ]", "/nozzles/available: [ 10 mm, 14 mm ]");
        double least = year.solved().overTheYear().stream()
                .mapToDouble(running -> running.operatingPoint().batteryPower())
                .min()
                .orElseThrow();
        assertThat(LeanSeason.running(year).operatingPoint().batteryPower()).isEqualTo(least);
        assertThat(year.solved().overTheYear().get(0).operatingPoint().batteryPower())
                .isGreaterThan(least);
        Judgement bare = Asked.of("bare");
        assertThat(LeanSeason.running(bare).nozzles())
                .isEqualTo(bare.solved().running().get(0).nozzles());
    }
}
