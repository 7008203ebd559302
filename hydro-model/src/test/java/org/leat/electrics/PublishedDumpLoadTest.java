package org.leat.electrics;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.published.PublishedCase;

class PublishedDumpLoadTest {

    static Stream<PublishedCase> cases() {
        return PublishedCase.of("electrical-dump-load");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void dump_loads_agree_with_what_is_published(PublishedCase c) {
        switch (c.family()) {
            case "dump-r" -> {
                c.assertMatches("R_max", DumpSizing.greatestResistance(c.in("V_reg"), c.in("I_gen"), c.in("margin")));
                c.assertMatches("P_rating_min", DumpSizing.leastPower(c.in("V_reg"), c.in("I_gen"), c.in("margin")));
                c.assertMatches("I_dump", DumpSizing.current(c.in("I_gen"), c.in("margin")));
            }
            case "dump-v2" -> {
                double resistance = DumpElement.resistance(c.in("Pn"), c.in("Vn"));
                c.assertMatches("R", resistance);
                c.assertMatches("P", DumpElement.power(resistance, c.in("V")));
                c.assertMatches("I", DumpElement.current(resistance, c.in("V")));
            }
            default -> throw new AssertionError("no law bound to " + c);
        }
    }
}
