package org.leat.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leat.quantity.QuantityText.Refused;
import org.leat.quantity.QuantityText.Understood;
import org.leat.quantity.QuantityText.Why;

class QuantityTextTest {

    @Provide
    Arbitrary<TradeUnit> units() {
        return Arbitraries.of(allUnits());
    }

    private static List<TradeUnit> allUnits() {
        List<TradeUnit> units = new ArrayList<>();
        for (QuantityKind kind : QuantityKind.values()) {
            units.addAll(TradeUnits.of(kind));
        }
        return units;
    }

    private static Measured<?> understood(String text, QuantityKind kind) {
        return ((Understood) QuantityText.read(text, kind)).measured();
    }

    private static Why refused(String text, QuantityKind kind) {
        return ((Refused) QuantityText.read(text, kind)).why();
    }

    @Test
    void every_kind_has_units_and_the_first_is_of_factor_one() {
        for (QuantityKind kind : QuantityKind.values()) {
            assertThat(TradeUnits.of(kind)).as(kind.label()).isNotEmpty();
            assertThat(TradeUnits.of(kind).get(0).toSi(BigDecimal.ONE)).isEqualTo(1);
        }
    }

    @Property(tries = 500)
    void what_is_printed_reads_back_equal(@ForAll("units") TradeUnit unit, @ForAll double number) {
        double value = Math.abs(number) > 1e20 || Math.abs(number) < 1e-20 ? 1 / 3.0 : number;
        Quantity<?> q = Si.quantity(BigDecimal.valueOf(value), unit);
        String text = QuantityText.print(q);
        Measured<?> back = understood(text, unit.kind());
        assertThat(Si.of(back.value())).as(text).isEqualTo(Si.of(q));
        assertThat(back.value()).as(text).isEqualTo(q);
    }

    @Property(tries = 300)
    void every_unit_converts_as_the_reference_library_does(
            @ForAll("units") TradeUnit unit,
            @ForAll @net.jqwik.api.constraints.DoubleRange(min = -1e6, max = 1e6) double x) {
        for (String spelling : unit.spellings()) {
            String text = (new BigDecimal(x)
                                    .setScale(9, java.math.RoundingMode.HALF_EVEN)
                                    .toPlainString() + " " + spelling)
                    .strip();
            Measured<?> read = understood(text, unit.kind());
            double reference = reference(unit.unit(), Double.parseDouble(text.split(" ")[0]));
            assertThat(read.si()).as(text).isCloseTo(reference, within(1e-12 * Math.max(1, Math.abs(reference))));
        }
    }

    @Test
    void every_factor_is_that_of_the_reference_library() {
        for (TradeUnit unit : allUnits()) {
            double reference = reference(unit.unit(), 37.5);
            assertThat(unit.toSi(new BigDecimal("37.5")))
                    .as(unit.symbol())
                    .isCloseTo(reference, within(1e-12 * Math.abs(reference)));
        }
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static double reference(Unit unit, double value) {
        return unit.getConverterTo(unit.getSystemUnit()).convert(value);
    }

    @Property(tries = 300)
    void a_tolerance_is_printed_and_read_back(@ForAll("units") TradeUnit unit) {
        String difference = unit.kind() == QuantityKind.TEMPERATURE ? "K" : unit.symbol();
        Measured<?> read =
                understood(("16.5 " + unit.symbol()).strip() + " ± " + ("0.3 " + difference).strip(), unit.kind());
        assertThat(understood(QuantityText.print(read), unit.kind())).isEqualTo(read);
        assertThat(read.plusMinus()).isNotNull();
    }

    @Property(tries = 1000)
    void any_text_is_understood_or_refused_and_never_throws(@ForAll String text, @ForAll QuantityKind kind) {
        assertThat(QuantityText.read(text, kind)).isNotNull();
    }

    /** Values by the definitions of the units: SI Brochure (BIPM), NIST SP 811 appendix B, ISO 80000-4. */
    @ParameterizedTest
    @CsvSource({
        "1 in, LENGTH, 0.0254",
        "1 ft, LENGTH, 0.3048",
        "1 gal/min, VOLUME_FLOW, 6.30902e-5",
        "1 psi, PRESSURE, 6894.757",
        "1 bar, PRESSURE, 1e5",
        "10 m of water, PRESSURE, 98066.5",
        "20 degC, TEMPERATURE, 293.15",
        "-40 °C, TEMPERATURE, 233.15",
        "1500 rpm, ROTATIONAL_SPEED, 157.0796327",
        "200 Ah, CHARGE, 720000",
        "1 kWh, ENERGY, 3.6e6",
        "10 mm2, AREA, 1e-5",
        "1 cm2, AREA, 1e-4",
        "1.8 L/s, VOLUME_FLOW, 0.0018",
        "40 %, RATIO, 0.4",
        "0.4, RATIO, 0.4",
        "90 deg, ANGLE, 1.570796327",
        "300 uS/cm, CONDUCTIVITY, 0.03",
    })
    void units_have_their_defined_value(String text, QuantityKind kind, double si) {
        assertThat(understood(text, kind).si()).isCloseTo(si, within(1e-6 * Math.abs(si)));
    }

    /** ASTM B258: 10 AWG is 5.261 mm², 4/0 AWG is 107.2 mm². */
    @Test
    void wire_gauges_are_areas() {
        assertThat(understood("AWG 10", QuantityKind.AREA).si()).isCloseTo(5.261e-6, within(1e-9));
        assertThat(understood("4/0 AWG", QuantityKind.AREA).si()).isCloseTo(107.2e-6, within(5e-8));
    }

    @Test
    void one_rounding_only_so_that_decimal_texts_are_exact() {
        assertThat(understood("1.8 L/s", QuantityKind.VOLUME_FLOW).si()).isEqualTo(0.0018);
        assertThat(understood("63 mm", QuantityKind.LENGTH).si()).isEqualTo(0.063);
    }

    @Test
    void a_printed_square_millimetre_is_a_square_millimetre() {
        Quantity<Area> area = Si.quantity(10, "mm²", Area.class);
        assertThat(QuantityText.print(area)).isEqualTo("10 mm²");
        assertThat(Si.of(area)).isEqualTo(1e-5);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1,5 m | DECIMAL_COMMA",
                "1/3 m | UNKNOWN_UNIT",
                "1_000 m | UNKNOWN_UNIT",
                "5 | NO_UNIT",
                "5 V | OTHER_KIND",
                "5 furlong | UNKNOWN_UNIT",
                "five m | NOT_A_NUMBER",
                "NaN m | NOT_A_NUMBER",
                "1e400 m | TOO_LARGE",
                "5 m ± -1 m | TOLERANCE_NEGATIVE",
                "5 m ± 1 V | OTHER_KIND",
                "1.5.2 m | UNKNOWN_UNIT",
                "'' | NOT_A_NUMBER",
            })
    void traps_of_reading_numbers_are_refused(String text, Why why) {
        assertThat(refused(text, QuantityKind.LENGTH)).isEqualTo(why);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"16.5 m", "16.5m", "16.5\u00a0m", "16.5\u202fm", "+16.5 m", "1.65e1 m", "1650 cm", " 16.5  m "})
    void spellings_of_one_length_are_the_same_length(String text) {
        assertThat(understood(text, QuantityKind.LENGTH).si()).isEqualTo(16.5);
    }

    @Test
    void both_code_points_of_micro_and_of_ohm_are_read() {
        assertThat(understood("900 \u00B5H", QuantityKind.INDUCTANCE).si())
                .isEqualTo(understood("900 \u03BCH", QuantityKind.INDUCTANCE).si());
        assertThat(understood("1 \u03A9", QuantityKind.RESISTANCE).si())
                .isEqualTo(understood("1 \u2126", QuantityKind.RESISTANCE).si());
    }

    @Test
    void reading_and_printing_do_not_depend_on_the_default_locale() {
        Locale was = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(understood("16.5 m", QuantityKind.LENGTH).si()).isEqualTo(16.5);
            assertThat(QuantityText.print(Si.quantity(16.5, "m", Length.class))).isEqualTo("16.5 m");
            assertThat(QuantityText.show(1234.5678, QuantityKind.POWER, "W", 6)).isEqualTo("1234.57 W");
        } finally {
            Locale.setDefault(was);
        }
    }

    @Test
    void a_temperature_of_nought_is_shown_as_that_and_not_as_what_rounding_leaves_of_it() {
        assertThat(QuantityText.show(273.15, QuantityKind.TEMPERATURE, "°C", 3)).isEqualTo("0 °C");
        assertThat(QuantityText.show(Math.nextUp(273.15), QuantityKind.TEMPERATURE, "°C", 3))
                .isEqualTo("0 °C");
        assertThat(QuantityText.show(273.16, QuantityKind.TEMPERATURE, "°C", 3)).isEqualTo("0.01 °C");
        assertThat(QuantityText.show(272.15, QuantityKind.TEMPERATURE, "°C", 3)).isEqualTo("-1 °C");
        assertThat(QuantityText.show(1e-12, QuantityKind.LENGTH, "m", 3)).isEqualTo("0.000000000001 m");
    }

    @Test
    void a_tolerance_of_a_temperature_is_a_difference() {
        Measured<?> t = understood("20 °C ± 2 K", QuantityKind.TEMPERATURE);
        assertThat(t.si()).isEqualTo(293.15);
        assertThat(t.plusMinusSi()).isEqualTo(2);
        assertThat(Si.difference(Si.quantity(5, "°C", Temperature.class))).isEqualTo(5);
    }

    @Test
    void no_spelling_names_two_units_of_one_kind() {
        for (QuantityKind kind : QuantityKind.values()) {
            assertThat(TradeUnits.of(kind).stream().flatMap(u -> u.spellings().stream()))
                    .doesNotHaveDuplicates();
        }
    }
}
