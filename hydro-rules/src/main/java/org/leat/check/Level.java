package org.leat.check;

import org.apiguardian.api.API;

/** How much a failure matters, in the words of SARIF 2.1.0 §3.27.10; the order is least to worst. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public enum Level {
    /** worth knowing. */
    NOTE("note"),
    /** wasteful, short-lived or outside good practice. */
    WARNING("warning"),
    /** someone can be hurt or something breaks. */
    ERROR("error");

    private final String word;

    Level(String word) {
        this.word = word;
    }

    /** {@return SARIF's word} */
    public String word() {
        return word;
    }
}
