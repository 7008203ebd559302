package org.leat.pack;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.leat.check.Rule;
import org.leat.check.RulePack;
import org.leat.check.TextFile;

/** The rules that come with the checker. */
public final class BuiltInPack implements RulePack {

    /** One file of texts for each component, named like the first part of its rules' ids. */
    private static final List<String> COMPONENTS = List.of(
            "alternator",
            "battery",
            "bus",
            "cable",
            "nozzle",
            "penstock",
            "phrases",
            "protection",
            "rectifier",
            "regulator",
            "runner",
            "site");

    private static final List<Rule> RULES = List.of(
            new AlternatorCutIn(),
            new AlternatorHoldsRunner(),
            new AlternatorOverspeed(),
            new AlternatorWindingCurrent(),
            new BatteryChargeCurrent(),
            new BusOvervoltage(),
            new CableAmpacity(),
            new CableVoltageDrop(),
            new NozzleJetAgainstBucket(),
            new PenstockFrictionShare(),
            new PenstockStaticPressure(),
            new PenstockSurgePressure(),
            new PenstockVelocity(),
            new ProtectionTouchVoltage(),
            new RectifierCurrent(),
            new RectifierReverseVoltage(),
            new RegulatorKindForHydro(),
            new RunnerPitchAgainstJet(),
            new RunnerSpeedRatio(),
            new SiteFlowAvailable());

    @Override
    public String name() {
        return "built-in";
    }

    @Override
    public List<Rule> rules() {
        return RULES;
    }

    @Override
    public Map<String, String> texts() {
        Map<String, String> texts = new LinkedHashMap<>();
        for (String component : COMPONENTS) {
            texts.putAll(TextFile.read(BuiltInPack.class, component + ".properties"));
        }
        return texts;
    }
}
