package org.leat.pack.plausibility;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.leat.check.Kind;
import org.leat.check.Outcome;
import org.leat.check.SolvedDesign;
import org.leat.check.testing.FarOff;

/** A slip in any number of a design is found, but in those of which a reason is told why not. */
class EveryNumberIsLookedAtTest {

    /** Everything that a design may state of the water side and of what is marked on its parts. */
    static final String[] EVERYTHING = {
        "/intake: { cleaning-interval: 7 d, valve-closing-time: 20 s, basin: { length: 1.8 m, width: 0.9 m, depth: 0.7 m },"
                + " vent: { bore: 25 mm, below-valve: true } }",
        "/nozzles/contraction-coefficient: 0.98",
        "/penstock/rated-fittings: 12.5 bar",
        "/penstock/anchors: 3 kN",
        "/penstock/expansion-allowance: 1 m",
        "/penstock/sections[inlet]/pipe: { kind: hose, bore: 50 mm, pressure-rating: 10 bar, burst-pressure: 30 bar,"
                + " roughness: 0.02 mm }",
        "/runner/mass: 2.6 kg",
        "/runner/tailwater-clearance: 180 mm",
        "/runner/flood-clearance: 90 mm",
        "/runner/buckets: { count: 23, width: 38 mm, length: 29 mm, depth: 11 mm, mass: 24 g, root-width: 22 mm,"
                + " root-thickness: 9 mm, lever-arm: 19 mm, material: PA12, making: printed, strength: 40 MPa }",
        "/runner/bearings: { dynamic-rating: 14 kN, overhang: 60 mm, spacing: 120 mm }",
        "/runner/hub: { shaft-diameter: 20 mm, bolts: 6, bolt-diameter: 6 mm, bolt-circle: 60 mm }",
        "/regulator/standing-power: 2 W",
        "/regulator/equalising-voltage: 29 V",
        "/safeguards/second-guard: { kind: deflector, trigger-voltage: 60 V, power: 900 W }",
        "/battery/ventilation: { opening-area: 200 cm², spark-distance: 1 m }"
    };

    /** Fields of numbers for which the table has no range, so that a slip in them is left to others. */
    static final Set<String> NO_RANGE = new TreeSet<>(List.of(
            // the reader holds shares, hours of a day and temperatures within what there can be
            "efficiency",
            "exceeded",
            "full-pipe-share",
            "highest-wall-temperature",
            "hours-per-day",
            "resistance-temperature",
            "spread-of-resistances",
            "spread-of-voltages",
            "state-of-charge",
            "temperature",
            // a stream is as large as it is, and elevations are held against the head
            "flow",
            "freeboard",
            "from-elevation",
            "kept-in-stream",
            "to-elevation",
            // counts and factors that rules of their component look at
            "branch-loss",
            "count",
            "grouped-circuits",
            "sdr",
            "strings",
            "surge-factor",
            // what the builder wants
            "autonomy-wanted",
            "distance-from-battery"));

    @Test
    void a_number_far_off_is_found_at_its_field_or_at_what_it_is_part_of() {
        Set<String> unseen = new TreeSet<>();
        FarOff.of("sound", EVERYTHING).forEach((path, designs) -> {
            if (designs.stream().noneMatch(design -> isFound(design, path))) {
                unseen.add(path.substring(path.lastIndexOf('/') + 1).replaceAll("\\[.*", ""));
            }
        });
        assertThat(unseen).isEqualTo(NO_RANGE);
    }

    private static boolean isFound(SolvedDesign design, String path) {
        return design.outcomes(Sizes.RULE).stream()
                .filter(outcome -> outcome.kind() == Kind.FAIL)
                .map(Outcome::path)
                .anyMatch(at -> path.equals(at) || path.startsWith(at + "/") || path.startsWith(at + "["));
    }
}
