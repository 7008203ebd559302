package org.leat.plant.duties;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leat.plant.Plant;
import org.leat.plant.Plants;
import org.leat.plant.cases.Running;

/** The curves whose crossing is the operating point, against the operating point that the solver finds. */
class TorqueOverSpeedTest {

    private static final String TRACKING =
            "regulator: { kind: tracking, tracking-window: { from: 28 V, to: 90 V }, efficiency: 97 % }";

    private static TorqueOverSpeed.Point at(TorqueOverSpeed curves, double speed) {
        return curves.points().stream()
                .filter(p -> p.speed() == speed)
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", TRACKING})
    void both_torques_meet_where_the_plant_runs(String regulator) {
        Plant plant = Plant.of(Plants.stated("24 m", "9 mm", "160 mm", regulator));
        Running running = plant.solve().running().get(0);
        TorqueOverSpeed curves = TorqueOverSpeed.of(plant.numbers(), running);
        double torque = running.operatingPoint().torque();
        TorqueOverSpeed.Point meeting = at(curves, running.operatingPoint().speed());
        assertThat(meeting.runner()).isCloseTo(torque, within(1e-6 * torque));
        assertThat(meeting.alternator()).isCloseTo(torque, within(1e-3 * torque));
        double peak = curves.points().stream()
                .mapToDouble(TorqueOverSpeed.Point::alternator)
                .max()
                .orElseThrow();
        assertThat(peak).isLessThanOrEqualTo(running.operatingPoint().peak().torque() * 1.001);
    }

    @Test
    void the_runner_gives_most_at_standstill_less_ever_after_and_nothing_at_runaway() {
        Plant plant = Plant.of(Plants.stated("24 m", "9 mm", "160 mm", ""));
        TorqueOverSpeed curves =
                TorqueOverSpeed.of(plant.numbers(), plant.solve().running().get(0));
        List<TorqueOverSpeed.Point> points = curves.points();
        assertThat(points.get(0).speed()).isZero();
        for (int i = 1; i < points.size(); i++) {
            assertThat(points.get(i).speed()).isGreaterThan(points.get(i - 1).speed());
            assertThat(points.get(i).runner())
                    .isLessThanOrEqualTo(points.get(i - 1).runner());
        }
        TorqueOverSpeed.Point last = points.get(points.size() - 1);
        assertThat(last.speed()).isEqualTo(curves.runawaySpeed());
        assertThat(last.runner()).isCloseTo(0, within(1e-9 * points.get(0).runner()));
    }

    @Test
    void a_flow_that_fills_the_pipe_runs_it_as_ample_water_does_and_less_water_gives_less() {
        Plant plant = Plant.of(Plants.stated("24 m", "9 mm", "160 mm", ""));
        Running ample = plant.solve().running().get(0);
        double full = ample.water().fullPipeFlow();
        double atFull = plant.solve()
                .running(ample.nozzles(), 1.01 * full)
                .operatingPoint()
                .batteryPower();
        assertThat(atFull).isEqualTo(ample.operatingPoint().batteryPower());
        assertThat(plant.solve()
                        .running(ample.nozzles(), 0.8 * full)
                        .operatingPoint()
                        .batteryPower())
                .isLessThan(atFull);
    }
}
