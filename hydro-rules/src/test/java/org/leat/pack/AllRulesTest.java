package org.leat.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.leat.check.NamedLimit;
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
    void every_limit_has_a_source_and_every_source_is_a_reference_or_common_practice() {
        assertThat(cards()).allSatisfy(card -> {
            List<String> sources = new ArrayList<>(card.sources());
            card.limits().values().stream().map(NamedLimit::source).forEach(sources::add);
            assertThat(sources).allSatisfy(source -> assertThat(source).hasSizeGreaterThan(5));
        });
    }

    @Test
    void every_message_has_a_text_and_its_placeholders_are_the_arguments() {
        Map<String, String> texts = pack.texts();
        cards().forEach(card -> card.messages().forEach((id, arguments) -> {
            String key = card.id() + "." + id;
            assertThat(texts).containsKey(key);
            Set<String> used = new TreeSet<>();
            Matcher m = PLACEHOLDER.matcher(texts.get(key));
            while (m.find()) {
                used.add(m.group(1));
            }
            used.removeAll(COMPARED);
            assertThat(arguments).as(key).containsAll(used);
            assertThat(texts.get(key).replaceAll(PLACEHOLDER.pattern(), ""))
                    .as(key)
                    .doesNotContain("{", "}");
        }));
    }

    @Test
    void no_text_is_left_without_a_message() {
        Set<String> keys = cards().flatMap(c -> c.messages().keySet().stream().map(m -> c.id() + "." + m))
                .collect(Collectors.toSet());
        assertThat(pack.texts().keySet().stream().filter(k -> k.contains("/")))
                .allSatisfy(key -> assertThat(keys).contains(key));
    }

    @Test
    void rules_hold_no_state() {
        assertThat(pack.rules()).allSatisfy(rule -> {
            for (Field field : rule.getClass().getDeclaredFields()) {
                assertThat(Modifier.isStatic(field.getModifiers()) && Modifier.isFinal(field.getModifiers()))
                        .as(rule.id() + ": " + field.getName())
                        .isTrue();
            }
        });
    }
}
