package org.leat.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.check.Checker;
import org.leat.check.RuleCard;

/** Where a source holds for less than a reader would think, or has moved, the rule says so. */
class WhatSourcesHoldTest {

    private static final Checker CHECKER = Checker.of(List.of(new BuiltInPack()));

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            penstock/surge-pressure  | of a United States pressure class (from memory), not of an ISO PN
            penstock/pressure-range  | extremely conservative
            dump/lost                | in issues to 2014, since then article 706
            dump/second-line         | in issues to 2014, since then article 706
            protection/isolator      | clause 536 or 537 by issue
            penstock/cavitation      | IAPWS SR1-86(1992), Wagner and Pruss
            alternator/overspeed     | the pipe full whatever the stream brings
            """)
    void a_rule_says_how_far_its_source_goes(String rule, String said) {
        RuleCard card = CHECKER.rulebook().rule(rule).card();
        assertThat(String.join("\n", card.sources()) + "\n" + card.why() + "\n" + card.judged())
                .contains(said);
    }
}
