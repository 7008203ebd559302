package org.leat.plant.cases;

import org.apiguardian.api.API;

/**
 * The highest voltage that can be touched, and the situation that makes it.
 *
 * @param direct of the bus, V
 * @param directAt id of the situation
 * @param alternating rms between two leads of the alternator, nothing connected, V
 * @param alternatingAt id of the situation
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record TouchVoltage(double direct, String directAt, double alternating, String alternatingAt) {

    static TouchVoltage of(Cases cases) {
        TouchVoltage highest = new TouchVoltage(0, "shut", 0, "shut");
        for (BusSituation situation : cases.onTheBus()) {
            highest =
                    highest.orDirect(Math.max(situation.lastingVoltage(), situation.batteryVoltage()), situation.id());
        }
        for (LoadLost lost : cases.loadLost()) {
            if (lost.lineVoltage() > highest.alternating) {
                highest = new TouchVoltage(highest.direct, highest.directAt, lost.lineVoltage(), lost.id());
            }
        }
        return highest;
    }

    private TouchVoltage orDirect(double voltage, String at) {
        return voltage > direct ? new TouchVoltage(voltage, at, alternating, alternatingAt) : this;
    }
}
