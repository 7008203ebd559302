package org.leat.pack;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.leat.check.LegacyRule;
import org.leat.check.Rule;
import org.leat.check.RulePack;
import org.leat.check.TextFile;

/** The rules that come with the checker. */
public final class BuiltInPack implements RulePack {

    /** One file of texts for each component, named like the first part of its rules' ids. */
    private static final List<String> COMPONENTS = List.of("alternator", "phrases", "plant", "rectifier", "runner");

    private static final List<LegacyRule> LEGACY = List.of(
            new AlternatorCutIn(),
            new AlternatorFrequency(),
            new AlternatorHoldsRunner(),
            new AlternatorLoadedEfficiency(),
            new AlternatorMagnetTemperature(),
            new AlternatorOverspeed(),
            new AlternatorPhasesAlike(),
            new AlternatorStarOrDelta(),
            new AlternatorTorquePeak(),
            new AlternatorWetElectrics(),
            new AlternatorWindingCurrent(),
            new AlternatorWindingTemperature(),
            new PlantEfficiencyChain(),
            new PlantLeftOnTheTable(),
            new PlantMaintenancePlan(),
            new PlantRestart(),
            new PlantStopSafely(),
            new RectifierCapacitor(),
            new RectifierCurrent(),
            new RectifierDropShare(),
            new RectifierJunctionTemperature(),
            new RectifierReverseVoltage(),
            new RunnerBearingLife(),
            new RunnerBucketCount(),
            new RunnerBucketRoot(),
            new RunnerGuard(),
            new RunnerPitchAgainstJet(),
            new RunnerPrintedMaterial(),
            new RunnerRunawayStrength(),
            new RunnerSpeedRatio(),
            new RunnerTailwater());

    private static final List<Rule> RULES = java.util.stream.Stream.of(
                    LEGACY.stream().map(Rule::legacy),
                    org.leat.pack.battery.BatteryRules.all().stream(),
                    org.leat.pack.bus.BusRules.all().stream(),
                    org.leat.pack.cable.CableRules.all().stream(),
                    org.leat.pack.dump.DumpRules.all().stream(),
                    org.leat.pack.intake.IntakeRules.all().stream(),
                    org.leat.pack.inverter.InverterRules.all().stream(),
                    org.leat.pack.loads.LoadsRules.all().stream(),
                    org.leat.pack.nozzle.NozzleRules.all().stream(),
                    org.leat.pack.penstock.PenstockRules.all().stream(),
                    org.leat.pack.protection.ProtectionRules.all().stream(),
                    org.leat.pack.regulator.RegulatorRules.all().stream(),
                    org.leat.pack.site.SiteRules.all().stream())
            .flatMap(s -> s)
            .sorted(java.util.Comparator.comparing(Rule::id))
            .toList();

    /** The rules, always the same. */
    public BuiltInPack() {}

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

    @Override
    public Map<String, String> examples() {
        return Examples.of(RULES.stream().map(Rule::id).toList());
    }
}
