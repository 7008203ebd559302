package org.leat.choice;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.Finding;

/**
 * An input that is not told, and the questions that hang on it.
 *
 * @param field path of the design's field, as {@code /safeguards/stop-water}
 * @param settles the questions that it would settle, or bring nearer to an answer; the worst first
 * @param assumed whether a value was assumed in its place
 * @param how how to come by it
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record MissingInput(String field, List<Finding> settles, boolean assumed, HowToLearn how) {

    public MissingInput {
        settles = List.copyOf(settles);
    }

    /** {@return how many of the questions are of what can hurt someone} */
    public long endangering() {
        return settles.stream().filter(Finding::endangers).count();
    }

    /**
     * How to come by an input.
     *
     * @param sentence what to do, for a person, in one sentence
     * @param known whether it is of that input; false where nothing is known but that it must be told
     */
    public record HowToLearn(String sentence, boolean known) {

        /**
         * {@return how to come by a field of a design file; null if that is not known of this very field}
         *
         * @param field as reports show it, or as a path
         */
        public static @Nullable String sentenceOf(String field) {
            return Book.shipped().byField.get(Book.plain(field));
        }

        /** How to come by each input of a design file, by its field; list items without their names. */
        static final class Book {

            private final Map<String, String> byField;

            private Book(Map<String, String> byField) {
                this.byField = byField;
            }

            /** {@return what is shipped with the program} */
            static Book shipped() {
                try (InputStream in = HowToLearn.class.getResourceAsStream("how-to-learn.txt")) {
                    if (in == null) {
                        throw new IllegalStateException("how-to-learn.txt is not there");
                    }
                    return new Book(read(new String(in.readAllBytes(), StandardCharsets.UTF_8)));
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            }

            private static Map<String, String> read(String text) {
                Map<String, String> byField = new LinkedHashMap<>();
                for (String line : text.split("\n", -1)) {
                    int colon = line.indexOf(": ");
                    if (colon > 0 && !line.startsWith("#")) {
                        byField.put(
                                line.substring(0, colon).strip(),
                                line.substring(colon + 2).strip());
                    }
                }
                return byField;
            }

            /** {@return how to come by a field: its own line, else that of the nearest part around it} */
            HowToLearn of(String path) {
                String field = plain(path);
                String own = byField.get(field);
                if (own != null) {
                    return new HowToLearn(own, true);
                }
                for (int dot = field.lastIndexOf('.'); dot > 0; dot = field.lastIndexOf('.', dot - 1)) {
                    String around = byField.get(field.substring(0, dot) + ".*");
                    if (around != null) {
                        return new HowToLearn(around, true);
                    }
                }
                return new HowToLearn(orElse(byField.get("*")), false);
            }

            /** {@return what to do about an input that is told and lies outside what a law covers} */
            HowToLearn beyond(String path) {
                String own = byField.get("beyond " + plain(path));
                return new HowToLearn(own == null ? orElse(byField.get("beyond *")) : own, own != null);
            }

            /** {@return a path with dots, without the names of list items} */
            static String plain(String path) {
                return path.replaceAll("\\[[^\\]]*\\]", "")
                        .replaceFirst("^/", "")
                        .replace('/', '.');
            }

            private static String orElse(@Nullable String any) {
                return any == null ? "" : any;
            }
        }
    }
}
