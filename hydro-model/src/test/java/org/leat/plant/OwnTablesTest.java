package org.leat.plant;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.leat.catalogue.Catalogue;
import org.leat.catalogue.rows.PipeDimensions;
import org.leat.catalogue.rows.PipeMaterial;
import org.leat.catalogue.rows.PipeStandard;
import org.leat.catalogue.rows.PlasticPipe;
import org.leat.catalogue.rows.Spread;
import org.leat.design.FittingKind;
import org.leat.plant.numbers.Amount;

/** A plant derived with the tables of whoever sells the pipe. */
class OwnTablesTest {

    private static final PlasticPipe SOLD = new PlasticPipe(
            PipeStandard.ISO_4427, PipeMaterial.PE100, 17, 8e5, new PipeDimensions(0.063, 0.0050, 0.0052));

    @Test
    void wall_and_rating_are_those_of_the_pipe_sold() {
        Plant plant = Plant.of(Plants.least(), Catalogue.shipped().withPipes(List.of(SOLD)));
        var section = plant.numbers().penstock().sections().get(0);
        assertThat(section.bore()).isEqualTo(0.063 - 2 * 0.0052);
        assertThat(((Amount.Known) section.rating()).value()).isEqualTo(8e5);
        var shipped = Plant.of(Plants.least()).numbers().penstock().sections().get(0);
        assertThat(shipped.bore()).isNotEqualTo(section.bore());
    }

    @Test
    void a_plant_like_another_keeps_its_tables() {
        Plant plant = Plant.of(Plants.least(), Catalogue.shipped().withPipes(List.of(SOLD)));
        Plant warm = plant.like(Map.of("/site/water-temperature", 290.0));
        Plant other = plant.like(Plants.stated("24 m", "10 mm", "120 mm", ""));
        assertThat(warm.catalogue()).isSameAs(plant.catalogue());
        assertThat(other.catalogue()).isSameAs(plant.catalogue());
        assertThat(warm.numbers().penstock().sections().get(0).bore())
                .isEqualTo(plant.numbers().penstock().sections().get(0).bore());
    }

    @Test
    void a_loss_of_ones_own_takes_head() {
        Spread great = new Spread(40, 50, 60, "measured");
        Catalogue own = Catalogue.shipped().withFitting(FittingKind.ENTRANCE_SHARP, great);
        double lossy = Plant.of(Plants.least(), own)
                .numbers()
                .penstock()
                .sections()
                .get(0)
                .lossCoefficient();
        double usual =
                Plant.of(Plants.least()).numbers().penstock().sections().get(0).lossCoefficient();
        assertThat(lossy).isGreaterThan(usual + 40);
    }
}
