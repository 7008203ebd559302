package org.leat.pack.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.leat.check.Judgement;
import org.leat.check.testing.Plants;
import org.leat.design.Design;

/** Other windings and other buckets. */
class MachineOfKitTest {

    @Test
    void with_half_the_turns_a_winding_has_half_the_volts_a_quarter_of_the_ohms_and_twice_the_amperes() {
        Design design = Plants.design(
                "sound",
                "/alternator/winding/short-circuit-current: 12 A",
                "/alternator/winding/short-circuit-speed: 1000 rpm");
        assertThat(Plants.edits(Rewinding.edits(design, 0.5)))
                .containsExactly(
                        Map.entry("/alternator/open-circuit/voltage", "10.25 V"),
                        Map.entry("/alternator/winding/resistance-between-leads", "0.03125 Ω"),
                        Map.entry("/alternator/winding/inductance-between-leads", "0.1 mH"),
                        Map.entry("/alternator/winding/short-circuit-current", "24 A"),
                        Map.entry("/alternator/current-limit", "52 A"));
    }

    @Test
    void what_is_marked_in_revolutions_per_volt_goes_against_the_turns() {
        Design design = Plants.design(
                "sound",
                "/alternator/open-circuit: { kind: speed-per-volt, speed-per-volt: 40 rpm/V, between: leads, as: rms }");
        assertThat(Plants.edits(Rewinding.edits(design, 0.5)))
                .containsEntry("/alternator/open-circuit/speed-per-volt", "80 rpm/V")
                .doesNotContainKey("/alternator/open-circuit/voltage");
        assertThat(Plants.edits(Rewinding.edits(Plants.design("bare"), 0.5)))
                .containsOnlyKeys("/alternator/open-circuit/voltage", "/alternator/winding/resistance-between-leads");
    }

    @Test
    void star_has_root_three_times_the_turns_of_delta() {
        assertThat(Plants.edits(Rewinding.toStar(Plants.design("bare"))))
                .containsExactly(
                        Map.entry("/alternator/open-circuit/voltage", "35.51 V"),
                        Map.entry("/alternator/winding/resistance-between-leads", "0.375 Ω"),
                        Map.entry("/alternator/winding/connection", "star"));
        assertThat(Plants.edits(Rewinding.toDelta(Plants.design("bare"))))
                .containsEntry("/alternator/winding/connection", "delta")
                .containsEntry("/alternator/open-circuit/voltage", "11.84 V");
    }

    @Test
    void the_wheel_grows_with_the_turns() {
        Judgement j = Asked.of("sound", "/runner/pitch-diameter: 180 mm");
        assertThat(WindingTurns.more(j, Asked.failure(j))
                        .map(change -> Plants.edits(change).get("/runner/pitch-diameter"))
                        .toList())
                .startsWith("198 mm", "225 mm", "252 mm")
                .hasSize(8);
        assertThat(WindingTurns.more(Asked.of("bare"), Asked.failure(j))).isEmpty();
    }

    @Test
    void the_strength_of_a_print_goes_with_the_print() {
        String printed =
                "/runner/buckets: { count: 23, width: 38 mm, material: PA12, making: printed, strength: 40 MPa }";
        Judgement stated = Asked.of("sound", printed);
        assertThat(BucketMaterials.materials(stated, Asked.failure(stated)))
                .isNotEmpty()
                .allSatisfy(
                        change -> assertThat(Plants.edits(change)).containsEntry("/runner/buckets/strength", "null"));
        Judgement silent = Asked.of("sound");
        assertThat(BucketMaterials.materials(silent, Asked.failure(silent)))
                .isNotEmpty()
                .noneMatch(change -> Plants.edits(change).containsKey("/runner/buckets/strength"));
    }
}
