package org.leat.plant;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.plant.solved.WaterSide;
import org.leat.published.PublishedCase;

/** Flow, net head and jet power of whole penstocks with their nozzles, from a design to the solved plant. */
class PublishedPlantFlowTest {

    private static final Set<String> FAMILIES = Set.of("pf", "pnet", "pjp", "man");

    static Stream<PublishedCase> cases() {
        return PublishedCase.of("hydraulics-nozzle").filter(c -> FAMILIES.contains(c.family()));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void a_design_gives_the_published_value(PublishedCase published) {
        WaterSide water =
                Plant.of(Plants.read(yaml(published))).solve().running().get(0).water();
        assertThat(water.fullPipe()).isTrue();
        switch (published.family()) {
            case "pf" -> published.assertMatches(water.flow());
            case "pnet" -> published.assertMatches(water.netHead());
            case "pjp" -> published.assertMatches(water.jetPower());
            default -> {
                int which = (int) published.in("which");
                double[] bores = published.list("d_list");
                double flow = water.flow();
                if (which >= 0) {
                    int open = 0;
                    for (int i = 0; i < which; i++) {
                        open += bores[i] > 0 ? 1 : 0;
                    }
                    flow = water.jets().get(open).flow();
                }
                published.assertMatches(flow);
            }
        }
    }

    private static String yaml(PublishedCase c) {
        StringBuilder open = new StringBuilder();
        String branch = "";
        if (c.has("d_list")) {
            for (double bore : c.list("d_list")) {
                if (bore > 0) {
                    open.append(open.isEmpty() ? "" : ", ").append(bore).append(" m");
                }
            }
            branch = "  branch-bore: " + c.in("Db") + " m\n  branch-loss: " + c.in("Kb") + "\n";
        } else {
            for (int i = 0; i < c.in("n"); i++) {
                open.append(open.isEmpty() ? "" : ", ").append(c.in("d")).append(" m");
            }
        }
        return String.format(
                Locale.ROOT,
                """
                format: 1
                name: published
                site: { gross-head: %s m, water-temperature: { lowest: %s °C, highest: %s °C } }
                penstock:
                  sections:
                    - name: run
                      pipe: { kind: other-pipe, bore: %s m, wall: 5 mm, roughness: %s m }
                      length: %s m
                      fittings: [ { kind: entrance-sharp, loss-coefficient: %s } ]
                nozzles:
                  open: [ %s ]
                  velocity-coefficient: %s
                  contraction-coefficient: %s
                %salternator:
                  open-circuit: { kind: volts-at-speed, voltage: 21 V, speed: 1000 rpm }
                  winding: { resistance-between-leads: 0.2 ohm }
                battery: { chemistry: lithium-iron-phosphate, cells-in-series: 8, capacity: 100 Ah }
                """,
                c.in("Hg"),
                c.in("T_C"),
                c.in("T_C"),
                c.in("D"),
                new java.math.BigDecimal(Double.toString(c.in("k"))).toPlainString(),
                c.in("L"),
                c.in("K"),
                open,
                c.in("Cv"),
                c.in("Cc"),
                branch);
    }
}
