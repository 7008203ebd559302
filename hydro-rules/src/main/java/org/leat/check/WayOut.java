package org.leat.check;

import java.util.List;
import java.util.OptionalDouble;
import org.apiguardian.api.API;

/**
 * A way out of a failure, found by the engine: its edits were carried out, the plant solved and the rule asked again.
 *
 * @param message what to do; one of the rule's texts
 * @param edits the design with these is free of the failure; empty for advice that is no edit
 * @param gain battery-side watts won (negative: lost) with the nozzles open as built; empty where it does not apply
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record WayOut(Message message, List<Edit> edits, OptionalDouble gain) {

    public WayOut {
        edits = List.copyOf(edits);
    }
}
