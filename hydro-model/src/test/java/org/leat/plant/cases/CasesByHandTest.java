package org.leat.plant.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.design.Design;
import org.leat.design.RunnerKind;
import org.leat.design.Screen;
import org.leat.plant.Plant;
import org.leat.plant.Plants;
import org.leat.plant.duties.AnchorThrust;
import org.leat.plant.duties.HighestPressure;
import org.leat.plant.duties.IntakeFlow;
import org.leat.plant.duties.JetLimits;
import org.leat.plant.duties.SeasonMatch;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.StreamNumbers.StreamLevel;
import org.leat.plant.solved.OperatingPoint;
import org.leat.quantity.Quantities;

/** What cases tell of a running plant, worked again by hand. */
class CasesByHandTest {

    private static final double GRAVITY = 9.80665;

    private static final String STREAM = """
            site:
              stream:
                kept-in-stream: 0.5 L/s
                flow:
                  kind: duration-curve
                  points:
                    - { exceeded: 5 %, flow: 20 L/s }
                    - { exceeded: 60 %, flow: 2.2 L/s }
                    - { exceeded: 100 %, flow: 1.4 L/s }
            """;

    private static final String SETS = "open: [9 mm]\n  available: [6 mm, 8 mm, 9 mm]";

    private static Cases cases(String parts) {
        return Plant.of(Plants.read(Plants.statedText("24 m", "9 mm", "160 mm", parts)
                        .replace("open: [9 mm]", SETS)
                        .replace("site:\n", STREAM)))
                .solve();
    }

    /** The jets of a set that the stream cannot fill are slower; a nozzle cut for the flow keeps the head. */
    @Test
    void the_set_of_a_season_is_that_of_most_jet_power_against_a_nozzle_cut_for_its_flow() {
        Cases cases = cases("");
        List<SeasonMatch> seasons = SeasonMatch.all(cases);
        List<StreamLevel> levels = cases.numbers().site().stream().stream()
                .filter(level -> level.available() > 0)
                .toList();
        assertThat(seasons).hasSameSizeAs(levels).hasSizeGreaterThan(2);
        double density = cases.numbers().water().density();
        Running full = cases.running().get(0);
        double loss = (24 - full.water().netHead()) / Math.pow(full.water().flow(), 2);
        double widest = cases.running().stream()
                .mapToDouble(r -> r.water().fullPipeFlow())
                .max()
                .orElseThrow();
        for (int i = 0; i < levels.size(); i++) {
            SeasonMatch season = seasons.get(i);
            double available = levels.get(i).available();
            Running best = cases.running().stream()
                    .max(Comparator.comparingDouble(r -> jets(r, available, density)))
                    .orElseThrow();
            double cut = Math.min(Math.min(available, widest), Math.sqrt(24 / (3 * loss)));
            double velocity = 0.97 * Math.sqrt(2 * GRAVITY * (24 - loss * cut * cut));
            double ideal = density * cut * velocity * velocity / 2;
            assertThat(season.flow()).isEqualTo(available);
            assertThat(season.set()).isEqualTo(best.nozzles());
            assertThat(season.share()).isCloseTo(Math.min(1, jets(best, available, density) / ideal), within(1e-9));
            assertThat(Math.PI / 4 * season.bestBore() * season.bestBore() * velocity)
                    .isCloseTo(cut, within(1e-9));
        }
        assertThat(seasons.get(0).set().name()).isEqualTo("9 mm");
        assertThat(seasons.get(seasons.size() - 1).set().name()).isEqualTo("8 mm");
        assertThat(seasons).extracting(SeasonMatch::share).anyMatch(share -> share < 0.98);
    }

    private static double jets(Running running, double available, double density) {
        if (available >= running.water().fullPipeFlow()) {
            return running.water().jetPower();
        }
        double velocity = available / running.nozzles().area();
        return density * available * velocity * velocity / 2;
    }

    @Test
    void the_highest_voltage_that_can_be_touched_is_told_with_what_makes_it() {
        Cases cases = cases("regulator: { kind: series, absorption-voltage: 28.4 V }");
        TouchVoltage touch = Objects.requireNonNull(cases.touchVoltage());
        double direct = cases.onTheBus().stream()
                .mapToDouble(BusSituation::lastingVoltage)
                .max()
                .orElseThrow();
        LoadLost fastest = cases.loadLost().stream()
                .max(Comparator.comparingDouble(LoadLost::lineVoltage))
                .orElseThrow();
        assertThat(touch.direct()).isEqualTo(direct);
        assertThat(cases.onTheBus())
                .anySatisfy(situation -> {
                    assertThat(situation.id()).isEqualTo(touch.directAt());
                    assertThat(situation.lastingVoltage()).isEqualTo(direct);
                })
                .anySatisfy(situation -> assertThat(situation.lastingVoltage()).isLessThan(direct));
        assertThat(touch.alternating()).isEqualTo(fastest.lineVoltage());
        assertThat(touch.alternatingAt()).isEqualTo(fastest.id());
        assertThat(fastest.lineVoltage() * Math.sqrt(2)).isCloseTo(fastest.peakLineVoltage(), within(1e-9));
    }

    /** Angle between jets (2π/z + x 2 d/R)/(1 − x): the whole circle over it, within what the kind takes. */
    @ParameterizedTest
    @CsvSource({"20", "8", "4", "200"})
    void as_many_jets_have_room_as_the_water_needs_to_leave_its_bucket(int buckets) {
        Cases cases = cases("");
        Running running = cases.running().get(0);
        double ratio = running.operatingPoint().speedRatio();
        double jet = running.water().jets().get(0).diameter();
        double angle = (2 * Math.PI / buckets + ratio * 2 * jet / 0.080) / (1 - ratio);
        double room = Math.max(1, Math.min(6, Math.floor(2 * Math.PI / angle)));
        assertThat(JetLimits.jets(running, cases.numbers().runner(), buckets).orThrow())
                .isEqualTo(room);
    }

    @Test
    void room_for_jets_never_passes_what_a_kind_takes_nor_falls_below_one() {
        Cases cases = cases("");
        Running running = cases.running().get(0);
        assertThat(JetLimits.jets(running, cases.numbers().runner().withKind(RunnerKind.TURGO), 200)
                        .orThrow())
                .isEqualTo(4);
        assertThat(JetLimits.jets(running, cases.numbers().runner(), 1).orThrow())
                .isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({"PELTON, 2.8, 3.6", "TURGO, 1.8, 3", "CUPS, 2.5, 4", "FLAT, 3, 5"})
    void a_bucket_is_as_wide_as_its_kind_asks(RunnerKind kind, double least, double greatest) {
        assertThat(JetLimits.leastBucketWidth(kind)).isEqualTo(least);
        assertThat(JetLimits.greatestBucketWidth(kind)).isEqualTo(greatest);
    }

    /** 120 holes of 5 mm are 23.6 cm²; a mesh of 4 mm and 1 mm wire is open by 64 %, bars of 10 mm at 6 mm by 3/8. */
    @Test
    void water_goes_through_what_is_open_and_not_blocked_of_a_screen() {
        Screen mesh = new Screen.Mesh(Quantities.squareCentimetres(400), Quantities.mm(4), Quantities.mm(1), null);
        assertThat(IntakeFlow.screenVelocity(mesh, 0, 0.004)).isCloseTo(0.004 / (0.04 * 0.64), within(1e-9));
        Screen bars = new Screen.Bars(
                Quantities.squareCentimetres(400),
                Quantities.mm(6),
                Quantities.mm(10),
                Quantities.degrees(60),
                null,
                null);
        assertThat(IntakeFlow.screenVelocity(bars, 0, 0.004)).isCloseTo(0.004 / (0.04 * 0.375), within(1e-9));
        Screen holes = new Screen.DrilledHoles(120, Quantities.mm(5), null, null);
        assertThat(IntakeFlow.screenVelocity(holes, 0, 0.004))
                .isCloseTo(0.004 / (120 * Math.PI / 4 * 25e-6), within(1e-9));
        assertThat(IntakeFlow.screenVelocity(holes, 0.5, 0.004))
                .isCloseTo(2 * IntakeFlow.screenVelocity(holes, 0, 0.004), within(1e-12));
        assertThat(IntakeFlow.screenVelocity(holes, 1, 0.004)).isInfinite();
    }

    @Test
    void a_run_in_time_begins_at_six_time_constants_and_with_the_bus_that_holds() {
        Cases battery = cases("");
        AlternatorNumbers alternator = battery.numbers().alternator();
        double constant = alternator.phaseInductance() / (alternator.phaseResistance() + 0.01);
        assertThat(SteppedStart.periods(alternator.phaseResistance() + 0.01, alternator.phaseInductance(), 200))
                .isEqualTo(2 + Math.ceil(6 * constant * 200));
        assertThat(SteppedStart.periods(alternator.phaseResistance() + 0.01, alternator.phaseInductance(), 1e6))
                .isEqualTo(80);
        OperatingPoint point = battery.running().get(0).operatingPoint();
        assertThat(SteppedStart.bus(battery.numbers(), point).voltage())
                .isEqualTo(battery.numbers().battery().restingVoltage());
        assertThat(SteppedStart.bus(battery.numbers(), point).resistance())
                .isCloseTo(
                        battery.numbers().battery().internalResistance()
                                + battery.numbers().busResistance().bridgeToRegulator()
                                + battery.numbers().busResistance().regulatorToBattery(),
                        within(1e-12));
        Cases tracking =
                cases("regulator: { kind: tracking, tracking-window: { from: 30 V, to: 90 V }, efficiency: 95 % }");
        OperatingPoint tracked = tracking.running().get(0).operatingPoint();
        assertThat(SteppedStart.bus(tracking.numbers(), tracked).voltage())
                .isEqualTo(Objects.requireNonNull(tracked.tracking()).voltage());
    }

    /** {@code F = 2 (p A + ρ Q²/A) sin(θ/2)} on a bend, {@code p A} on the end; outside diameter 70 mm. */
    @Test
    void the_greatest_thrust_is_that_of_the_sharpest_bend_or_of_the_end_at_the_highest_pressure() {
        for (String bend : List.of("bend-90", "bend-45")) {
            Design design = Plants.read(Plants.statedText("24 m", "9 mm", "160 mm", "")
                    .replace("fittings: [ {", "fittings: [ { kind: " + bend + " }, {"));
            Cases cases = Plant.of(design).solve();
            double pressure = cases.shut().sections().get(0);
            HighestPressure highest = HighestPressure.of(cases, 0, p -> true);
            double area = Math.PI / 4 * 0.07 * 0.07;
            double flow = cases.running().get(0).water().flow();
            double angle = bend.equals("bend-90") ? Math.PI / 2 : Math.PI / 4;
            AnchorThrust thrust = AnchorThrust.greatest(cases, design.penstock().sections(), 1e9);
            if (highest.pressure().or(0) > 0) {
                double seen = highest.pressure().or(0);
                double bent = 2
                        * (seen * area + cases.numbers().water().density() * flow * flow / area)
                        * Math.sin(angle / 2);
                double expected = Math.max(bent, seen * area);
                assertThat(seen).isGreaterThanOrEqualTo(pressure);
                assertThat(thrust.force().or(0)).isCloseTo(expected, within(1e-6 * expected));
                assertThat(thrust.section()).isEqualTo("run");
            } else {
                assertThat(thrust.during()).isEqualTo(highest.during());
            }
        }
    }

    /** Thrust and pressures of a stop are those of the worst set, so that it does not matter which one is fitted. */
    @Test
    void thrust_and_pressures_of_stops_are_the_same_whichever_of_two_sets_is_fitted() {
        Design small = bent("open: [7 mm]\n  available: [7 mm, 14 mm]");
        Design large = bent("open: [14 mm]\n  available: [7 mm, 14 mm]");
        Cases fitted = Plant.of(large).solve();
        Cases inTheDrawer = Plant.of(small).solve();
        AnchorThrust thrust = AnchorThrust.greatest(fitted, large.penstock().sections(), 1e9);
        assertThat(thrust.force().or(0)).isPositive();
        assertThat(AnchorThrust.greatest(inTheDrawer, small.penstock().sections(), 1e9))
                .isEqualTo(thrust);
        assertThat(fitted.pressureProfile().highestDuring()).endsWith("/14 mm");
        for (Cases cases : List.of(fitted, inTheDrawer)) {
            PressureProfile profile = cases.pressureProfile();
            PressureProfile worst = fitted.pressureProfile();
            assertThat(profile.highestDuring()).isEqualTo(worst.highestDuring());
            assertThat(profile.lowestDuring()).isEqualTo(worst.lowestDuring());
            assertThat(profile.points())
                    .extracting(PressureProfile.Point::highest)
                    .isEqualTo(worst.points().stream()
                            .map(PressureProfile.Point::highest)
                            .toList());
        }
        assertThat(inTheDrawer.pressureProfile().points().get(1).running())
                .as("running is that of the set fitted")
                .isGreaterThan(fitted.pressureProfile().points().get(1).running());
    }

    private static Design bent(String nozzles) {
        return Plants.read(Plants.LEAST
                .replace("length: 90 m", "length: 90 m\n      fittings: [ { kind: bend-90 } ]")
                .replace("open: [10 mm]", nozzles));
    }
}
