package org.leat.pack;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apiguardian.api.API;
import org.leat.check.Rule;
import org.leat.check.RulePack;
import org.leat.pack.alternator.AlternatorRules;
import org.leat.pack.battery.BatteryRules;
import org.leat.pack.bus.BusRules;
import org.leat.pack.cable.CableRules;
import org.leat.pack.dump.DumpRules;
import org.leat.pack.intake.IntakeRules;
import org.leat.pack.inverter.InverterRules;
import org.leat.pack.loads.LoadsRules;
import org.leat.pack.nozzle.NozzleRules;
import org.leat.pack.penstock.PenstockRules;
import org.leat.pack.plant.PlantRules;
import org.leat.pack.plausibility.PlausibilityRules;
import org.leat.pack.protection.ProtectionRules;
import org.leat.pack.rectifier.RectifierRules;
import org.leat.pack.regulator.RegulatorRules;
import org.leat.pack.runner.RunnerRules;
import org.leat.pack.site.SiteRules;

/** The rules that come with the checker. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class BuiltInPack implements RulePack {

    private static final List<Rule> RULES = Stream.of(
                    AlternatorRules.all(),
                    BatteryRules.all(),
                    BusRules.all(),
                    CableRules.all(),
                    DumpRules.all(),
                    IntakeRules.all(),
                    InverterRules.all(),
                    LoadsRules.all(),
                    NozzleRules.all(),
                    PenstockRules.all(),
                    PlantRules.all(),
                    PlausibilityRules.all(),
                    ProtectionRules.all(),
                    RectifierRules.all(),
                    RegulatorRules.all(),
                    RunnerRules.all(),
                    SiteRules.all())
            .flatMap(List::stream)
            .sorted(Comparator.comparing(Rule::id))
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
    public Map<String, String> examples() {
        return Examples.of(RULES.stream().map(Rule::id).toList());
    }
}
