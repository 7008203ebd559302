package org.leat.plant.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.plant.Plant;
import org.leat.plant.Plants;

/** What steel tube is taken to hold, by its mark, its wall and its steel. */
class SteelPipeRatingTest {

    private static final String RUN = "pipe: { kind: polyethylene, material: pe100, outside-diameter: 63 mm, sdr: 17 }";
    private static final String YIELD = "/penstock/sections[run]/pipe/yield-strength";
    private static final double BAR = 1e5;

    private static Plant plant(String pipe) {
        return Plant.of(Plants.read(Plants.LEAST.replace(RUN, "pipe: { kind: steel, " + pipe + " }")));
    }

    private static double rating(Plant plant) {
        return plant.numbers().penstock().sections().get(0).rating().or(Double.NaN) / BAR;
    }

    /** By hand: 2 · 97.5 MPa · 0.875 · 0.3 mm/60.3 mm is 8.49 bar, whatever is stamped on it. */
    @Test
    void a_wall_that_cannot_hold_what_is_marked_counts() {
        Plant thin = plant("outside-diameter: 60.3 mm, wall: 0.3 mm, pressure-rating: 50 bar");
        assertThat(rating(thin)).isCloseTo(8.489, within(0.001));
        assertThat(thin.assumptions()).anyMatch(a -> a.path().equals(YIELD));
    }

    @Test
    void a_mark_below_what_the_wall_could_hold_counts_and_nothing_of_the_steel_is_assumed() {
        Plant marked = plant("outside-diameter: 60.3 mm, wall: 3.2 mm, pressure-rating: 50 bar");
        assertThat(rating(marked)).isEqualTo(50);
        assertThat(marked.assumptions()).noneMatch(a -> a.path().equals(YIELD));
    }

    /** By hand: 2 · R_e/2 · 0.875 · 3.2/60.3, for 195 and 235 MPa 90.55 and 109.1 bar. */
    @Test
    void a_steel_that_is_told_counts_with_its_own_strength() {
        String tube = "outside-diameter: 60.3 mm, wall: 3.2 mm, ";
        assertThat(rating(plant(tube + "pressure-rating: 95 bar, yield-strength: 235 MPa")))
                .isEqualTo(95);
        assertThat(rating(plant(tube + "pressure-rating: 200 bar, yield-strength: 235 MPa")))
                .isCloseTo(109.12, within(0.01));
        assertThat(rating(plant(tube + "pressure-rating: 95 bar"))).isCloseTo(90.55, within(0.01));
        assertThat(rating(plant(tube + "yield-strength: 195 MPa"))).isCloseTo(90.55, within(0.01));
    }

    /**
     * Stresses that codes allow (all from memory): EN 13480-3 the lesser of R_e/1.5 and R_m/2.4, for S195T of 195 and 320 MPa 130
     * MPa, for S235 of 235 and 360 MPa 150 MPa; ASME B31.3 16 ksi for a yield strength of 30 ksi and 20 ksi for one of 35 ksi, of tube
     * of ASTM A53. All of the wall that a tolerance of 12.5 % leaves.
     */
    @ParameterizedTest
    @CsvSource({"195, 130", "235, 150", "206.8, 110.3", "241.3, 137.9"})
    void a_wall_is_never_stressed_beyond_what_any_code_allows(double yield, double allowed) {
        double bar = rating(plant("outside-diameter: 60.3 mm, wall: 3.2 mm, pressure-rating: 500 bar, yield-strength: "
                + yield + " MPa"));
        double stress = bar * BAR * 0.0603 / (2 * 0.875 * 0.0032) / 1e6;
        assertThat(stress).isCloseTo(yield / 2, within(1e-6)).isLessThan(allowed);
    }
}
