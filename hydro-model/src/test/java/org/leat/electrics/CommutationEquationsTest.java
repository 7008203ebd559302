package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The two conditions of the commutating bridge against arcs put end to end, and their derivatives against differences. */
class CommutationEquationsTest {

    private static final double STEP = 1e-6;

    private static CommutationEquations at(double r, double x, double v, double rho, double mu, double i0) {
        CommutationEquations equations = new CommutationEquations(1.3, x, r, v, rho);
        equations.at(mu, i0);
        return equations;
    }

    @ParameterizedTest
    @CsvSource({
        "0.5, 0.8, 1.1, 0.3, 0.4, 0.2",
        "0.9, 0.3, 0.7, 0, 0.2, 0.35",
        "0.2, 1.4, 1.5, 1.7, 0.8, 0.1",
        "1.6, 0.6, 0.9, 0.6, 0.1, 0.3"
    })
    void derivatives_are_the_differences_of_the_values(double r, double x, double v, double rho, double mu, double i0) {
        CommutationEquations here = at(r, x, v, rho, mu, i0);
        CommutationEquations later = at(r, x, v, rho, mu + STEP, i0);
        CommutationEquations sooner = at(r, x, v, rho, mu - STEP, i0);
        CommutationEquations more = at(r, x, v, rho, mu, i0 + STEP);
        CommutationEquations less = at(r, x, v, rho, mu, i0 - STEP);
        assertThat(here.fMu()).isCloseTo((later.f() - sooner.f()) / (2 * STEP), within(1e-7));
        assertThat(here.gMu()).isCloseTo((later.g() - sooner.g()) / (2 * STEP), within(1e-7));
        assertThat(here.fI()).isCloseTo((more.f() - less.f()) / (2 * STEP), within(1e-7));
        assertThat(here.gI()).isCloseTo((more.g() - less.g()) / (2 * STEP), within(1e-7));
    }

    @ParameterizedTest
    @CsvSource({"0.5, 0.8, 1.1, 0.3, 0.4, 0.2", "0.2, 1.4, 1.5, 1.7, 0.8, 0.1", "1.6, 0.6, 0.9, 0.6, 0.1, 0.3"})
    void what_is_left_over_is_that_of_the_arcs_put_end_to_end(
            double r, double x, double v, double rho, double mu, double i0) {
        double sine = (v + rho * i0) / (3 * 1.3);
        double angle = Math.asin(sine);
        Arc u = Arc.upper(1.3, sine, Math.cos(angle), v, r + 2 * rho / 3, x, i0);
        Arc w = Arc.difference(1.3, sine, Math.cos(angle), r, x, -i0);
        Arc two = Arc.pair(1.3, Math.sin(angle + mu), Math.cos(angle + mu), v, r + rho / 2, x, u.at(mu));
        CommutationEquations here = at(r, x, v, rho, mu, i0);
        assertThat(here.f()).isCloseTo(w.at(mu) - u.at(mu), within(1e-12));
        assertThat(here.g()).isCloseTo(two.at(Math.PI / 3 - mu) - i0, within(1e-12));
    }

    /** Cramer: both steps together take the straight lines through the trial to nil. */
    @ParameterizedTest
    @CsvSource({"0.5, 0.8, 1.1, 0.3, 0.4, 0.2", "0.2, 1.4, 1.5, 1.7, 0.8, 0.1"})
    void newton_s_steps_take_both_straight_lines_to_nil(
            double r, double x, double v, double rho, double mu, double i0) {
        CommutationEquations here = at(r, x, v, rho, mu, i0);
        assertThat(here.f() + here.fMu() * here.stepMu() + here.fI() * here.stepI())
                .isCloseTo(0, within(1e-12));
        assertThat(here.g() + here.gMu() * here.stepMu() + here.gI() * here.stepI())
                .isCloseTo(0, within(1e-12));
    }
}
