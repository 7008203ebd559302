package org.leat.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.TradeUnit;
import org.leat.quantity.TradeUnits;

/** Fills in a {@link RuleCard}. */
public final class RuleCardBuilder {

    private final String id;
    private final Level level;
    private Level worst;
    private boolean endangers = true;
    private final List<String> sources = new ArrayList<>();
    private final Map<String, NamedLimit> limits = new LinkedHashMap<>();
    private final Map<String, CardText> messages = new LinkedHashMap<>();
    private String title = "";
    private String why = "";
    private String formula = "";
    private String judged = "";

    RuleCardBuilder(String id, Level level) {
        this.id = id;
        this.level = level;
        this.worst = level;
    }

    /** The worst level a failure can have, where that is worse than the card's own. */
    public RuleCardBuilder canFailAs(Level worstLevel) {
        worst = worstLevel;
        return this;
    }

    /** Its errors cost money or power but cannot hurt anyone; unless this is said, errors are taken to endanger. */
    public RuleCardBuilder hurtsNobody() {
        endangers = false;
        return this;
    }

    /** What is judged, in a few words. */
    public RuleCardBuilder title(String text) {
        title = text;
        return this;
    }

    /** What goes wrong, in one to three sentences. */
    public RuleCardBuilder why(String text) {
        why = text;
        return this;
    }

    /** What is computed. */
    public RuleCardBuilder formula(String text) {
        formula = text;
        return this;
    }

    /** The case that is judged, in words. */
    public RuleCardBuilder judged(String text) {
        judged = text;
        return this;
    }

    /** A standard and clause, a handbook and page, or {@link RuleCard#COMMON_PRACTICE}. */
    public RuleCardBuilder source(String text) {
        sources.add(text);
        return this;
    }

    /**
     * A limit that settings may change.
     *
     * @param value in the trade unit named
     * @param unit a spelling of the kind; "" for a plain ratio
     * @throws IllegalArgumentException for an unknown unit or a name used twice
     */
    public RuleCardBuilder limit(String name, QuantityKind kind, double value, String unit, String source) {
        TradeUnit trade = TradeUnits.find(kind, unit);
        if (trade == null) {
            throw new IllegalArgumentException("not a unit of " + kind.label() + ": " + unit);
        }
        double si = trade.toSi(java.math.BigDecimal.valueOf(value));
        return limit(new NamedLimit(name, kind, si, unit, source));
    }

    /**
     * A limit that settings may change.
     *
     * @throws IllegalArgumentException for a name used twice
     */
    public RuleCardBuilder limit(NamedLimit limit) {
        if (limits.put(limit.name(), limit) != null) {
            throw new IllegalArgumentException("limit named twice: " + limit.name());
        }
        return this;
    }

    /** A message of the rule and the names of the arguments it is always given. */
    public RuleCardBuilder message(String messageId, String... arguments) {
        messages.put(
                messageId,
                new CardText(
                        Kind.NOT_APPLICABLE,
                        "",
                        java.util.Arrays.stream(arguments)
                                .map(a -> new Placeholder(a, null, 0))
                                .toList()));
        return this;
    }

    /** {@return the card} */
    public RuleCard build() {
        return new RuleCard(
                id,
                level,
                worst,
                endangers && worst == Level.ERROR,
                title,
                why,
                formula,
                judged,
                sources,
                limits,
                messages);
    }
}
