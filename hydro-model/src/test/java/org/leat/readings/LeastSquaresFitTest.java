package org.leat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.readings.LeastSquaresFit.Fitted;
import org.leat.readings.LeastSquaresFit.NotFitted;

/** Against the certified nonlinear sets of the Statistical Reference Datasets of NIST, from both of their starts. */
class LeastSquaresFitTest {

    private interface Curve {
        double at(double x, double[] b);
    }

    private static final Map<String, Curve> CURVES = Map.ofEntries(
            Map.entry("misra1a", (x, b) -> b[0] * (1 - Math.exp(-b[1] * x))),
            Map.entry("misra1b", (x, b) -> b[0] * (1 - Math.pow(1 + b[1] * x / 2, -2))),
            Map.entry("danwood", (x, b) -> b[0] * Math.pow(x, b[1])),
            Map.entry("boxbod", (x, b) -> b[0] * (1 - Math.exp(-b[1] * x))),
            Map.entry("mgh10", (x, b) -> b[0] * Math.exp(b[1] / (x + b[2]))),
            Map.entry("mgh09", (x, b) -> b[0] * (x * x + b[1] * x) / (x * x + b[2] * x + b[3])),
            Map.entry("rat42", (x, b) -> b[0] / (1 + Math.exp(b[1] - b[2] * x))),
            Map.entry("rat43", (x, b) -> b[0] / Math.pow(1 + Math.exp(b[1] - b[2] * x), 1 / b[3])),
            Map.entry("eckerle4", (x, b) -> b[0] / b[1] * Math.exp(-0.5 * Math.pow((x - b[2]) / b[1], 2))),
            Map.entry(
                    "thurber",
                    (x, b) -> (b[0] + x * (b[1] + x * (b[2] + x * b[3]))) / (1 + x * (b[4] + x * (b[5] + x * b[6])))),
            Map.entry("roszman1", (x, b) -> b[0] - b[1] * x - Math.atan(b[2] / (x - b[3])) / Math.PI));

    private record Certified(String name, JsonNode set, int start) {
        @Override
        public String toString() {
            return name + " from start " + (start + 1);
        }
    }

    static Stream<Certified> certified() throws IOException {
        try (InputStream in =
                Objects.requireNonNull(LeastSquaresFitTest.class.getResourceAsStream("certified-fits.json"))) {
            List<Certified> all = new ArrayList<>();
            for (JsonNode set : new ObjectMapper().readTree(in)) {
                for (int start = 0; start < 2; start++) {
                    all.add(new Certified(set.get("name").asText(), set, start));
                }
            }
            return all.stream();
        }
    }

    @ParameterizedTest
    @MethodSource("certified")
    void finds_the_certified_parameters_from_both_starts(Certified certified) {
        double[] x = numbers(certified.set().get("x"));
        double[] y = numbers(certified.set().get("y"));
        Curve curve = Objects.requireNonNull(CURVES.get(certified.name()));
        LeastSquaresFit.Result result = LeastSquaresFit.of(
                b -> {
                    double[] values = new double[x.length];
                    for (int i = 0; i < x.length; i++) {
                        values[i] = curve.at(x[i], b);
                    }
                    return values;
                },
                y,
                numbers(certified.set().get("starts").get(certified.start())));
        double[] expected = numbers(certified.set().get("b"));
        double[] standard = numbers(certified.set().get("standard"));
        assertThat(result).isInstanceOf(Fitted.class);
        Fitted fit = (Fitted) result;
        for (int p = 0; p < expected.length; p++) {
            assertThat(fit.parameters()[p]).isCloseTo(expected[p], within(1e-6 * Math.abs(expected[p])));
            assertThat(fit.standard()[p]).isCloseTo(standard[p], within(1e-4 * standard[p]));
        }
        double squares = certified.set().get("squares").asDouble();
        assertThat(fit.sum()).isCloseTo(squares, within(1e-7 * squares));
    }

    @Test
    void a_law_that_gives_no_number_is_not_fitted() {
        assertThat(LeastSquaresFit.of(b -> new double[] {Double.NaN, b[0]}, new double[] {1, 2}, new double[] {1}))
                .isInstanceOf(NotFitted.class);
    }

    private static double[] numbers(JsonNode list) {
        double[] numbers = new double[list.size()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = list.get(i).asDouble();
        }
        return numbers;
    }
}
