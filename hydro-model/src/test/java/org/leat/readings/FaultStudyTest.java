package org.leat.readings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.leat.readings.FaultStudy.Taken;
import org.leat.readings.FaultStudy.Tally;

/** A small run of the study whose long one is printed in the documentation. */
class FaultStudyTest {

    private static final int DRAWS = 2;

    private static Tally faults(FaultStudy study, Taken taken) {
        Tally all = new Tally();
        for (FaultKind kind : study.table().kinds()) {
            if (kind != FaultKind.NOTHING) {
                double[] sizes = FaultStudy.sizes(
                        kind, new FaultyPlants(study.table().expectations().plant()));
                for (double size : sizes) {
                    all.add(study.study(kind, size, sizes.length, taken, DRAWS));
                }
            }
        }
        return all;
    }

    @Test
    void faults_of_a_plant_built_off_its_drawing_are_named_first_or_in_a_group() {
        FaultStudy study = new FaultStudy(DemoPlants.of("rowan-ghyll"), 7);
        Tally all = faults(study, Taken.TWO_SETS);
        int visible = all.draws - all.invisible;
        assertThat(visible).isGreaterThan(all.draws / 2);
        assertThat(all.group).isGreaterThanOrEqualTo((int) (0.95 * visible));
    }

    @Test
    void plants_built_off_their_drawing_are_not_called_faulty() {
        FaultStudy study = new FaultStudy(DemoPlants.of("ash-gill"), 8);
        Tally sound = study.study(FaultKind.NOTHING, 1, 1, Taken.TWO_SETS, 60);
        assertThat(sound.first).isGreaterThanOrEqualTo(54);
    }
}
