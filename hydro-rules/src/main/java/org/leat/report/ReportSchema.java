package org.leat.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.leat.check.Baseline.BaselineState;
import org.leat.check.Kind;
import org.leat.check.Level;

/** The JSON Schema (2020-12) of the JSON report, made from the records that it is written from. */
final class ReportSchema {

    private final Map<String, Object> defs = new TreeMap<>();

    private ReportSchema() {}

    /** {@return the schema as JSON text} */
    static String json() {
        StringBuilder out = new StringBuilder();
        try (JsonGenerator json = JsonLines.to(out)) {
            json.writePOJO(new ReportSchema().root());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.append('\n').toString();
    }

    private Map<String, Object> root() {
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        root.put("$id", "urn:leat:report:" + JsonModel.VERSION);
        root.put("title", "Report, version " + JsonModel.VERSION);
        root.put("description", "All numbers in SI units; absent where there is none or it is unlimited");
        root.putAll(record(JsonModel.Document.class));
        root.put("$defs", defs);
        return root;
    }

    private Map<String, Object> record(Class<?> type) {
        Map<String, Object> properties = new LinkedHashMap<>();
        List<String> required = new ArrayList<>();
        for (RecordComponent component : type.getRecordComponents()) {
            properties.put(component.getName(), value(type, component));
            if (!component.getAnnotatedType().isAnnotationPresent(Nullable.class)) {
                required.add(component.getName());
            }
        }
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "object");
        schema.put("properties", properties);
        schema.put("required", required);
        schema.put("additionalProperties", false);
        return schema;
    }

    private Map<String, Object> value(Class<?> holder, RecordComponent component) {
        String name = component.getName();
        if (holder == JsonModel.Document.class && name.equals("format")) {
            return Map.of("const", JsonModel.FORMAT);
        }
        if (holder == JsonModel.Document.class && name.equals("version")) {
            return Map.of("const", JsonModel.VERSION);
        }
        if (holder == JsonModel.FindingEntry.class && name.equals("kind")) {
            return Map.of("enum", words(Kind.values()));
        }
        if (holder == JsonModel.FindingEntry.class && name.equals("baselineState")) {
            return Map.of("enum", words(BaselineState.values()));
        }
        boolean level = holder == JsonModel.FindingEntry.class || holder == JsonModel.RuleEntry.class;
        if (level && name.equals("level")) {
            return Map.of("enum", words(Level.values()));
        }
        return value(component.getAnnotatedType());
    }

    private static List<String> words(Object[] constants) {
        List<String> words = new ArrayList<>();
        for (Object constant : constants) {
            words.add(
                    constant instanceof Kind kind
                            ? kind.word()
                            : constant instanceof Level level ? level.word() : ((BaselineState) constant).word());
        }
        return words;
    }

    private Map<String, Object> value(AnnotatedType annotated) {
        Type type = annotated.getType();
        if (type instanceof ParameterizedType parameterized) {
            if (parameterized.getRawType() == List.class) {
                Map<String, Object> list = new LinkedHashMap<>();
                list.put("type", "array");
                list.put("items", value(((AnnotatedParameterizedType) annotated).getAnnotatedActualTypeArguments()[0]));
                return list;
            }
            return Map.of("type", "object");
        }
        Class<?> plain = (Class<?>) type;
        if (plain.isRecord()) {
            String name = plain.getSimpleName();
            if (!defs.containsKey(name)) {
                defs.put(name, Map.of()); // holds the place while the fields are followed
                defs.put(name, record(plain));
            }
            return Map.of("$ref", "#/$defs/" + name);
        }
        return Map.of("type", simple(plain));
    }

    private static String simple(Class<?> type) {
        if (type == String.class) {
            return "string";
        }
        if (type == BigDecimal.class) {
            return "number";
        }
        return type == int.class || type == long.class ? "integer" : "boolean";
    }
}
