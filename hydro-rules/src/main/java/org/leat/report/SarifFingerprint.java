package org.leat.report;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leat.check.Identity;

/**
 * What makes a finding the same in two logs: the design's name, rule, element by name, case. Neither file nor line nor
 * the order of a list, so that it survives edits above, reordering and another file name.
 */
final class SarifFingerprint {

    /** The name under which it stands in a log; a new version where its meaning changes. */
    static final String KEY = "designRuleAndPath/v1";

    private static final String BETWEEN = " | ";

    private SarifFingerprint() {}

    /** A finding of a design. */
    record Read(String design, Identity identity) {}

    static String of(String design, Identity identity) {
        return Stream.of(design, identity.rule(), identity.path(), identity.during())
                .map(part -> part.replace("~", "~0").replace("|", "~4"))
                .collect(Collectors.joining(BETWEEN));
    }

    /** {@return what a fingerprint says; null if it is none} */
    static @Nullable Read read(String fingerprint) {
        List<String> parts = Arrays.stream(fingerprint.split(" \\| ", -1))
                .map(part -> part.replace("~4", "|").replace("~0", "~"))
                .toList();
        return parts.size() == 4 && parts.get(2).startsWith("/")
                ? new Read(parts.get(0), new Identity(parts.get(1), parts.get(2), parts.get(3)))
                : null;
    }
}
