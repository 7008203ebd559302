package org.leat.pack.intake;

import static org.leat.check.Level.WARNING;
import static org.leat.quantity.Quantities.m;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.SPEED;

import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.pack.kit.DesignParts;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Running;
import org.leat.plant.duties.IntakeFlow;

/** Depth of water over the pipe's inlet against the vortex that draws air. */
final class InletSubmergence {

    private static final String PATH = "/intake/submergence";

    static final Rule RULE = Rule.of("intake/submergence", WARNING, "depth of water over the pipe's inlet")
            .why(
                    "Over a shallow inlet the water spins a hole down to the pipe. The air it draws gathers at high points,"
                            + " spits from the nozzle and takes power.")
            .formula("greatest of: C V √D (Gordon, water from the side); D (1 + 2.3 Fr) − D/2; D (0.5 + 2 Fr) − D/2;"
                    + " Fr = V/√(g D)")
            .judged("running on the nozzle set with most flow, at the lowest water level")
            .source(
                    "Gordon, Water Power, April 1970; ANSI/HI 9.8; Knauss, Swirling Flow Problems at Intakes, 1987 (from memory)")
            .passes("deep-enough", "{value} of water stands over the inlet; {limit} keeps air out at {velocity}.")
            .fails(
                    "too-shallow",
                    "{value} of water stands over the inlet; {limit} is needed to keep air out at {velocity}.")
            .judge(InletSubmergence::judge)
            .wayOut("deeper", "The inlet {depth:m} below the lowest water level.", InletSubmergence::deeper)
            .build();

    private InletSubmergence() {}

    private static Outcome judge(Judgement j) {
        double depth = j.at("/intake").si(PATH, DesignParts.intake(j).submergence());
        Running running = Worst.most(j.solved().running(), InletSubmergence::velocity);
        double velocity = velocity(running);
        double least =
                IntakeFlow.leastSubmergence(j.numbers().penstock().sections().get(0), velocity);
        return j.at(PATH).during(running).with("velocity", velocity, SPEED).atLeast(depth, least, LENGTH);
    }

    private static double velocity(Running running) {
        return running.water().sections().get(0).velocity();
    }

    private static Stream<Change> deeper(Judgement j, Outcome.Fail failure) {
        double depth = Math.ceil(failure.limit() * 20 - 1e-9) / 20;
        return Stream.of(Change.of(PATH, m(depth)).with("depth", depth, LENGTH));
    }
}
