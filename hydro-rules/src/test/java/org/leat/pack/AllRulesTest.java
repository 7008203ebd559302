package org.leat.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.leat.check.NamedLimit;
import org.leat.check.NamedLimit.Safer;
import org.leat.check.Rule;
import org.leat.check.RuleCard;

/** What holds for every rule of the pack. */
class AllRulesTest {

    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([a-zA-Z]+)(?::[^,{}]*)?(?:,[1-6])?}");
    private static final Set<String> COMPARED = Set.of("value", "limit", "margin");

    private final BuiltInPack pack = new BuiltInPack();

    private Stream<RuleCard> cards() {
        return pack.rules().stream().map(Rule::card);
    }

    @Test
    void ids_are_listed_in_order_each_once() {
        List<String> ids = cards().map(RuleCard::id).toList();
        assertThat(ids).isSorted().doesNotHaveDuplicates();
    }

    @Test
    void every_limit_of_a_rule_that_can_hurt_says_which_way_is_safer_and_allows_its_own_value() {
        assertThat(cards())
                .filteredOn(RuleCard::endangers)
                .allSatisfy(card -> assertThat(card.limits().values()).allSatisfy(limit -> {
                    assertThat(limit.safer()).isNotEqualTo(Safer.UNSAID);
                    assertThat(limit.allows(limit.standard())).isTrue();
                    assertThat(limit.isLoosenedBy(limit.standard())).isFalse();
                }));
    }

    @Test
    void every_limit_has_a_source_and_every_source_is_a_reference_or_common_practice() {
        assertThat(cards()).allSatisfy(card -> {
            List<String> sources = new ArrayList<>(card.sources());
            card.limits().values().stream().map(NamedLimit::source).forEach(sources::add);
            assertThat(sources).allSatisfy(source -> assertThat(source).hasSizeGreaterThan(5));
        });
    }
}
