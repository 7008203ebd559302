package org.leat.pack.loads;

import static org.leat.check.Level.WARNING;

import org.leat.check.Rule;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.Inverters;

/** A residual-current device on the alternating side. */
final class ResidualCurrent {

    static final Rule RULE = Rule.of(
                    "loads/residual-current", WARNING, "a residual-current device on the alternating side")
            .warningsHurt()
            .why(
                    "An inverter makes mains voltage out of a battery that is harmless to touch. Without a residual-current device a"
                            + " damaged cord in a wet place kills as at any socket.")
            .formula("stated, with the neutral treated as the device needs it")
            .judged("as built")
            .source("IEC 60364-4-41 clause 411.3.3; the local code goes before")
            .passes(
                    "fitted",
                    "The sockets have a residual-current device; the local code settles its kind and the neutral.")
            .fails("not-fitted", "The sockets have no residual-current device.")
            .notApplicable("none", Inverters.NONE)
            .judge(Inverters.judge(
                    "/inverter/residual-current-device",
                    (j, inverter, spot) -> spot.isSo(inverter.residualCurrentDevice())))
            .wayOut("fit", "A residual-current device of 30 mA, fitted as the local code says.", FieldChanges.to(true))
            .build();

    private ResidualCurrent() {}
}
