package org.leat.check;

import java.util.List;
import java.util.Map;
import org.apiguardian.api.API;

/** Rules that come together. Meant to be implemented, also outside this project. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public interface RulePack {

    /** {@return what the pack is called} */
    String name();

    /** {@return its rules, each with an id of its own} */
    List<Rule> rules();

    /**
     * {@return for a rule's page: a piece of a design that fails and what is found in it, in Markdown, by rule id}
     *
     * <p>A rule without one has a page without an example.
     */
    default Map<String, String> examples() {
        return Map.of();
    }
}
