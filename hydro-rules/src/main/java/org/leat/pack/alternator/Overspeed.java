package org.leat.pack.alternator;

import static org.leat.check.Level.ERROR;
import static org.leat.quantity.QuantityKind.ROTATIONAL_SPEED;

import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.LoadLost;

/** Runaway speed against what rotor and bearings stand. */
final class Overspeed {

    static final Rule RULE = Rule.of(
                    "alternator/overspeed", ERROR, "runaway speed against what rotor and bearings stand")
            .why("When the load is lost the wheel runs up to about twice its working speed in seconds. Magnets come off"
                    + " rotors, and printed wheels burst.")
            .formula("speed at which the runner's torque is nil, nozzles open · gear ratio ≤ speed limit")
            .judged("load lost, the pipe full whatever the stream brings, the nozzle set that runs fastest")
            .source("runaway 1.75 to 1.9 times best speed for real impulse wheels: handbooks (from memory); ideal 2:"
                    + " momentum theorem")
            .passes("stands-it", "With the load lost the alternator runs up to {value}.")
            .fails(
                    "too-fast",
                    "With the load lost the alternator runs up to {value} (wheel {runner:rpm}); it stands {limit}.")
            .judge(Overspeed::judge)
            .advice(
                    "needed",
                    "An alternator that stands {speed:rpm}, or a deflector that drops in when the load is lost.",
                    (j, failure) ->
                            Stream.of(Change.advice().with("speed", roundedUp(failure.value()), ROTATIONAL_SPEED)))
            .build();

    private static final double FIFTY_RPM = 50 * Math.PI / 30;

    private Overspeed() {}

    /** Speeds are marked in steps of fifty revolutions a minute at the finest. */
    private static double roundedUp(double speed) {
        return Math.ceil(speed / FIFTY_RPM - 1e-9) * FIFTY_RPM;
    }

    private static Outcome judge(Judgement j) {
        LoadLost worst = Worst.most(j.solved().loadLost(), LoadLost::alternatorSpeed);
        return j.at("/alternator/speed-limit")
                .during(worst)
                .with("runner", worst.speed(), ROTATIONAL_SPEED)
                .atMost(worst.alternatorSpeed(), j.numbers().alternator().speedLimit(), ROTATIONAL_SPEED);
    }
}
