package org.leat.readings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.leat.file.Filled;
import org.leat.file.RecordReader;
import org.leat.readings.Channel.LoadState;
import org.leat.readings.Channel.ReadingKind;

class TakenReadingsTest {

    private static final Expectations EXPECTED = Expectations.of(DemoPlants.of("rowan-ghyll"));

    private static TakenReadings taken(String sets) {
        Filled<PlantReadings> read = RecordReader.read(PlantReadings.class, "format: 1\n" + sets, "water.yaml");
        return TakenReadings.of(
                Objects.requireNonNull(read.record(), () -> read.problems().toString()), EXPECTED);
    }

    @Test
    void each_reading_finds_its_place_and_its_uncertainty() {
        TakenReadings taken = taken("""
                gauge-above-nozzle: 1 m
                standing-pressure: 3.0 bar ± 0.06 bar
                sets:
                  - nozzles: 9mm
                    speed: 1100 rpm
                    battery-amps: -2 A
                """);
        assertThat(taken.misplaced()).isEmpty();
        assertThat(taken.impossible()).isEmpty();
        assertThat(taken.readings()).hasSize(3);
        Observation standing = taken.readings().get(0);
        // 1 m of water above the axis: 999.7 · 9.80665 Pa more at the axis
        assertThat(standing.value()).isCloseTo(309_804, org.assertj.core.api.Assertions.within(10.0));
        assertThat(standing.standard()).isEqualTo(3000);
        assertThat(taken.readings().get(1).channel()).isEqualTo(new Channel("9 mm", LoadState.BUS, ReadingKind.SPEED));
        assertThat(taken.readings().get(2).value()).isEqualTo(-2);
    }

    @Test
    void the_instruments_class_counts_where_a_reading_has_no_uncertainty() {
        TakenReadings taken = taken("""
                instruments: { pressure-full-scale: 6 bar, pressure-class: 1.6 %, speed: 1 % }
                standing-pressure: 3.0 bar
                sets: [ { speed: 1000 rpm } ]
                """);
        assertThat(taken.readings().get(0).standard()).isEqualTo(4800, org.assertj.core.api.Assertions.within(1e-6));
        assertThat(taken.readings().get(1).standard())
                .isEqualTo(taken.readings().get(1).value() * 0.005, org.assertj.core.api.Assertions.within(1e-9));
    }

    @Test
    void two_columns_that_changed_places_are_left_out_and_accuse_nothing() {
        TakenReadings taken = taken("""
                sets:
                  - { nozzles: 11 mm, running-pressure: 2.93 bar, speed: 14.4 rpm, battery-amps: 1158 A, battery-volts: 26.3 V }
                  - { nozzles: 9 mm, running-pressure: 3.02 bar, speed: 147 rpm, frequency: 1109 Hz }
                """);
        assertThat(taken.impossible())
                .extracting(one -> one.reading().path() + " " + one.why())
                .containsExactlyInAnyOrder(
                        "/sets[0]/speed CHANGED_PLACES",
                        "/sets[0]/battery-amps CHANGED_PLACES",
                        "/sets[1]/speed CHANGED_PLACES",
                        "/sets[1]/frequency CHANGED_PLACES");
        assertThat(taken.readings()).hasSize(3);
        assertThat(Diagnosis.of(FaultTable.of(EXPECTED), taken.readings()).dangers())
                .isEmpty();
    }

    /** 26.3 A at 14.4 V is what a battery of half the volts would take: it is told, and stays a reading. */
    @Test
    void what_a_battery_of_other_volts_would_show_is_not_left_out() {
        TakenReadings taken =
                taken("sets: [ { nozzles: 11 mm, speed: 1158 rpm, battery-amps: 26.3 A, battery-volts: 14.4 V } ]");
        assertThat(taken.impossible()).isEmpty();
        Observation volts = taken.readings().get(1);
        Observation amps = taken.readings().get(2);
        assertThat(TakenReadings.changedPlaces(volts, taken.readings(), EXPECTED))
                .isEqualTo(amps);
        assertThat(TakenReadings.changedPlaces(amps, taken.readings(), EXPECTED))
                .isEqualTo(volts);
        assertThat(TakenReadings.changedPlaces(taken.readings().get(0), taken.readings(), EXPECTED))
                .isNull();
    }

    /** 4330 rpm with open leads cannot be; 2330 rpm on the bus could, were the magnets nearly gone. */
    @Test
    void a_counter_that_shows_two_marks_where_it_cannot_be_shows_them_elsewhere_too() {
        String onBus = "  - { nozzles: 11 mm, speed: 2330 rpm, battery-amps: 14.5 A }\n";
        TakenReadings taken = taken("sets:\n  - { nozzles: 9 mm, leads: open, speed: 4330 rpm }\n" + onBus);
        assertThat(taken.impossible())
                .extracting(one -> one.reading().path() + " " + one.why() + " " + one.slip())
                .containsExactly("/sets[0]/speed ABOVE_RUNAWAY TWO_MARKS", "/sets[1]/speed SAME_SLIP TWO_MARKS");
        assertThat(taken.readings())
                .singleElement()
                .satisfies(seen -> assertThat(seen.channel().what()).isEqualTo(ReadingKind.BATTERY_AMPS));
        // without the one that cannot be it may have run away, and counts
        assertThat(taken("sets:\n" + onBus).impossible()).isEmpty();
    }

    @Test
    void millivolts_of_a_battery_cannot_be_and_litres_a_minute_are_known() {
        TakenReadings taken = taken("sets: [ { nozzles: 11 mm, battery-volts: 26.3 mV, flow: 2.2 L/min } ]");
        assertThat(taken.impossible()).singleElement().satisfies(cannot -> {
            assertThat(cannot.why()).isEqualTo(ImpossibleReading.Why.DEAD_BATTERY);
            assertThat(cannot.slip()).isEqualTo(ImpossibleReading.Slip.A_THOUSANDTH);
        });
        assertThat(TakenReadings.slip(taken.readings().get(0), EXPECTED))
                .isEqualTo(ImpossibleReading.Slip.SECOND_FOR_MINUTE);
    }

    /** One number that is the other's by chance, the other as it should be. */
    @Test
    void one_reading_that_is_what_another_should_be_changed_no_place() {
        TakenReadings taken = taken("sets: [ { nozzles: 11 mm, speed: 14.4 rpm, battery-amps: 14.5 A } ]");
        assertThat(taken.impossible()).isEmpty();
        assertThat(taken.readings()).hasSize(2);
    }

    @Test
    void volts_above_what_the_runaway_speed_gives_cannot_be_and_are_not_fitted() {
        TakenReadings taken = taken("sets: [ { leads: open, volts-between-leads: [64.5 V, 64.4 V, 64.6 V] } ]");
        assertThat(taken.readings()).extracting(r -> r.channel().what()).containsExactly(ReadingKind.LEAD_SPREAD);
        assertThat(taken.impossible()).singleElement().satisfies(cannot -> {
            assertThat(cannot.why()).isEqualTo(ImpossibleReading.Why.ABOVE_RUNAWAY_VOLTS);
            assertThat(cannot.slip()).isEqualTo(ImpossibleReading.Slip.PEAK_FOR_RMS);
            assertThat(cannot.most()).isBetween(45.0, 64.0);
        });
    }

    @Test
    void a_pressure_in_the_wrong_unit_cannot_be_and_the_unit_is_named() {
        TakenReadings taken = taken("standing-pressure: 45.5 bar");
        assertThat(taken.impossible().get(0).slip()).isEqualTo(ImpossibleReading.Slip.PSI_FOR_BAR);
        assertThat(taken("standing-pressure: 32 bar").impossible().get(0).slip())
                .isEqualTo(ImpossibleReading.Slip.METRES_FOR_BAR);
    }

    @Test
    void a_speed_below_nil_cannot_be() {
        assertThat(taken("sets: [ { speed: -1165 rpm } ]").impossible().get(0).slip())
                .isEqualTo(ImpossibleReading.Slip.SIGN);
    }

    @Test
    void a_battery_that_would_give_just_what_it_should_take_cannot_be_and_one_that_gives_a_little_can() {
        TakenReadings turned = taken("sets: [ { battery-amps: -14.7 A } ]");
        assertThat(turned.readings()).isEmpty();
        assertThat(turned.impossible()).singleElement().satisfies(cannot -> {
            assertThat(cannot.why()).isEqualTo(ImpossibleReading.Why.TURNED_ROUND);
            assertThat(cannot.slip()).isEqualTo(ImpossibleReading.Slip.SIGN);
        });
        assertThat(taken("sets: [ { battery-amps: -3 A } ]").impossible()).isEmpty();
    }

    @Test
    void amps_that_the_jets_cannot_make_are_told() {
        assertThat(taken("sets: [ { battery-amps: 147 A } ]")
                        .impossible()
                        .get(0)
                        .slip())
                .isEqualTo(ImpossibleReading.Slip.TEN_TIMES);
    }

    @Test
    void a_nozzle_that_the_design_has_not_is_no_reading_of_another() {
        TakenReadings taken = taken("sets: [ { nozzles: 14 mm, speed: 1165 rpm } ]");
        assertThat(taken.readings()).isEmpty();
        assertThat(taken.misplaced()).singleElement().satisfies(one -> {
            assertThat(one.why()).isEqualTo(TakenReadings.Why.NO_SUCH_SET);
            assertThat(one.path()).isEqualTo("/sets[0]/nozzles");
            assertThat(one.choices()).containsExactly("11 mm", "9 mm", "11.5 mm");
        });
    }

    @Test
    void a_file_without_readings_is_refused() {
        assertThat(RecordReader.read(PlantReadings.class, "format: 1\nsets: []\n", "x")
                        .record())
                .isNull();
    }

    @Test
    void running_water_presses_no_more_than_standing_water_was_read_to() {
        TakenReadings taken = taken("standing-pressure: 3.13 bar\nsets: [ { running-pressure: 3.4 bar } ]");
        assertThat(taken.impossible()).singleElement().satisfies(cannot -> {
            assertThat(cannot.why()).isEqualTo(ImpossibleReading.Why.ABOVE_STANDING);
            assertThat(cannot.reading().path()).isEqualTo("/sets[0]/running-pressure");
        });
        // psi written where bar was read: the standing pressure is the stranger of the two, and nobody blames the other
        TakenReadings psi = taken("standing-pressure: 3.13 psi\nsets: [ { running-pressure: 2.93 bar } ]");
        assertThat(psi.impossible()).isEmpty();
        assertThat(TakenReadings.slip(psi.readings().get(0), EXPECTED)).isEqualTo(ImpossibleReading.Slip.BAR_FOR_PSI);
    }

    @Test
    void a_pair_below_nil_or_a_tenth_of_the_others_cannot_be() {
        TakenReadings negative = taken("sets: [ { leads: open, volts-between-leads: [45 V, -45 V, 45 V] } ]");
        assertThat(negative.impossible()).singleElement().satisfies(cannot -> {
            assertThat(cannot.why()).isEqualTo(ImpossibleReading.Why.BELOW_NIL);
            assertThat(cannot.reading().path()).isEqualTo("/sets[0]/volts-between-leads[1]");
        });
        TakenReadings tenth = taken("sets: [ { leads: open, volts-between-leads: [45 V, 45 V, 4.5 V] } ]");
        assertThat(tenth.impossible())
                .extracting(ImpossibleReading::slip)
                .containsExactly(ImpossibleReading.Slip.A_TENTH);
        assertThat(tenth.readings()).isEmpty();
        // an open phase leaves two pairs dead, and that can be
        assertThat(taken("sets: [ { leads: open, volts-between-leads: [45 V, 0.1 V, 0.1 V] } ]")
                        .impossible())
                .isEmpty();
    }

    @Test
    void a_gauge_beyond_the_whole_fall_is_told_and_not_counted() {
        TakenReadings taken = taken("gauge-above-nozzle: 40 m\nstanding-pressure: 3.13 bar");
        assertThat(taken.misplaced())
                .extracting(TakenReadings.Misplaced::why)
                .containsExactly(TakenReadings.Why.GAUGE_ABOVE_FALL);
        assertThat(taken.readings().get(0).value()).isEqualTo(313_000, org.assertj.core.api.Assertions.within(1e-6));
    }

    @Test
    void a_reading_far_off_is_told_as_the_slip_that_makes_it_what_was_expected() {
        TakenReadings taken = taken("sets: [ { speed: 2330 rpm, battery-amps: 14.7 mA } ]");
        assertThat(taken.impossible()).isEmpty();
        assertThat(TakenReadings.slip(taken.readings().get(0), EXPECTED)).isEqualTo(ImpossibleReading.Slip.TWO_MARKS);
        assertThat(TakenReadings.slip(taken.readings().get(1), EXPECTED))
                .isEqualTo(ImpossibleReading.Slip.A_THOUSANDTH);
    }
}
