package org.leat.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.zip.ZipException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PacksTest {

    private static final Duration SOON = Duration.ofMillis(400);

    @TempDir
    Path folder;

    /** A pack of which each part can be replaced by one that misbehaves. */
    private static class Odd implements RulePack {
        Supplier<String> name = () -> "odd";
        Function<Judgement, List<Outcome>> judge = j -> List.of(j.at("/").says("yes"));
        Supplier<List<Rule>> rules = () -> List.of(MadeRule.of("odd/one", j -> judge.apply(j)), sound());

        static Rule sound() {
            return MadeRule.of("odd/two", j -> List.of(j.at("/").says("yes")));
        }

        @Override
        public String name() {
            return name.get();
        }

        @Override
        public List<Rule> rules() {
            return rules.get();
        }
    }

    private static <T> T loop() {
        for (long i = 0; ; i++) {
            if (i < 0 && Thread.interrupted()) {
                return null;
            }
        }
    }

    private static <T> T fail() {
        throw new IllegalStateException("on purpose");
    }

    private static Map<String, String> causes(Report report) {
        Map<String, String> causes = new java.util.TreeMap<>();
        for (Finding f : report.findings()) {
            String cause = f.broke()
                    ? f.outcome().message().args().stream()
                            .map(a -> ((Arg.Word) a.value()).text())
                            .findFirst()
                            .orElse("")
                    : f.outcome().kind().word();
            causes.put(f.outcome().rule(), cause);
        }
        return causes;
    }

    private static Map<String, String> checked(Odd pack) {
        return causes(Checker.of(List.of(Packs.contained(pack, SOON))).check(Samples.reading()));
    }

    @Test
    void a_sound_pack_is_judged_as_ever() {
        assertThat(checked(new Odd())).containsExactly(Map.entry("odd/one", "pass"), Map.entry("odd/two", "pass"));
    }

    @Test
    void a_rule_that_throws_gives_null_or_answers_nothing_is_open_and_the_rest_goes_on() {
        Map<String, Function<Judgement, List<Outcome>>> odd = new java.util.LinkedHashMap<>();
        odd.put("it broke: IllegalStateException: on purpose", j -> fail());
        odd.put("it broke: NullPointerException", j -> Arrays.asList((Outcome) null));
        odd.put("it broke: AssertionError: no", j -> {
            throw new AssertionError("no");
        });
        odd.put("it broke: NoClassDefFoundError: gone/Missing", j -> {
            throw new NoClassDefFoundError("gone/Missing");
        });
        odd.put("it broke: StackOverflowError", j -> deep(j));
        odd.put("it broke: Evil", j -> {
            throw new Evil();
        });
        odd.put(
                "it broke: IllegalStateException: odd/one has no text called unheard",
                j -> List.of(j.at("/").says("unheard")));
        odd.put(
                "it answered for another rule, odd/two",
                j -> List.of(new Outcome.Pass(new Identity("odd/two", "/", ""), Level.NOTE, null, Message.of("yes"))));
        odd.forEach((cause, judge) -> {
            Odd pack = new Odd();
            pack.judge = judge;
            assertThat(checked(pack))
                    .as(cause)
                    .containsEntry("odd/two", "pass")
                    .hasEntrySatisfying("odd/one", c -> assertThat(c).startsWith(cause));
        });
        Odd nothing = new Odd();
        nothing.judge = j -> null;
        assertThat(checked(nothing).get("odd/one")).contains("NullPointerException");
    }

    @Test
    void of_what_a_rule_says_when_it_breaks_no_more_than_some_lines_are_told() {
        Odd pack = new Odd();
        pack.judge = j -> {
            throw new AssertionError("x".repeat(50_000_000));
        };
        assertThat(checked(pack).get("odd/one"))
                .startsWith("it broke: AssertionError: xxx")
                .endsWith("x…")
                .hasSizeLessThan(2000);
    }

    private static List<Outcome> deep(Judgement j) {
        return new ArrayList<>(deep(j));
    }

    private static final class Evil extends RuntimeException {
        @Override
        public String getMessage() {
            throw new IllegalStateException("worse");
        }
    }

    @Test
    void a_rule_that_loops_is_not_waited_for_and_not_asked_again() {
        AtomicInteger asked = new AtomicInteger();
        Odd pack = new Odd();
        pack.judge = j -> {
            asked.incrementAndGet();
            return loop();
        };
        Checker checker = Checker.of(List.of(Packs.contained(pack, SOON)));
        assertThat(causes(checker.check(Samples.reading())))
                .containsEntry("odd/one", "it did not end within 400 ms")
                .containsEntry("odd/two", "pass");
        assertThat(causes(checker.check(Samples.reading()))).containsEntry("odd/one", "it did not end within 400 ms");
        assertThat(asked).hasValue(1);
    }

    @Test
    void a_part_of_a_pack_that_cannot_be_used_is_open_on_every_design() {
        Odd name = new Odd();
        name.name = () -> fail();
        assertThat(checked(name)).containsEntry("pack/odd-name", "Odd name broke: IllegalStateException: on purpose");
        Odd noName = new Odd();
        noName.name = () -> null;
        assertThat(checked(noName))
                .containsEntry("pack/odd-name", "Odd name gave null")
                .containsEntry("odd/two", "pass");
        Odd rules = new Odd();
        rules.rules = () -> null;
        assertThat(checked(rules)).containsOnlyKeys("pack/odd-rules");
        Odd nullRule = new Odd();
        nullRule.rules = () -> Arrays.asList(null, Odd.sound());
        assertThat(checked(nullRule)).containsKey("pack/odd-rule-1").containsEntry("odd/two", "pass");
        Odd looping = new Odd();
        looping.rules = () -> loop();
        assertThat(checked(looping)).containsEntry("pack/odd-rules", "odd rules did not end within 400 ms");
    }

    @Test
    void a_pack_handed_over_is_contained_too() {
        Odd pack = new Odd();
        pack.rules = () -> null;
        assertThat(causes(Checker.of(List.of(pack)).check(Samples.reading()))).containsOnlyKeys("pack/odd-rules");
    }

    @Test
    void two_packs_with_the_same_rule_are_refused_by_name() {
        Odd other = new Odd();
        other.name = () -> "other";
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Checker.of(List.of(new Odd(), other)))
                .withMessage("two rules are called odd/one: in odd and in other");
    }

    private Path jar(String body) throws IOException {
        return PackJar.jar(folder, "made.Pack", """
                package made;
                import java.util.*;
                import org.leat.check.*;
                public class Pack implements RulePack {
                    public String name() { return "made"; }
                    public List<Rule> rules() { return List.of(); }
                    %s
                }
                """.replace("%s", body));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "public Pack() { throw new IllegalStateException(\"on purpose\"); }",
                "public Pack() { while (true) { Thread.onSpinWait(); } }",
                "static int x = 1 / 0;",
            })
    void a_pack_of_a_jar_that_cannot_be_made_is_open_on_every_design(String body) throws IOException {
        List<RulePack> packs = Packs.inJar(jar(body), SOON);
        assertThat(causes(Checker.of(packs).check(Samples.reading()))).containsOnlyKeys("pack/pack-jar-the-pack");
    }

    @Test
    void a_registration_of_a_class_that_is_not_there_does_not_hide_the_next() throws IOException {
        Path jar = PackJar.jar(folder, "made.Pack", """
                package made;
                import java.util.*;
                import org.leat.check.*;
                public class Pack implements RulePack {
                    public String name() { return "made"; }
                    public List<Rule> rules() { return List.of(); }
                }
                """, "made.Missing\nmade.Pack\n");
        assertThat(Packs.inJar(jar, SOON))
                .extracting(RulePack::name)
                .contains("made")
                .hasSize(2);
    }

    @Test
    void a_pack_of_a_jar_sees_the_rule_api_and_nothing_else_of_the_program() throws IOException {
        List<RulePack> packs = Packs.inJar(
                jar("public Map<String, String> examples() { return Map.of(\"seen\", seen(\"org.leat.check.Rule\")"
                        + " + seen(\"org.leat.plant.Plant\") + seen(\"org.leat.cli.Leat\")"
                        + " + seen(\"com.fasterxml.jackson.databind.ObjectMapper\")); }"
                        + "static boolean seen0(String n) { try { Class.forName(n); return true; }"
                        + " catch (ClassNotFoundException e) { return false; } }"
                        + "static String seen(String n) { return seen0(n) ? \"y\" : \"n\"; }"),
                SOON);
        assertThat(packs.get(0).examples()).containsEntry("seen", "yynn");
    }

    @Test
    void what_is_no_jar_of_packs_is_refused() throws IOException {
        assertThatThrownBy(() -> Packs.inJar(folder.resolve("none.jar"))).isInstanceOf(IOException.class);
        Path text = Files.writeString(folder.resolve("text.jar"), "text");
        assertThatThrownBy(() -> Packs.inJar(text)).isInstanceOf(ZipException.class);
        Path other = PackJar.jar(folder, "made.Other", "package made; public class Other {}", "\n");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Packs.inJar(other))
                .withMessageContaining("registers no rule pack");
    }
}
