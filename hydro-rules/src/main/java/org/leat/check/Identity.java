package org.leat.check;

import java.util.Comparator;
import org.apiguardian.api.API;

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

    @Override
    public int compareTo(Identity other) {
        return ORDER.compare(this, other);
    }
}
