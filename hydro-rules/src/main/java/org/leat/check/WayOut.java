package org.leat.check;

import java.util.List;
import java.util.OptionalDouble;
import org.apiguardian.api.API;
import org.leat.design.PlantPart;

/**
 * A way out of a failure, found by the engine: its edits were carried out, the plant solved and the rule asked again.
 *
 * @param message what to do; one of the rule's texts
 * @param edits the design with these is free of the failure; empty for advice that is no edit
 * @param gain battery-side watts won (negative: lost) with the nozzles open as built; empty where it does not apply
 * @param onHand parts that it would change and that the design says are bought or built already
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record WayOut(Message message, List<Edit> edits, OptionalDouble gain, List<PlantPart> onHand) {

    public WayOut {
        edits = List.copyOf(edits);
        onHand = List.copyOf(onHand);
    }

    /** A way out that changes nothing of what is on hand. */
    public WayOut(Message message, List<Edit> edits, OptionalDouble gain) {
        this(message, edits, gain, List.of());
    }

    /** {@return the same, changing what is on hand already} */
    WayOut changing(List<PlantPart> parts) {
        return new WayOut(message, edits, gain, parts);
    }

    /** {@return the same, told by other edits} */
    public WayOut with(List<Edit> others) {
        return new WayOut(message, others, gain, onHand);
    }

    /**
     * A way out that takes a failure away and brings another as bad: no way out, but worth knowing where there is no other.
     *
     * @param way what was tried
     * @param brings the rule that fails then
     */
    public record RejectedChange(WayOut way, String brings) {}
}
