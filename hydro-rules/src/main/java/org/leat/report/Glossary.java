package org.leat.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** The words that reports use, each with a sentence for a builder. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class Glossary {

    private final Map<String, String> sentences;

    private Glossary(Map<String, String> sentences) {
        this.sentences = Collections.unmodifiableMap(sentences);
    }

    /** {@return the words that are shipped with the program} */
    public static Glossary shipped() {
        Map<String, String> sentences = new LinkedHashMap<>();
        try (InputStream in = Glossary.class.getResourceAsStream("words.txt")) {
            if (in == null) {
                throw new IllegalStateException("words.txt is not there");
            }
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n", -1)) {
                int colon = line.indexOf(": ");
                if (colon > 0 && !line.startsWith("#")) {
                    sentences.put(
                            line.substring(0, colon).strip(),
                            line.substring(colon + 2).strip());
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Glossary(sentences);
    }

    /** {@return every word with its sentence, in the order of a report} */
    public Map<String, String> all() {
        return sentences;
    }

    /** {@return what a word means; null if reports do not use it} Capitals, hyphens and a question mark make no difference. */
    public @Nullable String sentence(String word) {
        return sentences.get(plain(word));
    }

    /** {@return a word as the list has it} */
    static String plain(String word) {
        String plain = word.strip().toLowerCase(Locale.ROOT).replace('-', ' ').replace("?", "");
        return switch (plain) {
            case "below cut in" -> "below cut-in";
            case "rpm/v of peak" -> "rpm/V of peak";
            case "sdr" -> "SDR";
            case "pe100", "pe 100" -> "PE100";
            default -> plain;
        };
    }
}
