package org.leat.check.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.nodes.Node;

class PlacePathTest {

    private static final String DESIGN = """
            site: { gross-head: 24 m ± 1 m }
            sections:
              - name: run
                sdr: 17
              - name: "a/b[c]"
                sdr: 11
            open: [10 mm, 8 mm]
            """;

    private static String put(String path, String value) {
        Node root = Yaml.read(DESIGN, "design");
        PlacePath.of(path).put(root, Yaml.read(value, "value"));
        return Yaml.text(Yaml.read(Yaml.write(root), "written"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            /site/gross-head            | 30 m         | {gross-head: 30 m}
            /site/altitude              | 340 m        | {gross-head: 24 m ± 1 m, altitude: 340 m}
            /site/air-temperature/high  | 30 °C        | air-temperature: {high: 30 °C}
            /sections[run]/sdr          | 11           | [{name: run, sdr: 11}, {
            /sections[1]/sdr            | 9            | {name: a/b[c], sdr: 9}
            /sections[a~1b~2c~3]/sdr    | 9            | {name: a/b[c], sdr: 9}
            /sections[run]              | {name: x}    | sections: [{name: x}, {name: a/b[c], sdr: 11}]
            /sections[run]              | null         | sections: [{name: a/b[c], sdr: 11}]
            /sections[2]                | {name: y}    | sdr: 11}, {name: y}]
            /open                       | [9 mm]       | open: [9 mm]
            /open[1]                    | 7 mm         | open: [10 mm, 7 mm]
            /open[0]                    | null         | open: [8 mm]
            """)
    void a_value_is_put_where_the_path_says(String path, String value, String result) {
        assertThat(put(path, value)).contains(result);
    }

    @Test
    void what_is_taken_out_is_gone_and_the_rest_stays() {
        assertThat(put("/site", "null")).doesNotContain("site", "24 m").contains("name: run", "open: [10 mm, 8 mm]");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/nothing",
                "/site/nothing",
                "/sections[x]",
                "/open[2]",
                "/sections[run]/pipe/sdr",
                "/nothing[0]",
                "/site[0]",
                "/site/gross-head/kind"
            })
    void nothing_can_be_taken_out_where_nothing_stands(String path) {
        assertThatIllegalArgumentException().isThrownBy(() -> put(path, "null")).withMessageStartingWith(path);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "/", "site", "/site/", "/sections[run", "/[0]", "/sections[0][1]"})
    void what_is_no_path_is_refused(String path) {
        assertThatIllegalArgumentException().isThrownBy(() -> PlacePath.of(path));
    }

    @Test
    void a_list_is_not_added_to_with_a_gap_or_under_a_name() {
        assertThatIllegalArgumentException().isThrownBy(() -> put("/open[3]", "7 mm"));
        assertThatIllegalArgumentException().isThrownBy(() -> put("/sections[new]", "{name: new}"));
    }

    @Test
    void what_stands_there_already_is_no_change() {
        assertThatIllegalArgumentException().isThrownBy(() -> put("/site/gross-head", "24 m ± 1 m"));
        assertThatIllegalArgumentException().isThrownBy(() -> put("/open", "[ 10 mm, 8 mm ]"));
        assertThat(put("/sections[run]/sdr", "\"17\"")).contains("sdr: 17"); // a text is no number
    }
}
