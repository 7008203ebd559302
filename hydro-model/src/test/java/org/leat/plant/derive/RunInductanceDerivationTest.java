package org.leat.plant.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.plant.Plant;
import org.leat.plant.Plants;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.solve.ElectricSide;

/** The run from alternator to bridge joins the winding's inductance; figures by cable and wire: a cable handbook and a maker's table. */
class RunInductanceDerivationTest {

    private static final String CORES = "/cables[0]/installation/cores";

    private static Plant plant(String run) {
        return Plant.of(Plants.read(
                Plants.statedText("30 m", "12 mm", "180 mm", "") + (run.isEmpty() ? "" : "cables: [ " + run + " ]\n")));
    }

    private static String run(String length, String area, String rest) {
        return "{ from: alternator, to: rectifier, length: " + length + ", conductor: { area: " + area + " }" + rest
                + " }";
    }

    @ParameterizedTest
    @CsvSource({
        "1.5 mm², multicore, 0.350",
        "95 mm², multicore, 0.245",
        "1.5 mm², single-cores, 0.468",
        "95 mm², single-cores, 0.287",
        "1 mm², multicore, 0.37",
        "120 mm², multicore, 0.24"
    })
    void a_cable_adds_what_its_maker_tables(String area, String cores, double microhenryPerMetre) {
        AlternatorNumbers machine = plant(run("100 m", area, ", installation: { cores: " + cores + " }"))
                .numbers()
                .alternator();
        assertThat(machine.winding().runInductance() * 1e4)
                .isCloseTo(microhenryPerMetre, within(microhenryPerMetre * 0.05));
        assertThat(machine.phaseInductance())
                .isEqualTo(machine.winding().inductance() + machine.winding().runInductance());
    }

    @ParameterizedTest
    @CsvSource({"0.3 m, 1.02", "1 m, 1.26"})
    void open_wire_adds_about_one_microhenry_a_metre(String spacing, double microhenryPerMetre) {
        AlternatorNumbers machine = plant(
                        run("100 m", "16 mm²", ", installation: { cores: open-wire, wire-spacing: " + spacing + " }"))
                .numbers()
                .alternator();
        assertThat(machine.winding().runInductance() * 1e4).isCloseTo(microhenryPerMetre, within(0.005));
    }

    /** 300 m of open wire: 0.306 mH beside a winding of 0.2 mH a phase leave 0.2/0.506 of the torque, 60 % are gone. */
    @Test
    void three_hundred_metres_of_open_wire_take_sixty_per_cent_off_the_torque_that_holds_the_runner() {
        PlantNumbers far = plant(run("300 m", "16 mm²", ", installation: { cores: open-wire, wire-spacing: 0.3 m }"))
                .numbers();
        double without = greatestTorque(far.withAlternator(
                far.alternator().withWinding(far.alternator().winding().withRunInductance(0))));
        assertThat(greatestTorque(far) / without).isCloseTo(0.2 / 0.506, within(0.04));
    }

    /** With the leads' resistance left out: what a bus of no voltage brakes with at most. */
    private static double greatestTorque(PlantNumbers numbers) {
        ElectricSide side = new ElectricSide(numbers.withBusResistance(new PlantNumbers.BusResistance(0, 0, 0)));
        double greatest = 0;
        for (double speed = 1; speed < 600; speed *= 1.01) {
            greatest = Math.max(greatest, side.bus(0, 0).at(speed).torque());
        }
        return greatest;
    }

    @Test
    void a_long_run_whose_construction_is_not_told_is_assumed_with_its_range_and_a_short_one_is_not() {
        Plant far = plant(run("300 m", "16 mm²", ""));
        assertThat(far.assumptions())
                .filteredOn(a -> a.path().equals(CORES))
                .singleElement()
                .satisfies(a -> {
                    assertThat(a.low()).isEqualTo(a.value());
                    assertThat(a.value()).isCloseTo(300 * 0.2737e-6, within(1e-6));
                    assertThat(a.high()).isCloseTo(300 * 0.3501e-6, within(1e-6));
                });
        assertThat(plant(run("1.5 m", "16 mm²", "")).assumptions())
                .noneMatch(a -> a.path().equals(CORES));
        assertThat(Plant.of(far.design(), Map.of(CORES, 4e-4))
                        .numbers()
                        .alternator()
                        .winding()
                        .runInductance())
                .isEqualTo(4e-4);
    }

    @ParameterizedTest
    @CsvSource({"e, multicore", "d1, multicore", "b2, multicore", "f, single-cores"})
    void the_laying_method_tells_how_the_cores_lie(String method, String cores) {
        double told = inductance(", installation: { cores: " + cores + " }");
        assertThat(inductance(", installation: { method: " + method + " }")).isEqualTo(told);
    }

    @Test
    void wires_that_hang_in_the_open_are_taken_as_open_wire_and_a_design_without_a_run_adds_none() {
        assertThat(inductance(", overhead: true")).isGreaterThan(2 * inductance(""));
        assertThat(plant("").numbers().alternator().winding().runInductance()).isZero();
    }

    private static double inductance(String rest) {
        return plant(run("300 m", "25 mm²", rest))
                .numbers()
                .alternator()
                .winding()
                .runInductance();
    }
}
