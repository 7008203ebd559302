package org.leat.check;

import org.apiguardian.api.API;

/** What came of judging, in the words of SARIF 2.1.0 §3.27.9. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public enum Kind {
    /** judged and not held. */
    FAIL("fail"),
    /** could not be judged: something is not known. */
    OPEN("open"),
    /** a person must look. */
    REVIEW("review"),
    /** told, nothing judged. */
    INFORMATIONAL("informational"),
    /** judged and held. */
    PASS("pass"),
    /** the design has nothing for the rule to judge. */
    NOT_APPLICABLE("notApplicable");

    private final String word;

    Kind(String word) {
        this.word = word;
    }

    /** {@return SARIF's word} */
    public String word() {
        return word;
    }

    /** {@return whether a reader must act on it: a failure, an open question or a review} */
    public boolean needsAttention() {
        return this == FAIL || this == OPEN || this == REVIEW;
    }
}
