package org.leat.design;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.leat.arbitraries.Designs;

class DesignVariantTest {

    @Provide
    Arbitrary<Design> plants() {
        return Designs.plausible();
    }

    @Property(tries = 100)
    void a_variant_has_the_parts_its_alternative_names_and_the_others_unchanged(@ForAll("plants") Design plant) {
        for (Alternative a : plant.alternatives()) {
            Design variant = plant.variant(a);
            assertThat(variant.name()).isEqualTo(plant.name() + ": " + a.name());
            assertThat(variant.penstock()).isEqualTo(a.penstock() == null ? plant.penstock() : a.penstock());
            assertThat(variant.runner()).isEqualTo(a.runner() == null ? plant.runner() : a.runner());
            assertThat(variant.alternator()).isEqualTo(a.alternator() == null ? plant.alternator() : a.alternator());
            assertThat(variant.cables()).isEqualTo(plant.cables());
            assertThat(variant.battery()).isEqualTo(plant.battery());
            assertThat(variant.alternatives()).isEmpty();
        }
    }
}
