package org.leat.choice;

import java.util.List;
import org.apiguardian.api.API;

/**
 * One design at a glance. Immutable. Made by {@link Overviews}.
 *
 * @param verdict whether it is safe to open, and what is left unjudged
 * @param yields what each nozzle set gives, the set open as built first; empty where the plant could not be solved
 * @param causes every failure that counts, those that one change clears together under that change; worst first
 * @param inputs what to tell or measure, that which settles most first
 * @param understood derived numbers that a builder can recognise or doubt
 * @param plan the smallest set of changes found after which no error is left
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Overview(
        SafetyVerdict verdict,
        List<Yield> yields,
        List<Cause> causes,
        List<MissingInput> inputs,
        List<UnderstoodNumber> understood,
        Plan plan) {

    public Overview {
        yields = List.copyOf(yields);
        causes = List.copyOf(causes);
        inputs = List.copyOf(inputs);
        understood = List.copyOf(understood);
    }
}
