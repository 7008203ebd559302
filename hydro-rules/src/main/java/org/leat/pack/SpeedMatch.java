package org.leat.pack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Outcome;
import org.leat.check.WayOut;
import org.leat.design.RegulatorKind;
import org.leat.electrics.ReverseVoltage;
import org.leat.pack.Search.Candidate;
import org.leat.plant.Plant;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.RegulatorNumbers;
import org.leat.plant.solve.OperatingPoint;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/**
 * Ways to bring the speed ratio of one nozzle set into range: another wheel, another battery voltage, another winding or
 * connection, a tracking regulator. Each is found on the plant's numbers, rounded to what can be made or bought, and
 * then tried on the edited design.
 */
final class SpeedMatch {

    /** Share of the wanted ratio that is close enough: the wheel or winding is rounded afterwards anyway. */
    private static final double CLOSE = 0.02;

    private final LegacyRule rule;
    private final Judgement j;
    private final Outcome failure;
    private final NozzleGroup nozzles;
    private final double low;
    private final double high;

    SpeedMatch(LegacyRule rule, Judgement j, Outcome failure, NozzleGroup nozzles) {
        this.rule = rule;
        this.j = j;
        this.failure = failure;
        this.nozzles = nozzles;
        Comparison comparison = Objects.requireNonNull(failure.comparison());
        this.low = comparison.low();
        this.high = comparison.high();
    }

    /** {@return the ways, the one with most power first} */
    List<WayOut> ways() {
        List<WayOut> ways = new ArrayList<>();
        otherDiameter().ifPresent(ways::add);
        otherCells().ifPresent(ways::add);
        otherTurns().ifPresent(ways::add);
        otherConnection().ifPresent(ways::add);
        tracking().ifPresent(ways::add);
        ways.sort(Comparator.comparingDouble(way -> way.gain() == null ? 0 : -way.gain()));
        return ways;
    }

    private Optional<WayOut> otherDiameter() {
        Plant plant = j.plant();
        double now = plant.numbers().runner().pitchDiameter();
        return scale(s -> plant.withRunner(plant.numbers().runner().withPitchDiameter(now * s)))
                .flatMap(s -> {
                    double millimetres = Math.round(now * s * 1000);
                    Edit edit = new Edit("/runner/pitch-diameter", Si.quantity(millimetres, "mm", Length.class));
                    return tried(
                            "other-diameter",
                            List.of(edit),
                            Arg.of("diameter", millimetres / 1000, QuantityKind.LENGTH));
                });
    }

    private Optional<WayOut> otherCells() {
        Plant plant = j.plant();
        int now = plant.numbers().battery().cellsInSeries();
        return Stream.of(now * 5 / 4, now * 3 / 4, now * 3 / 2, now / 2, now * 2, now / 4, now * 4)
                .filter(cells -> cells >= 1 && cells != now)
                .filter(cells ->
                        suits(plant.withBattery(plant.numbers().battery().withCellsInSeries(cells))))
                .findFirst()
                .flatMap(cells ->
                        tried("other-cells", BankVoltage.edits(j.design(), cells), Arg.of("cells", (long) cells)));
    }

    private Optional<WayOut> otherTurns() {
        Plant plant = j.plant();
        return scale(s -> plant.withAlternator(plant.numbers().alternator().rewound(s)))
                .flatMap(s -> {
                    double turns = Math.round(s * 100) / 100.0;
                    return tried(
                            "other-turns",
                            Rewinding.edits(j.design(), turns),
                            Arg.of("turns", turns, QuantityKind.RATIO));
                });
    }

    private Optional<WayOut> otherConnection() {
        var winding = j.design().alternator().winding();
        if (winding.connection() == null || Boolean.FALSE.equals(winding.rewirable())) {
            return Optional.empty();
        }
        return switch (winding.connection()) {
            case STAR -> tried("delta", Rewinding.toDelta(j.design()));
            case DELTA -> tried("star", Rewinding.toStar(j.design()));
        };
    }

    private Optional<WayOut> tracking() {
        if (j.plant().numbers().regulator().kind() == RegulatorKind.TRACKING) {
            return Optional.empty();
        }
        double from = j.plant().numbers().battery().absorptionVoltage() + 2;
        AlternatorNumbers alternator = j.plant().numbers().alternator();
        double most = j.cases().running().stream()
                .mapToDouble(running -> ReverseVoltage.LOAD_DUMP
                        * alternator.coldMagnetFactor()
                        * alternator.peakLineVoltage(running.operatingPoint().alternatorSpeed()))
                .max()
                .orElse(from);
        double to = Math.ceil(1.1 * most / 5) * 5;
        if (to <= from || !suits(j.plant().withRegulator(RegulatorNumbers.tracking(from, to, 1)))) {
            return Optional.empty();
        }
        return tried(
                "tracking", TrackingRegulator.edits(j.design(), from, to), Arg.of("voltage", to, QuantityKind.VOLTAGE));
    }

    /** The factor that brings the ratio close to the middle of its range, by halving its logarithm. */
    private Optional<Double> scale(DoubleFunction<Plant> scaled) {
        double wanted = (low + high) / 2;
        double least = Math.log(0.25);
        double most = Math.log(4);
        boolean rising = ratio(scaled.apply(Math.exp(most))) > ratio(scaled.apply(Math.exp(least)));
        for (int i = 0; i < 12; i++) {
            double middle = (least + most) / 2;
            double reached = ratio(scaled.apply(Math.exp(middle)));
            if (Math.abs(reached - wanted) < CLOSE * wanted) {
                return Optional.of(Math.exp(middle));
            }
            if (reached < wanted == rising) {
                least = middle;
            } else {
                most = middle;
            }
        }
        double factor = Math.exp((least + most) / 2);
        return suits(scaled.apply(factor)) ? Optional.of(factor) : Optional.empty();
    }

    /** The rule does not judge a wheel that drives no current: that is no way out. */
    private boolean suits(Plant plant) {
        return suits(plant.running(nozzles).operatingPoint());
    }

    private boolean suits(OperatingPoint operatingPoint) {
        return operatingPoint.hold() == OperatingPoint.Hold.HELD
                && operatingPoint.speedRatio() >= low
                && operatingPoint.speedRatio() <= high;
    }

    private double ratio(Plant plant) {
        return plant.running(nozzles).operatingPoint().speedRatio();
    }

    private Optional<WayOut> tried(String message, List<Edit> edits, Arg... args) {
        if (edits.isEmpty()) {
            return Optional.empty();
        }
        return Search.first(rule, j, failure, Stream.of(new Candidate(message, edits, List.of(args))))
                .flatMap(way -> {
                    OperatingPoint now = j.plant().running(nozzles).operatingPoint();
                    OperatingPoint then =
                            j.with(way.edits()).plant().running(nozzles).operatingPoint();
                    List<Arg> all = new ArrayList<>(List.of(args));
                    all.add(Arg.of("ratio", then.speedRatio(), QuantityKind.RATIO));
                    all.add(Arg.of("power", then.batteryPower(), QuantityKind.POWER));
                    if (!suits(then)) {
                        return Optional.empty();
                    }
                    return Optional.of(new WayOut(
                            org.leat.check.Message.of(message, all.toArray(Arg[]::new)),
                            way.edits(),
                            then.batteryPower() - now.batteryPower()));
                });
    }
}
