package org.leat.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * What a pack gave when it was asked once. Whatever the pack did, this one is whole: a {@link BrokenRule} stands for
 * each part that could not be used.
 *
 * @param from where the pack was found; "" for one that was handed over
 */
record LoadedPack(String name, String from, List<Rule> rules, Map<String, String> examples) implements RulePack {

    /**
     * {@return a pack that was handed over, asked here and now} For its rules alone: whoever wants the examples of pages has the
     * pack, and to read them all costs a check of one design more than the rules do.
     */
    static LoadedPack of(RulePack pack) {
        return pack instanceof LoadedPack loaded ? loaded : new Asking("", null).pack(pack);
    }

    /** {@return a pack of foreign code} */
    static LoadedPack of(Supplier<? extends RulePack> pack, String from, Watch watch) {
        Asking asking = new Asking(from, watch);
        RulePack given = asking.ask("the pack", pack);
        return given == null ? asking.nothing() : asking.pack(given);
    }

    /** {@return how to tell this pack from others} */
    String told() {
        return from.isEmpty() || from.equals(name) ? name : name + " (" + from + ")";
    }

    /** Asks a pack part by part. */
    private static final class Asking {
        private final String from;
        private final @Nullable Watch watch;
        private final List<Rule> rules = new ArrayList<>();

        Asking(String from, @Nullable Watch watch) {
            this.from = from;
            this.watch = watch;
        }

        <T> @Nullable T ask(String what, Supplier<T> question) {
            try {
                if (watch != null) {
                    return watch.ask(what, question);
                }
                T given = question.get();
                if (given == null) {
                    throw new PackFault(what + " gave null");
                }
                return given;
            } catch (PackFault e) {
                broke(what, PackFault.cause(e));
            } catch (RuntimeException | StackOverflowError | LinkageError e) {
                broke(what, what + " broke: " + PackFault.cause(e));
            }
            return null;
        }

        private void broke(String what, String cause) {
            rules.add(BrokenRule.of(from + " " + what, cause));
        }

        LoadedPack nothing() {
            return new LoadedPack(from, from, List.copyOf(rules), Map.of());
        }

        LoadedPack pack(RulePack pack) {
            String type = pack.getClass().getSimpleName();
            String named = ask(type + " name", pack::name);
            String name = named == null ? type : named;
            Map<String, String> examples = watch == null ? Map.of() : texts(name + " examples", pack::examples);
            List<Rule> given = ask(name + " rules", () -> new ArrayList<>(pack.rules()));
            for (int i = 0; given != null && i < given.size(); i++) {
                Rule rule = given.get(i);
                Rule whole = ask(name + " rule " + (i + 1), () -> rule);
                if (whole != null) {
                    rules.add(watch == null ? whole : WatchedRule.of(whole, watch));
                }
            }
            return new LoadedPack(name, from, List.copyOf(rules), examples);
        }

        private Map<String, String> texts(String what, Supplier<Map<String, String>> question) {
            Map<String, String> texts = ask(what, () -> Collections.unmodifiableMap(new TreeMap<>(question.get())));
            if (texts == null) {
                return Map.of();
            }
            Map<String, String> whole = new LinkedHashMap<>(texts);
            whole.values().removeIf(text -> text == null);
            return Collections.unmodifiableMap(whole);
        }
    }
}
