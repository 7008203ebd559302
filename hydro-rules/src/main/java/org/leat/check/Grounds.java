package org.leat.check;

import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/**
 * On what grounds settings change a rule.
 *
 * @param setBy the settings file and line, or a name
 * @param reason why
 * @param person who answers for it; null where nobody is named
 * @param danger whether that person says in so many words that the danger is known
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Grounds(String setBy, String reason, @Nullable String person, boolean danger) {

    /** {@return grounds that name nobody} */
    public static Grounds of(String setBy, String reason) {
        return new Grounds(setBy, reason, null, false);
    }

    /** {@return whether a named person answers for the danger} */
    public boolean answersForDanger() {
        return person != null && danger;
    }
}
