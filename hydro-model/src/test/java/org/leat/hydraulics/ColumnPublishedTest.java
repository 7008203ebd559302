package org.leat.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.law.Gravity;
import org.leat.published.PublishedCase;

/** The blow of a parted column against closed forms, exact waves and runs of another program on laboratory pipes. */
class ColumnPublishedTest {

    private static final double MARGIN = 100;
    private static final double BOILING = -10;

    static Stream<PublishedCase> cases() {
        return PublishedCase.of("hydraulics-column");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void the_parted_column_agrees_with_what_is_published(PublishedCase c) {
        switch (c.family()) {
            case "cavideal" -> c.assertMatches(ideal(c));
            case "cavclosed" ->
                c.assertMatches(
                        ColumnSeparation.afterFirstCavity(1, c.in("m"), 0).orThrow());
            case "cavpeak" ->
                c.assertMatches(rig(c, (int) c.in("n_reaches")).blows().get(1).atNozzles() + c.in("z_valve"));
            case "cavtime" -> c.assertMatches(rig(c, (int) c.in("n_reaches")).rejoined());
            case "cavfirst" ->
                c.assertMatches(rig(c, (int) c.in("n_reaches")).blows().get(0).atNozzles() + c.in("z_valve"));
            case "cavrig" -> c.assertMatches(closedForm(c));
            case "cavpsi" -> {
                List<String> names = List.of("a", "b", "c");
                for (int i = 0; i < names.size(); i++) {
                    c.assertMatches(names.get(i), rig(c, 32 << i).blows().get(1).atNozzles() + c.in("z_valve"));
                }
            }
            case "cavmeasured" -> safeSideOf(c);
            case "cavgas" -> c.assertMatches(GasCavities.GAS_FRACTION);
            default -> throw new AssertionError(c.id());
        }
    }

    @Test
    void every_case_of_the_file_is_bound() {
        assertThat(cases()).hasSize(67);
    }

    /** Above the vapour head, over the margin, of a level pipe without friction. */
    private static double ideal(PublishedCase c) {
        double speed = 1000;
        double velocity = c.in("m") * MARGIN * Gravity.STANDARD / speed;
        GridBlows run = run(400, 0.1, speed, 0, MARGIN + BOILING, 0, velocity, BOILING, (int) c.in("n_reaches"), 8);
        return (run.blows().get(1).atNozzles() - BOILING) / MARGIN;
    }

    private static GridBlows rig(PublishedCase c, int reaches) {
        double boiling = c.in("h_vap") - c.in("h_atm");
        return run(
                c.in("L"),
                c.in("D"),
                c.in("a"),
                c.in("f"),
                c.in("H_r"),
                c.in("z_valve"),
                c.in("V0"),
                boiling,
                reaches,
                1);
    }

    private static GridBlows run(
            double length,
            double bore,
            double speed,
            double friction,
            double head,
            double valve,
            double velocity,
            double boiling,
            int reaches,
            double duration) {
        SurgeLine line = new SurgeLine(List.of(new SurgeSection(length, bore, speed, friction, 0, valve)), head);
        double flow = velocity * Math.PI / 4 * bore * bore;
        return new GasCavities(line, flow, NozzleOpening.step(0), boiling, reaches).run(duration, 1000);
    }

    private static double closedForm(PublishedCase c) {
        double boiling = c.in("z_valve") + c.in("h_vap") - c.in("h_atm");
        return ColumnSeparation.afterFirstCavity(c.in("H_r"), Joukowsky.head(c.in("a"), c.in("V0")), boiling)
                .orThrow();
    }

    /** The measured pipe, valve at its upper end as far as is known; steady friction lies above what was measured. */
    private static void safeSideOf(PublishedCase c) {
        GridBlows run = run(37.23, 0.0221, c.in("a"), 0.0359, c.in("H_r"), 2.03, c.in("V0"), -10.13, 64, 1);
        c.tell("value", run.blows().get(1).atNozzles() + 2.03);
        assertThat(run.blows().get(1).atNozzles() + 2.03).isBetween(c.expected(), 1.2 * c.expected());
    }
}
