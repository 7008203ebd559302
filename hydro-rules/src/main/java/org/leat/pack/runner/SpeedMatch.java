package org.leat.pack.runner;

import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.leat.check.Arg;
import org.leat.check.Change;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.design.Connection;
import org.leat.design.RegulatorKind;
import org.leat.design.Winding;
import org.leat.pack.kit.BankVoltage;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.Rewinding;
import org.leat.pack.kit.TrackingRegulator;
import org.leat.plant.Plant;
import org.leat.plant.cases.TrackingWindow;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.solved.OperatingPoint;

/**
 * Changes that bring the speed ratio of one nozzle set into range: another wheel, another battery voltage, another winding
 * or connection, a tracking regulator. Each is found on the plant's numbers and rounded to what can be made or bought; it
 * is offered only where a current flows then: a wheel that runs free is no way out.
 *
 * @param nozzles the set
 * @param low least ratio
 * @param high greatest ratio
 */
record SpeedMatch(NozzleGroup nozzles, double low, double high) {

    /** Share of the wanted ratio that is close enough: the wheel or winding is rounded afterwards anyway. */
    private static final double CLOSE = 0.02;

    private static SpeedMatch of(Judgement j, Outcome.Fail failure) {
        return j.solved().running().stream()
                .filter(running -> running.id().equals(failure.during()))
                .map(running -> new SpeedMatch(
                        running.nozzles(),
                        failure.compared().low(),
                        failure.compared().high()))
                .findFirst()
                .orElseThrow();
    }

    static Stream<Change> otherDiameter(Judgement j, Outcome.Fail failure) {
        SpeedMatch match = of(j, failure);
        Plant plant = j.plant();
        double now = plant.numbers().runner().pitchDiameter();
        double scale =
                match.scale(s -> plant.withRunner(plant.numbers().runner().withPitchDiameter(now * s)), true);
        return near(now * scale * 1000)
                .map(millimetres ->
                        FieldChanges.told("/runner/pitch-diameter", "diameter", millimetres, "mm", Length.class))
                .map(match::told);
    }

    static Stream<Change> otherCells(Judgement j, Outcome.Fail failure) {
        SpeedMatch match = of(j, failure);
        Plant plant = j.plant();
        int now = plant.numbers().battery().cellsInSeries();
        return Stream.of(5, 3, 6, 2, 8, 1, 16)
                .map(quarters -> now * quarters / 4)
                .filter(cells -> cells >= 1 && cells != now)
                .filter(cells ->
                        match.suits(plant.withBattery(plant.numbers().battery().withCellsInSeries(cells))))
                .limit(1)
                .map(cells -> Change.of(BankVoltage.edits(j.design(), cells)).with("cells", cells))
                .map(match::told);
    }

    static Stream<Change> otherTurns(Judgement j, Outcome.Fail failure) {
        SpeedMatch match = of(j, failure);
        Plant plant = j.plant();
        double scale = match.scale(
                s -> plant.withAlternator(plant.numbers().alternator().rewound(s)), false);
        return near(scale * 100)
                .map(hundredths -> hundredths / 100)
                .map(turns -> Change.of(Rewinding.edits(j.design(), turns)).with("turns", turns, RATIO))
                .map(match::told);
    }

    /** Whole steps: where the wheel slips past the torque peak, the next one may hold it and the nearest not. */
    private static Stream<Double> near(double steps) {
        double whole = Math.rint(steps);
        return Stream.of(whole, whole - 1, whole + 1);
    }

    static Stream<Change> delta(Judgement j, Outcome.Fail failure) {
        return of(j, failure).joined(j, Connection.STAR, Rewinding.toDelta(j.design()));
    }

    static Stream<Change> star(Judgement j, Outcome.Fail failure) {
        return of(j, failure).joined(j, Connection.DELTA, Rewinding.toStar(j.design()));
    }

    private Stream<Change> joined(Judgement j, Connection from, List<Edit> edits) {
        Winding winding = j.design().alternator().winding();
        boolean can = winding.connection() == from && !Boolean.FALSE.equals(winding.rewirable());
        return can ? Stream.of(told(Change.of(edits))) : Stream.empty();
    }

    static Stream<Change> tracking(Judgement j, Outcome.Fail failure) {
        SpeedMatch match = of(j, failure);
        TrackingWindow window = j.solved().trackingWindow();
        boolean can = j.numbers().regulator().kind() != RegulatorKind.TRACKING
                && window.isOpen()
                && match.suits(j.plant().withRegulator(window.regulator()));
        return can
                ? Stream.of(match.told(TrackingRegulator.change(j, window.from(), window.to(), "voltage")))
                : Stream.empty();
    }

    /**
     * The factor that brings the ratio close to the middle of its range, by halving its logarithm. A wheel that slips past the
     * torque peak runs fast because it is too large, or because its winding has too many turns: less of either holds it.
     */
    private double scale(DoubleFunction<Plant> scaled, boolean rising) {
        double wanted = (low + high) / 2;
        double least = Math.log(0.25);
        double most = Math.log(4);
        for (int i = 0; i < 12; i++) {
            double middle = (least + most) / 2;
            OperatingPoint reached = point(scaled.apply(Math.exp(middle)));
            if (Math.abs(reached.speedRatio() - wanted) < CLOSE * wanted) {
                return Math.exp(middle);
            }
            if (reached.hold() == OperatingPoint.Hold.NOT_HELD || reached.speedRatio() < wanted != rising) {
                most = middle;
            } else {
                least = middle;
            }
        }
        return Math.exp((least + most) / 2); // whether that suits is asked of the plant with what can be made of it
    }

    private Change told(Change change) {
        return change.onlyIf(then -> suits(then.plant())).telling(then -> {
            OperatingPoint point = point(then.plant());
            return List.of(Arg.of("ratio", point.speedRatio(), RATIO), Arg.of("power", point.batteryPower(), POWER));
        });
    }

    private boolean suits(Plant plant) {
        OperatingPoint point = point(plant);
        return point.hold() == OperatingPoint.Hold.HELD && point.speedRatio() >= low && point.speedRatio() <= high;
    }

    private OperatingPoint point(Plant plant) {
        return plant.running(nozzles).operatingPoint();
    }
}
