package org.leat.pack.plausibility;

import static org.leat.check.Level.NOTE;
import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.leat.check.Judgement;
import org.leat.check.NamedLimit.Safer;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.solved.OperatingPoint;

/** The open-circuit volts read the other way: peak for rms, lead to star point for between leads. */
final class ReadingOfVolts {

    static final Rule RULE = Rule.of(
                    "plausibility/reading-of-volts", WARNING, "open-circuit volts read as rms or peak, line or phase")
            .why(
                    "The same machine shows 1.41 times as many volts peak as rms, and 1.73 times as many between two leads as"
                            + " from a lead to the star point. Where one is written for the other, the wheel is solved at a speed it"
                            + " will not have, and winding, wheel and bank are chosen for another machine.")
            .formula(
                    "speed as read over the wheel's best speed within its limits; else not near one with the volts read"
                            + " otherwise (times or by √2, √3, √6). A warning where no current flows or the wheel is held below"
                            + " a third of its best speed, else a note")
            .judged("running on the nozzles open as built; readings that the stated tolerance covers are the same")
            .source("peak = √2 rms of a sine; line = √3 phase of three phases in star (circuit theory)")
            .source(COMMON_PRACTICE)
            .limit("slow", RATIO, 0.7, "", COMMON_PRACTICE, Safer.HIGHER)
            .limit("fast", RATIO, 1.3, "", COMMON_PRACTICE, Safer.LOWER)
            .limit("held-hard", RATIO, 0.33, "", COMMON_PRACTICE, Safer.HIGHER)
            .limit("near", RATIO, 0.13, "", COMMON_PRACTICE, Safer.HIGHER)
            .passes("as-read", "With the volts as read the wheel runs at {value} of its best speed.")
            .passes(
                    "none-better",
                    "The volts as read do not suit the wheel, and no other reading beyond their tolerance does.")
            .fails(
                    "other-reading",
                    "Read as {as} between {between} the alternator lets the wheel run at {value} of its best speed; read as"
                            + " {kind} between {points} it would be {then}: look at how it was measured.")
            .fails(
                    "no-current",
                    "Read as {as} between {between} the alternator does not reach the bus, no current flows; read as {kind}"
                            + " between {points} it would hold the wheel at {then} of its best speed: look at how it was"
                            + " measured.")
            .notApplicable("behind-bridge", "Not judged: direct volts behind a bridge are read in one way only.")
            .judge(ReadingOfVolts::judge)
            .advice(
                    "measure",
                    "Measure again, nothing connected: a meter set to volts a.c., between two leads. It shows rms between"
                            + " leads.")
            .build();

    private ReadingOfVolts() {}

    private static Outcome judge(Judgement j) {
        Running running = j.solved().running().get(0);
        Spot spot = j.at("/alternator/open-circuit").during(running);
        Optional<StatedVoltage> read = StatedVoltage.of(j.design().alternator().openCircuit());
        if (read.isEmpty()) {
            return spot.says("behind-bridge");
        }
        spot.given("/runner/pitch-diameter", j.design().runner());
        OperatingPoint point = running.operatingPoint();
        double speed = ofBest(j, point);
        if (point.loaded()
                && speed >= j.limit("slow").value()
                && speed <= j.limit("fast").value()) {
            return spot.within(speed, j.limit("slow"), j.limit("fast"));
        }
        Optional<OtherReading> other = other(j, running, read.get());
        if (other.isEmpty()) {
            return spot.says("none-better");
        }
        Spot told = spot.with("as", read.get().as())
                .with("between", read.get().between())
                .with("kind", other.get().reading().as())
                .with("points", other.get().reading().between())
                .with("then", other.get().speed(), RATIO);
        if (!point.loaded()) {
            return told.saying("as-read", "no-current").holds(false);
        }
        return told.as(speed < j.limit("held-hard").value() ? WARNING : NOTE)
                .within(speed, j.limit("slow"), j.limit("fast"));
    }

    /** Another reading, and the wheel's speed over its best with it. */
    private record OtherReading(StatedVoltage reading, double speed) {

        double apart() {
            return Math.abs(speed - 1);
        }
    }

    private static Optional<OtherReading> other(Judgement j, Running running, StatedVoltage read) {
        return read.others(j.design().alternator())
                .flatMap(reading -> tried(j, running, reading, reading.voltsOver(read)))
                .filter(tried -> tried.apart() <= j.limit("near").value())
                .min(Comparator.comparingDouble(OtherReading::apart));
    }

    private static Stream<OtherReading> tried(Judgement j, Running running, StatedVoltage reading, double factor) {
        AlternatorNumbers machine = j.numbers().alternator();
        OperatingPoint point = j.plant()
                .withAlternator(machine.withMagnets(machine.magnets().withFluxLinkage(machine.fluxLinkage() * factor)))
                .running(running.nozzles())
                .operatingPoint();
        return point.hold() == OperatingPoint.Hold.HELD
                ? Stream.of(new OtherReading(reading, ofBest(j, point)))
                : Stream.empty();
    }

    private static double ofBest(Judgement j, OperatingPoint point) {
        return point.speedRatio() / j.numbers().runner().bestSpeedRatio();
    }
}
