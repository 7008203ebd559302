package org.leat.report;

import org.jspecify.annotations.Nullable;
import org.leat.check.Finding;

/** That and why a finding does not count. */
final class SetAside {

    private SetAside() {}

    /** {@return by whose word a finding does not count, or that a baseline knows it; null where it counts} */
    static @Nullable String of(Finding finding) {
        return finding.counts() ? null : "does not count: " + SuppressionText.of(finding);
    }
}
