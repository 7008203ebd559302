package org.leat.pack.battery;

import java.util.List;
import org.leat.check.Rule;

/** The rules of the battery. */
public final class BatteryRules {

    private BatteryRules() {}

    /** {@return every one} */
    public static List<Rule> all() {
        return List.of(
                BatteryAutonomy.RULE,
                BusVoltageMatch.RULE,
                ChargeCurrent.RULE,
                BatteryCycleLife.RULE,
                DepthOfDischarge.RULE,
                Equalise.RULE,
                LeastCurrent.RULE,
                ManagementLimits.RULE,
                BatteryManagementOpens.RULE,
                NeverFull.RULE,
                SparkDistance.RULE,
                Strings.RULE,
                TemperatureWindow.RULE,
                BatteryVentilation.RULE);
    }
}
