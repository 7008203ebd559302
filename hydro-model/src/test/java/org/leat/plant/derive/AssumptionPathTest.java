package org.leat.plant.derive;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import org.leat.arbitraries.Designs;
import org.leat.design.Design;
import org.leat.design.ElementPath;
import org.leat.file.DesignSchema;
import org.leat.plant.Plant;
import org.leat.plant.Plants;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.Assumption;
import org.leat.plant.numbers.SectionNumbers;

/** Every path that a plant names can be written in a design file. */
class AssumptionPathTest {

    private static final JsonNode SCHEMA = schema();

    private static JsonNode schema() {
        try {
            return new ObjectMapper().readTree(DesignSchema.json());
        } catch (java.io.IOException e) {
            throw new AssertionError(e);
        }
    }

    @Provide
    Arbitrary<Design> plants() {
        return Designs.plausible();
    }

    @Property(tries = 150, shrinking = ShrinkingMode.OFF)
    void every_path_of_a_plant_is_a_field_of_the_schema(@ForAll("plants") Design design) {
        Plant plant = Plant.of(design);
        Set<String> paths = new TreeSet<>();
        plant.assumptions().forEach(a -> paths.add(a.path()));
        plant.numbers().cables().forEach(c -> paths.add(c.path()));
        for (int i = 0; i < design.penstock().sections().size(); i++) {
            SectionNumbers section = plant.numbers().penstock().sections().get(i);
            assertThat(section.path())
                    .isEqualTo(ElementPath.item(
                            "/penstock/sections", design.penstock().sections(), i));
            paths.add(section.path());
            for (Amount amount :
                    List.of(section.rating(), section.ratingHot(), section.modulus(), section.longTermModulus())) {
                if (amount instanceof Amount.Unknown unknown) {
                    paths.add(unknown.path());
                }
            }
        }
        plant.unsolvable().forEach(u -> paths.add(u.path()));
        assertThat(paths).allSatisfy(path -> assertThat(known(path)).as(path).isTrue());
    }

    @Test
    void a_valve_whose_time_is_not_stated_is_named_by_its_place() {
        Plant plant = Plant.of(Plants.read(Plants.LEAST.replace("length: 90 m", """
                length: 90 m
                      fittings:
                        - { kind: entrance-sharp }
                        - { kind: gate-valve }
                        - { kind: ball-valve }""")));
        assertThat(plant.assumptions())
                .extracting(Assumption::path)
                .contains("/penstock/sections[run]/fittings[2]/closing-time");
    }

    @Test
    void a_path_that_no_file_can_have_is_told_apart() {
        assertThat(known("/cables/0/installation/ambient")).isFalse();
        assertThat(known("/cables[0]/installation/ambient")).isTrue();
        assertThat(known("/penstock/sections[run]/fittings/closing-time")).isFalse();
    }

    private static boolean known(String path) {
        List<JsonNode> here = List.of(SCHEMA);
        for (String step : path.substring(1).split("/")) {
            int list = step.indexOf('[');
            here = down(here, list < 0 ? step : step.substring(0, list));
            if (list >= 0) {
                List<JsonNode> items = new ArrayList<>();
                for (JsonNode node : here) {
                    for (JsonNode whole : alternatives(node, new HashSet<>())) {
                        if (whole.has("items")) {
                            items.add(whole.get("items"));
                        }
                    }
                }
                here = items;
            }
        }
        return !here.isEmpty();
    }

    private static List<JsonNode> down(List<JsonNode> nodes, String field) {
        List<JsonNode> found = new ArrayList<>();
        for (JsonNode node : nodes) {
            for (JsonNode whole : alternatives(node, new HashSet<>())) {
                JsonNode next = whole.path("properties").get(field);
                if (next != null) {
                    found.add(next);
                }
            }
        }
        return found;
    }

    /** The node and all it may stand for: references followed, alternatives opened. */
    private static List<JsonNode> alternatives(JsonNode node, Set<String> seen) {
        List<JsonNode> all = new ArrayList<>(List.of(node));
        JsonNode ref = node.get("$ref");
        if (ref != null && seen.add(ref.asText())) {
            all.addAll(alternatives(SCHEMA.at(ref.asText().substring(1)), seen));
        }
        if (node.has("then")) {
            all.addAll(alternatives(node.get("then"), seen));
        }
        for (String word : List.of("anyOf", "oneOf", "allOf")) {
            for (JsonNode each : node.path(word)) {
                boolean list = each.path("type").asText().equals("array");
                all.addAll(alternatives(each, seen));
                if (list) {
                    break; // what stands beside a list is its one item without brackets
                }
            }
        }
        return all;
    }
}
