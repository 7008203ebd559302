package org.leat.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.leat.quantity.Quantities.celsius;
import static org.leat.quantity.Quantities.exactly;
import static org.leat.quantity.Quantities.kelvinsApart;
import static org.leat.quantity.Quantities.litresPerSecond;
import static org.leat.quantity.Quantities.m;
import static org.leat.quantity.Quantities.mm;
import static org.leat.quantity.Quantities.plusMinus;
import static org.leat.quantity.Quantities.rpm;
import static org.leat.quantity.Quantities.wireGauge;

import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class QuantitiesTest {

    static Stream<Method> factories() {
        return Arrays.stream(Quantities.class.getDeclaredMethods())
                .filter(method -> Arrays.equals(method.getParameterTypes(), new Class<?>[] {double.class}));
    }

    @ParameterizedTest
    @MethodSource("factories")
    void what_a_factory_makes_is_of_its_kind_and_reads_back_from_its_text(Method factory) throws Exception {
        Quantity<?> made = (Quantity<?>) factory.invoke(null, 3.25);
        Class<?> type = (Class<?>) ((ParameterizedType) factory.getGenericReturnType()).getActualTypeArguments()[0];
        QuantityText.Reading read = QuantityText.read(QuantityText.print(made), QuantityKind.of(type));
        assertThat(read).isEqualTo(new QuantityText.Understood(Measured.exactly((Quantity) made)));
        assertThat(TradeUnits.find(made.getUnit()).toSi(Si.decimal(3.25))).isEqualTo(Si.of(made));
    }

    @Test
    void every_unit_of_a_design_file_has_a_factory() throws Exception {
        Set<String> made = new LinkedHashSet<>();
        for (Method factory : factories().toList()) {
            Class<?> type = (Class<?>) ((ParameterizedType) factory.getGenericReturnType()).getActualTypeArguments()[0];
            String symbol = TradeUnits.find(((Quantity<?>) factory.invoke(null, 1.0)).getUnit())
                    .symbol();
            assertThat(made.add(QuantityKind.of(type) + " " + symbol))
                    .as(factory.getName())
                    .isTrue();
        }
        List<String> known = new ArrayList<>();
        for (QuantityKind kind : QuantityKind.values()) {
            TradeUnits.of(kind).forEach(unit -> known.add(kind + " " + unit.symbol()));
        }
        assertThat(made).containsExactlyInAnyOrderElementsOf(known);
    }

    @Test
    void values_are_those_of_the_units() {
        assertThat(Si.of(mm(11))).isEqualTo(0.011);
        assertThat(Si.of(litresPerSecond(2.2))).isEqualTo(0.0022);
        assertThat(Si.of(rpm(60))).isEqualTo(2 * Math.PI);
        assertThat(Si.of(celsius(14))).isEqualTo(287.15);
        assertThat(exactly(m(26)).si()).isEqualTo(26);
        assertThat(plusMinus(m(16.5), mm(300)).plusMinusSi()).isEqualTo(0.3);
        assertThat(plusMinus(celsius(14), kelvinsApart(2)).plusMinusSi()).isEqualTo(2);
    }

    @Test
    void a_wire_gauge_has_the_area_of_its_text() {
        assertThat(new QuantityText.Understood(exactly(wireGauge(6))))
                .isEqualTo(QuantityText.read("6 AWG", QuantityKind.AREA));
        assertThat(new QuantityText.Understood(exactly(wireGauge(-1))))
                .isEqualTo(QuantityText.read("2/0 AWG", QuantityKind.AREA));
        assertThatIllegalArgumentException().isThrownBy(() -> wireGauge(41));
    }

    @Test
    void what_is_not_finite_is_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> m(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> m(Double.POSITIVE_INFINITY));
    }
}
