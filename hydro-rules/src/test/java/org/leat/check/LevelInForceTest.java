package org.leat.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.check.Settings.Grounds;
import org.leat.check.Settings.LevelChange;
import org.leat.check.Settings.RuleSettings;
import org.leat.check.Settings.Switch;

class LevelInForceTest {

    private static Settings level(Level level) {
        Grounds grounds = new Grounds("us:1", "why", "A. Example", true);
        return new Settings(Map.of("a/b", new RuleSettings(Map.of(), new LevelChange(level, grounds), null)));
    }

    /** A rule of the level WARNING that holds one case to be as bad as that. */
    private static Level found(Level own, Level set) {
        Rule rule = MadeRule.of(
                "a/b",
                Level.WARNING,
                Level.ERROR,
                j -> List.of(j.at("/").as(own).says("no")));
        return Checker.of(List.of(MadeRule.pack(rule)), level(set))
                .check(Samples.design())
                .findings()
                .get(0)
                .outcome()
                .level();
    }

    @ParameterizedTest
    @CsvSource({
        "WARNING, ERROR, ERROR",
        "NOTE, ERROR, WARNING",
        "ERROR, ERROR, ERROR",
        "WARNING, NOTE, NOTE",
        "ERROR, NOTE, WARNING",
        "NOTE, NOTE, NOTE",
        "ERROR, WARNING, ERROR",
        "NOTE, WARNING, NOTE",
    })
    void a_worse_or_milder_case_moves_as_many_steps_as_the_rule_does(Level own, Level set, Level inForce) {
        assertThat(found(own, set)).isEqualTo(inForce);
    }

    @Property
    void a_case_never_becomes_milder_than_a_milder_one(
            @ForAll Level card, @ForAll Level set, @ForAll Level one, @ForAll Level other) {
        RuleCard rule = MadeRule.card("a/b", card, Level.ERROR)
                .judgeAll(j -> List.of())
                .build()
                .card();
        RuleInForce inForce = RuleInForce.of(rule, "", level(set).rules().get("a/b"));
        if (one.compareTo(other) <= 0) {
            assertThat(inForce.inForce(one)).isLessThanOrEqualTo(inForce.inForce(other));
        }
        assertThat(inForce.inForce(card)).isEqualTo(set);
    }

    @Test
    void a_rule_that_answers_worse_than_its_card_says_is_broken_whatever_the_level() {
        Rule rule = MadeRule.of(
                "a/b",
                Level.NOTE,
                Level.NOTE,
                j -> List.of(j.at("/").as(Level.ERROR).says("no")));
        Finding finding = Checker.of(List.of(MadeRule.pack(rule)), level(Level.ERROR))
                .check(Samples.design())
                .findings()
                .get(0);
        assertThat(finding.broke()).isTrue();
        assertThat(finding.outcome().kind()).isEqualTo(Kind.OPEN);
    }

    @Test
    void errors_that_can_hurt_are_not_hidden_or_played_down_unless_someone_answers() {
        Rule dangerous = MadeRule.of(
                "a/b", Level.ERROR, Level.ERROR, j -> List.of(j.at("/").says("no")));
        Rule harmless = MadeRule.card("a/b", Level.ERROR, Level.ERROR)
                .hurtsNobody()
                .judgeAll(j -> List.of(j.at("/").says("no")))
                .build();
        for (Grounds grounds : List.of(
                Grounds.of("us", "why"),
                new Grounds("us", "why", "A. Example", false),
                new Grounds("us", "why", null, true))) {
            for (RuleSettings change : List.of(
                    new RuleSettings(Map.of(), null, new Switch(true, grounds)),
                    new RuleSettings(Map.of(), new LevelChange(Level.WARNING, grounds), null))) {
                Settings settings = new Settings(Map.of("a/b", change));
                assertThatIllegalArgumentException()
                        .isThrownBy(() -> Checker.of(List.of(MadeRule.pack(dangerous)), settings));
                assertThat(Checker.of(List.of(MadeRule.pack(harmless)), settings)
                                .check(Samples.design())
                                .failures(Level.ERROR))
                        .isZero();
            }
        }
    }
}
