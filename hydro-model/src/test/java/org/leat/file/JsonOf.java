package org.leat.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** YAML as JSON, by the YAML library's own loader and not by the reader under test. */
final class JsonOf {

    private JsonOf() {}

    static String yaml(String text) {
        try {
            Object loaded = new Load(LoadSettings.builder().build()).loadFromString(text);
            return new ObjectMapper().writeValueAsString(loaded);
        } catch (JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }
}
