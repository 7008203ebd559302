package org.leat.catalogue.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.catalogue.rows.PipeDimensions;
import org.leat.catalogue.rows.PipeMaterial;
import org.leat.catalogue.rows.PipeStandard;
import org.leat.published.PublishedCase;

/** Pipe tables against published sizes, ratings and properties. */
class PipeStandardsPublishedTest {

    private static final double MM = 1e-3;
    private static final double BAR = 1e5;
    private static final double CELSIUS = 273.15;

    /** Laws of strength, bound beside those laws. */
    private static final Set<String> ELSEWHERE = Set.of("barlow", "vin");

    static Stream<PublishedCase> cases() {
        return PublishedCase.of("hydraulics-pipe-standards").filter(c -> !ELSEWHERE.contains(c.family()));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void tables_agree_with_what_is_published(PublishedCase c) {
        c.assertMatches(ours(c));
    }

    @Test
    void every_case_of_the_file_is_bound_here_or_beside_its_law() {
        assertThat(PublishedCase.of("hydraulics-pipe-standards")).hasSize(69);
        assertThat(cases()).hasSize(67);
    }

    private static double ours(PublishedCase c) {
        return switch (c.family()) {
            case "emin" -> PreferredWall.minimum(PipeStandard.ISO_4427, c.in("dn") * MM, c.in("SDR")) / MM;
            case "pvcw" -> PreferredWall.minimum(PipeStandard.ISO_1452, c.in("dn") * MM, c.in("SDR")) / MM;
            case "emax" -> {
                double least = PreferredWall.minimum(PipeStandard.ISO_4427, c.in("dn") * MM, c.in("SDR"));
                yield PreferredWall.maximum(PipeStandard.ISO_4427, c.in("dn") * MM, least) / MM;
            }
            case "stl" ->
                SteelTube.find("medium", c.in("OD") * MM).orElseThrow().wall() / MM;
            case "bore" ->
                new PipeDimensions(c.in("dn_mm") * MM, c.in("e_mm") * MM, c.in("e_mm") * MM).boreForStrength();
            case "pn" -> PressureRating.calculated(c.in("MRS") * 1e6, c.in("C"), c.in("SDR")) / BAR;
            case "peT" -> factor(TemperatureTradition.POLYETHYLENE_ISO, c);
            case "peTau" -> c.in("PN") * factor(TemperatureTradition.POLYETHYLENE_AUSTRALIAN, c);
            case "pvcT" -> factor(TemperatureTradition.PVC_U, c);
            case "peTscope" -> TemperatureTradition.POLYETHYLENE_ISO.scope() - CELSIUS;
            case "pfa" -> PressureRating.allowable(c.in("PN") * BAR, c.in("fT"), 1) / BAR;
            default -> property(c);
        };
    }

    private static double factor(TemperatureTradition tradition, PublishedCase c) {
        return TemperatureReduction.factor(tradition, c.in("T") + CELSIUS).orThrow();
    }

    private static double property(PublishedCase c) {
        return switch (c.id()) {
            case "mod-1" -> MaterialData.usual(PipeMaterial.PE80, MaterialProperty.MODULUS_SHORT);
            case "mod-3" ->
                MaterialModulus.longTerm(PipeMaterial.PE80, 20 + CELSIUS).orThrow();
            case "mod-4" ->
                MaterialModulus.longTerm(PipeMaterial.PE100, 20 + CELSIUS).orThrow();
            case "mod-6" ->
                MaterialModulus.longTerm(PipeMaterial.PVC_U, 20 + CELSIUS).orThrow();
            case "mod-7" ->
                MaterialModulus.shortTerm(PipeMaterial.STEEL, 20 + CELSIUS).orThrow();
            case "mod-9" -> MaterialData.usual(PipeMaterial.PVC_U, MaterialProperty.POISSON_RATIO);
            case "emake-1" ->
                MaterialData.find(PipeMaterial.PE80, MaterialProperty.MODULUS_SHORT)
                        .orElseThrow()
                        .low();
            case "surge-1" -> SurgeAllowance.recurring(PipeMaterial.PE100) - 1;
            case "surge-3" -> SurgeAllowance.recurring(PipeMaterial.PE80);
            case "surge-4" -> SurgeAllowance.occasional(PipeMaterial.PVC_U);
            case "bpub-2" ->
                PreferredWall.dimensions(PipeStandard.DIN_8074, c.in("dn") * MM, 11)
                                .boreForStrength()
                        / MM;
            case "bpub-3" ->
                PipeCatalogue.ofRating(PipeStandard.DIN_8062, PipeMaterial.PVC_U, c.in("dn") * MM, 10 * BAR)
                                .orElseThrow()
                                .dimensions()
                                .boreForStrength()
                        / MM;
            default -> throw new AssertionError("no law bound to " + c);
        };
    }
}
