package org.leat.pack.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.testing.Plants;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.quantity.Si;

/** Other nozzles than those open, and those that have worn. */
class NozzlesOfKitTest {

    private static List<String> open(Stream<Change> changes) {
        return changes.map(change -> Plants.edits(change).get("/nozzles/open")).toList();
    }

    private static List<String> kept(Stream<Change> changes) {
        return changes.map(change -> Plants.edits(change).getOrDefault("/nozzles/available", "all"))
                .toList();
    }

    @Test
    void smaller_ones_on_hand_come_first_then_half_millimetres_down() {
        Judgement j = Asked.of(
                "brook", "/nozzles/open: [ 11 mm, 10 mm ]", "/nozzles/available: [ 8 mm, 11 mm, 12 mm, 10 mm ]");
        assertThat(open(NozzlesOnHand.smaller(j, Asked.failure(j)).limit(5)))
                .containsExactly(
                        "[10 mm, 10 mm]", "[8 mm, 8 mm]", "[10.5 mm, 10.5 mm]", "[10 mm, 10 mm]", "[9.5 mm, 9.5 mm]");
        assertThat(open(NozzlesOnHand.smaller(j, Asked.failure(j)))).last().isEqualTo("[2 mm, 2 mm]");
        // what is larger goes, what is as large stays
        assertThat(kept(NozzlesOnHand.smaller(j, Asked.failure(j)).limit(2)))
                .containsExactly("[8 mm, 10 mm]", "[8 mm]");
    }

    @Test
    void larger_ones_are_those_on_hand_above_the_smallest_open_one() {
        Judgement j = Asked.of(
                "brook", "/nozzles/open: [ 11 mm, 10 mm ]", "/nozzles/available: [ 12 mm, 8 mm, 11 mm, 10 mm ]");
        assertThat(open(NozzlesOnHand.larger(j, Asked.failure(j)))).containsExactly("[11 mm, 11 mm]", "[12 mm, 12 mm]");
    }

    @Test
    void more_nozzles_have_no_more_area_together_and_are_six_at_most() {
        Judgement j = Asked.of("brook", "/nozzles/open: [ 12 mm ]", "/nozzles/available: [ 6 mm, 12 mm ]");
        // 12/√2 is 8.49, /√3 6.93, /√4 exactly 6, /√5 5.37, /√6 4.90
        assertThat(open(NozzlesOnHand.more(j)))
                .containsExactly(
                        "[8 mm, 8 mm]",
                        "[6.5 mm, 6.5 mm, 6.5 mm]",
                        "[6 mm, 6 mm, 6 mm, 6 mm]",
                        "[5 mm, 5 mm, 5 mm, 5 mm, 5 mm]",
                        "[4.5 mm, 4.5 mm, 4.5 mm, 4.5 mm, 4.5 mm, 4.5 mm]");
        // two millimetres is the least: of 4 mm four make it, five do not
        Judgement thin = Asked.of("brook", "/nozzles/open: [ 4 mm ]", "/nozzles/available: []");
        assertThat(open(NozzlesOnHand.more(thin)))
                .containsExactly("[2.5 mm, 2.5 mm]", "[2 mm, 2 mm, 2 mm]", "[2 mm, 2 mm, 2 mm, 2 mm]");
        assertThat(kept(NozzlesOnHand.more(j).limit(1))).containsExactly("[6 mm]");
    }

    private static NozzleGroup set(Double... bores) {
        return new NozzleGroup(NozzleGroup.nameOf(List.of(bores)), List.of(bores), false);
    }

    @Test
    void of_single_nozzles_those_are_kept_of_which_a_set_is() {
        Judgement j = Asked.of("brook", "/nozzles/available: [ 8 mm, 9 mm, 10 mm ]");
        Change change =
                NozzlesOnHand.only(Change.advice(), j, List.of(set(0.008, 0.008), set(0.010), set(0.009, 0.010)));
        assertThat(Plants.edits(change)).containsExactly(java.util.Map.entry("/nozzles/available", "[8 mm, 10 mm]"));
    }

    @Test
    void of_sets_those_are_kept_that_have_the_same_bores() {
        Judgement j = Asked.of(
                "brook",
                "/nozzles/available: null",
                "/nozzles/sets: [ { open: [ 11 mm ] }, { open: [ 9 mm ] }, { open: [ 9 mm, 9 mm ] } ]");
        Change change = NozzlesOnHand.only(Change.advice(), j, List.of(set(0.009), set(0.012)));
        assertThat(Plants.edits(change)).containsExactly(java.util.Map.entry("/nozzles/sets", "[{open: [9 mm]}]"));
    }

    private static NozzleWear worn(String worn) {
        return NozzleWear.of(Asked.of(
                "brook", "/nozzles/open: [ 11 mm, 9 mm ]", "/nozzles/available: null", "/nozzles/worn: " + worn));
    }

    @Test
    void the_widest_reading_of_a_bore_counts_and_a_fresh_nozzle_is_as_drilled() {
        NozzleWear open = worn("[ { drilled: 11 mm, measured: 11.2 mm }, { drilled: 11 mm, measured: 11.4 mm },"
                + " { drilled: 11 mm, measured: 11.3 mm }, { drilled: 9 mm, running-time: 0 h } ]");
        assertThat(open.missing()).isNull();
        assertThat(open.bores()).extracting(Si::of).containsExactly(0.0114, 0.009);
        assertThat(open.growth()).isCloseTo((11.4 * 11.4 + 81) / (121 + 81) - 1, within(1e-9));
    }

    @Test
    void a_nozzle_without_reading_is_asked_for() {
        assertThat(worn("[ { drilled: 11 mm, measured: 11.2 mm } ]").missing()).isEqualTo("/nozzles/worn");
        assertThat(worn("[ { drilled: 11 mm, measured: 11.2 mm }, { drilled: 9 mm, running-time: 10 h } ]")
                        .missing())
                .isEqualTo("/nozzles/worn[1]/measured");
        assertThat(
                        worn("[ { drilled: 11 mm, measured: 11.2 mm }, { drilled: 9 mm, measured: 9 mm, running-time: 0 h } ]")
                                .missing())
                .isNull();
    }

    @Test
    void what_lies_in_the_drawer_does_not_count_and_the_fastest_growing_does() {
        Judgement j = Asked.of(
                "brook",
                "/nozzles/open: [ 10 mm ]",
                "/nozzles/available: null",
                "/nozzles/worn: [ { drilled: 12 mm, measured: 13 mm },"
                        + " { drilled: 10 mm, measured: 10.1 mm, running-time: 100 h }, { drilled: 10 mm, measured: 10 mm, running-time: 50 h } ]");
        assertThat(NozzleWear.untimed(j)).isNull();
        // (10.1/10)² - 1 is 0.0201 in 100 h
        assertThat(NozzleWear.time(j, 0.0201).orElseThrow()).isCloseTo(360_000, within(1.0));
        Judgement untimed = Asked.of(
                "brook",
                "/nozzles/worn: [ { drilled: 12 mm, measured: 13 mm, running-time: 1 h }, { drilled: 11 mm, measured: 12 mm } ]");
        assertThat(NozzleWear.untimed(untimed)).isEqualTo("/nozzles/worn[1]/running-time");
    }
}
