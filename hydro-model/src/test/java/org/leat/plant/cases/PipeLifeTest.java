package org.leat.plant.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.plant.Plant;
import org.leat.plant.Plants;
import org.leat.plant.duties.RecurringStop;
import org.leat.plant.duties.SupportedSpan;
import org.leat.plant.duties.VentAir;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.SectionNumbers;

/** What air, warmth, supports and blows do to the pipe of a plant. */
class PipeLifeTest {

    private static final String RUN = "pipe: { kind: polyethylene, material: pe100, outside-diameter: 63 mm, sdr: 17 }";

    private static PlantNumbers plant(String wall, String pipe) {
        return Plant.of(
                        Plants.read(
                                Plants.LEAST
                                        .replace(
                                                "penstock:",
                                                "penstock:\n  rated-fittings: 10 bar\n  highest-wall-temperature: "
                                                        + wall)
                                        .replace(RUN, "pipe: " + pipe)
                                        .replace(
                                                "gross-head: 24 m",
                                                "gross-head: 24 m\n  altitude: 0 m\n  air-temperature: { lowest: 20 °C, highest: 30 °C }")))
                .numbers();
    }

    private static PlantNumbers polyethylene(String wall, int sdr) {
        return plant(wall, "{ kind: polyethylene, material: pe100, outside-diameter: 63 mm, sdr: " + sdr + " }");
    }

    private static PlantNumbers pvc(String wall, String rating) {
        return plant(wall, "{ kind: pvc-u, outside-diameter: 63 mm, pressure-rating: " + rating + " }");
    }

    /** Polyethylene 0.87 and 0.74 at 30 and 40 °C by EN 12201 (from memory), the lower of two; PVC-U by a seller's chart (read). */
    @ParameterizedTest
    @CsvSource({"20, 1, 1", "30, 0.87, 0.8", "40, 0.74, 0.575"})
    void joints_lose_strength_as_their_material_does(int celsius, double polyethylene, double pvc) {
        String wall = celsius + " °C";
        assertThat(polyethylene(wall, 17).penstock().fittingsRating().or(0)).isCloseTo(polyethylene * 1e6, within(1.0));
        assertThat(pvc(wall, "16 bar").penstock().fittingsRating().or(0)).isCloseTo(pvc * 1e6, within(1.0));
    }

    @Test
    void joints_hotter_than_any_table_hold_nobody_knows_what() {
        assertThat(polyethylene("58 °C", 17).penstock().fittingsRating()).isInstanceOf(Amount.OutsideRange.class);
    }

    /** 5 L/s of water at 10 kPa needs 9.3 mm of sharp opening, at sea level and 20 °C: isentropic flow, C 0.6. */
    @Test
    void a_vent_is_as_wide_as_the_air_that_must_enter_asks_for() {
        PlantNumbers plant = polyethylene("20 °C", 17);
        double bore = VentAir.leastBore(plant, 5e-3, 10e3).or(0);
        assertThat(bore).isCloseTo(9.3e-3, within(0.05e-3));
        assertThat(VentAir.drop(plant, 5e-3, bore).or(0)).isCloseTo(10e3, within(1.0));
        assertThat(VentAir.size(bore)).isEqualTo(Amount.of(0.010));
        assertThat(VentAir.drop(plant, 1, bore)).isInstanceOf(Amount.OutsideRange.class);
    }

    /** 4 inch at a slope of 10 %: 24.8 L/s by the practice of air valve makers; a bore of 101.6 mm. */
    @Test
    void a_broken_pipe_runs_out_by_its_slope() {
        PlantNumbers plant = plant("20 °C", "{ kind: other-pipe, bore: 101.6 mm, wall: 5 mm }");
        SectionNumbers run =
                plant.penstock().last().withLength(90).withFromElevation(9).withToElevation(0);
        assertThat(VentAir.burstFlow(plant.withPenstock(plant.penstock().withSections(java.util.List.of(run)))))
                .isCloseTo(24.8e-3, within(0.05e-3));
    }

    /** Two makers of PE100 pipe, 63 mm: 1.2 m of SDR 17, 1.3 and 1.4 m of SDR 11 at 20 °C. */
    @ParameterizedTest
    @CsvSource({"17, 1.2", "11, 1.3", "9, 1.3"})
    void supports_stand_as_close_as_the_more_careful_maker_wants_them(int sdr, double span) {
        SectionNumbers cool = polyethylene("20 °C", sdr).penstock().last();
        SectionNumbers hot = polyethylene("50 °C", sdr).penstock().last();
        assertThat(SupportedSpan.greatest(cool).or(0)).isCloseTo(span, within(1e-9));
        assertThat(SupportedSpan.greatest(hot).or(9) / span)
                .isCloseTo(
                        Math.cbrt(hot.longTermModulus().or(0)
                                / cool.longTermModulus().or(1)),
                        within(1e-9))
                .isBetween(0.6, 0.9);
    }

    @Test
    void thin_walls_and_pipe_of_no_table_have_no_span() {
        assertThat(SupportedSpan.greatest(polyethylene("20 °C", 26).penstock().last()))
                .isInstanceOf(Amount.OutsideRange.class);
        assertThat(SupportedSpan.greatest(plant("20 °C", "{ kind: steel, outside-diameter: 60 mm, wall: 3 mm }")
                        .penstock()
                        .last()))
                .isNull();
    }

    /** PVC schedule 40 of nominal 50 mm: 1.8 m at 27 °C; a wall of 3 mm where schedule 40 has 3.91 mm. */
    @Test
    void thinner_pvc_u_than_schedule_forty_spans_less() {
        SectionNumbers run = pvc("27 °C", "10 bar").penstock().last();
        assertThat(run.leastWall()).isCloseTo(3e-3, within(1e-9));
        assertThat(SupportedSpan.greatest(run).or(0)).isCloseTo(1.8 * Math.cbrt(3 / 3.91), within(1e-3));
    }

    /** Vinson: 5.05e21 S^-4.906 cycles, S in psi: at 10 MPa (1450 psi) 1.55 million. */
    @Test
    void blows_are_counted_by_the_tension_of_the_wall() {
        SectionNumbers run = pvc("20 °C", "10 bar").penstock().last();
        double pressure = 10e6 * 2 / (63 / 3.0 - 1);
        double cycles = 5.05e21 * Math.pow(10e6 / 6894.757, -4.906);
        assertThat(RecurringStop.years(run, pressure, 1000).or(0)).isCloseTo(cycles / 1000, within(cycles * 1e-5));
        assertThat(RecurringStop.years(run, 50e5 * 10, 1)).isInstanceOf(Amount.OutsideRange.class);
    }
}
