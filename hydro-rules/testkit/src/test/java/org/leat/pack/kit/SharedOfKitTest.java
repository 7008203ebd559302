package org.leat.pack.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.leat.check.Change;
import org.leat.check.Change.Changes;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.testing.Plants;
import org.leat.design.Pipe;
import org.leat.design.Place;
import org.leat.plant.solved.OperatingPoint;
import org.leat.quantity.QuantityKind;

/** Devices by their ratings, sections by their places, parts that a design leaves out. */
class SharedOfKitTest {

    @Test
    void ratings_are_those_sold_and_both_ends_belong_to_them() {
        assertThat(DeviceSizes.from(20).limit(3)).containsExactly(20.0, 25.0, 32.0);
        assertThat(DeviceSizes.from(20.1).limit(1)).containsExactly(25.0);
        assertThat(DeviceSizes.upTo(25).limit(3)).containsExactly(25.0, 20.0, 16.0);
        assertThat(DeviceSizes.upTo(24.9).limit(1)).containsExactly(20.0);
        assertThat(Plants.edits(DeviceSizes.rated("/protection[a]/rated-current", 32)))
                .containsExactly(Map.entry("/protection[a]/rated-current", "32 A"));
    }

    @Test
    void a_fuse_more_stands_behind_those_there_are() {
        Judgement j = Asked.of("sound");
        int before = j.design().devices().size();
        Change more = DeviceSizes.withFuse(j.design(), "one more", Place.BATTERY, Place.LOADS, 16);
        List<Devices.Placed> after = Devices.all(j.with(more.edits()).design());
        assertThat(after).hasSize(before + 1);
        Devices.Placed added = after.get(before);
        assertThat(added.name().value()).hasToString("Word[text=one more]");
        assertThat(added.rating()).isEqualTo(16);
        assertThat(added.ratingPath()).isEqualTo("/protection[one more]/rated-current");
        assertThat(added.opensAtBattery()).isTrue();
        assertThat(added.isBreaker()).isFalse();
        assertThat(added.carriesTheCharge()).isFalse();
    }

    @Test
    void only_devices_between_turbine_and_battery_carry_the_charge() {
        Judgement j = Asked.of(
                "sound",
                "/protection: [ { name: a, kind: breaker, from: rectifier, to: battery, rated-current: 40 A },"
                        + " { name: b, kind: switch, from: rectifier, to: dump-load, rated-current: 40 A },"
                        + " { name: c, kind: fuse, from: battery, to: inverter, rated-current: 40 A } ]");
        assertThat(Devices.all(j.design()))
                .extracting(Devices.Placed::carriesTheCharge)
                .containsExactly(true, false, false);
        assertThat(Devices.all(j.design()))
                .extracting(Devices.Placed::isBreaker)
                .containsExactly(true, false, false);
        assertThat(Devices.all(j.design()))
                .extracting(Devices.Placed::opensAtBattery)
                .containsExactly(true, false, true);
    }

    @Test
    void each_device_that_is_asked_for_is_judged_and_the_list_where_there_is_none() {
        Judgement j = Asked.of(
                "sound",
                "/protection: [ { name: a, kind: fuse, from: rectifier, to: battery, rated-current: 40 A },"
                        + " { name: b, kind: switch, from: battery, to: inverter, rated-current: 80 A } ]");
        assertThat(Devices.each(
                        j,
                        Devices.Placed::opens,
                        "fails",
                        device -> j.at(device.path()).holds(true)))
                .extracting(Outcome::path)
                .containsExactly("/protection[a]");
        assertThat(Devices.each(
                        j,
                        Devices.Placed::isBreaker,
                        "fails",
                        device -> j.at(device.path()).holds(true)))
                .extracting(outcome -> outcome.path() + " " + outcome.message().id())
                .containsExactly("/protection fails");
    }

    @Test
    void sections_are_found_by_their_pipe_and_by_what_failed_below_them() {
        Judgement j = Asked.of("sound");
        List<PipeSection> all = PipeSection.all(j);
        assertThat(all).hasSize(j.design().penstock().sections().size());
        for (PipeSection section : all) {
            assertThat(section.stated())
                    .isSameAs(j.design().penstock().sections().get(section.index()));
            assertThat(section.numbers().name()).isEqualTo(section.stated().name());
            for (String below : List.of("", "/pipe", "/pipe/sdr")) {
                Outcome failure = Asked.failure(j, section.path() + below, 2, 1, QuantityKind.RATIO);
                assertThat(PipeSection.of(j, failure)).isEqualTo(section);
            }
        }
        assertThat(PipeSection.of(j, pipe -> !(pipe instanceof Pipe.Hose))).noneMatch(PipeSection::isHose);
        assertThat(PipeSection.of(j, Pipe.Hose.class::isInstance)).allMatch(PipeSection::isHose);
        assertThatThrownBy(() -> PipeSection.of(j, Asked.failure(j, "/penstock", 2, 1, QuantityKind.RATIO)))
                .hasMessage("no section at /penstock");
    }

    @Test
    void a_part_that_is_left_out_says_nothing_and_one_that_is_there_what_it_says() {
        Judgement none = Asked.of("sound", "/safeguards: null", "/runner/buckets: null");
        assertThat(DesignParts.safeguards(none).wetPlace()).isNull();
        assertThat(DesignParts.intake(none).screen()).isNull();
        assertThat(DesignParts.buckets(none).count()).isNull();
        Judgement some = Asked.of(
                "sound",
                "/safeguards: { wet-place: true }",
                "/intake: { ice-kept-off: true }",
                "/runner/buckets: { count: 23 }");
        assertThat(DesignParts.safeguards(some).wetPlace()).isTrue();
        assertThat(DesignParts.intake(some).iceKeptOff()).isTrue();
        assertThat(DesignParts.buckets(some).count()).isEqualTo(23);
    }

    @Test
    void changes_go_with_one_text_or_with_all_others() {
        Judgement j = Asked.of("sound");
        Outcome.Fail failure = Asked.failure(j);
        Change change = Change.advice();
        assertThat(ChangesForText.only("fails", change).of(j, failure)).containsExactly(change);
        assertThat(ChangesForText.only("other", change).of(j, failure)).isEmpty();
        assertThat(ChangesForText.except("other", (judged, of) -> Stream.of(change))
                        .of(j, failure))
                .containsExactly(change);
        assertThat(ChangesForText.except("fails", (judged, of) -> Stream.of(change))
                        .of(j, failure))
                .isEmpty();
    }

    @Test
    void of_running_on_each_set_the_first_with_the_greatest_number_is_the_worst() {
        Judgement j = Asked.of("sound");
        double most = j.solved().running().stream()
                .mapToDouble(running -> running.operatingPoint().frequency())
                .max()
                .orElseThrow();
        assertThat(Worst.running(j, OperatingPoint::frequency).operatingPoint().frequency())
                .isEqualTo(most);
    }

    @Test
    void the_two_nearest_ratings_on_the_side_of_the_limit_are_offered() {
        Judgement j = Asked.of("sound");
        String path = "/protection[lead fuse]/rated-current";
        Outcome.Fail failure = Asked.failure(j, path, 30, 20, QuantityKind.CURRENT);
        assertThat(DeviceSizes.larger(j, failure)
                        .map(change -> Plants.edits(change).get(path)))
                .containsExactly("20 A", "25 A");
        assertThat(DeviceSizes.smaller(j, failure)
                        .map(change -> Plants.edits(change).get(path)))
                .containsExactly("20 A", "16 A");
    }

    @Test
    void changes_of_a_field_go_with_failures_there_and_tell_the_size() {
        Judgement j = Asked.of("sound");
        Changes bolts = FieldChanges.sizes("/runner/hub/bolt-diameter", "bolt", "mm", Length.class, 4, 5);
        Outcome.Fail there = Asked.failure(j, "/runner/hub", 2, 1, QuantityKind.LENGTH);
        assertThat(FieldChanges.onlyAt("/runner/hub", bolts).of(j, there).map(Plants::edits))
                .containsExactly(
                        Map.of("/runner/hub/bolt-diameter", "4 mm"), Map.of("/runner/hub/bolt-diameter", "5 mm"));
        assertThat(FieldChanges.onlyAt("/runner/buckets", bolts).of(j, there)).isEmpty();
    }

    @Test
    void what_would_stand_the_voltage_is_advised_in_the_next_rating_that_is_sold() {
        Judgement j = Asked.of("sound");
        Changes advice = StandardSizes.standing("rated");
        assertThat(advice.of(j, Asked.failure(j, "/loads", 75, 60, QuantityKind.VOLTAGE)))
                .hasSize(1);
        assertThat(advice.of(j, Asked.failure(j, "/loads", 1001, 60, QuantityKind.VOLTAGE)))
                .isEmpty();
    }
}
