package org.leat.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.leat.plant.numbers.Amount;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** What rules say in one step: against what is not known, of no item at all, with one change or with advice alone. */
class ShortFormsTest {

    private static final Rule RULE =
            MadeRule.of("made/short", j -> List.of(j.at("/").holds(true)));

    private final Judgement j = Judgement.of(RULE, Samples.design());

    @Test
    void a_limit_that_is_stated_is_held_to_and_one_that_is_not_leaves_the_field_open() {
        Spot spot = j.at("/cables[0]/length");
        assertThat(spot.atMost(2, Si.quantity(2, "m", Length.class), QuantityKind.LENGTH)
                        .kind())
                .isEqualTo(Kind.PASS);
        assertThat(spot.atMost(2.1, Si.quantity(2, "m", Length.class), QuantityKind.LENGTH)
                        .kind())
                .isEqualTo(Kind.FAIL);
        Quantity<?> nothing = null;
        Outcome.Open open = (Outcome.Open)
                j.all(() -> spot.atMost(2, nothing, QuantityKind.LENGTH)).get(0);
        assertThat(open.missing()).isEqualTo("/cables[0]/length");
    }

    @Test
    void a_limit_of_the_plant_that_is_not_known_is_open_for_the_plants_reason() {
        Spot spot = j.at("/alternator/current-limit");
        assertThat(spot.atMost(2, Amount.of(2), QuantityKind.CURRENT).kind()).isEqualTo(Kind.PASS);
        assertThat(spot.atMost(3, Amount.of(2), QuantityKind.CURRENT).kind()).isEqualTo(Kind.FAIL);
        Amount unknown = Amount.notStated("/alternator/speed-limit");
        Outcome.Open open = (Outcome.Open)
                j.all(() -> spot.atMost(2, unknown, QuantityKind.CURRENT)).get(0);
        assertThat(open.path()).isEqualTo("/alternator/current-limit");
        assertThat(open.missing()).isEqualTo("/alternator/speed-limit");
    }

    @Test
    void where_there_is_no_item_the_one_answer_is_given_and_else_none_of_it() {
        Outcome none = j.at("/").says("yes");
        assertThat(j.eachOr(none, List.<String>of(), path -> j.at(path).says("no")))
                .containsExactly(none);
        assertThat(j.eachOr(
                        none, List.of("/battery", "/cables"), path -> j.at(path).says("no")))
                .extracting(Outcome::path)
                .containsExactly("/battery", "/cables");
    }

    @Test
    void one_change_is_a_way_out_and_a_text_alone_is_advice() {
        Rule rule = MadeRule.card("made/short", Level.WARNING, Level.WARNING)
                .judge(judged -> judged.at("/battery")
                        .holds(Objects.requireNonNull(judged.design().battery()).cellsInSeries() == 9))
                .wayOut("nine", "Nine cells.", Change.of("/battery/cells-in-series", 9))
                .wayOut("ten", "Ten cells.", Change.of("/battery/cells-in-series", 10))
                .advice("look", "Look again.")
                .build();
        Judgement of = Judgement.of(rule, Samples.design());
        Outcome.Fail failure = (Outcome.Fail) rule.judge(of).get(0);
        assertThat(rule.waysOut(of, failure))
                .extracting(way -> way.message().id() + way.edits().size())
                .containsExactly("nine1", "look0");
    }
}
