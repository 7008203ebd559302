package org.leat.plant;

import org.leat.design.Alternative;
import org.leat.design.Design;
import org.leat.plant.cases.BusSituation;
import org.leat.plant.cases.Cases;
import org.leat.plant.cases.Closing;

/** Asks a plant everything it can be asked. */
final class Everything {

    private Everything() {}

    static int of(Design design) {
        int asked = of(Plant.of(design));
        for (Alternative alternative : design.alternatives()) {
            asked += of(Plant.of(design.variant(alternative)));
        }
        return asked;
    }

    private static int of(Plant plant) {
        Cases cases = plant.solve();
        int asked = cases.running().size()
                + cases.overTheYear().size()
                + cases.shut().nodes().size();
        for (Closing closing : cases.closing()) {
            asked += closing.surge() == null ? 0 : 1;
            for (int i = 0; i < closing.sections().size(); i++) {
                asked += closing.peak(i).rejoined() ? 1 : 0;
            }
        }
        asked += cases.pressureProfile().points().size()
                + cases.loadLost().size()
                + cases.batteryFull().size()
                + cases.batteryRemoved().size()
                + cases.managementOpens().size()
                + cases.dumpLost().size()
                + cases.broken().size()
                + cases.days().size();
        for (BusSituation situation : cases.busSituations().list()) {
            asked += situation.id().isEmpty() ? 0 : 1;
        }
        return asked + (cases.touchVoltage() == null ? 0 : 1);
    }
}
