package org.leat.check;

import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.file.Names;
import org.leat.quantity.QuantityKind;

/**
 * One named argument of a message: a typed value that a writer renders.
 *
 * @param name the placeholder it fills
 * @param value what it is
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Arg(String name, Value value) {

    /** What an argument can be. */
    public sealed interface Value {}

    /**
     * A physical value.
     *
     * @param si in the kind's SI unit
     * @param kind what it measures
     */
    public record Amount(double si, QuantityKind kind) implements Value {}

    /**
     * A whole number.
     *
     * @param number how many
     */
    public record Count(long number) implements Value {}

    /**
     * A word of the file format, a standard's designation, or a name from the design.
     *
     * @param text as it stands
     */
    public record Word(String text) implements Value {}

    /**
     * A place in the design.
     *
     * @param path as in {@link Outcome#path()}
     */
    public record Element(String path) implements Value {}

    /**
     * A text of its own, rendered where it stands.
     *
     * @param key of the text, such as {@code assumed/water-temperature}
     * @param text what it says; null where the checker's own texts say it
     */
    public record Phrase(String key, @Nullable String text) implements Value {}

    /** {@return a physical value in the kind's SI unit} */
    public static Arg of(String name, double si, QuantityKind kind) {
        return new Arg(name, new Amount(si, kind));
    }

    /** {@return a whole number} */
    public static Arg of(String name, long number) {
        return new Arg(name, new Count(number));
    }

    /** {@return a word or a name} */
    public static Arg of(String name, String text) {
        return new Arg(name, new Word(text));
    }

    /** {@return a word of the file format, spelled as in the file} */
    public static Arg of(String name, Enum<?> word) {
        return new Arg(name, new Word(Names.ofConstant(word)));
    }

    /** {@return a text by its key} */
    public static Arg phrase(String name, String key) {
        return new Arg(name, new Phrase(key, null));
    }

    /** {@return a text of its own} */
    public static Arg phrase(String name, Worded phrase) {
        return new Arg(name, new Phrase(phrase.key(), phrase.text()));
    }

    /** {@return a place in the design} */
    public static Arg at(String name, String path) {
        return new Arg(name, new Element(path));
    }

    /** A few words that several texts share, mostly constants of an enum. Meant to be implemented. */
    public interface Worded {

        /** {@return what machines know it by, as in {@code cause.runaway}; never changes} */
        String key();

        /** {@return what people read; no placeholders} */
        String text();
    }
}
