package org.leat.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.Change.Changes;
import org.leat.check.NamedLimit.Safer;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.TradeUnit;
import org.leat.quantity.TradeUnits;

/** Fills in a {@link Rule}: its card, its texts, how it judges, and its ways out. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class RuleBuilder {

    private final String id;
    private final Level level;
    private final String title;
    private Level worst;
    private boolean endangers = true;
    private boolean warningsHurt;
    private boolean judgesInput;
    private String why = "";
    private String formula = "";
    private String judged = "";
    private final List<String> sources = new ArrayList<>();
    private final Map<String, NamedLimit> limits = new LinkedHashMap<>();
    private final Map<String, CardText> texts = new LinkedHashMap<>();
    private final List<DeclaredWay> ways = new ArrayList<>();
    private boolean byPower;
    private @Nullable Function<Judgement, List<Outcome>> judging;

    RuleBuilder(String id, Level level, String title) {
        this.id = id;
        this.level = level;
        this.worst = level;
        this.title = title;
    }

    /** The worst level a failure can have, where that is worse than the rule's own. */
    public RuleBuilder canFailAs(Level worstLevel) {
        worst = worstLevel;
        return this;
    }

    /** Its errors cost money or power but cannot hurt anyone; unless this is said, errors are taken to endanger. */
    public RuleBuilder hurtsNobody() {
        endangers = false;
        return this;
    }

    /** Its warnings, too, are of what can hurt someone; unless this is said, only errors are taken to endanger. */
    public RuleBuilder warningsHurt() {
        warningsHurt = true;
        return this;
    }

    /**
     * It judges what was written and not the plant: its failures come before all others, and where one is an error, what
     * follows is told to rest on a number that cannot be meant.
     */
    public RuleBuilder judgesInput() {
        judgesInput = true;
        return this;
    }

    /** What goes wrong, in one to three sentences. */
    public RuleBuilder why(String text) {
        why = text;
        return this;
    }

    /** What is computed, with symbols as in the nomenclature. */
    public RuleBuilder formula(String text) {
        formula = text;
        return this;
    }

    /** The case that is judged, in words. */
    public RuleBuilder judged(String text) {
        judged = text;
        return this;
    }

    /** A standard and clause, a handbook and page, or {@link RuleCard#COMMON_PRACTICE}; at least one. */
    public RuleBuilder source(String text) {
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
    public RuleBuilder limit(String name, QuantityKind kind, double value, String unit, String source) {
        return limit(name, kind, value, unit, source, Safer.UNSAID);
    }

    /**
     * A limit that settings may change, with the side on which people are safer: to move it to the other side needs someone
     * who answers for it, where the rule's errors can hurt.
     *
     * @param value in the trade unit named
     * @param unit a spelling of the kind; "" for a plain ratio
     * @throws IllegalArgumentException for an unknown unit or a name used twice
     */
    public RuleBuilder limit(String name, QuantityKind kind, double value, String unit, String source, Safer safer) {
        TradeUnit trade = TradeUnits.find(kind, unit);
        if (trade == null) {
            throw new IllegalArgumentException("not a unit of " + kind.label() + ": " + unit);
        }
        return limit(new NamedLimit(name, kind, trade.toSi(BigDecimal.valueOf(value)), unit, source, safer));
    }

    /**
     * A limit that settings may change.
     *
     * @throws IllegalArgumentException for a name used twice
     */
    public RuleBuilder limit(NamedLimit limit) {
        if (limits.put(limit.name(), limit) != null) {
            throw new IllegalArgumentException("limit named twice: " + limit.name());
        }
        return this;
    }

    /** Limits that settings may change, in their order; see {@link #limit(NamedLimit)}. */
    public RuleBuilder limits(List<NamedLimit> named) {
        named.forEach(this::limit);
        return this;
    }

    /** What is said where it holds. The first such text is said where the rule names none. */
    public RuleBuilder passes(String textId, String text) {
        return text(Kind.PASS, textId, text);
    }

    /** What is said where it does not hold. The first such text is said where the rule names none. */
    public RuleBuilder fails(String textId, String text) {
        return text(Kind.FAIL, textId, text);
    }

    /** What is said either way, under one name where it holds and under another where it does not. */
    public RuleBuilder either(String passingId, String failingId, String text) {
        return passes(passingId, text).fails(failingId, text);
    }

    /** What is said where nobody can tell, in the rule's own words; for absent inputs the engine has words. */
    public RuleBuilder open(String textId, String text) {
        return text(Kind.OPEN, textId, text);
    }

    /** What is said where a person must look. */
    public RuleBuilder review(String textId, String text) {
        return text(Kind.REVIEW, textId, text);
    }

    /** What is said where there is nothing to judge. */
    public RuleBuilder notApplicable(String textId, String text) {
        return text(Kind.NOT_APPLICABLE, textId, text);
    }

    /** What is told without judging. */
    public RuleBuilder tells(String textId, String text) {
        return text(Kind.INFORMATIONAL, textId, text);
    }

    /** How the whole design is judged. */
    public RuleBuilder judge(Function<Judgement, Outcome> how) {
        return judgeAll(j -> List.of(how.apply(j)));
    }

    /** How the design is judged, element by element or case by case; see {@link Judgement#each}. */
    public RuleBuilder judgeAll(Function<Judgement, List<Outcome>> how) {
        judging = how;
        return this;
    }

    /** A way out: of the changes, the first that takes the failure away. */
    public RuleBuilder wayOut(String textId, String text, Changes changes) {
        return way(textId, text, DeclaredWay.Search.FIRST, changes);
    }

    /** A way out: one change, whatever the failure. */
    public RuleBuilder wayOut(String textId, String text, Change change) {
        return wayOut(textId, text, (j, failure) -> Stream.of(change));
    }

    /**
     * A way out: of changes ordered from least to greatest, the least that takes the failure away, found by halving.
     *
     * @param instead changes of another kind, tried in the same manner where none of those before helps
     */
    public RuleBuilder leastWayOut(String textId, String text, Changes changes, Changes... instead) {
        return way(textId, text, DeclaredWay.Search.LEAST, changes, instead);
    }

    /** Advice that is no edit of the design; none where the stream is empty. */
    public RuleBuilder advice(String textId, String text, Changes changes) {
        return way(textId, text, DeclaredWay.Search.ADVICE, changes);
    }

    /** Advice that is no edit of the design and has nothing to fill in, whatever the failure. */
    public RuleBuilder advice(String textId, String text) {
        return advice(textId, text, (j, failure) -> Stream.of(Change.advice()));
    }

    /** Advice that is given only where no way out before it helps. */
    public RuleBuilder lastAdvice(String textId, String text, Changes changes) {
        return way(textId, text, DeclaredWay.Search.LAST_ADVICE, changes);
    }

    /** The ways out are listed by the power they win, most first, not in the order of the card. */
    public RuleBuilder mostPowerFirst() {
        byPower = true;
        return this;
    }

    private RuleBuilder way(
            String textId, String text, DeclaredWay.Search search, Changes changes, Changes... instead) {
        text(null, textId, text);
        List<Changes> inTurn = new ArrayList<>(List.of(changes));
        inTurn.addAll(List.of(instead));
        ways.add(new DeclaredWay(textId, search, List.copyOf(inTurn)));
        return this;
    }

    private RuleBuilder text(@Nullable Kind kind, String textId, String text) {
        if (texts.put(textId, CardText.of(kind, text)) != null) {
            throw new IllegalArgumentException(id + " has two texts called " + textId);
        }
        return this;
    }

    /**
     * {@return the rule}
     *
     * @throws IllegalArgumentException if it lacks something or says what cannot be
     */
    public Rule build() {
        RuleCard card = new RuleCard(
                id,
                level,
                worst,
                endangers && worst == Level.ERROR,
                warningsHurt,
                judgesInput,
                title,
                why,
                formula,
                judged,
                sources,
                limits,
                texts);
        if (judging == null) {
            throw new IllegalArgumentException("rule " + id + " must say how it judges");
        }
        return Rule.of(card, judging, ways, byPower);
    }
}
