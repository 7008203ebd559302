package org.leat.design;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One stream-powered battery plant, or one being planned.
 *
 * @param format version of the file format
 * @param name what the plant is called
 * @param notes free words for whoever reads the file next
 * @param parts parts files this file takes parts from, relative to it
 * @param site stream, head and weather
 * @param intake where the water is taken
 * @param penstock pipe or hose from intake to nozzles
 * @param nozzles nozzles on hand and those open
 * @param runner wheel the jets drive
 * @param alternator permanent-magnet machine on the runner's shaft
 * @param rectifier three-phase diode bridge
 * @param cables runs between the parts
 * @param regulator what limits the battery's voltage
 * @param dumpLoad resistor that takes what the battery does not
 * @param battery battery at the end of the bus
 * @param inverter makes alternating current from the battery
 * @param loads what is run from the plant
 * @param protection fuses, breakers and switches
 * @param safeguards guards, earthing and means to stop, as built
 * @param alternatives other choices for whole parts, checked beside this one
 * @param suppressions findings that do not count by someone's word
 */
@About("One stream-powered battery plant, or one being planned")
public record Design(
        @About("version of the file format") @Limits(atLeast = 1, atMost = 1)
        int format,

        @About("what the plant is called") String name,

        @About("free words for whoever reads the file next") @Nullable
        String notes,

        @About("parts files this file takes parts from, relative to it")
        List<String> parts,

        @About("stream, head and weather") Site site,
        @About("where the water is taken") @Nullable Intake intake,
        @About("pipe or hose from intake to nozzles") Penstock penstock,
        @About("nozzles on hand and those open") NozzleSet nozzles,
        @About("wheel the jets drive") @Nullable Runner runner,

        @About("permanent-magnet machine on the runner's shaft")
        Alternator alternator,

        @About("three-phase diode bridge") @Nullable Rectifier rectifier,
        @About("runs between the parts") List<Cable> cables,

        @About("what limits the battery's voltage") @Nullable
        ChargeRegulator regulator,

        @About("resistor that takes what the battery does not") @Nullable
        DumpLoad dumpLoad,

        @About("battery at the end of the bus") BatteryBank battery,

        @About("makes alternating current from the battery") @Nullable
        Inverter inverter,

        @About("what is run from the plant") List<Load> loads,
        @About("fuses, breakers and switches") List<ProtectiveDevice> protection,

        @About("guards, earthing and means to stop, as built") @Nullable
        Safeguards safeguards,

        @About("other choices for whole parts, checked beside this one")
        List<Alternative> alternatives,

        @About("findings that do not count by someone's word")
        List<ExcusedFinding> suppressions) {

    public Design {
        parts = List.copyOf(parts);
        cables = List.copyOf(cables);
        loads = List.copyOf(loads);
        protection = List.copyOf(protection);
        alternatives = List.copyOf(alternatives);
        suppressions = List.copyOf(suppressions);
        Demand.limits(
                        Design.class,
                        format,
                        name,
                        notes,
                        parts,
                        site,
                        intake,
                        penstock,
                        nozzles,
                        runner,
                        alternator,
                        rectifier,
                        cables,
                        regulator,
                        dumpLoad,
                        battery,
                        inverter,
                        loads,
                        protection,
                        safeguards,
                        alternatives,
                        suppressions)
                .hold();
    }

    /** {@return this design with the parts of one of its alternatives, and without alternatives of its own} */
    public Design variant(Alternative a) {
        return new Design(
                format,
                name + ": " + a.name(),
                notes,
                parts,
                or(a.site(), site),
                a.intake() == null ? intake : a.intake(),
                or(a.penstock(), penstock),
                or(a.nozzles(), nozzles),
                a.runner() == null ? runner : a.runner(),
                or(a.alternator(), alternator),
                a.rectifier() == null ? rectifier : a.rectifier(),
                a.cables().isEmpty() ? cables : a.cables(),
                a.regulator() == null ? regulator : a.regulator(),
                a.dumpLoad() == null ? dumpLoad : a.dumpLoad(),
                or(a.battery(), battery),
                a.inverter() == null ? inverter : a.inverter(),
                loads,
                protection,
                safeguards,
                List.of(),
                suppressions);
    }

    private static <T> T or(@Nullable T other, T own) {
        return other == null ? own : other;
    }
}
