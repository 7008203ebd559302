package org.leat.pack.dump;

import static org.leat.check.Level.ERROR;
import static org.leat.check.NamedLimit.Safer.HIGHER;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.Quantities.amps;
import static org.leat.quantity.Quantities.volts;
import static org.leat.quantity.QuantityKind.CURRENT;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.measure.quantity.ElectricPotential;
import org.jspecify.annotations.Nullable;
import org.leat.check.Arg;
import org.leat.check.Change;
import org.leat.check.Change.Changes;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.DeviceKind;
import org.leat.design.DumpLoad;
import org.leat.design.Place;
import org.leat.design.ProtectiveDevice;
import org.leat.pack.kit.BusNode;
import org.leat.pack.kit.ChangesForText;
import org.leat.pack.kit.Conductors;
import org.leat.pack.kit.DeviceSizes;
import org.leat.pack.kit.Devices;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.HighestBusVoltage;
import org.leat.pack.kit.RunCapacity;
import org.leat.pack.kit.Runs;
import org.leat.pack.kit.StandardSizes;
import org.leat.plant.cases.CableDuty;
import org.leat.plant.loads.DeviceRatings;

/** Fuse or breaker of the dump load's branch. */
final class BranchProtection {

    private static final Changes VOLTAGES =
            FieldChanges.raised("V", ElectricPotential.class, 32, 58, 80, 125, 160, 250, 440, 500, 750, 1000);

    static final Rule RULE = Rule.of("dump/branch-protection", ERROR, "fuse or breaker of the dump load's branch")
            .why(
                    "The dump load takes its current day and night as long as the battery is full. A fuse as large as that current"
                            + " tires and opens; one too large lets the cable burn; one for alternating current burns on.")
            .formula(
                    "factor · V/R_cold ≤ I_n ≤ greatest rating that protects the cable; rated for the highest direct voltage")
            .judged("battery full, the nozzle set with the highest voltage; its opening is judged by dump/lost")
            .source(
                    "NEC 210.20(A) and 215.3: loads of three hours and more (read in a maker's bulletin); IEC 60364 has no such rule")
            .source("IEC 60364-4-43 clause 433.1")
            .source(COMMON_PRACTICE)
            .limit("factor", RATIO, 1.25, "", "NEC 210.20(A) and 215.3", HIGHER)
            .passes(
                    "fits",
                    "The dump load draws {current} through {device} of {value}; its cable is protected by {limit}.")
            .passes("breaks", "The bus reaches {value} ({cause}); the fuse of the dump load is made for {limit} d.c.")
            .fails(
                    "too-small",
                    "The dump load draws {current} day and night through {device} of {value}; it needs {limit} or it opens, and"
                            + " the dump load is lost.")
            .fails(
                    "too-large",
                    "The dump load's cable burns before {device} of {value} opens: {limit} protects it ({current} flows).")
            .fails(
                    "cable-too-thin",
                    "No rating fits the dump load's branch: {current} flows day and night through {device} of {value}, and"
                            + " none that is made is large enough for that and still protects the cable ({protecting}).")
            .fails("too-low", "The bus reaches {value} ({cause}); the fuse of the dump load is made for {limit} d.c.")
            .fails("unprotected", "The dump load's branch has neither fuse nor breaker: nothing protects its cable.")
            .notApplicable("none", DumpLoads.NONE)
            .judgeAll(BranchProtection::judge)
            .wayOut(
                    "larger",
                    "One of {rating} for direct current.",
                    ChangesForText.only("too-small", DeviceSizes::larger))
            .wayOut(
                    "smaller",
                    "One of {rating} for direct current.",
                    ChangesForText.only("too-large", DeviceSizes::smaller))
            .wayOut(
                    "thicker",
                    "One of {rating} for direct current, and conductors of {area:mm²}.",
                    ChangesForText.only("cable-too-thin", BranchProtection::withThicker))
            .leastWayOut("higher", "A fuse for {rating} d.c.", ChangesForText.only("too-low", VOLTAGES))
            .wayOut(
                    "add-fuse",
                    "A fuse of {rating} for {voltage} d.c.",
                    ChangesForText.only("unprotected", BranchProtection::newFuse))
            .build();

    private BranchProtection() {}

    /** What protects the branch: a device of the list of protection, or the fuse named with the dump load. */
    private record Branch(String path, double rating, DeviceKind kind, boolean listed, Arg name) {}

    private static List<Outcome> judge(Judgement j) {
        DumpLoad dump = j.design().dumpLoad();
        if (dump == null) {
            return List.of(j.at("/dump-load").says("none"));
        }
        j.solved();
        Devices.Placed placed = placed(j);
        List<Supplier<Outcome>> questions = new ArrayList<>();
        questions.add(() -> rating(j, dump, placed));
        if (placed == null && dump.fuse() != null) {
            // the direct voltage of a device of the list is judged by protection/dc-rated
            questions.add(() -> voltage(j, dump));
        }
        return j.all(questions);
    }

    private static Devices.@Nullable Placed placed(Judgement j) {
        return Devices.all(j.design()).stream()
                .filter(device -> device.opens() && device.joins(Place.DUMP_LOAD))
                .findFirst()
                .orElse(null);
    }

    private static Outcome rating(Judgement j, DumpLoad dump, Devices.@Nullable Placed placed) {
        List<ProtectiveDevice> told = j.design().protection();
        if (dump.fuse() == null && told != null && told.isEmpty()) {
            return j.at("/dump-load/fuse").says("unprotected");
        }
        Branch branch = branch(j.at("/dump-load/fuse"), dump, placed);
        double current = DumpLoads.current(j);
        double least = branch.listed() ? current : j.limit("factor").value() * current;
        Spot spot = j.at(branch.path())
                .during(DumpLoads.hardest(j))
                .with("current", current, CURRENT)
                .with(branch.name());
        if (branch.rating() < least) {
            // where the laying is not told, that a device is too small is known all the same
            OptionalDouble protecting =
                    j.answered(() -> OptionalDouble.of(greatest(j, spot, branch)), open -> OptionalDouble.empty());
            if (protecting.isEmpty()) {
                return spot.saying("fits", "too-small").atLeast(branch.rating(), least, CURRENT);
            }
            return spot.with("protecting", protecting.getAsDouble(), CURRENT)
                    .saying("fits", fits(least, protecting.getAsDouble()) ? "too-small" : "cable-too-thin")
                    .atLeast(branch.rating(), least, CURRENT);
        }
        double greatest = greatest(j, spot, branch);
        return spot.with("protecting", greatest, CURRENT)
                .saying("fits", fits(least, greatest) ? "too-large" : "cable-too-thin")
                .atMost(branch.rating(), greatest, CURRENT);
    }

    private static boolean fits(double least, double greatest) {
        return DeviceSizes.from(least).anyMatch(rating -> rating <= greatest);
    }

    /** The greatest rating that protects the cable of the branch, A. */
    private static double greatest(Judgement j, Spot spot, Branch branch) {
        CableDuty duty = spot.given(
                "/cables",
                j.solved().cableDuties().stream()
                        .filter(d -> d.cable().joins(Place.DUMP_LOAD))
                        .findFirst()
                        .orElse(null));
        double capacity = RunCapacity.capacity(j, spot, RunCapacity.carries(spot, duty));
        return DeviceRatings.greatestProtecting(branch.kind(), branch.rating(), capacity);
    }

    private static Branch branch(Spot spot, DumpLoad dump, Devices.@Nullable Placed placed) {
        if (placed == null) {
            return new Branch(
                    spot.path(),
                    spot.si(dump.fuse()),
                    DeviceKind.FUSE,
                    false,
                    Arg.of("device", "the fuse of its branch"));
        }
        return new Branch(
                placed.ratingPath(),
                placed.rating(),
                placed.device().kind(),
                Boolean.TRUE.equals(placed.device().listedAtFullLoad()),
                placed.name());
    }

    private static Outcome voltage(Judgement j, DumpLoad dump) {
        HighestBusVoltage highest = HighestBusVoltage.of(j.solved(), BusNode.of(dump));
        return j.at("/dump-load/fuse-direct-voltage")
                .during(highest.situation())
                .with(Arg.phrase("cause", highest.cause()))
                .saying("breaks", "too-low")
                .atMost(highest.volts(), dump.fuseDirectVoltage(), VOLTAGE);
    }

    private static Stream<Change> withThicker(Judgement j, Outcome.Fail failure) {
        return DeviceSizes.from(j.limit("factor").value() * DumpLoads.current(j))
                .limit(1)
                .flatMap(rating -> Runs.joining(j.design(), Place.DUMP_LOAD)
                        .flatMap(path -> Conductors.thicker(j.design(), path + "/conductor/area"))
                        .map(thicker ->
                                thicker.and(failure.path(), amps(rating)).with("rating", rating, CURRENT)));
    }

    private static Stream<Change> newFuse(Judgement j, Outcome.Fail failure) {
        double least = j.limit("factor").value() * DumpLoads.current(j);
        HighestBusVoltage highest =
                HighestBusVoltage.of(j.solved(), BusNode.of(j.design().dumpLoad()));
        return StandardSizes.volts(highest.volts()).stream()
                .boxed()
                .flatMap(volts -> DeviceSizes.from(least)
                        .limit(2)
                        .map(rating -> DeviceSizes.rated(failure.path(), rating)
                                .and("/dump-load/fuse-direct-voltage", volts(volts))
                                .with("voltage", volts, VOLTAGE)));
    }
}
