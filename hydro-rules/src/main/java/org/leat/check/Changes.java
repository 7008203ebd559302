package org.leat.check;

import java.util.stream.Stream;
import org.apiguardian.api.API;

/** What may take a failure of a rule away, in the order in which it is to be tried. Meant to be implemented. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@FunctionalInterface
public interface Changes {

    /**
     * {@return the changes to try}
     *
     * @param judgement the same as was judged
     * @param failure one of the rule's
     */
    Stream<Change> of(Judgement judgement, Outcome.Fail failure);
}
