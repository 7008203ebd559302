package org.leat.prices;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.leat.check.DesignEdits;
import org.leat.check.Edit;
import org.leat.design.BatteryManagement;
import org.leat.design.Design;
import org.leat.design.PlantPart;
import org.leat.file.DesignReader;
import org.leat.file.ProblemText;

/** Price lists, good and bad, each problem at its place. */
class PriceListTest {

    private static final Design HUT =
            Objects.requireNonNull(DesignReader.read(Path.of("..", "hydro-examples", "designs", "rowan-ghyll.yaml"))
                    .design());

    private static PriceList.Read read(String choices) {
        return PriceList.read("format: 1\ncurrency: EUR\nchoices:\n" + choices.stripIndent(), "list.yaml", HUT);
    }

    private static List<String> problems(String choices) {
        return read(choices).problems().stream().map(ProblemText::line).toList();
    }

    private static PriceList list(String choices) {
        PriceList.Read read = read(choices);
        assertThat(read.problems()).isEmpty();
        return Objects.requireNonNull(read.list());
    }

    @Test
    void the_list_of_the_demo_plant_is_read_whole_and_knows_what_the_design_has_already() {
        Path file = Path.of("..", "hydro-examples", "prices", "rowan-ghyll.yaml");
        PriceList.Read read = PriceList.read(file, "rowan-ghyll.yaml", HUT);
        assertThat(read.problems()).isEmpty();
        PriceList list = Objects.requireNonNull(read.list());
        assertThat(list.currency()).isEqualTo("EUR");
        assertThat(list.sets()).isEqualTo(6 * 4 * 4 * 4);
        for (PriceList.Choice choice : list.choices()) {
            assertThat(choice.parts().stream().filter(PriceList.Part::asDesigned))
                    .as(choice.name())
                    .hasSize(1);
            for (PriceList.Part part : choice.parts()) {
                assertThat(DesignEdits.apply(HUT, part.edits()).equals(HUT)).isEqualTo(part.asDesigned());
            }
        }
    }

    @Test
    void a_part_sets_values_lists_and_whole_elements_as_a_design_file_would() {
        PriceList list = list("""
                - name: nozzles
                  at: /nozzles
                  fields: [ open, form ]
                  parts: { name: two, price: 12.5, sets: { open: [ 8 mm, 8 mm ], form: sharp-hole } }
                - name: battery's management
                  at: /battery
                  fields: [ management ]
                  parts:
                    - name: of its own
                      price: 0
                      sets: { management: { opens-on-cold: false, opens-above: 29 V } }
                - name: cable
                  at: /
                  fields: [ "cables[2]/conductor/area" ]
                  parts: [ { name: thick, price: 40, sets: { "cables[2]/conductor/area": 50 mm² } } ]
                """);
        Design changed = HUT;
        for (PriceList.Choice choice : list.choices()) {
            changed = DesignEdits.apply(changed, choice.parts().get(0).edits());
        }
        assertThat(changed.nozzles().open()).hasSize(2);
        BatteryManagement management = Objects.requireNonNull(changed.battery().management());
        assertThat(management.opensOnCold()).isFalse();
        assertThat(list.choices().get(0).parts().get(0).price()).isEqualByComparingTo(new BigDecimal("12.5"));
        assertThat(changed.cables().get(2).conductor().area().toString()).startsWith("50");
    }

    /** Else the water of nozzles that nobody buys is counted. */
    @Test
    void a_part_without_the_nozzles_that_the_design_opens_in_its_sets_is_told_at_its_place() throws Exception {
        String text = Files.readString(Path.of("..", "hydro-examples", "designs", "rowan-ghyll.yaml"))
                .replaceFirst("(?m)^nozzles:\n", "nozzles:\n  sets: [ { open: [ 11 mm, 9 mm ] } ]\n");
        Design stated =
                Objects.requireNonNull(DesignReader.read(text, "stated.yaml").design());
        String file = """
                format: 1
                currency: EUR
                choices:
                  - name: nozzle
                    at: /nozzles
                    fields: [ open, available ]
                    parts:
                      - { name: one 9, price: 10, sets: { open: 9 mm, available: 9 mm } }
                      - { name: both, price: 20, sets: { open: 9 mm, available: [ 9 mm, 11 mm ] } }
                """;
        assertThat(PriceList.read(file, "list.yaml", stated).problems().stream().map(ProblemText::line))
                .singleElement()
                .asString()
                .startsWith("list.yaml:8:")
                .contains("/choices[nozzle]/parts[one 9]/sets")
                .contains("without the nozzle of 11 mm that /nozzles/sets opens")
                .contains("a choice that sets the field sets too");
        String whole = file.replace("available ]", "available, sets ]")
                .replace("available: 9 mm }", "available: 9 mm, sets: [ { open: [ 9 mm ] } ] }")
                .replace("[ 9 mm, 11 mm ] }", "[ 9 mm, 11 mm ], sets: [ { open: [ 9 mm, 11 mm ] } ] }");
        assertThat(PriceList.read(whole, "list.yaml", stated).problems()).isEmpty();
    }

    @Test
    void an_element_or_a_field_that_does_not_exist_is_told_with_what_does() {
        assertThat(problems("""
                        - name: pipe
                          at: /penstock/sections[rum]/pipe
                          fields: [ sdr ]
                          parts: [ { name: a, price: 1, sets: { sdr: 11 } } ]
                        - name: wire
                          at: /alternator
                          fields: [ winding/resistance-between-lead ]
                          parts: [ { name: a, price: 1, sets: { winding/resistance-between-lead: 1 Ω } } ]
                        - name: element
                          at: penstock.sections
                          fields: [ sdr ]
                          parts: [ { name: a, price: 1, sets: { sdr: 11 } } ]
                        - name: ratio
                          at: /regulator/tracking-window
                          fields: [ from ]
                          parts: [ { name: a, price: 1, sets: { from: 30 V } } ]
                        """))
                .satisfiesExactly(
                        one -> assertThat(one)
                                .startsWith("list.yaml:5:7: /choices[pipe]/at: no field is called \"sections[rum]\"")
                                .endsWith("did you mean \"sections[run]\"?"),
                        two -> assertThat(two)
                                .startsWith("list.yaml:10:13: /choices[wire]/fields[0]: ")
                                .contains("did you mean \"resistance-between-leads\"?"),
                        three -> assertThat(three)
                                .startsWith("list.yaml:13:7: /choices[element]/at: ")
                                .endsWith("write the element as a report shows it, as /penstock/sections[run]/pipe"),
                        four -> assertThat(four)
                                .startsWith("list.yaml:18:13: /choices[ratio]/fields[0]: ")
                                .endsWith("write a choice of the whole of tracking-window: the design states none"));
    }

    @Test
    void a_part_that_fits_nowhere_is_told_at_what_does_not_fit() {
        assertThat(problems("""
                        - name: pipe
                          at: /penstock/sections[run]/pipe
                          fields: [ outside-diameter, sdr ]
                          parts:
                            - { name: no wall, price: 1, sets: { outside-diameter: 63 mm } }
                            - { name: too much, price: 1, sets: { outside-diameter: 63 mm, sdr: 11, lenght: 4 m } }
                            - { name: a wheel, price: 1, sets: { outside-diameter: 63 kg, sdr: eleven } }
                        - name: length
                          at: /penstock/sections[run]
                          fields: [ length ]
                          parts: [ { name: short, price: 1, sets: { length: 4 m } } ]
                        """))
                .satisfiesExactly(
                        one -> assertThat(one)
                                .startsWith("list.yaml:8:40: /choices[pipe]/parts[no wall]/sets[sdr]: missing"),
                        two -> assertThat(two)
                                .startsWith("list.yaml:9:77: /choices[pipe]/parts[too much]/sets[lenght]: no field"),
                        three -> assertThat(three)
                                .startsWith("list.yaml:10:60: /choices[pipe]/parts[a wheel]/sets[outside-diameter]")
                                .contains("\"63 kg\"")
                                .contains("a mass"),
                        four -> assertThat(four)
                                .startsWith("list.yaml:10:72: /choices[pipe]/parts[a wheel]/sets[sdr]")
                                .contains("\"eleven\""),
                        five -> assertThat(five)
                                .startsWith("list.yaml:14:43: /choices[length]/parts[short]/sets: ")
                                .contains("to-elevation 0 m, which cannot be"));
    }

    @Test
    void a_price_that_is_missing_negative_or_no_number_is_told() {
        assertThat(problems("""
                        - name: pipe
                          at: /penstock/sections[run]/pipe
                          fields: [ sdr ]
                          parts:
                            - { name: a, sets: { sdr: 11 } }
                            - { name: b, price: -1, sets: { sdr: 11 } }
                            - { name: c, price: cheap, sets: { sdr: 11 } }
                        """))
                .satisfiesExactly(
                        one -> assertThat(one)
                                .startsWith("list.yaml:8:7: /choices[pipe]/parts[a]/price: missing; expected a number"),
                        two -> assertThat(two)
                                .startsWith("list.yaml:9:25: /choices[pipe]/parts[b]/price: found -1")
                                .endsWith("expected at least 0"),
                        three -> assertThat(three).contains("/price: found \"cheap\""));
    }

    @Test
    void no_field_is_varied_twice_and_no_name_is_given_twice() {
        assertThat(problems("""
                        - name: pipe
                          at: /penstock/sections[run]/pipe
                          fields: [ sdr ]
                          parts:
                            - { name: a, price: 1, sets: { sdr: 11 } }
                            - { name: a, price: 2, sets: { sdr: 17 } }
                        - name: pipe
                          at: /penstock
                          fields: [ "sections[run]/pipe" ]
                          parts: [ { name: a, price: 1, sets: { "sections[run]/pipe": { kind: polyethylene } } } ]
                        """))
                .satisfiesExactly(
                        one -> assertThat(one).endsWith("\"a\" is given twice, first in line 8"),
                        two -> assertThat(two).endsWith("\"pipe\" is given twice, first in line 4"),
                        three -> assertThat(three)
                                .startsWith("list.yaml:12:13: /choices[1]/fields[0]: \"/penstock/sections[run]/pipe\"")
                                .endsWith("is given twice, first in line 6"));
    }

    @Test
    void what_is_on_hand_already_is_not_chosen_again() {
        Design bought = DesignEdits.apply(HUT, List.of(new Edit("/on-hand", List.of(PlantPart.ALTERNATOR))));
        PriceList.Read read = PriceList.read(
                "format: 1\ncurrency: EUR\nchoices:\n- name: motor\n  at: /alternator\n  fields: pole-pairs\n  parts: { name: a, price: 1, sets: { pole-pairs: 7 } }\n",
                "list.yaml",
                bought);
        assertThat(read.list()).isNull();
        assertThat(read.problems().stream().map(ProblemText::line))
                .containsExactly(
                        "list.yaml:6:11: /choices[motor]/fields[0]: found /alternator/pole-pairs, which contradicts"
                                + " the rest; expected a field of a part that the design does not list as on-hand");
    }

    @Test
    void more_sets_than_can_be_searched_are_refused() {
        StringBuilder choices = new StringBuilder();
        List<String> cables = List.of("cables[0]", "cables[1]", "cables[2]", "cables[3]");
        for (String cable : cables) {
            choices.append("- { name: '" + cable + "', at: '/" + cable + "/conductor', fields: area, parts: [ ");
            for (int i = 1; i <= 60; i++) {
                choices.append("{ name: n" + i + ", price: 1, sets: { area: " + i + " mm² } }, ");
            }
            choices.append("] }\n");
        }
        assertThat(problems(choices.toString()))
                .containsExactly(
                        "list.yaml:4:1: /choices: too much for one design: more than 10000000 sets; expected at most"
                                + " 10000000 sets of parts");
    }

    @Test
    void the_schema_in_the_docs_is_the_one_the_program_prints_and_leaves_the_shape_of_a_value_to_the_design()
            throws Exception {
        Path docs = Path.of("..", "docs", "price-list.schema.json");
        if (Boolean.getBoolean("leat.write-docs")) {
            Files.writeString(docs, PriceList.schema());
        }
        assertThat(Files.readString(docs)).isEqualTo(PriceList.schema());
        JsonNode priced = new ObjectMapper().readTree(PriceList.schema()).at("/$defs/priced");
        assertThat(priced.at("/properties/sets/additionalProperties").size()).isZero();
        assertThat(priced.at("/required").toString()).contains("price");
    }

    @Test
    void the_page_tells_every_field_and_its_example_and_the_demo_list_are_valid_by_the_schema() throws Exception {
        String page = Files.readString(Path.of("..", "docs", "choosing.md"));
        new ObjectMapper()
                .readTree(PriceList.schema())
                .findValues("properties")
                .forEach(fields -> fields.fieldNames()
                        .forEachRemaining(f -> assertThat(page).contains("`" + f + "`")));
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(PriceList.schema());
        Matcher blocks =
                Pattern.compile("```yaml\n(format: .*?)```", Pattern.DOTALL).matcher(page);
        assertThat(blocks.find()).isTrue();
        String demo = Files.readString(Path.of("..", "hydro-examples", "prices", "rowan-ghyll.yaml"));
        for (String list : List.of(blocks.group(1), demo)) {
            assertThat(schema.validate(list, InputFormat.YAML)).isEmpty();
            assertThat(PriceList.read(list, "list.yaml", HUT).problems()).isEmpty();
        }
    }
}
