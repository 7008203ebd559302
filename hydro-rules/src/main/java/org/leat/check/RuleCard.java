package org.leat.check;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.apiguardian.api.API;

/**
 * What a rule says about itself: the ground of its page in the reference, of {@code explain} and of its SARIF entry.
 * Filled in with {@link Rule#of}. Immutable.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class RuleCard {

    /** The words that stand for a source where a limit is a rule of thumb. */
    public static final String COMMON_PRACTICE = "common practice";

    private static final Pattern ID = Pattern.compile("[a-z]+(-[a-z]+)*/[a-z0-9]+(-[a-z0-9]+)*");

    private final String id;
    private final Level level;
    private final Level worst;
    private final boolean endangers;
    private final boolean warningsHurt;
    private final boolean judgesInput;
    private final String title;
    private final String why;
    private final String formula;
    private final String judged;
    private final List<String> sources;
    private final Map<String, NamedLimit> limits;
    private final Map<String, CardText> texts;

    RuleCard(
            String id,
            Level level,
            Level worst,
            boolean endangers,
            boolean warningsHurt,
            boolean judgesInput,
            String title,
            String why,
            String formula,
            String judged,
            List<String> sources,
            Map<String, NamedLimit> limits,
            Map<String, CardText> texts) {
        if (!ID.matcher(id).matches()) {
            throw new IllegalArgumentException("not a rule id: " + id);
        }
        if (sources.isEmpty() || title.isBlank() || why.isBlank() || formula.isBlank() || judged.isBlank()) {
            throw new IllegalArgumentException("rule " + id + " must state title, why, formula, case and source");
        }
        if (worst.compareTo(level) < 0) {
            throw new IllegalArgumentException("rule " + id + " fails as " + level + ", worse than " + worst);
        }
        this.id = id;
        this.level = level;
        this.worst = worst;
        this.endangers = endangers;
        this.warningsHurt = warningsHurt;
        this.judgesInput = judgesInput;
        this.title = title;
        this.why = why;
        this.formula = formula;
        this.judged = judged;
        this.sources = List.copyOf(sources);
        this.limits = Collections.unmodifiableMap(new LinkedHashMap<>(limits));
        this.texts = Collections.unmodifiableMap(new LinkedHashMap<>(texts));
    }

    /** {@return whether a text can be a rule's id} */
    public static boolean isId(String text) {
        return ID.matcher(text).matches();
    }

    /** {@return component and what is judged, as in {@code penstock/static-pressure}} */
    public String id() {
        return id;
    }

    /** {@return the level of a failure, unless the rule states another for a case or settings change it} */
    public Level level() {
        return level;
    }

    /** {@return the worst level a failure of this rule can have} */
    public Level worst() {
        return worst;
    }

    /** {@return whether what its errors show can hurt someone} */
    public boolean endangers() {
        return endangers;
    }

    /** {@return whether what its warnings show can hurt someone, as what its errors show does} */
    public boolean warningsHurt() {
        return warningsHurt;
    }

    /** {@return whether anything it shows, as an error or as a warning, can hurt someone} */
    public boolean canHurt() {
        return endangers || warningsHurt;
    }

    /** {@return whether it judges what was written and not the plant} */
    public boolean judgesInput() {
        return judgesInput;
    }

    /** {@return what is judged, in a few words} */
    public String title() {
        return title;
    }

    /** {@return what goes wrong, in one to three sentences} */
    public String why() {
        return why;
    }

    /** {@return what is computed, with symbols as in the nomenclature} */
    public String formula() {
        return formula;
    }

    /** {@return the case that is judged, in words} */
    public String judged() {
        return judged;
    }

    /** {@return standard and clause, handbook and page, or "common practice"; at least one} */
    public List<String> sources() {
        return sources;
    }

    /** {@return limits that settings may change, by name} */
    public Map<String, NamedLimit> limits() {
        return limits;
    }

    /** {@return everything the rule can say, by the text's name, outcomes and ways out} */
    public Map<String, CardText> texts() {
        return texts;
    }

    /** {@return the name of the first text of a kind} Throws {@link IllegalStateException} if the card has none. */
    String first(Kind kind) {
        return texts.entrySet().stream()
                .filter(e -> e.getValue().kind() == kind)
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(id + " has no text for " + kind.word()));
    }

    /** {@return a text by name} Throws {@link IllegalStateException} if the card has none of that name. */
    CardText text(String name) {
        CardText text = texts.get(name);
        if (text == null) {
            throw new IllegalStateException(id + " has no text called " + name);
        }
        return text;
    }

    @Override
    public String toString() {
        return id;
    }
}
