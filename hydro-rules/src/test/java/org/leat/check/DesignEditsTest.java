package org.leat.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.leat.design.Design;
import org.leat.design.GrossHead;
import org.leat.design.ImpossibleValueException;
import org.leat.design.Pipe;
import org.leat.quantity.Measured;
import org.leat.quantity.Si;

class DesignEditsTest {

    private final Design design = Samples.design();

    @Test
    void a_value_deep_in_the_design_is_replaced_and_the_rest_shared() {
        Design edited = DesignEdits.apply(
                design, List.of(new Edit("/penstock/sections[run]/pipe/outside-diameter", millimetres(75))));

        Pipe.Polyethylene pipe =
                (Pipe.Polyethylene) edited.penstock().sections().get(0).pipe();
        assertThat(Si.of(pipe.outsideDiameter())).isEqualTo(0.075);
        assertThat(edited.battery()).isSameAs(design.battery());
        assertThat(edited).isNotEqualTo(design);
        assertThat(design).isEqualTo(Samples.design());
    }

    @Test
    void an_item_without_a_name_goes_by_its_number() {
        Design edited = DesignEdits.apply(design, List.of(new Edit("/nozzles/open[0]", millimetres(8))));
        assertThat(Si.of(edited.nozzles().open().get(0))).isEqualTo(0.008);
    }

    @Test
    void a_bare_quantity_fits_where_a_tolerance_could_stand() {
        Design edited =
                DesignEdits.apply(design, List.of(new Edit("/site/gross-head", Si.quantity(20, "m", Length.class))));
        assertThat(edited.site().grossHead())
                .isEqualTo(new GrossHead.Stated(Measured.exactly(Si.quantity(20, "m", Length.class))));
    }

    @Test
    void edits_are_applied_in_order_and_null_takes_a_value_out() {
        Design edited = DesignEdits.apply(
                design,
                List.of(
                        new Edit("/notes", "first"),
                        new Edit("/notes", "second"),
                        new Edit("/alternator/pole-pairs", null)));
        assertThat(edited.notes()).isEqualTo("second");
        assertThat(edited.alternator().polePairs()).isNull();
    }

    @Test
    void a_path_that_leads_nowhere_is_refused() {
        for (String path :
                List.of("/penstok", "/penstock/sections[none]", "/name/first", "penstock", "/", "/runner/kind")) {
            assertThatIllegalArgumentException()
                    .as(path)
                    .isThrownBy(() -> DesignEdits.apply(design, List.of(new Edit(path, "x"))));
        }
    }

    @Test
    void a_value_of_another_kind_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DesignEdits.apply(design, List.of(new Edit("/battery/cells-in-series", "eight"))));
    }

    @Test
    void a_design_that_can_never_be_is_refused_by_the_design() {
        assertThatExceptionOfType(ImpossibleValueException.class)
                .isThrownBy(() -> DesignEdits.apply(
                        design, List.of(new Edit("/penstock/sections[run]/length", millimetres(-1)))));
    }

    private static javax.measure.Quantity<Length> millimetres(double value) {
        return Si.quantity(value, "mm", Length.class);
    }
}
