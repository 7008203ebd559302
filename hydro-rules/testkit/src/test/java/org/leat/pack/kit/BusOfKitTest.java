package org.leat.pack.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leat.design.Place.ALTERNATOR;
import static org.leat.design.Place.BATTERY;
import static org.leat.design.Place.DUMP_LOAD;
import static org.leat.design.Place.INVERTER;
import static org.leat.design.Place.RECTIFIER;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.measure.quantity.ElectricPotential;
import org.junit.jupiter.api.Test;
import org.leat.check.Judgement;
import org.leat.check.testing.Plants;
import org.leat.design.Design;
import org.leat.design.DumpLoad;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.PlantNumbers;

/** Nodes of the bus, what hangs on them, and what is changed there. */
class BusOfKitTest {

    @Test
    void a_run_is_at_the_bridge_where_it_begins_at_machine_or_diodes() {
        Design bridge = Plants.design("sound");
        Design battery = Plants.design("sound", "/dump-load/side: battery");
        for (Design design : List.of(bridge, battery)) {
            assertThat(BusNode.between(design, ALTERNATOR, RECTIFIER)).isEqualTo(BusNode.BRIDGE);
            assertThat(BusNode.between(design, BATTERY, RECTIFIER)).isEqualTo(BusNode.BRIDGE);
            assertThat(BusNode.between(design, RECTIFIER, DUMP_LOAD)).isEqualTo(BusNode.BRIDGE);
            assertThat(BusNode.between(design, BATTERY, ALTERNATOR)).isEqualTo(BusNode.BRIDGE);
            assertThat(BusNode.between(design, BATTERY, DUMP_LOAD)).isEqualTo(BusNode.BATTERY);
            assertThat(BusNode.between(design, BATTERY, INVERTER)).isEqualTo(BusNode.BATTERY);
        }
        assertThat(BusNode.between(bridge, DUMP_LOAD, INVERTER)).isEqualTo(BusNode.BRIDGE);
        assertThat(BusNode.between(battery, INVERTER, DUMP_LOAD)).isEqualTo(BusNode.BATTERY);
        assertThat(BusNode.of((DumpLoad) null)).isEqualTo(BusNode.BRIDGE);
    }

    @Test
    void the_management_is_a_part_of_the_bus_where_there_is_one() {
        assertThat(BusPart.all(Plants.design("sound")))
                .extracting(BusPart::part)
                .containsExactly(PartWord.REGULATOR, PartWord.INVERTER, PartWord.MANAGEMENT);
        assertThat(BusPart.all(Plants.design("sound", "/battery/management: null")))
                .extracting(BusPart::part)
                .containsExactly(PartWord.REGULATOR, PartWord.INVERTER);
    }

    @Test
    void a_switch_protects_no_run_and_a_run_joins_only_its_ends() {
        Design design = Plants.design(
                "sound",
                "/protection: [ { name: isolator, kind: switch, from: battery, to: inverter, rated-current: 100 A },"
                        + " { name: fuse, kind: fuse, from: inverter, to: battery, rated-current: 80 A } ]");
        Devices.Placed found =
                Objects.requireNonNull(Devices.in(design, design.cables().get(2)));
        assertThat(found.device().name()).isEqualTo("fuse");
        assertThat(Devices.in(design, design.cables().get(1))).isNull();
        assertThat(Devices.all(design).stream().filter(Devices.Placed::opensAtBattery))
                .extracting(device -> device.device().name())
                .containsExactly("fuse");
        assertThat(Devices.joins(design.cables().get(2), BATTERY)).isTrue();
        assertThat(Devices.joins(design.cables().get(2), INVERTER)).isTrue();
        assertThat(Devices.joins(design.cables().get(2), RECTIFIER)).isFalse();
        assertThat(Runs.joining(design, INVERTER)).containsExactly("/cables[2]");
    }

    @Test
    void all_set_points_go_with_the_number_of_cells() {
        Design design = Plants.design("sound", "/regulator/equalising-voltage: 29 V");
        assertThat(Plants.edits(BankVoltage.edits(design, 16)))
                .containsExactly(
                        Map.entry("/battery/cells-in-series", "16"),
                        Map.entry("/battery/charge-voltage-limit", "58.4 V"),
                        Map.entry("/regulator/absorption-voltage", "56.8 V"),
                        Map.entry("/regulator/float-voltage", "54 V"),
                        Map.entry("/regulator/equalising-voltage", "58 V"),
                        Map.entry("/regulator/cut-off-voltage", "46 V"));
    }

    @Test
    void a_rating_that_is_exactly_enough_is_offered_and_none_below() {
        Judgement j = Asked.of("sound");
        assertThat(FieldChanges.raised("V", ElectricPotential.class, 60, 75, 100)
                        .of(j, Asked.failure(j, "/regulator/input-voltage-limit", 75, 40, VOLTAGE))
                        .map(change -> Plants.edits(change).get("/regulator/input-voltage-limit")))
                .containsExactly("75 V", "100 V");
    }

    @Test
    void a_new_element_takes_a_larger_switch_only_where_the_old_one_is_too_small() {
        BridgeElement element = new BridgeElement(45, 4.5, 540);
        // 12.5 A with the quarter of room, in steps of five
        assertThat(switchRating(element, "5 A")).isEqualTo("15 A");
        assertThat(switchRating(element, "12.5 A")).isNull();
        assertThat(switchRating(element, "61 A")).isNull();
        assertThat(switchRating(element, "null")).isNull();
        // √(540 W · 4.5 Ω) is 49.3 V
        assertThat(Plants.edits(element.inPlaceOf(dump("61 A"))))
                .containsEntry("/dump-load/rated-voltage", "50 V")
                .containsEntry("/dump-load/resistance-hot", "4.705 Ω");
    }

    private static String switchRating(BridgeElement element, String now) {
        return Plants.edits(element.inPlaceOf(dump(now))).get("/dump-load/switch-rating");
    }

    private static DumpLoad dump(String switchRating) {
        return Objects.requireNonNull(Plants.design("sound", "/dump-load/switch-rating: " + switchRating)
                .dumpLoad());
    }

    @Test
    void what_hangs_on_the_bridge_are_regulator_diodes_and_a_capacitor_where_there_is_one() {
        assertThat(BridgeWindow.parts(Asked.of("sound-tracking").numbers()))
                .extracting(BridgeWindow.RatedPart::part)
                .containsExactly(PartWord.REGULATOR, PartWord.DIODES, PartWord.CAPACITOR);
        assertThat(BridgeWindow.parts(Asked.of("sound-tracking", "/rectifier/capacitance: null")
                        .numbers()))
                .extracting(BridgeWindow.RatedPart::part)
                .containsExactly(PartWord.REGULATOR, PartWord.DIODES);
    }

    @Test
    void triggers_lie_above_what_it_works_at_and_below_the_weakest_part() {
        PlantNumbers numbers = Asked.of("sound-tracking", "/rectifier/capacitor-voltage: 115 V")
                .numbers();
        Running any = Asked.of("sound-tracking").solved().running().get(0);
        // 1.15, 1.1, 1.25, 1.4 and 1.05 times, in whole volts, those that 115 V stands no more left out
        assertThat(new BridgeWindow(100, any).triggers(numbers)).containsExactly(110.0, 105.0);
        assertThat(new BridgeWindow(99, any).triggers(numbers)).containsExactly(114.0, 109.0, 104.0);
    }

    @Test
    void a_series_regulator_works_up_to_its_set_point_and_a_tracking_one_where_the_wheel_turns_best() {
        BridgeWindow tracking = BridgeWindow.of(Asked.of("sound-tracking").solved());
        assertThat(tracking.working()).isEqualTo(tracking.during().lastingVoltage());
        BridgeWindow series = BridgeWindow.of(Asked.of(
                        "sound",
                        "/regulator/kind: series",
                        "/regulator/absorption-voltage: 55 V",
                        "/regulator/equalising-voltage: 60 V")
                .solved());
        assertThat(series.working()).isEqualTo(60);
    }
}
