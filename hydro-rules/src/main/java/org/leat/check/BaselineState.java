package org.leat.check;

import org.apiguardian.api.API;

/** How a finding stands to the baseline, in the words of SARIF 2.1.0 §3.27.24. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public enum BaselineState {
    /** not in the baseline, or worse than there. */
    NEW("new"),
    /** in the baseline, the same. */
    UNCHANGED("unchanged"),
    /** in the baseline, told differently there but no better. */
    UPDATED("updated"),
    /** in the baseline only. */
    ABSENT("absent");

    private final String word;

    BaselineState(String word) {
        this.word = word;
    }

    /** {@return SARIF's word} */
    public String word() {
        return word;
    }
}
