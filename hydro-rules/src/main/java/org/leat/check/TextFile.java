package org.leat.check;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;

/** Reads message texts from a UTF-8 properties file beside a class. For packs, also outside this project. */
final class TextFile {

    private TextFile() {}

    /**
     * {@return the texts by key}
     *
     * @param beside a class of the same package
     * @param name the file's name
     * @throws IllegalArgumentException if there is no such file
     */
    public static Map<String, String> read(Class<?> beside, String name) {
        try (InputStream in = beside.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalArgumentException("no file " + name + " beside " + beside.getName());
            }
            Properties properties = new Properties();
            properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            Map<String, String> texts = new TreeMap<>();
            properties.stringPropertyNames().forEach(key -> texts.put(key, properties.getProperty(key)));
            return texts;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
