package org.leat.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.apiguardian.api.API;
import org.leat.design.Design;

/**
 * Writes a design as a file that reads back equal. The same design always gives the same text. A parts file that the
 * design names must be at hand when it is read again; the values taken from it are written out.
 */
@API(status = API.Status.STABLE, since = "0.1")
public final class DesignWriter {

    private static final ObjectMapper JSON = new ObjectMapper();

    private DesignWriter() {}

    /**
     * {@return the design as YAML}
     *
     * @throws IllegalArgumentException if a value has a unit that files do not know, or is not finite
     */
    public static String yaml(Design design) {
        return YamlText.of(DesignTree.of(design));
    }

    /**
     * {@return the design as JSON}
     *
     * @throws IllegalArgumentException if a value has a unit that files do not know, or is not finite
     */
    public static String json(Design design) {
        return json(DesignTree.of(design));
    }

    static String json(JsonNode tree) {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentObjectsWith(indenter);
        printer.indentArraysWith(indenter);
        try {
            return JSON.writer(printer).writeValueAsString(tree) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e); // a tree of plain values is always writable
        }
    }
}
