package org.leat.plant.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.leat.hydraulics.VapourHead;
import org.leat.lazy.Once;
import org.leat.plant.Plant;
import org.leat.plant.Plants;
import org.leat.plant.cases.Closing.Cause;
import org.leat.plant.cases.Closing.Model;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.plant.numbers.WaterNumbers;
import org.leat.plant.solve.Rejoining;

/** A plugged nozzle, the water column that parts, and its blow when it rejoins. */
class RejoiningStopTest {

    private static final double GRAVITY = 9.80665;
    private static final double BAR = 1e5;

    private static Plant plant(String pipe, int head, int length, String nozzles) {
        return Plant.of(Plants.read(Plants.LEAST
                .replace("24 m", head + " m")
                .replace("{ kind: polyethylene, material: pe100, outside-diameter: 63 mm, sdr: 17 }", pipe)
                .replace("open: [10 mm]", "open: [" + nozzles + "]")
                .replace("length: 90 m", "length: " + length + " m")));
    }

    private static String unplasticised(int rating) {
        return "{ kind: pvc-u, outside-diameter: 63 mm, pressure-rating: " + rating + " bar }";
    }

    private static Closing plugged(Plant plant) {
        return plant.solve().closing().stream()
                .filter(closing -> closing.cause() == Cause.NOZZLE_PLUGGED)
                .findFirst()
                .orElseThrow();
    }

    /** With the wave speed of the mean wall. The first blow of 14 bar is held by a pipe for 16 bar, the second of 17 bar is not. */
    @Test
    void the_second_blow_breaks_a_pipe_for_16_bar_that_the_first_does_not() {
        breaksOnlyWhenItRejoins(plant(unplasticised(16), 107, 200, "6.5 mm"), 14.1, 16, 17.4);
    }

    /** With the wave speed of the mean wall. The first blow of 8.6 bar is held by a pipe for 10 bar, the second of 11 bar is not. */
    @Test
    void the_second_blow_breaks_a_pipe_for_10_bar_that_the_first_does_not() {
        breaksOnlyWhenItRejoins(plant(unplasticised(10), 61, 120, "7.5 mm"), 8.6, 10, 11);
    }

    private static void breaksOnlyWhenItRejoins(Plant plant, double first, double rating, double second) {
        Closing plugged = plugged(plant);
        StopPeak peak = plugged.peak(0);
        assertThat(peak.before().or(0) / BAR).isCloseTo(first, within(0.1)).isLessThan(rating);
        assertThat(peak.certain() / BAR).as("on every grid").isGreaterThan(rating);
        assertThat(second).isBetween(peak.certain() / BAR - 0.1, peak.enough().getAsDouble() / BAR + 0.1);
        assertThat(peak.against(rating * BAR)).isEqualTo(Amount.of(peak.enough().getAsDouble()));
        assertThat(plugged.model(0)).isEqualTo(Model.REJOINING);
        double largest = 0;
        for (int reaches : new int[] {32, 48, 64}) {
            double[] other = vapourCavities(plant, reaches);
            assertThat(other[0] / BAR).as("first blow, computed otherwise").isCloseTo(first, within(0.1));
            largest = Math.max(largest, other[1] / BAR);
        }
        assertThat(largest)
                .as("all blows, computed otherwise")
                .isBetween(rating, 1.15 * peak.enough().getAsDouble() / BAR);
    }

    /**
     * The same by other means: waves on a collocated grid with vapour cavities (no gas) at its nodes, volumes by the flows of the
     * new time alone.
     *
     * @return highest pressure at the nozzle within the first return time, and in twenty periods, Pa
     */
    private static double[] vapourCavities(Plant plant, int reaches) {
        SectionNumbers pipe = plant.numbers().penstock().last();
        Running running = plant.solve().running().get(0);
        double density =
                WaterNumbers.at(plant.numbers().site().lowestWaterTemperature()).density();
        double boiling = VapourHead.of(
                WaterNumbers.at(plant.numbers().site().highestWaterTemperature())
                        .vapourPressure(),
                plant.numbers().site().atmosphericPressure(),
                density);
        double tank = plant.numbers().site().grossHead();
        double flow = running.water().flow();
        double step = pipe.length() / reaches;
        double impedance = pipe.waveSpeed().or(0) / (GRAVITY * pipe.area());
        double lost = (running.water().sections().get(0).frictionFactor() * pipe.length() / pipe.bore()
                        + pipe.lossCoefficient())
                / (2 * GRAVITY * pipe.area() * pipe.area())
                / reaches;
        double[] head = new double[reaches + 1];
        double[] above = new double[reaches + 1];
        double[] below = new double[reaches + 1];
        double[] cavity = new double[reaches + 1];
        Arrays.setAll(head, k -> tank - k * lost * flow * flow);
        Arrays.fill(above, flow);
        Arrays.fill(below, flow);
        double time = step / pipe.waveSpeed().or(0);
        double first = 0;
        double highest = 0;
        for (int n = 1; n <= 20 * 4 * reaches; n++) {
            double[] oldHead = head.clone();
            double[] oldAbove = above.clone();
            double[] oldBelow = below.clone();
            for (int k = 0; k <= reaches; k++) {
                double from = k == 0 ? 0 : oldBelow[k - 1];
                double to = k == reaches ? 0 : oldAbove[k + 1];
                double plus = k == 0 ? 0 : oldHead[k - 1] + impedance * from - lost * from * Math.abs(from);
                double minus = k == reaches ? 0 : oldHead[k + 1] - impedance * to + lost * to * Math.abs(to);
                double boils =
                        pipe.fromElevation() + k * (pipe.toElevation() - pipe.fromElevation()) / reaches + boiling;
                double whole = k == 0 ? tank : k == reaches ? plus : (plus + minus) / 2;
                double h = Math.max(whole, boils);
                if (k > 0 && (cavity[k] > 0 || whole < boils)) {
                    double in = (plus - boils) / impedance;
                    double out = k == reaches ? 0 : (boils - minus) / impedance;
                    cavity[k] = Math.max(0, cavity[k] + time * (out - in));
                    h = cavity[k] > 0 ? boils : Math.max(whole, boils);
                }
                head[k] = h;
                above[k] = k == 0 ? (h - minus) / impedance : (plus - h) / impedance;
                below[k] = k == reaches ? 0 : (h - minus) / impedance;
            }
            highest = Math.max(highest, head[reaches]);
            first = n <= 2 * reaches ? highest : first;
        }
        return new double[] {first * density * GRAVITY, highest * density * GRAVITY};
    }

    /** A plug in one of two stops half the water: the blow is no more than half as hard. */
    @Test
    void more_and_smaller_nozzles_are_a_way_out() {
        Plant two = plant(unplasticised(16), 107, 200, "4.5 mm, 4.5 mm");
        StopPeak half = plugged(two).peak(0);
        StopPeak whole = plugged(plant(unplasticised(16), 107, 200, "6.5 mm")).peak(0);
        double standing = two.solve().shut().sections().get(0);
        assertThat(half.enough().getAsDouble() - standing).isLessThan(0.55 * (whole.certain() - standing));
        assertThat(half.against(16 * BAR)).isEqualTo(Amount.of(half.enough().getAsDouble()));
    }

    @Test
    void in_polyethylene_later_blows_neither_pass_nor_fail() {
        StopPeak peak = plugged(plant(
                        "{ kind: polyethylene, material: pe100, outside-diameter: 63 mm, sdr: 17 }", 32, 108, "11 mm"))
                .peak(0);
        assertThat(peak.enough().getAsDouble()).isGreaterThan(1.2 * peak.certain());
        assertThat(peak.against((peak.enough().getAsDouble() + peak.certain()) / 2))
                .isEqualTo(StopPeak.DAMPED);
        assertThat(peak.against(peak.enough().getAsDouble()))
                .isEqualTo(Amount.of(peak.enough().getAsDouble()));
        assertThat(peak.against(peak.before().or(0) - 1))
                .as("the first blow is enough")
                .isEqualTo(peak.before());
    }

    private static final Rejoining.Peak GROWN =
            new Rejoining.Peak(9, OptionalDouble.of(12), OptionalDouble.of(15), 11.5, 13);

    @Test
    void between_what_every_grid_reaches_and_what_none_exceeds_nobody_can_say() {
        Rejoining blows = new Rejoining(List.of(GROWN), false, OptionalDouble.empty());
        StopPeak peak = StopPeak.parted(Amount.of(10), new Once<>(() -> blows), 0, true, false);
        assertThat(peak.against(15)).isEqualTo(Amount.of(15));
        assertThat(peak.against(14)).isEqualTo(StopPeak.UNSETTLED);
        assertThat(peak.against(12.9)).isEqualTo(Amount.of(15));
        StopPeak damped = StopPeak.parted(Amount.of(10), new Once<>(() -> blows), 0, true, true);
        assertThat(damped.against(12.9)).isEqualTo(StopPeak.DAMPED);
        assertThat(damped.against(11.4)).isEqualTo(Amount.of(11.5));
        assertThat(damped.against(9.9)).isEqualTo(Amount.of(10));
    }

    @Test
    void where_later_blows_are_damped_a_first_blow_that_is_too_much_asks_for_no_others() {
        Once<Rejoining> asked = new Once<>(() -> {
            throw new AssertionError("followed");
        });
        StopPeak damped = StopPeak.parted(Amount.of(10), asked, 0, true, true);
        assertThat(damped.against(9.9)).isEqualTo(Amount.of(10));
        assertThat(damped.rejoined(10)).isFalse();
        assertThatThrownBy(() -> damped.against(10)).hasMessage("followed");
        StopPeak undamped = StopPeak.parted(Amount.of(10), asked, 0, true, false);
        assertThatThrownBy(() -> undamped.against(9.9)).hasMessage("followed");
    }

    @Test
    void blows_that_still_grow_earn_a_pass_by_the_bound_alone() {
        Rejoining growing = new Rejoining(List.of(GROWN), true, OptionalDouble.of(20));
        StopPeak peak = StopPeak.parted(Amount.of(10), new Once<>(() -> growing), 0, true, false);
        assertThat(peak.against(20)).isEqualTo(Amount.of(20));
        assertThat(peak.against(19)).isEqualTo(StopPeak.UNSETTLED);
        Rejoining without = new Rejoining(growing.sections(), true, OptionalDouble.empty());
        StopPeak boundless = StopPeak.parted(Amount.of(10), new Once<>(() -> without), 0, true, false);
        assertThat(boundless.against(1e9)).isEqualTo(StopPeak.UNSETTLED);
        assertThat(boundless.highest()).isEqualTo(StopPeak.UNSETTLED);
        assertThat(boundless.against(12)).isEqualTo(Amount.of(13));
    }

    @Test
    void a_line_that_the_model_cannot_begin_with_is_judged_by_the_first_blow_only_where_that_is_too_much() {
        Rejoining none = new Rejoining(List.of(), true, OptionalDouble.empty());
        StopPeak peak = StopPeak.parted(Amount.of(10), new Once<>(() -> none), 0, true, false);
        assertThat(peak.against(9)).isEqualTo(Amount.of(10));
        assertThat(peak.against(11)).isEqualTo(StopPeak.UNSETTLED);
    }
}
