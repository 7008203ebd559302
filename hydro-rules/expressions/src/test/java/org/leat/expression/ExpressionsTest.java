package org.leat.expression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leat.check.Samples;
import org.leat.plant.Plant;
import org.leat.quantity.QuantityKind;

class ExpressionsTest {

    private static final Plant PLANT = Plant.of(Samples.design());

    private static final Expressions EXPRESSIONS = new Expressions();

    private static Object value(String text) {
        Expressions.Compiled compiled = EXPRESSIONS.compile(text, null, Map.of("most", QuantityKind.PRESSURE));
        if (compiled instanceof Expressions.Refused refused) {
            throw new AssertionError(refused.problems().toString());
        }
        return ((Expressions.Understood) compiled)
                .expression()
                .over(PLANT, null, Map.of("most", new Magnitude(QuantityKind.PRESSURE, 5e5)), new Budget());
    }

    private static List<ExpressionProblem> problems(String text) {
        Expressions.Compiled compiled = EXPRESSIONS.compile(text, null, Map.of("most", QuantityKind.PRESSURE));
        return compiled instanceof Expressions.Refused refused ? refused.problems() : List.of();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "penstock.sections.all(s, s.staticPressure <= bar(4))",
                "penstock.sections.all(s, s.staticPressure <= 4.bar())",
                "penstock.sections.exists_one(s, s.name == 'run')",
                "penstock.length == 90.m()",
                "penstock.length == 9000.cm() && penstock.length > 0.089.km()",
                "most(penstock.sections.map(s, s.staticPressure)) < limit.most",
                "least([1.bar(), 2.bar()]) == 1.bar() && total([1.bar(), 2.bar()]) == 3.bar()",
                "running[0].batteryVoltage * running[0].directCurrent > 1.W()",
                "running[0].batteryPower / running[0].batteryVoltage > 0.1.A()",
                "running[0].batteryPower * 24.h() > 1.kWh()",
                "running[0].frictionShare <= percent(50)",
                "site.highestAirTemperature - site.lowestAirTemperature > 10.K()",
                "site.highestAirTemperature > 20.degC() && site.highestAirTemperature < 20.degC() + 60.K()",
                "design.name == 'sample' && design.penstock.sections[0].pipe.kind == 'polyethylene'",
                "design.penstock.sections[0].pipe.sdr <= 17.0 && design.penstock.sections[0].pipe.sdr <= 17",
                "design.penstock.sections[0].pipe.outsideDiameter == 63.mm()",
                "battery.cellsInSeries % 4 == 0 && battery.chemistry in ['lithium-iron-phosphate']",
                "!has(design.runner) && has(design.battery) && !has(design.penstock.sections[0].pipe.pressureRating)",
                "loadLost.all(l, l.speed > running[0].speed)",
                "2 * running[0].netHead > running[0].netHead * 1.5 && -running[0].netHead < 0.m()",
                "running.filter(r, r.flow > 0.1.L_per_s()).size() == 1",
                "design.name.matches('^sam') && design.name.startsWith('s')",
                "stops.exists(s, s.cause == 'nozzle-plugged')",
            })
    void holds(String condition) {
        assertThat(value(condition)).isEqualTo(true);
    }

    @Test
    void the_computed_pressure_is_the_weight_of_the_water() {
        Object value = value("penstock.sections[0].staticPressure");
        assertThat(Expression.kind(value)).isEqualTo(QuantityKind.PRESSURE);
        assertThat(Expression.si(value)).isCloseTo(24 * 9.80665 * 1000, within(500.0));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    penstock.sections.all(s, s.staticPressure <= s.length) | 1 | 43 | found "<=" with (pressure, length); expected
                    penstock.sections.all(s, s.staticPressur <= bar(4))    | 1 | 27 | nothing is called "staticPressur"; did you mean "staticPressure"?
                    running[0].netHead == running[0].flow                  | 1 | 20 | found "==" with (length, flow); expected
                    running[0].netHead + 1 > 2.m()                         | 1 | 20 | found "+" with (length, int); expected two of one kind; a number may need a unit, as in 4.bar()
                    site.highestAirTemperature + site.lowestAirTemperature > 1.K() | 1 | 28 | found "+" with (temperature, temperature); expected what goes together
                    penstok.length > 1.m()                                 | 1 | 1 | nothing is called "penstok"; did you mean "penstock"?
                    limit.least > 1.bar()                                  | 1 | 1 | nothing is called "limit"
                    'a' + 'b' == 'ab'                                      | 1 | 5 | found joined text; expected text as it stands
                    ([1] + [2]).size() == 2                                | 1 | 6 | found joined lists; expected one list
                    [[1]] == [[1]]                                         | 1 | 7 | found a list or a thing that is compared; expected single values
                    running[0].frictionShare * 2 > 1.0                     | 1 | 26 | found "*" with (double, int); expected two numbers of one sort; write a whole number as 2.0
                    dyn(1) == 1                                            | 1 | 4 | nothing is called "dyn"
                    type(1) == int                                         | 1 | 5 | nothing is called "type"
                    java.lang.System.exit(1)                               | 1 | 1 | nothing is called "java"
                    design.Pipe{kind: 'x'}.kind == 'x'                     | 1 | 12 | found a thing that is made; expected what the plant has
                    """)
    void a_wrong_expression_is_refused_at_its_place(String text, int line, int column, String said) {
        assertThat(problems(text)).isNotEmpty();
        ExpressionProblem first = problems(text).get(0);
        assertThat(first.line() + ":" + first.column() + " " + first.text())
                .startsWith(line + ":" + column + " " + said);
    }

    @Test
    void a_place_counts_lines_and_characters() {
        assertThat(problems("true\n  && '\uD83D\uDE00' == penstok"))
                .singleElement()
                .satisfies(p -> assertThat(p.line() + ":" + p.column()).isEqualTo("2:13"));
    }

    @Test
    void a_value_that_is_not_given_is_told_by_its_field() {
        assertThatExceptionOfType(MissingValueException.class)
                .isThrownBy(() -> value("penstock.fittingsRating > 1.bar()"))
                .satisfies(e -> assertThat(e.path()).isEqualTo("/penstock/rated-fittings"));
        assertThatExceptionOfType(MissingValueException.class)
                .isThrownBy(() -> value("design.penstock.sections.all(s, s.pipe.pressureRating > 1.bar())"))
                .satisfies(e -> assertThat(e.path()).isEqualTo("/penstock/sections[run]/pipe/pressure-rating"));
        assertThatExceptionOfType(MissingValueException.class)
                .isThrownBy(() -> value("design.intake.screen.opening > 1.mm()"))
                .satisfies(e -> assertThat(e.path()).isEqualTo("/intake"));
    }

    @Test
    void what_is_missing_does_not_matter_where_the_rest_decides() {
        assertThat(value("penstock.fittingsRating > 1.bar() || true")).isEqualTo(true);
        assertThat(value("has(design.penstock.ratedFittings) && penstock.fittingsRating > 1.bar()"))
                .isEqualTo(false);
    }

    @Test
    void a_list_that_is_empty_or_too_short_is_an_error_and_no_answer() {
        assertThatIllegalStateException().isThrownBy(() -> value("running[7].netHead > 1.m()"));
        assertThatIllegalStateException()
                .isThrownBy(() -> value("most(penstock.sections.filter(s, false).map(s, s.length)) > 1.m()"));
    }

    @Test
    void nested_loops_stop_at_their_bound() {
        String ten = "[0, 1, 2, 3, 4, 5, 6, 7, 8, 9]";
        StringBuilder text = new StringBuilder("true");
        for (int i = 0; i < 6; i++) {
            text.insert(0, ten + ".all(v" + i + ", ").append(")");
        }
        assertThatIllegalStateException()
                .isThrownBy(() -> value(text.toString()))
                .withMessageContaining("terat");
    }

    @Test
    @Timeout(60) // not a claim about speed: what is not bounded never ends
    void long_deep_and_hostile_expressions_are_refused_or_end() {
        assertThat(problems("true && ".repeat(600) + "true")).isNotEmpty();
        assertThat(problems("(".repeat(300) + "1" + ")".repeat(300) + " == 1")).isNotEmpty();
        assertThat(problems("[".repeat(300) + "]".repeat(300) + ".size() == 1")).isNotEmpty();
        assertThat(value("!'" + "a".repeat(3000) + "'.matches('(a+)+b')")).isEqualTo(true);
        assertThat(problems("'a'.matches('((a{900}){900}){900}')"))
                .singleElement()
                .satisfies(p -> assertThat(p.text())
                        .isEqualTo("found a pattern with a counted repetition { }; expected one without"));
        assertThat(problems("'a'.matches(design.name)")).hasSize(1);
        StringBuilder doubling = new StringBuilder("v29 == v29");
        for (int i = 29; i > 0; i--) {
            doubling.insert(0, "[[v" + (i - 1) + ", v" + (i - 1) + "]].all(v" + i + ", ")
                    .append(")");
        }
        assertThat(problems("[0].all(v0, " + doubling + ")")).isNotEmpty();
    }

    @Test
    void text_that_is_no_expression_is_refused() {
        for (String text : List.of("", " ", "1 +", "a b", "'", "\u0000", "for (;;) {}", "\"\\xZZ\"")) {
            assertThat(problems(text)).as(text).isNotEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                    1 +                        | 1:4  | found the end; expected a value
                    true && true)              | 1:13 | found ")"; expected an opening ( before it
                    (1 == 1                    | 1:8  | found the end; expected the closing )
                    [1, 2                      | 1:6  | found the end; expected a comma, or the closing ]
                    site.grossHead > 4 m       | 1:20 | found "m"; expected an operator before it, as + or &&
                    true and true              | 1:6  | found "and"; expected &&
                    1 = 1                      | 1:3  | found "="; expected ==
                    'abc                       | 1:1  | found text that does not end; expected the closing quotation mark
                    '\\q' == 'q'               | 1:1  | found an escape that is not known; expected
                    site. > 1.m()              | 1:7  | found ". >"; expected a name
                    if                         | 1:1  | found "if"; expected a name that is no reserved word
                    true ? 1                   | 1:9  | found the end; expected a colon and what it is otherwise
                    has(site)                  | 1:4  | found has() of what is no field; expected a field
                    [1].all(1, true)           | 1:9  | found what is no name; expected a name for each thing
                    site.grossHead.all(x, true) | 1:5 | found length; expected a list to go through
                    99999999999999999999 > 1   | 1:1  | found 99999999999999999999; expected a number in reach
                    """)
    void what_cannot_be_parsed_is_told_once_in_our_own_words(String text, String at, String said) {
        assertThat(problems(text))
                .singleElement()
                .satisfies(p ->
                        assertThat(p.line() + ":" + p.column() + " " + p.text()).startsWith(at + " " + said));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                    1 / 0 > 2                                  | 1:3  | found a division by 0
                    site.grossHead / 0 > 2.m()                 | 1:16 | found a division by 0
                    site.grossHead / (2 - 2) > 2.m()           | 1:16 | found a division by 0
                    battery.cellsInSeries % 0 == 1             | 1:23 | found a division by 0
                    site.grossHead / 0.m() > 2.0               | 1:16 | found a division by 0
                    design.name.matches('(')                   | 1:20 | found a pattern that is no regular expression: missing closing )
                    'a'.matches('[')                           | 1:12 | found a pattern that is no regular expression
                    running.all(r, r.netHead > 1.m() && 1 % 0 == 1) | 1:39 | found a division by 0
                    [1, 2][5] == 1                             | 1:7  | found a place beyond the list's end: 5
                    int('a') == 1                              | 1:4  | found text that is no number
                    9223372036854775807 + 1 > 1                | 1:21 | found a whole number out of reach
                    1e400 > 1.0                                | 1:1  | found a number out of reach
                    """)
    void what_can_never_be_computed_is_told_when_it_is_read(String text, String at, String said) {
        assertThat(problems(text))
                .singleElement()
                .satisfies(p ->
                        assertThat(p.line() + ":" + p.column() + " " + p.text()).startsWith(at + " " + said));
    }

    @Test
    void what_one_judgement_costs_is_bounded_over_all_its_expressions() {
        Expression loop = ((Expressions.Understood) EXPRESSIONS.compile(
                        "[0, 1, 2, 3, 4, 5, 6, 7, 8, 9].all(a, [0, 1, 2, 3, 4, 5, 6, 7, 8, 9].all(b, a + b >= 0))",
                        null,
                        Map.of()))
                .expression();
        Budget budget = new Budget();
        assertThat(loop.over(PLANT, null, Map.of(), budget)).isEqualTo(true);
        assertThatIllegalStateException()
                .isThrownBy(() -> {
                    for (int i = 0; i < Budget.STEPS; i++) {
                        loop.over(PLANT, null, Map.of(), budget);
                    }
                })
                .withMessage("the rule's expressions take more than " + Budget.STEPS + " steps");
    }
}
