package org.leat.plant.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import org.leat.arbitraries.Designs;
import org.leat.design.Design;
import org.leat.plant.Plant;
import org.leat.plant.Plants;
import org.leat.plant.cases.Closing.Cause;
import org.leat.plant.cases.Closing.Model;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.plant.solved.Surge;
import org.leat.plant.solved.WaterSide;

/** The water stopped, by the closed form and by the method of characteristics. */
class ClosingTest {

    private static final double GRAVITY = 9.80665;

    @Provide
    Arbitrary<Design> plants() {
        return Designs.plausible();
    }

    private static Plant plant(String intake, String nozzles, String length) {
        return plant("24 m", intake, nozzles, length);
    }

    private static Plant plant(String head, String intake, String nozzles, String length) {
        return Plant.of(Plants.read(Plants.LEAST
                .replace("24 m", head)
                .replace("penstock:", intake + "penstock:")
                .replace("open: [10 mm]", nozzles)
                .replace("length: 90 m", length)));
    }

    private static Closing of(Plant plant, Cause cause) {
        Map<Cause, Closing> cases =
                plant.solve().closing().stream().collect(Collectors.toMap(Closing::cause, c -> c, (a, b) -> a));
        return cases.get(cause);
    }

    /** Joukowsky 1898 at the lower end, where the grid is exact but for friction. */
    @Test
    void a_plugged_nozzle_makes_the_joukowsky_rise_at_the_lower_end() {
        Plant plant = plant("", "open: [10 mm]", "length: 90 m");
        Closing plugged = of(plant, Cause.NOZZLE_PLUGGED);
        SectionNumbers run = plant.numbers().penstock().last();
        double velocity = plugged.velocityChange();
        double rise = run.waveSpeed().or(0) * velocity / GRAVITY;
        double highest = plugged.surge().nodes().get(1).highest() / (999.7 * GRAVITY);
        WaterSide water = plant.solve().running().get(0).water();
        double friction = 24 - water.netHead();
        assertThat(highest).isBetween(24 - friction + rise, 24 + rise + 0.01 * rise);
        assertThat(plugged.sections().get(0).or(0))
                .isGreaterThanOrEqualTo(plugged.closedForm().get(0).or(0));
    }

    private static Plant behind(String inlet) {
        return Plant.of(Plants.read(
                Plants.LEAST.replace("open: [10 mm]", "open: [5 mm, 5 mm]").replace("sections:", "sections:" + inlet)));
    }

    private static String steel(String length) {
        return "\n    - { name: inlet, length: " + length
                + ", pipe: { kind: steel, outside-diameter: 33.7 mm, wall: 3.2 mm } }";
    }

    /** A metre of narrow steel ran its own Joukowsky rise, 13 bar out of 5, down the whole line. */
    @Test
    void a_short_narrow_piece_at_the_inlet_does_not_set_the_blow_of_the_line() {
        double alone = of(behind(""), Cause.NOZZLE_PLUGGED).sections().get(0).or(0);
        for (String length : List.of("5 cm", "1 m")) {
            Plant plant = behind(steel(length));
            Closing plugged = of(plant, Cause.NOZZLE_PLUGGED);
            assertThat(plugged.sections().get(1).or(0)).isCloseTo(alone, within(0.05 * alone));
            assertThat(plugged.sections().get(0).or(0)).isLessThan(alone);
            double running =
                    plant.solve().running().get(0).water().nodes().get(1).pressure();
            assertThat(plugged.surge().nodes().get(1).lowest()).isLessThanOrEqualTo(running);
        }
    }

    /** B = a/(g A): of the wave of the lower section 2 B'/(B + B') goes on into the upper one (Wylie and Streeter, ch. 3). */
    @Test
    void each_section_has_its_own_rise_and_the_joint_lets_through_what_it_does() {
        Closing plugged = of(behind(steel("30 m")), Cause.NOZZLE_PLUGGED);
        List<SectionNumbers> sections =
                behind(steel("30 m")).numbers().penstock().sections();
        double lower = impedance(sections.get(1));
        double upper = impedance(sections.get(0));
        double flow = plugged.velocityChange() * sections.get(1).area();
        assertThat(plugged.surgeHead().or(0)).isCloseTo(lower * flow, within(1e-6));
        double standing = behind(steel("30 m")).solve().shut().sections().get(0);
        assertThat((plugged.closedForm().get(0).or(0) - standing) / (999.7 * GRAVITY))
                .isCloseTo(lower * flow * 2 * upper / (upper + lower), within(0.02));
    }

    private static double impedance(SectionNumbers section) {
        return section.waveSpeed().or(0) / (GRAVITY * section.area());
    }

    @Test
    void one_of_two_nozzles_leaves_the_other_to_take_water() {
        Plant one = plant("", "open: [14 mm]", "length: 90 m");
        Plant two = plant("", "open: [10 mm, 10 mm]", "length: 90 m");
        double whole = of(one, Cause.NOZZLE_PLUGGED).surge().sections().get(0).highest();
        double half = of(two, Cause.NOZZLE_PLUGGED).surge().sections().get(0).highest();
        double standing = two.solve().shut().sections().get(0);
        assertThat(half - standing).isPositive().isLessThan(0.6 * (whole - standing));
    }

    @Test
    void a_gate_valve_stops_the_water_in_the_last_of_its_travel_and_hammers_more_than_its_time_would_say() {
        Plant plant = plant("", "open: [10 mm]", """
                length: 90 m
                      fittings: [ { kind: entrance-sharp }, { kind: gate-valve, closing-time: 15 s } ]""");
        Closing valve = of(plant, Cause.VALVE);
        assertThat(valve.effectiveTime()).isLessThan(0.2 * valve.closingTime());
        double michaud = 2 * 90 * valve.velocityChange() / (GRAVITY * valve.closingTime());
        assertThat(valve.surgeHead().or(0)).isGreaterThan(5 * michaud);
        assertThat(valve.surge().sections().get(0).highest())
                .isGreaterThan(plant.solve().shut().sections().get(0) + 3 * michaud * 9804)
                .isLessThanOrEqualTo(valve.sections().get(0).or(0));
        assertThat(valve.model(0)).isEqualTo(Model.CLOSED_FORM);
    }

    @Test
    void an_inlet_shut_slowly_sucks_and_a_vent_below_the_valve_takes_the_suction_away_unless_it_may_freeze_shut() {
        String intake = "intake: { valve-closing-time: 400 s%s }\n";
        Closing closed = of(plant("5 m", intake.replace("%s", ""), "open: [10 mm]", "length: 90 m"), Cause.INLET_SHUT);
        String vent = ", vent: { bore: 25 mm, below-valve: true";
        Closing vented = of(
                plant("5 m", intake.replace("%s", vent + ", frost-proof: true }"), "open: [10 mm]", "length: 90 m"),
                Cause.INLET_SHUT);
        Closing frozen =
                of(plant("5 m", intake.replace("%s", vent + " }"), "open: [10 mm]", "length: 90 m"), Cause.INLET_SHUT);
        assertThat(closed.parts()).isNull();
        assertThat(closed.surge().nodes().get(0).lowest()).isBetween(-60e3, -5e3);
        assertThat(vented.surge().nodes().get(0).lowest()).isCloseTo(0, within(100.0));
        assertThat(frozen.surge().nodes().get(0).lowest())
                .isEqualTo(closed.surge().nodes().get(0).lowest());
        assertThat(closed.id()).isEqualTo("inlet-shut/10 mm");
        assertThat(closed.sections())
                .isEqualTo(List.of(Amount.of(closed.closedForm().get(0).or(0))));
    }

    /** Water that runs on below a shut inlet hangs on it: the suction nears the whole fall. */
    @Test
    void a_high_plant_whose_inlet_is_shut_parts_its_column() {
        assertThat(of(plant("", "open: [10 mm]", "length: 90 m"), Cause.SCREEN_BLOCKED)
                        .parts())
                .isNotNull();
    }

    @Test
    void a_fast_full_stop_that_parts_the_column_says_so_and_gives_no_lowest_pressure() {
        Closing plugged = of(plant("", "open: [20 mm]", "length: 90 m"), Cause.NOZZLE_PLUGGED);
        assertThat(plugged.surge().deepest().lowest())
                .isLessThan(plugged.surge().boiling() + 2 * 9810);
        assertThat(plugged.parts()).isEqualTo(new Amount.Missing("/penstock", "unknown/column-parts"));
        assertThat(plugged.lowest().get(0)).isInstanceOf(Amount.Unknown.class);
        assertThat(plugged.sections().get(0)).isInstanceOf(Amount.Known.class);
    }

    @Property(tries = 120, shrinking = ShrinkingMode.OFF)
    void no_stop_leaves_less_than_standing_and_none_sucks_more_than_it_presses(@ForAll("plants") Design design) {
        Plant plant = Plant.of(design);
        List<Double> standing = plant.solve().running().isEmpty()
                ? List.of()
                : plant.solve().shut().sections();
        for (Closing closing : plant.solve().closing()) {
            Surge surge = closing.surge();
            assertThat(surge == null).isEqualTo(closing.criticalTime() instanceof Amount.Unknown);
            for (int i = 0; i < standing.size(); i++) {
                if (closing.sections().get(i) instanceof Amount.Known highest) {
                    assertThat(highest.value()).isGreaterThanOrEqualTo(standing.get(i) - 1e-6);
                }
                if (surge != null) {
                    assertThat(surge.sections().get(i).highest())
                            .isGreaterThanOrEqualTo(surge.sections().get(i).lowest());
                    assertThat(closing.cause().atIntake()
                                    || !surge.highestHolds()
                                    || closing.sections().get(i).or(0)
                                            >= surge.sections().get(i).highest() - 1e-6)
                            .isTrue();
                }
            }
        }
    }
}
