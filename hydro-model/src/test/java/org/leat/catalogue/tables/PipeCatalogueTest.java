package org.leat.catalogue.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.leat.catalogue.rows.PipeDimensions;
import org.leat.catalogue.rows.PipeMaterial;
import org.leat.catalogue.rows.PipeStandard;
import org.leat.catalogue.rows.PlasticPipe;
import org.leat.catalogue.rows.Spread;
import org.leat.design.FittingKind;
import org.leat.law.Answer;

/** Tables and ways out of the pipe catalogue. */
class PipeCatalogueTest {

    private static final double BAR = 1e5;
    private static final double CELSIUS = 273.15;

    @ParameterizedTest
    @CsvSource({"11,16", "13.6,12.5", "17,10", "21,8", "26,6"})
    void polyethylene_100_carries_the_names_of_iso_4427(double sdr, double pn) {
        assertThat(PipeCatalogue.polyethylene(PipeMaterial.PE100, 0.063, sdr).nominalPressure())
                .isEqualTo(pn * BAR);
    }

    @Test
    void the_same_name_of_pvc_means_another_wall_above_90_millimetres() {
        PlasticPipe small = PipeCatalogue.pvcU(0.090, 10 * BAR).orElseThrow();
        PlasticPipe large = PipeCatalogue.pvcU(0.110, 10 * BAR).orElseThrow();
        assertThat(small.sdr()).isEqualTo(21);
        assertThat(large.sdr()).isEqualTo(26);
    }

    @Test
    void the_bore_for_loss_is_smaller_than_the_bore_for_strength() {
        PipeDimensions d =
                PipeCatalogue.polyethylene(PipeMaterial.PE100, 0.090, 11).dimensions();
        assertThat(d.boreForStrength()).isEqualTo(0.0736, within(1e-9));
        assertThat(d.boreForLoss()).isEqualTo(0.0726, within(1e-9));
    }

    @ParameterizedTest
    @EnumSource(PipeStandard.class)
    void walls_grow_with_diameter_and_shrink_with_sdr(PipeStandard standard) {
        PipeMaterial material = standard.title().endsWith("52") || standard == PipeStandard.DIN_8062
                ? PipeMaterial.PVC_U
                : PipeMaterial.PE80;
        double before = 0;
        for (double size : PipeCatalogue.sizes(standard)) {
            double thinner = 0;
            for (PlasticPipe pipe : PipeCatalogue.series(standard, material, size)) {
                assertThat(pipe.dimensions().minimumWall()).isGreaterThanOrEqualTo(thinner);
                assertThat(pipe.dimensions().boreForLoss())
                        .isLessThan(pipe.dimensions().boreForStrength());
                thinner = pipe.dimensions().minimumWall();
            }
            double wall = PreferredWall.minimum(standard, size, 17);
            assertThat(wall).isGreaterThanOrEqualTo(before);
            before = wall;
        }
        assertThat(before).isGreaterThan(0.014);
    }

    @Test
    void the_thinnest_that_holds_at_35_degrees_is_one_step_thicker_than_at_20() {
        double pressure = 9.4 * BAR;
        assertThat(thinnest(pressure, 20).sdr()).isEqualTo(17);
        assertThat(thinnest(pressure, 35).sdr()).isEqualTo(13.6);
        assertThat(PipeCatalogue.thinnestThatHolds(
                        PipeStandard.ISO_4427,
                        PipeMaterial.PE100,
                        0.063,
                        pressure,
                        45 + CELSIUS,
                        TemperatureTradition.POLYETHYLENE_ISO))
                .isEmpty();
    }

    private static PlasticPipe thinnest(double pressure, double celsius) {
        return PipeCatalogue.thinnestThatHolds(
                        PipeStandard.ISO_4427,
                        PipeMaterial.PE100,
                        0.063,
                        pressure,
                        celsius + CELSIUS,
                        TemperatureTradition.POLYETHYLENE_ISO)
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"POLYETHYLENE_ISO,40.1", "POLYETHYLENE_AUSTRALIAN,50.1", "PVC_U,45.1"})
    void above_its_table_a_tradition_gives_no_factor(TemperatureTradition tradition, double celsius) {
        assertThat(TemperatureReduction.factor(tradition, celsius + CELSIUS)).isInstanceOf(Answer.Outside.class);
        assertThat(TemperatureReduction.factor(tradition, celsius - 0.2 + CELSIUS)
                        .orThrow())
                .isBetween(0.6, 0.9);
    }

    @Test
    void cold_gives_no_bonus_on_the_rating_but_stiffens_the_wall() {
        assertThat(TemperatureReduction.factor(TemperatureTradition.POLYETHYLENE_ISO, 2 + CELSIUS)
                        .orThrow())
                .isEqualTo(1);
        double cold = MaterialModulus.dynamic(PipeMaterial.PE100, 5 + CELSIUS).orThrow();
        double warm = MaterialModulus.dynamic(PipeMaterial.PE100, 20 + CELSIUS).orThrow();
        assertThat(cold / warm).isBetween(1.25, 1.4);
        assertThat(MaterialModulus.dynamic(PipeMaterial.PE100, 61 + CELSIUS)).isInstanceOf(Answer.Outside.class);
    }

    @ParameterizedTest
    @EnumSource(FittingKind.class)
    void every_kind_of_fitting_has_a_loss_with_range_and_source(FittingKind kind) {
        Spread k = FittingLoss.of(kind);
        assertThat(k.low()).isPositive().isLessThan(k.high());
        assertThat(k.source()).isNotBlank();
    }

    /** 8 and 340 friction factors of full turbulence: another bore has another coefficient. */
    @ParameterizedTest
    @CsvSource({"GATE_VALVE, 0.2, 8", "GLOBE_VALVE, 8, 340"})
    void valves_whose_loss_goes_by_friction_name_the_bore_they_are_of(FittingKind kind, double usual, double lengths) {
        Spread k = FittingLoss.of(kind);
        assertThat(k.usual()).isEqualTo(usual);
        assertThat(lengths * 0.023).as("f of a bore of 25 mm").isBetween(k.low(), k.high());
        assertThat(k.source()).contains("bore 25 mm", "fT 0.023");
    }

    @Test
    void a_loss_coefficient_carried_to_a_larger_bore_grows_with_the_fourth_power() {
        assertThat(org.leat.hydraulics.LossCoefficient.onBore(0.8, 0.042, 0.0514))
                .isEqualTo(0.8 * Math.pow(514.0 / 420, 4), within(1e-12));
    }

    @ParameterizedTest
    @EnumSource(PipeMaterial.class)
    void every_material_has_what_a_surge_needs(PipeMaterial material) {
        for (MaterialProperty property : MaterialProperty.values()) {
            if (property != MaterialProperty.MINIMUM_REQUIRED_STRENGTH && property != MaterialProperty.YIELD_STRENGTH) {
                assertThat(MaterialData.find(material, property)).isPresent();
            }
        }
        assertThat(MaterialData.usual(material, MaterialProperty.ROUGHNESS_AGED))
                .isGreaterThan(MaterialData.usual(material, MaterialProperty.ROUGHNESS_NEW));
    }

    @ParameterizedTest
    @CsvSource({
        "EN 12201-2:2011,ISO_4427",
        "iso 4427,ISO_4427",
        "EN ISO 1452-2,ISO_1452",
        "DIN 8074:2011,DIN_8074",
        "DIN 8062,DIN_8062"
    })
    void a_mark_names_its_standard(String mark, PipeStandard standard) {
        assertThat(PipeStandard.find(mark)).contains(standard);
        assertThat(PipeStandard.find("some pipe")).isEmpty();
    }

    @Test
    void steel_and_hose_are_tabled_in_si() {
        assertThat(SteelTube.all()).hasSize(22).allMatch(tube -> tube.bore() > 0.01 && tube.bore() < 0.16);
        assertThat(CommonHose.all())
                .allMatch(hose -> hose.bore() < 0.2 && hose.workingPressure() >= 3 * BAR && hose.roughness() < 1e-3);
    }

    @Test
    void impossible_pipe_is_refused() {
        assertThatThrownBy(() -> PipeCatalogue.polyethylene(PipeMaterial.PE100, -0.063, 11))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PressureRating.calculated(10e6, 1.25, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PipeCatalogue.polyethylene(PipeMaterial.STEEL, 0.063, 11))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
