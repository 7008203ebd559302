package org.leat.pack.alternator;

import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.NOTE;
import static org.leat.quantity.QuantityKind.CURRENT;
import static org.leat.quantity.QuantityKind.FREQUENCY;
import static org.leat.quantity.QuantityKind.ROTATIONAL_SPEED;
import static org.leat.quantity.QuantityKind.TEMPERATURE;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import javax.measure.Quantity;
import javax.measure.quantity.Frequency;
import org.leat.check.Arg;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Alternator;
import org.leat.pack.kit.NozzlesOnHand;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.BrokenBridge;
import org.leat.plant.duties.SettledWinding;
import org.leat.quantity.Si;

/** One phase, or one diode, open while the plant runs on. */
final class PhaseOpen {

    static final Rule RULE = Rule.of(
                    "alternator/phase-open", ERROR, "one phase or one diode open while the plant runs on")
            .why(
                    "A loose terminal, a blown fuse in one of three leads, a diode that has burnt open: the plant runs on, a little"
                            + " faster, and nobody notices. The leads that are left carry more than they were chosen for.")
            .formula(
                    "rms current of the lead that carries most ≤ winding's limit, speed and frequency ≤ limits, settled temperature of a"
                            + " winding of which every phase is as hot as the hottest ≤ class of the insulation")
            .judged(
                    "one phase open and one diode open, each nozzle set on hand, at the speed at which the torques meet; the set on"
                            + " which each number is worst")
            .source(
                    "alternator and bridge stepped in time, held against circuit simulation; for smooth direct current 1.225 times the"
                            + " current and 1.5 times the heat of each live phase, from mean and rms of six and two pulses")
            .passes("carried", "With {fault} on {set} the wheel settles at {speed:rpm} and a lead carries {value}.")
            .fails(
                    "overloaded",
                    "With {fault} on {set} the wheel settles at {speed:rpm} and a lead carries {value}; the winding stands {limit}.")
            .passes("slow-enough", "With {fault} on {set} the alternator settles at {value}.")
            .fails("too-fast", "With {fault} on {set} the alternator settles at {value}; it stands {limit}.")
            .passes("low-frequency", "With {fault} on {set} the frequency settles at {value}.")
            .fails(
                    "high-frequency",
                    "With {fault} on {set} the frequency settles at {value}; the laminations are made for {limit}.")
            .passes("cool-enough", "With {fault} on {set} the hottest phase settles at {value}.")
            .fails(
                    "too-hot",
                    "With {fault} on {set} the hottest phase settles at {value}; its insulation stands {limit}.")
            .fails("burns", "With {fault} on {set} the hottest phase warms until it burns.")
            .notApplicable("no-current", "Not judged: no current flows.")
            .judgeAll(PhaseOpen::judge)
            .leastWayOut("smaller-nozzle", NozzlesOnHand.NONE_LARGER, NozzlesOnHand::smaller)
            .advice(
                    "relay",
                    "An overload relay with phase-loss tripping in the alternator's leads, set to the winding's limit, that drops the"
                            + " deflector.")
            .build();

    private static final Arg PHASE = new Arg("fault", new Arg.Phrase("fault.phase-open", "one phase open"));

    private static final Arg DIODE = new Arg("fault", new Arg.Phrase("fault.diode-open", "one diode open"));

    private PhaseOpen() {}

    private static List<Outcome> judge(Judgement j) {
        List<BrokenBridge> all = j.solved().broken();
        if (all.isEmpty()) {
            return List.of(j.at("/alternator").says("no-current"));
        }
        List<Supplier<Outcome>> questions = new ArrayList<>();
        questions.add(() -> current(j, Worst.most(all, BrokenBridge::phaseCurrent)));
        BrokenBridge fastest = Worst.most(all, BrokenBridge::runnerSpeed);
        questions.add(() -> speed(j, fastest));
        Alternator alternator = j.design().alternator();
        Quantity<Frequency> limit = alternator.frequencyLimit();
        if (limit != null) {
            questions.add(() -> frequency(j, fastest, Si.of(limit)));
        }
        if (alternator.thermalResistance() != null && alternator.insulationClass() != null) {
            questions.add(() -> heat(j, all));
        }
        return j.all(questions);
    }

    private static Spot spot(Judgement j, String path, BrokenBridge broken) {
        return j.at(path)
                .during(broken)
                .with(broken.fault() == BrokenBridge.Fault.PHASE_OPEN ? PHASE : DIODE)
                .with(Arg.of("set", broken.nozzles().name()))
                .with("speed", broken.runnerSpeed(), ROTATIONAL_SPEED);
    }

    private static Outcome current(Judgement j, BrokenBridge broken) {
        return spot(j, "/alternator/current-limit", broken)
                .saying("carried", "overloaded")
                .atMost(broken.phaseCurrent(), j.numbers().alternator().currentLimit(), CURRENT);
    }

    private static double alternatorSpeed(Judgement j, BrokenBridge broken) {
        return broken.runnerSpeed() * j.numbers().alternator().gearRatio();
    }

    private static Outcome speed(Judgement j, BrokenBridge broken) {
        return spot(j, "/alternator/speed-limit", broken)
                .saying("slow-enough", "too-fast")
                .atMost(alternatorSpeed(j, broken), j.numbers().alternator().speedLimit(), ROTATIONAL_SPEED);
    }

    private static Outcome frequency(Judgement j, BrokenBridge broken, double limit) {
        double frequency = j.numbers().alternator().polePairs() * alternatorSpeed(j, broken) / (2 * Math.PI);
        return spot(j, "/alternator/frequency-limit", broken)
                .as(NOTE)
                .saying("low-frequency", "high-frequency")
                .atMost(frequency, limit, FREQUENCY);
    }

    private static Outcome heat(Judgement j, List<BrokenBridge> all) {
        Alternator stated = j.design().alternator();
        double resistance = j.at("/alternator/thermal-resistance").si(stated.thermalResistance());
        BrokenBridge hottest = Worst.last(
                all, broken -> SettledWinding.behind(j.solved(), broken, resistance), SettledWinding.coolestFirst());
        Spot spot = spot(j, "/alternator/insulation-class", hottest).saying("cool-enough", "too-hot");
        double limit = SettledWinding.limit(spot.given(stated.insulationClass()));
        OptionalDouble settled = SettledWinding.behind(j.solved(), hottest, resistance);
        return SettledWinding.burns(settled)
                ? spot.says("burns")
                : spot.atMost(settled.getAsDouble(), limit, TEMPERATURE);
    }
}
