package org.leat.pack.kit;

import java.util.List;
import org.leat.check.Judgement;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.SiteNumbers;
import org.leat.plant.numbers.StreamNumbers.StreamLevel;

/** The flows of the stream over the year. */
public final class StreamFlows {

    private StreamFlows() {}

    /**
     * {@return them, most water first} Open where the stream is not stated, or where its readings give no flow.
     *
     * @param at the element that asks
     */
    public static List<StreamLevel> of(Judgement j, String at) {
        SiteNumbers site = j.numbers().site();
        if (!site.stream().isEmpty()) {
            return site.stream();
        }
        Amount.Unknown reason = site.streamUnknown();
        if (reason != null) {
            j.at(reason.path()).known(reason);
        }
        return j.at(at).given("/site/stream", null);
    }
}
