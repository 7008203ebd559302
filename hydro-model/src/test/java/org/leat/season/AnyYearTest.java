package org.leat.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.leat.arbitraries.Designs;
import org.leat.design.Design;
import org.leat.plant.Plant;

/** What holds of the year of every plant that could be built. */
class AnyYearTest {

    @Provide
    Arbitrary<Design> plants() {
        return Designs.plausible();
    }

    @Property(tries = 60, shrinking = ShrinkingMode.OFF)
    void every_plant_has_a_year_that_balances_or_a_field_that_is_missing(@ForAll("plants") Design design) {
        DesignYear run = DesignYear.of(Plant.of(design), null, DesignYear.USUAL_VISIT);
        if (run instanceof DesignYear.Open open) {
            assertThat(open.path()).startsWith("/");
            return;
        }
        DesignYear.Told told = (DesignYear.Told) run;
        Year year = told.year();
        double wanted = 0;
        for (int hour = 0; hour < 24; hour++) {
            wanted += told.loads().watts(hour) * 3600 * year.series().days();
        }
        assertThat(year.totalUsed() + year.totalMissing()).isCloseTo(wanted, within(1 + wanted * 1e-9));
        assertThat(year.totalDumped()).isBetween(0.0, year.totalMade() + 1);
        assertThat(Arrays.stream(year.charge())).allMatch(c -> c >= told.bank().floor() - 1e-9 && c <= 1 + 1e-9);
        assertThat(Arrays.stream(year.made())).allMatch(w -> w >= 0 && Double.isFinite(w));
        assertThat(year.lifeUsed(design.battery().chemistry()).orElse(0)).isBetween(0.0, Double.MAX_VALUE);
    }
}
