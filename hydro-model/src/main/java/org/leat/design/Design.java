package org.leat.design;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** One stream-powered battery plant, or one being planned. */
@API(status = API.Status.STABLE, since = "0.1")
@About("One stream-powered battery plant, or one being planned")
@RecordBuilder
@RecordBuilder.Options(
        enableWither = false,
        useImmutableCollections = true,
        allowNullableCollections = true,
        addStaticBuilder = false,
        builderMode = RecordBuilder.BuilderMode.STANDARD,
        fileComment = "Written by the build from the record.")
public record Design(
        @About("version of the file format") @Limits(atLeast = 1, atMost = 1)
        int format,

        @About("what the plant is called") String name,

        @About("free words for whoever reads the file next") @CanBeAbsent @Nullable
        String notes,

        @About("parts files this file takes parts from, relative to it") @Limits(mostItems = MOST_PARTS_FILES)
        List<String> parts,

        @About("stream, head and weather") Site site,

        @About("where the water is taken") @CanBeAbsent @Nullable
        Intake intake,

        @About("pipe or hose from intake to nozzles") Penstock penstock,
        @About("nozzles on hand and those open") NozzleSet nozzles,

        @About("wheel the jets drive") @CanBeAbsent @Nullable
        Runner runner,

        @About("permanent-magnet machine on the runner's shaft")
        Alternator alternator,

        @About("three-phase diode bridge") @CanBeAbsent @Nullable
        Rectifier rectifier,

        @About("runs between the parts") @Limits(mostItems = 50)
        List<Cable> cables,

        @About("what limits the battery's voltage") @CanBeAbsent @Nullable
        ChargeRegulator regulator,

        @About("resistor that takes what the battery does not") @CanBeAbsent @Nullable
        DumpLoad dumpLoad,

        @About("battery at the end of the bus") BatteryBank battery,

        @About("makes alternating current from the battery") @CanBeAbsent @Nullable
        Inverter inverter,

        @About("what is run from the plant") @Limits(mostItems = 500)
        List<Load> loads,

        @About("fuses, breakers and switches; an empty list says that there are none")
        @Limits(mostItems = 200)
        @CanBeAbsent
        @Nullable
        List<ProtectiveDevice> protection,

        @About("guards, earthing and means to stop, as built") @CanBeAbsent @Nullable
        Safeguards safeguards,

        @About("parts bought or built already: what would replace one of them is advice, never written")
        @Limits(mostItems = 12)
        List<PlantPart> onHand,

        @About("other choices for whole parts, checked beside this one") @Limits(mostItems = 40)
        List<Alternative> alternatives,

        @About("findings that do not count by someone's word") @Limits(mostItems = 500)
        List<ExcusedFinding> suppressions) {

    /** Parts files at most. */
    public static final int MOST_PARTS_FILES = 20;

    public Design {
        parts = orNone(parts);
        cables = orNone(cables);
        loads = orNone(loads);
        protection = protection == null ? null : List.copyOf(protection);
        onHand = orNone(onHand);
        alternatives = orNone(alternatives);
        suppressions = orNone(suppressions);
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
                        onHand,
                        alternatives,
                        suppressions)
                .hold();
    }

    /** {@return fuses, breakers and switches that are told; none both where there are none and where nothing is said of them} */
    public List<ProtectiveDevice> devices() {
        return protection == null ? List.of() : protection;
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
                onHand,
                List.of(),
                suppressions);
    }

    /** A list of this record that its builder was not given is null there, so that a list that can be absent stays so. */
    private static <T> List<T> orNone(@Nullable List<T> list) {
        return list == null ? List.of() : List.copyOf(list);
    }

    private static <T> T or(@Nullable T other, T own) {
        return other == null ? own : other;
    }
}
