package org.leat.pack.plant;

import java.util.Locale;
import org.leat.check.Arg.Worded;
import org.leat.plant.solved.EnergyAccount;

/** Where power is lost on the way to a stage of {@link EnergyAccount}, in words. */
enum LossStage implements Worded {
    WATER("before the intake"),
    NOZZLE("between intake and nozzles"),
    JET("in the nozzles"),
    SHAFT("in the wheel"),
    AIR_GAP("in iron and friction of the alternator"),
    TERMINALS("in the alternator's copper"),
    DIRECT_CURRENT("in the bridge and the leads to it"),
    REGULATOR("in the cable to the regulator"),
    BATTERY("in the regulator and the cable to the battery"),
    STORED("in the battery itself");

    private final String text;

    LossStage(String text) {
        this.text = text;
    }

    static LossStage of(EnergyAccount.Stage stage) {
        return valueOf(stage.name());
    }

    @Override
    public String key() {
        return "stage." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    @Override
    public String text() {
        return text;
    }
}
