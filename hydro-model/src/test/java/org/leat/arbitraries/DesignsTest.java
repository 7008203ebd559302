package org.leat.arbitraries;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.leat.design.Design;
import org.leat.quantity.Si;

class DesignsTest {

    @Provide
    Arbitrary<Design> plants() {
        return Designs.plausible();
    }

    @Property(tries = 300)
    void a_random_plant_has_pipes_that_are_at_least_as_long_as_their_fall(@ForAll("plants") Design plant) {
        Statistics.label("pipe")
                .collect(plant.penstock().sections().get(0).pipe().getClass().getSimpleName());
        plant.penstock().sections().forEach(s -> {
            if (s.fromElevation() != null && s.toElevation() != null) {
                assertThat(Si.of(s.fromElevation()) - Si.of(s.toElevation())).isLessThanOrEqualTo(Si.of(s.length()));
            }
        });
    }
}
