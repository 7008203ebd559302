package org.leat.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.leat.check.Settings.FailOn;
import org.leat.check.Settings.Grounds;
import org.leat.check.Settings.LevelChange;
import org.leat.check.Settings.LimitChange;
import org.leat.check.Settings.PackUse;
import org.leat.check.Settings.RuleSettings;
import org.leat.check.Settings.Switch;
import org.leat.file.Position;

class SettingsTest {

    private static final List<String> RULES = List.of("a/one", "a/two", "b/three");

    @Provide
    Arbitrary<Settings> settings() {
        Arbitrary<String> files = Arbitraries.of("national.yaml:3", "firm.yaml:9", "project.yaml:4");
        Arbitrary<RuleSettings> rule = Combinators.combine(
                        Arbitraries.maps(
                                        Arbitraries.of("least", "most"),
                                        Arbitraries.doubles().between(0, 9))
                                .ofMaxSize(2),
                        Arbitraries.of(Level.values()).injectNull(0.4),
                        Arbitraries.of(true, false).injectNull(0.4),
                        files)
                .as((limits, level, off, by) -> {
                    Map<String, LimitChange> changes = new TreeMap<>();
                    limits.forEach((name, value) -> changes.put(name, new LimitChange(value, Grounds.of(by, "why"))));
                    Grounds grounds = Grounds.of(by, "why");
                    return new RuleSettings(
                            changes,
                            level == null ? null : new LevelChange(level, grounds),
                            off == null ? null : new Switch(off, grounds));
                });
        Arbitrary<PackUse> pack =
                Arbitraries.of("p", "q", "r").map(name -> new PackUse(name, Position.startOf("x.yaml")));
        Arbitrary<Suppression> suppression = Arbitraries.of(RULES)
                .map(id ->
                        new Suppression(id, "/", "", "d", "why", null, null, false, Position.startOf("x.yaml"), false));
        return Combinators.combine(
                        Arbitraries.maps(Arbitraries.of(RULES), rule).ofMaxSize(3),
                        Combinators.combine(Arbitraries.of(Level.values()), files)
                                .as(FailOn::new)
                                .injectNull(0.4),
                        pack.list().uniqueElements().ofMaxSize(3),
                        suppression.list().uniqueElements().ofMaxSize(3))
                .as(Settings::new);
    }

    @Property
    void precedence_is_associative(
            @ForAll("settings") Settings near, @ForAll("settings") Settings middle, @ForAll("settings") Settings far) {
        assertThat(near.over(middle).over(far)).isEqualTo(near.over(middle.over(far)));
    }

    @Property
    void nothing_changed_changes_nothing(@ForAll("settings") Settings any) {
        assertThat(any.over(Settings.NONE)).isEqualTo(any);
        assertThat(Settings.NONE.over(any)).isEqualTo(any);
        assertThat(any.over(any)).isEqualTo(any);
    }

    @Property
    void the_nearest_that_speaks_of_a_thing_has_the_say(
            @ForAll("settings") Settings near, @ForAll("settings") Settings far) {
        Settings both = near.over(far);
        for (String id : RULES) {
            RuleSettings n = near.rules().getOrDefault(id, RuleSettings.NONE);
            RuleSettings f = far.rules().getOrDefault(id, RuleSettings.NONE);
            RuleSettings b = both.rules().getOrDefault(id, RuleSettings.NONE);
            assertThat(b.level()).isEqualTo(n.level() == null ? f.level() : n.level());
            assertThat(b.off()).isEqualTo(n.off() == null ? f.off() : n.off());
            for (String limit : List.of("least", "most")) {
                assertThat(b.limits().get(limit))
                        .isEqualTo(n.limits().getOrDefault(limit, f.limits().get(limit)));
            }
        }
    }
}
