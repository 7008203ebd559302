package org.leat.plant.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.design.CableInsulation;
import org.leat.design.ConductorMaterial;
import org.leat.design.DeviceKind;
import org.leat.design.Place;
import org.leat.design.ProtectiveDevice;
import org.leat.design.ProtectiveDeviceBuilder;
import org.leat.design.TripCurve;
import org.leat.law.Answer;
import org.leat.plant.duties.FaultClearing;
import org.leat.quantity.Quantities;

/**
 * Devices against faults: gates of gG fuse-links by size, IEC 60269-1 (from memory), magnetic release on direct current, IEC 60898-2
 * (from memory) and makers' pages, and S = I √t / k, IEC 60364-4-43, k = 143 for copper in XLPE.
 */
class FaultClearingTest {

    private static FaultClearing fuse(double rating, double current) {
        return clearing(rating, current, DeviceKind.FUSE, null);
    }

    private static FaultClearing clearing(double rating, double current, DeviceKind kind, @Nullable TripCurve curve) {
        return FaultClearing.of(current, device(rating, kind), curve, CableInsulation.XLPE, null);
    }

    private static ProtectiveDevice device(double rating, DeviceKind kind) {
        return ProtectiveDeviceBuilder.builder()
                .name("device")
                .kind(kind)
                .from(Place.RECTIFIER)
                .to(Place.BATTERY)
                .ratedCurrent(Quantities.amps(rating))
                .build();
    }

    private static double squareMillimetres(FaultClearing clearing) {
        return ((Answer.Value) clearing.leastArea()).value() * 1e6;
    }

    @Test
    void a_large_fuse_takes_more_times_its_rating_than_a_small_one() {
        // 25 A: 110 A within 5 s, 4.4 times; 200 A: 1250 A, 6.25 times
        assertThat(fuse(25, 110).cleared()).isTrue();
        assertThat(fuse(25, 109).cleared()).isFalse();
        assertThat(fuse(200, 1250).cleared()).isTrue();
        assertThat(fuse(200, 1200).cleared()).isFalse();
    }

    @Test
    void below_the_gate_of_a_tenth_of_a_second_five_seconds_are_counted() {
        // 100 A: 1450 A for 0.1 s
        assertThat(squareMillimetres(fuse(100, 1449))).isCloseTo(1449 * Math.sqrt(5) / 143, within(1e-6));
        assertThat(squareMillimetres(fuse(100, 1450))).isCloseTo(1450 * Math.sqrt(0.1) / 143, within(1e-6));
    }

    @Test
    void above_it_the_same_heat_is_let_through() {
        assertThat(squareMillimetres(fuse(100, 5000))).isCloseTo(squareMillimetres(fuse(100, 1450)), within(1e-9));
    }

    @Test
    void a_rating_between_two_of_the_table_melts_no_later_than_the_larger() {
        assertThat(squareMillimetres(fuse(60, 900))).isEqualTo(squareMillimetres(fuse(63, 900)));
        assertThat(fuse(6, 65).cleared()).isTrue();
    }

    @Test
    void of_a_fuse_above_the_table_nobody_can_say() {
        assertThat(fuse(500, 50_000).leastArea()).isInstanceOf(Answer.Outside.class);
    }

    @Test
    void a_breaker_on_direct_current_trips_at_once_no_sooner_than_makers_say() {
        // makers: C from 7 to 14 times on direct current, IEC 60898-2: 15; on alternating current 10
        assertThat(clearing(50, 14 * 50, DeviceKind.BREAKER, TripCurve.C).cleared())
                .isFalse();
        assertThat(clearing(50, 15 * 50, DeviceKind.BREAKER, TripCurve.C).cleared())
                .isTrue();
        assertThat(clearing(50, 7 * 50, DeviceKind.BREAKER, TripCurve.B).cleared())
                .isTrue();
        assertThat(clearing(50, 5 * 50, DeviceKind.BREAKER, TripCurve.B).cleared())
                .isFalse();
    }

    /** The same proportion for Z and D; IEC 60947-2 leaves them to the maker. */
    @ParameterizedTest
    @CsvSource({"Z, 4.5", "B, 7", "C, 15", "D, 30"})
    void a_breaker_trips_from_the_multiple_of_its_own_curve_and_within_a_tenth_of_a_second(
            TripCurve curve, double multiple) {
        double gate = multiple * 40;
        FaultClearing at = clearing(40, gate, DeviceKind.BREAKER, curve);
        assertThat(at.cleared()).isTrue();
        assertThat(at.current()).isEqualTo(gate);
        assertThat(squareMillimetres(at)).isCloseTo(gate * Math.sqrt(0.1) / 143, within(1e-6));
        assertThat(clearing(40, gate - 1, DeviceKind.BREAKER, curve).cleared()).isFalse();
    }

    @Test
    void of_a_breaker_without_a_curve_nothing_is_sure() {
        assertThat(clearing(40, 40 * 100, DeviceKind.BREAKER, null).cleared()).isFalse();
    }

    /** k of IEC 60364-4-43, table 43A. */
    @ParameterizedTest
    @CsvSource({"COPPER, PVC, 115", "COPPER, XLPE, 143", "ALUMINIUM, PVC, 76", "ALUMINIUM, XLPE, 94", ", PVC, 115"})
    void an_area_goes_by_what_the_conductor_and_its_insulation_stand(
            @Nullable ConductorMaterial material, CableInsulation insulation, double k) {
        ProtectiveDevice fuse = device(100, DeviceKind.FUSE);
        FaultClearing clearing = FaultClearing.of(1450, fuse, null, insulation, material);
        assertThat(squareMillimetres(clearing)).isCloseTo(1450 * Math.sqrt(0.1) / k, within(1e-6));
    }
}
