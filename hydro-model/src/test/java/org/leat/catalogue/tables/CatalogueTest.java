package org.leat.catalogue.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.InvocationTargetException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.leat.catalogue.Catalogue;
import org.leat.catalogue.rows.CatalogueException;
import org.leat.catalogue.rows.PipeDimensions;
import org.leat.catalogue.rows.PipeMaterial;
import org.leat.catalogue.rows.PipeStandard;
import org.leat.catalogue.rows.PlasticPipe;
import org.leat.catalogue.rows.Spread;
import org.leat.design.FittingKind;

class CatalogueTest {

    private static final double PN = 8e5;
    private static final PlasticPipe OWN = new PlasticPipe(
            PipeStandard.ISO_4427, PipeMaterial.PE100, 17, PN, new PipeDimensions(0.063, 0.0039, 0.0042));

    @Test
    void the_shipped_tables_are_those_of_the_standards() {
        Catalogue shipped = Catalogue.shipped();
        assertThat(shipped.pipe(PipeStandard.ISO_4427, PipeMaterial.PE100, 0.063, 17))
                .isEqualTo(PipeCatalogue.polyethylene(PipeMaterial.PE100, 0.063, 17));
        assertThat(shipped.pipeSizes(PipeStandard.ISO_4427, PipeMaterial.PE100))
                .isEqualTo(PipeCatalogue.sizes(PipeStandard.ISO_4427));
        assertThat(shipped.pipeSeries(PipeStandard.ISO_1452, PipeMaterial.PVC_U, 0.063))
                .isEqualTo(PipeCatalogue.series(PipeStandard.ISO_1452, PipeMaterial.PVC_U, 0.063));
        assertThat(shipped.pipeOfRating(PipeStandard.ISO_1452, PipeMaterial.PVC_U, 0.063, 1e6))
                .isEqualTo(PipeCatalogue.pvcU(0.063, 1e6));
        assertThat(shipped.fittingLoss(FittingKind.BEND_90)).isEqualTo(FittingLoss.of(FittingKind.BEND_90));
    }

    @Test
    void of_pipes_of_ones_own_only_these_are_offered_and_others_keep_their_standards_wall() {
        Catalogue own = Catalogue.shipped().withPipes(List.of(OWN));
        assertThat(own.pipe(PipeStandard.ISO_4427, PipeMaterial.PE100, 0.063, 17))
                .isEqualTo(OWN);
        assertThat(own.pipeSizes(PipeStandard.ISO_4427, PipeMaterial.PE100)).containsExactly(0.063);
        assertThat(own.pipeSeries(PipeStandard.ISO_4427, PipeMaterial.PE100, 0.063))
                .containsExactly(OWN);
        assertThat(own.pipeSeries(PipeStandard.ISO_4427, PipeMaterial.PE100, 0.075))
                .isEmpty();
        assertThat(own.pipe(PipeStandard.ISO_4427, PipeMaterial.PE100, 0.075, 17))
                .isEqualTo(PipeCatalogue.polyethylene(PipeMaterial.PE100, 0.075, 17));
        assertThat(own.pipeOfRating(PipeStandard.ISO_4427, PipeMaterial.PE100, 0.063, PN))
                .contains(OWN);
        assertThat(own.pipeSizes(PipeStandard.ISO_1452, PipeMaterial.PVC_U))
                .isEqualTo(PipeCatalogue.sizes(PipeStandard.ISO_1452));
        assertThat(Catalogue.shipped()
                        .pipe(PipeStandard.ISO_4427, PipeMaterial.PE100, 0.063, 17)
                        .nominalPressure())
                .isCloseTo(1e6, within(1.0));
    }

    @Test
    void a_fitting_of_ones_own_goes_before_the_table() {
        Spread loss = new Spread(0.1, 0.2, 0.3, "the maker");
        Catalogue own = Catalogue.shipped().withFitting(FittingKind.BEND_90, loss);
        assertThat(own.fittingLoss(FittingKind.BEND_90)).isEqualTo(loss);
        assertThat(own.fittingLoss(FittingKind.BEND_45)).isEqualTo(FittingLoss.of(FittingKind.BEND_45));
        assertThat(Catalogue.shipped().fittingLoss(FittingKind.BEND_90)).isNotEqualTo(loss);
    }

    /** The classes of this build without the tables that a repacked artifact has lost. */
    private static final class WithoutTables extends URLClassLoader {
        private final String lost;

        WithoutTables(String lost) {
            super(
                    Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                            .map(WithoutTables::url)
                            .toArray(URL[]::new),
                    ClassLoader.getPlatformClassLoader());
            this.lost = lost;
        }

        @Override
        public URL getResource(String name) {
            return name.endsWith(lost) ? null : super.getResource(name);
        }

        @Override
        public InputStream getResourceAsStream(String name) {
            return name.endsWith(lost) ? null : super.getResourceAsStream(name);
        }

        private static URL url(String entry) {
            try {
                return new File(entry).toURI().toURL();
            } catch (MalformedURLException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    @Test
    void every_class_of_the_package_loads_without_any_table() throws Exception {
        Path folder = Path.of("target/classes/org/leat/catalogue/tables");
        try (WithoutTables loader = new WithoutTables(".csv");
                Stream<Path> files = Files.list(folder)) {
            List<String> names = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".class") && !name.equals("package-info.class"))
                    .map(name -> "org.leat.catalogue.tables." + name.replace(".class", ""))
                    .toList();
            assertThat(names).hasSizeGreaterThan(30);
            for (String name : names) {
                assertThat(Class.forName(name, true, loader).getClassLoader()).isSameAs(loader);
            }
        }
    }

    @Test
    void a_table_that_is_lost_is_named_each_time_and_takes_nothing_else_down() throws Exception {
        try (WithoutTables loader = new WithoutTables("steel-tubes.csv")) {
            Class<?> tubes = loader.loadClass(SteelTube.class.getName());
            for (int i = 0; i < 2; i++) {
                assertThatThrownBy(() -> tubes.getMethod("all").invoke(null))
                        .isInstanceOf(InvocationTargetException.class)
                        .cause()
                        .hasToString(CatalogueException.class.getName()
                                + ": the table steel-tubes.csv of the catalogue cannot be read: it is not there");
            }
            Class<?> hoses = loader.loadClass(CommonHose.class.getName());
            assertThat((List<?>) hoses.getMethod("all").invoke(null)).isNotEmpty();
        }
    }

    @Test
    void a_table_that_cannot_be_read_is_named_with_its_cause() {
        assertThatThrownBy(() -> {
                    throw new CatalogueException("a.csv", new IOException("cut off"));
                })
                .hasMessage("the table a.csv of the catalogue cannot be read: cut off")
                .hasCauseInstanceOf(IOException.class);
    }
}
