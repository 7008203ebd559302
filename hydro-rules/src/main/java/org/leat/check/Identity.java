package org.leat.check;

import java.util.Comparator;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/**
 * What makes two outcomes the same finding, over edits and releases.
 *
 * @param rule the rule's id
 * @param path the element by name
 * @param during the case
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Identity(String rule, String path, String during) implements Comparable<Identity> {

    private static final Comparator<Identity> ORDER =
            Comparator.comparing(Identity::rule).thenComparing(Identity::path).thenComparing(Identity::during);

    public Identity {
        if (!path.startsWith("/")) {
            throw new IllegalArgumentException("a path begins with a slash: " + path);
        }
    }

    /** Written out, for it is compared from the first rule on. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Identity that
                && rule.equals(that.rule)
                && path.equals(that.path)
                && during.equals(that.during);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * rule.hashCode() + path.hashCode()) + during.hashCode();
    }

    @Override
    public int compareTo(Identity other) {
        return ORDER.compare(this, other);
    }
}
