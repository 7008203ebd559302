package org.leat.pack.protection;

import static org.leat.check.Level.ERROR;
import static org.leat.quantity.QuantityKind.CURRENT;

import java.util.List;
import java.util.Optional;
import org.leat.check.Arg;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.DeviceKind;
import org.leat.pack.kit.Devices;
import org.leat.pack.kit.FieldChanges;

/** Whether each fuse breaks the small overloads too, by itself or with another device in its run. */
final class FullRangeFuse {

    static final Rule RULE = Rule.of("protection/full-range", ERROR, "whether fuses break small overloads too")
            .why(
                    "A fuse made to back up another device, for motors or semiconductors, breaks short circuits alone. At twice its"
                            + " rating it melts slowly and arcs on in its own body, until that bursts and burns.")
            .formula(
                    "least current that it surely breaks ≤ the one that melts it, or a device in the same run that breaks the rest")
            .judged("as built, each fuse of the list of protection")
            .source(
                    "IEC 60269-1: first letter g full range, a back-up; 60269-2 aM from 6.3 I_n, 60269-4 aR by its maker, 60269-6 gPV"
                            + " (from memory)")
            .passes("breaks-all", "{device} breaks every current that melts it.")
            .passes(
                    "backed",
                    "{device} breaks short circuits alone; what is less than {least}, {other} in its run breaks.")
            .fails(
                    "back-up",
                    "{device} is made to back up another device: what is less than {least} melts it slowly, and it does not break that.")
            .notApplicable("none", "Not judged: there is no fuse in the list of protection.")
            .judgeAll(FullRangeFuse::judge)
            .wayOut(
                    "full-range",
                    "A full-range fuse of the same rating for direct current: gG or gPV.",
                    FieldChanges.to(true))
            .build();

    private FullRangeFuse() {}

    private static List<Outcome> judge(Judgement j) {
        return Devices.each(j, device -> device.device().kind() == DeviceKind.FUSE, "none", fuse -> judge(j, fuse));
    }

    private static Outcome judge(Judgement j, Devices.Placed fuse) {
        Spot spot = j.at(fuse.path() + "/full-range").with(fuse.name());
        if (spot.given(fuse.device().fullRange())) {
            return spot.says("breaks-all");
        }
        Spot told = spot.with("least", fuse.surelyOpens(), CURRENT);
        Optional<Devices.Placed> other = Devices.all(j.design()).stream()
                .filter(device -> device.sharesRun(fuse) && breaksAll(device))
                .findFirst();
        return other.isPresent()
                ? told.with(Arg.of("other", other.get().device().name())).says("backed")
                : told.says("back-up");
    }

    private static boolean breaksAll(Devices.Placed device) {
        return device.isBreaker()
                || (device.device().kind() == DeviceKind.FUSE
                        && Boolean.TRUE.equals(device.device().fullRange()));
    }
}
