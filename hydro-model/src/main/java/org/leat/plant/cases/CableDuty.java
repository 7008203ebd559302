package org.leat.plant.cases;

import org.apiguardian.api.API;
import org.leat.electrics.VoltageDrop;
import org.leat.plant.numbers.CableNumbers;

/** The greatest lasting current of a run, as far as the design tells. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public sealed interface CableDuty {

    /** {@return the run} */
    CableNumbers cable();

    /**
     * Something flows.
     *
     * @param cable the run
     * @param current of one core (parallel cores together), A; rms where it alternates
     * @param threePhase whether it is the run from the alternator
     * @param during the case that makes it
     */
    record Carries(CableNumbers cable, double current, boolean threePhase, String during) implements CableDuty {

        /** {@return voltage lost, V: there and back, or between two of three leads, rms} */
        public double drop() {
            return threePhase
                    ? VoltageDrop.threePhase(cable.coreResistance(), current)
                    : VoltageDrop.direct(cable.coreResistance(), current);
        }

        /** {@return power lost in all cores, W} */
        public double lostPower() {
            return threePhase
                    ? VoltageDrop.threePhaseLoss(cable.coreResistance(), current)
                    : VoltageDrop.directLoss(cable.coreResistance(), current);
        }
    }

    /**
     * A field that would tell is not given.
     *
     * @param cable the run
     * @param missing path of the field
     */
    record NotStated(CableNumbers cable, String missing) implements CableDuty {}

    /**
     * Nothing of the design uses the run.
     *
     * @param cable the run
     */
    record NotLoaded(CableNumbers cable) implements CableDuty {}
}
