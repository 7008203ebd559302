package org.leat.check.testing;

import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.Kind;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * One example of a file of examples: a base design, what is changed in it, and what is to be found then. Read with
 * {@link RuleTestKit#examples}. Immutable.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class Example {

    private final Path file;
    private final String rule;
    private final String name;
    private final String why;
    private final Path base;
    private final List<Change> changes;
    private final Set<String> listed;
    private final @Nullable List<Told> expected;

    Example(
            Path file,
            String rule,
            String name,
            String why,
            Path base,
            List<Change> changes,
            Set<String> listed,
            @Nullable List<Told> expected) {
        this.file = file;
        this.rule = rule;
        this.name = name;
        this.why = why;
        this.base = base;
        this.changes = List.copyOf(changes);
        this.listed = Collections.unmodifiableSet(new LinkedHashSet<>(listed));
        this.expected = expected == null ? null : List.copyOf(expected);
    }

    /**
     * One change of the base design.
     *
     * @param path of the place
     * @param value what is put there; null takes out what stands there
     * @param at where it is said
     */
    record Change(String path, Node value, String at) {}

    /** {@return the file that holds the example} */
    public Path file() {
        return file;
    }

    /** {@return the rule that it is an example of; "" in a file that belongs to no rule} */
    public String rule() {
        return rule;
    }

    /** {@return what it is called in its file} */
    public String name() {
        return name;
    }

    /** {@return what it shows} */
    public String why() {
        return why;
    }

    /** {@return what it is called among all: {@code penstock/velocity:fails}} */
    public String id() {
        return (rule.isEmpty() ? String.valueOf(file.getFileName()).replace(".yaml", "") : rule) + ":" + name;
    }

    /** {@return whether it expects a finding of that kind of its own rule} */
    public boolean expects(Kind kind) {
        return expects(rule, kind);
    }

    /** {@return whether it expects a finding of that kind of a rule} */
    public boolean expects(String ruleId, Kind kind) {
        return expected != null
                && expected.stream()
                        .anyMatch(told ->
                                told.rule().equals(ruleId) && told.fact("kind").equals(kind.word()));
    }

    /** {@return the rules whose every finding is expected, its own and those that fail or pass with it; empty for all} */
    public Set<String> listed() {
        return listed;
    }

    Path base() {
        return base;
    }

    List<Change> changes() {
        return changes;
    }

    @Nullable
    List<Told> expected() {
        return expected;
    }

    @Override
    public String toString() {
        return id();
    }
}
