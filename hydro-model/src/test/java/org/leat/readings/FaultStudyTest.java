package org.leat.readings;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leat.readings.FaultStudy.Taken;

/** A small run of the study whose long one is told in the documentation. */
class FaultStudyTest {

    /** Faults of water, wheel and meter: those of the circuit take a simulator, and are in the long run. */
    private static final List<FaultKind> QUICK = List.of(
            FaultKind.SCREEN_BLOCKED,
            FaultKind.PIPE_PINCHED,
            FaultKind.AIR_IN_PIPE,
            FaultKind.HEAD_LOWER,
            FaultKind.NOZZLE_WORN,
            FaultKind.NOZZLE_BLOCKED,
            FaultKind.WHEEL_WORN,
            FaultKind.BEARING_DRAG,
            FaultKind.METER_ON_PHASE);

    @TempDir
    Path folder;

    @Test
    void faults_of_a_plant_built_off_its_drawing_are_named_first_or_in_a_group() {
        FaultStudy study = new FaultStudy("rowan-ghyll", 7, folder);
        int seen = 0;
        int group = 0;
        for (FaultKind kind : QUICK) {
            for (int place = 0; place < study.sizes(kind); place++) {
                FaultTally tally = study.study(kind, place, 6).get(Taken.TWO_SETS);
                seen += tally.seen;
                group += tally.group;
            }
        }
        assertThat(seen).isGreaterThan(75);
        assertThat(group).isGreaterThanOrEqualTo((int) (0.95 * seen));
    }

    @Test
    void plants_built_off_their_drawing_are_not_called_faulty() {
        FaultStudy study = new FaultStudy("ash-gill", 8, folder);
        FaultTally sound = study.study(FaultKind.NOTHING, 0, 60).get(Taken.ONE_SET);
        assertThat(sound.first).isGreaterThanOrEqualTo(57);
    }
}
