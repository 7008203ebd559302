package org.leat.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * One run of the gas cavity model on one grid, against the scheme of its Javadoc written out plainly: node by node, every cavity's
 * head and every nozzle's flow found by halving, no quadratic solved and no array of what comes again.
 */
class GasCavitiesTest {

    private static final double BOILING = -10.13;
    private static final double BORE = 0.08;

    /** A run that is asked for. */
    record Run(
            String name, SurgeLine line, double flow, NozzleOpening opening, int wished, double duration, int least) {
        @Override
        public String toString() {
            return name;
        }

        GridBlows found() {
            return new GasCavities(line, flow, opening, BOILING, wished).run(duration, least);
        }
    }

    static Stream<Run> runs() {
        SurgeLine level = new SurgeLine(List.of(new SurgeSection(300, BORE, 1200, 0.02, 0, 0)), 50);
        SurgeLine steep = new SurgeLine(List.of(new SurgeSection(300, BORE, 1000, 0.02, 59, 0.7)), 60);
        SurgeLine low = new SurgeLine(List.of(new SurgeSection(300, BORE, 1000, 0.02, 0, -0.4)), 10);
        SurgeLine two = new SurgeLine(
                List.of(
                        new SurgeSection(180, 0.09, 320, 0.03, 20, 24),
                        new SurgeSection(140, 0.07, 500, 0.02, 24, 3),
                        new SurgeSection(90, 0.06, 500, 0.02, 3, -0.6)),
                40);
        SurgeLine pieces = new SurgeLine(
                List.of(
                        new SurgeSection(0.05, 0.04, 1200, 0.02, 29.2, 29),
                        new SurgeSection(300, BORE, 300, 0.02, 29, 0.3),
                        new SurgeSection(0.3, 0.05, 1200, 0.02, 0.3, 0.1)),
                30);
        SurgeLine raised = new SurgeLine(List.of(new SurgeSection(300, BORE, 1000, 0.02, 20, 9)), 40);
        SurgeLine lossy = new SurgeLine(List.of(new SurgeSection(300, BORE, 1000, 0.08, 20, 9)), 40);
        return Stream.of(
                new Run("ends above the nozzles, stopped", raised, 0.004, NozzleOpening.step(0), 8, 9, 100),
                new Run("much friction", lossy, 0.003, NozzleOpening.step(0), 8, 60, 100),
                new Run("waves as small as the band", lossy, 0.002, NozzleOpening.step(0.85), 9, 30, 100),
                new Run("waves smaller than the band", lossy, 0.001, NozzleOpening.step(0.9), 10, 30, 100),
                new Run("little closed", raised, 0.002, NozzleOpening.step(0.9), 9, 90, 100),
                new Run("died down at once", steep, 0.003, NozzleOpening.step(0), 12, 60, 1),
                new Run("shut while air is in", low, 0.004, shutAt(0.95), 32, 7, 100),
                new Run("shut while air goes out", low, 0.004, shutAt(1.35), 32, 7, 100),
                new Run("air goes in and out", low, 0.004, NozzleOpening.step(0.08), 32, 12, 100),
                new Run("level, stopped", level, 0.0035, NozzleOpening.step(0), 8, 4, 100),
                new Run("level, odd grid", level, 0.0035, NozzleOpening.step(0), 7, 4, 100),
                new Run("level, whole steps", level, 0.0035, NozzleOpening.step(0), 8, 10 * 0.25 / 8, 100),
                new Run("level, still growing", level, 0.0035, NozzleOpening.step(0), 8, 1.6, 100),
                new Run("level, until died down", level, 0.002, NozzleOpening.step(0), 8, 60, 3),
                new Run("steep, stopped", steep, 0.003, NozzleOpening.step(0), 12, 7, 100),
                new Run("steep, half stopped", steep, 0.003, NozzleOpening.step(0.5), 9, 5, 100),
                new Run("steep, half stopped, died down", steep, 0.003, NozzleOpening.step(0.5), 9, 60, 2),
                new Run("low, air drawn in", low, 0.003, NozzleOpening.step(0.1), 8, 7, 100),
                new Run("low, air drawn in and shut", low, 0.003, shutLater(), 8, 7, 100),
                new Run("two bores, shut slowly", two, 0.004, NozzleOpening.linear(1, 0, 1.5), 10, 12, 100),
                new Run("two bores, nearly shut", two, 0.004, NozzleOpening.linear(1, 0.1, 0.7), 11, 12, 100),
                new Run("two bores, opened", two, 0.002, NozzleOpening.linear(0.5, 0.8, 0.7), 11, 12, 100),
                new Run("pieces too short", pieces, 0.003, NozzleOpening.step(0), 10, 12, 100));
    }

    private static NozzleOpening shutLater() {
        return shutAt(1.3);
    }

    private static NozzleOpening shutAt(double time) {
        return NozzleOpening.table(new double[] {0, 0.01, time - 0.1, time}, new double[] {1, 0.1, 0.1, 0});
    }

    /** The root of a function that rises through nil between two points. */
    private static double halved(DoubleUnaryOperator rising, double from, double to) {
        double low = from;
        double high = to;
        for (int n = 0; n < 120; n++) {
            double middle = 0.5 * (low + high);
            if (rising.applyAsDouble(middle) < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    /** The scheme, written out. */
    private static final class Plain {

        final Run run;
        final ReachGrid grid;
        final List<SurgeSection> sections;
        final int last;
        final double dt;
        final double[] b;
        final double[] r;
        final double[] z;
        final double[] gas;
        final int[] joint;
        final double[] h;
        final double[] qu;
        final double[] qd;
        final double[] v;
        final double working;
        final double rest;
        double air;
        double[] top;
        boolean wasAbove = true;
        double parted = Double.NaN;
        double rejoined = Double.NaN;
        final List<GridBlows.Blow> blows = new ArrayList<>();

        Plain(Run run) {
            this.run = run;
            grid = new ReachGrid(run.line().sections(), run.wished());
            sections = grid.pieces.lasting;
            dt = grid.timeStep;
            joint = new int[sections.size() + 1];
            for (int i = 0; i < sections.size(); i++) {
                joint[i + 1] = joint[i] + grid.first[i + 1] - grid.first[i] - 1;
            }
            last = joint[sections.size()];
            b = new double[last];
            r = new double[last];
            z = new double[last + 1];
            gas = new double[last + 1];
            for (int i = 0; i < sections.size(); i++) {
                SurgeSection s = sections.get(i);
                double reaches = joint[i + 1] - joint[i];
                double dx = s.length() / reaches;
                for (int k = joint[i]; k < joint[i + 1]; k++) {
                    b[k] = dx / dt / (9.80665 * s.area());
                    r[k] = s.frictionFactor() * dx / (2 * 9.80665 * s.bore() * s.area() * s.area());
                    z[k] = s.fromElevation() + (k - joint[i]) / reaches * (s.toElevation() - s.fromElevation());
                    // a reach's gas is half in the node at each of its ends
                    gas[k] += 0.5 * 1e-7 * s.area() * dx * -BOILING;
                    gas[k + 1] += 0.5 * 1e-7 * s.area() * dx * -BOILING;
                }
                z[joint[i + 1]] = s.toElevation();
            }
            h = new double[last + 1];
            qu = new double[last + 1];
            qd = new double[last + 1];
            v = new double[last + 1];
            double head = run.line().tankHead();
            for (int k = 0; k <= last; k++) {
                h[k] = head;
                qu[k] = run.flow();
                qd[k] = run.flow();
                v[k] = gas[k] / (head - z[k] - BOILING);
                head -= k < last ? r[k] * run.flow() * run.flow() : 0;
            }
            working = h[last];
            top = h.clone();
            // at rest the nozzles pass what the pipe brings: H + (H_tank − H0) τ² H/H0 = H_tank
            double tau = run.opening().at(run.opening().lastChange() + 1e-6);
            double tank = run.line().tankHead();
            rest = halved(x -> x + (tank - working) * tau * tau * x / working - tank, 0, tank);
        }

        void cavity(int k, double cp, double cm) {
            // Qd − Qu as it follows from the head, and the gas it leaves
            double end = k == last ? 0 : 1;
            double up = 1 / b[k - 1];
            double down = end == 0 ? 0 : 1 / b[k];
            double before = v[k];
            double above = halved(
                    x -> {
                        double head = x + z[k] + BOILING;
                        double out = end * (head - cm) * down;
                        double in = (cp - head) * up;
                        return x * (before + 2 * dt * (out - in)) - gas[k];
                    },
                    Math.max(0, bottom(before, cp, cm, up, down, k)),
                    2000);
            h[k] = above + z[k] + BOILING;
            qu[k] = (cp - h[k]) * up;
            qd[k] = end * (h[k] - cm) * down;
            v[k] = gas[k] / above;
        }

        /** Below this head no gas would be left at all. */
        double bottom(double before, double cp, double cm, double up, double down, int k) {
            double liquid = (cp * up + cm * down) / (up + down) - z[k] - BOILING;
            return liquid - before / (2 * dt * (up + down));
        }

        double cp(int k) {
            return h[k - 1] + b[k - 1] * qd[k - 1] - r[k - 1] * qd[k - 1] * Math.abs(qd[k - 1]);
        }

        double cm(int k) {
            return h[k + 1] - b[k] * qu[k + 1] + r[k] * qu[k + 1] * Math.abs(qu[k + 1]);
        }

        void nozzles(double time) {
            double cp = cp(last);
            double tau = run.opening().at(time);
            double impedance = b[last - 1];
            if (tau == 0) {
                v[last] += air;
                air = 0;
                cavity(last, cp, 0);
            } else if (cp < 0 || air > 0) {
                h[last] = 0;
                qu[last] = cp / impedance;
                qd[last] = qu[last];
                air = Math.max(0, air - 2 * dt * qu[last]);
            } else {
                double q = halved(
                        x -> impedance * x + working * Math.pow(x / (tau * run.flow()), 2) - cp, 0, 1 + cp / impedance);
                h[last] = cp - impedance * q;
                qu[last] = q;
                qd[last] = q;
            }
        }

        GridBlows go() {
            boolean done = false;
            for (int step = 1; step <= Math.ceil(run.duration() / dt) && !done; step++) {
                for (int k = step % 2; k <= last; k += 2) {
                    if (k == 0) {
                        qd[0] = (run.line().tankHead() - cm(0)) / b[0];
                        qu[0] = qd[0];
                    } else if (k < last) {
                        cavity(k, cp(k), cm(k));
                    } else {
                        nozzles(step * dt);
                    }
                    top[k] = Math.max(top[k], h[k]);
                }
                done = step % 2 == last % 2 && blowEnds(step * dt) && died();
            }
            note();
            return new GridBlows(last, grid.waveSpeedChange, parted, rejoined, blows, done || grownEarly());
        }

        boolean blowEnds(double time) {
            double absolute = h[last] - z[last] - BOILING;
            double atRest = rest - z[last] - BOILING;
            if (Double.isNaN(parted)) {
                parted = absolute < 0.02 * atRest ? time : parted;
            } else if (Double.isNaN(rejoined)) {
                rejoined = absolute > 0.1 * atRest ? time : rejoined;
            }
            double off = (h[last] - rest) / atRest;
            boolean ends = wasAbove && off < -0.05;
            wasAbove = wasAbove ? !ends : off > 0.05;
            if (ends) {
                note();
            }
            return ends;
        }

        void note() {
            double rise = 0;
            for (double x : top) {
                rise = Math.max(rise, x - rest);
            }
            double[] peaks = new double[grid.pieces.host.length];
            for (int i = 0; i < peaks.length; i++) {
                int host = grid.pieces.host[i];
                int side = grid.pieces.side[i];
                SurgeSection own = run.line().sections().get(i);
                peaks[i] = Double.NEGATIVE_INFINITY;
                for (int k = joint[host]; k <= joint[host + 1] && side == 0; k++) {
                    peaks[i] = Math.max(peaks[i], top[k] - z[k]);
                }
                if (side != 0) {
                    double lowest = Math.min(own.fromElevation(), own.toElevation());
                    peaks[i] = top[side < 0 ? joint[host] : joint[host + 1]] - lowest;
                }
            }
            blows.add(new GridBlows.Blow(top[last] - z[last], rise, peaks));
            top = h.clone();
        }

        double rise(int from, int to) {
            return blows.subList(from, to).stream()
                    .mapToDouble(GridBlows.Blow::rise)
                    .max()
                    .orElse(0);
        }

        boolean died() {
            int n = blows.size();
            return n >= 2 * run.least() && rise(n - run.least(), n) <= 0.7 * rise(0, n - run.least());
        }

        boolean grownEarly() {
            int half = (blows.size() + 1) / 2;
            return rise(half, blows.size()) <= 1.01 * rise(0, half);
        }
    }

    private static void same(double found, double expected) {
        if (Double.isNaN(expected)) {
            assertThat(found).isNaN();
        } else {
            assertThat(found).isCloseTo(expected, within(1e-6));
        }
    }

    @ParameterizedTest
    @MethodSource("runs")
    void a_run_comes_to_what_the_scheme_written_out_comes_to(Run run) {
        GridBlows expected = new Plain(run).go();
        GridBlows found = run.found();
        assertThat(found.blows()).hasSameSizeAs(expected.blows()).isNotEmpty();
        for (int n = 0; n < expected.blows().size(); n++) {
            GridBlows.Blow blow = expected.blows().get(n);
            same(found.blows().get(n).atNozzles(), blow.atNozzles());
            same(found.blows().get(n).rise(), blow.rise());
            for (int i = 0; i < blow.sections().length; i++) {
                same(found.blows().get(n).sections()[i], blow.sections()[i]);
            }
        }
        same(found.parted(), expected.parted());
        same(found.rejoined(), expected.rejoined());
        assertThat(found.reaches()).isEqualTo(expected.reaches());
        assertThat(found.doneGrowing()).isEqualTo(expected.doneGrowing());
    }

    @Test
    void runs_part_and_rejoin_die_down_and_go_on_growing() {
        List<GridBlows> all = runs().map(Run::found).toList();
        assertThat(all).anySatisfy(g -> assertThat(g.rejoined()).isGreaterThan(g.parted()));
        assertThat(all).anySatisfy(g -> assertThat(g.parted()).isNaN());
        assertThat(all).anySatisfy(g -> assertThat(g.doneGrowing()).isFalse());
        assertThat(all).anySatisfy(g -> assertThat(g.doneGrowing()).isTrue());
    }

    /** Shorter than one step there is the state before the stop and nothing else. */
    @Test
    void a_run_of_no_time_has_one_blow_that_is_the_steady_state() {
        SurgeLine line = new SurgeLine(List.of(new SurgeSection(300, BORE, 1000, 0.02, 50, 0.7)), 60);
        GridBlows none = new GasCavities(line, 0.003, NozzleOpening.step(0), BOILING, 8).run(0, 3);
        assertThat(none.blows()).hasSize(1);
        assertThat(none.blows().get(0).atNozzles()).isCloseTo(line.workingHead(0.003) - 0.7, within(1e-9));
        assertThat(none.blows().get(0).rise()).isZero();
        assertThat(none.doneGrowing()).isTrue();
    }

    @Test
    void water_that_boils_before_the_stop_is_refused_with_the_node() {
        SurgeLine line = new SurgeLine(List.of(new SurgeSection(50, BORE, 1000, 0, 60.5, 0)), 50);
        assertThatThrownBy(() -> new GasCavities(line, 0.001, NozzleOpening.step(0), -10.5, 8))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("at node 0");
        SurgeLine summit = new SurgeLine(
                List.of(new SurgeSection(40, BORE, 1000, 0, 49, 61), new SurgeSection(40, BORE, 1000, 0, 61, 0)), 50);
        assertThatThrownBy(() -> new GasCavities(summit, 0.001, NozzleOpening.step(0), BOILING, 8))
                .hasMessageContaining("at node 4");
    }
}
