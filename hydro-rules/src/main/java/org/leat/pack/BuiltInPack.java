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
    private static final List<String> COMPONENTS = List.of(
            "alternator",
            "battery",
            "bus",
            "dump",
            "intake",
            "inverter",
            "loads",
            "nozzle",
            "penstock",
            "phrases",
            "plant",
            "rectifier",
            "regulator",
            "runner",
            "site");

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
            new BatteryAutonomy(),
            new BatteryBusVoltageMatch(),
            new BatteryChargeCurrent(),
            new BatteryCycleLife(),
            new BatteryDepthOfDischarge(),
            new BatteryEqualise(),
            new BatteryLeastCurrent(),
            new BatteryManagementOpens(),
            new BatteryNeverFull(),
            new BatteryStrings(),
            new BatteryTemperatureWindow(),
            new BatteryVentilation(),
            new BusOvervoltage(),
            new DumpAbsorbsAll(),
            new DumpAcSwitch(),
            new DumpElementVoltage(),
            new DumpHeat(),
            new DumpLost(),
            new DumpOwnRating(),
            new DumpSecondLine(),
            new DumpSideOfBridge(),
            new DumpSwitchRating(),
            new IntakeApproachVelocity(),
            new IntakeOpeningAgainstNozzle(),
            new IntakeScreenLoss(),
            new IntakeSettling(),
            new IntakeSubmergence(),
            new IntakeVent(),
            new InverterContinuous(),
            new InverterCutOff(),
            new InverterInputWindow(),
            new InverterStandingLoss(),
            new InverterSurge(),
            new LoadsEnergyBalance(),
            new LoadsPackOnBus(),
            new LoadsResidualCurrent(),
            new LoadsVehicleCharging(),
            new NozzleJetAgainstBucket(),
            new NozzleJetsInterfere(),
            new NozzleSetCoversStream(),
            new NozzleStepSize(),
            new NozzleWorn(),
            new PenstockAbruptSteps(),
            new PenstockAirPockets(),
            new PenstockBelowAtmosphere(),
            new PenstockCavitation(),
            new PenstockClosingTime(),
            new PenstockCollapse(),
            new PenstockExpansion(),
            new PenstockFittingsRating(),
            new PenstockFrictionShare(),
            new PenstockHoseRating(),
            new PenstockOversized(),
            new PenstockStaticPressure(),
            new PenstockStiffInlet(),
            new PenstockSunlight(),
            new PenstockSurgePressure(),
            new PenstockTemperature(),
            new PenstockThrust(),
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
            new RegulatorCurrent(),
            new RegulatorKindForHydro(),
            new RegulatorSetPoints(),
            new RegulatorTemperatureCompensation(),
            new RegulatorWindow(),
            new RunnerBearingLife(),
            new RunnerBucketCount(),
            new RunnerBucketRoot(),
            new RunnerGuard(),
            new RunnerPitchAgainstJet(),
            new RunnerPrintedMaterial(),
            new RunnerRunawayStrength(),
            new RunnerSpeedRatio(),
            new RunnerTailwater(),
            new SiteFlowAvailable(),
            new SiteFreezing(),
            new SiteHeadConsistent(),
            new SiteKeptFlow(),
            new SiteMeasurementSpread());

    private static final List<Rule> RULES = java.util.stream.Stream.of(
                    LEGACY.stream().map(Rule::legacy), org.leat.pack.cable.CableRules.all().stream(),
                    org.leat.pack.penstock.PenstockRules.all().stream(),
                    org.leat.pack.protection.ProtectionRules.all().stream())
            .flatMap(s -> s)
            .sorted(java.util.Comparator.comparing(Rule::id))
            .toList();

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
