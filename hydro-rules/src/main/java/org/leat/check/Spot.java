package org.leat.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.law.Answer;
import org.leat.plant.cases.Situation;
import org.leat.plant.numbers.Amount;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/**
 * One element, in one case, about to be answered for. Made with {@link Judgement#at}. Immutable.
 *
 * <p>What a rule needs is asked for here: {@link #given} and {@link #known} give a value, or end the judging of this
 * element with an open answer that names the field. What a rule answers is named by a text of its card.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class Spot {

    /** m², above which an area is no conductor's. */
    private static final double LARGEST_CONDUCTOR = 0.01;

    private final RuleInForce rule;
    private final String path;
    private final String during;
    private final Level level;
    private final @Nullable String passing;
    private final @Nullable String failing;
    private final List<Arg> args;

    private Spot(
            RuleInForce rule,
            String path,
            String during,
            Level level,
            @Nullable String passing,
            @Nullable String failing,
            List<Arg> args) {
        this.rule = rule;
        this.path = path;
        this.during = during;
        this.level = level;
        this.passing = passing;
        this.failing = failing;
        this.args = args;
    }

    static Spot of(RuleInForce rule, String path) {
        return new Spot(rule, path, "", rule.card().level(), null, null, List.of());
    }

    /** {@return the element answered for} */
    public String path() {
        return path;
    }

    /** {@return the case answered for; "" for none} */
    public String during() {
        return during;
    }

    /** {@return another element in the same case, saying the same} */
    public Spot at(String otherPath) {
        return new Spot(rule, otherPath, during, level, passing, failing, args);
    }

    /** {@return the same element in one of the plant's situations} */
    public Spot during(Situation situation) {
        return during(situation.id());
    }

    /** {@return the same element in a case of a name of its own} */
    public Spot during(String caseName) {
        return new Spot(rule, path, caseName, level, passing, failing, args);
    }

    /**
     * {@return the same, failing at a level of its own}
     *
     * @param own as bad as the rule itself holds this case to be; settings move it as they move the rule's level
     */
    public Spot as(Level own) {
        return new Spot(rule, path, during, own, passing, failing, args);
    }

    /** {@return the same, passing and failing with texts of these names instead of the card's first ones} */
    public Spot saying(String passingText, String failingText) {
        return new Spot(rule, path, during, level, passingText, failingText, args);
    }

    /** {@return the same with one thing more to say} */
    public Spot with(Arg... more) {
        List<Arg> all = new ArrayList<>(args);
        all.addAll(List.of(more));
        return new Spot(rule, path, during, level, passing, failing, List.copyOf(all));
    }

    /** {@return the same with a physical value to say, in SI} */
    public Spot with(String name, double si, QuantityKind kind) {
        return with(Arg.of(name, si, kind));
    }

    /** {@return the same with a number to say} */
    public Spot with(String name, long number) {
        return with(Arg.of(name, number));
    }

    /** {@return the same with a word to say} */
    public Spot with(String name, String word) {
        return with(Arg.of(name, word));
    }

    /** {@return the same with a word of the file format to say} */
    public Spot with(String name, Enum<?> word) {
        return with(Arg.of(name, word));
    }

    /**
     * {@return the value of the field at this element; where it is absent, the element is open for want of it}
     *
     * @param value null where the design does not state it
     */
    public <T> T given(@Nullable T value) {
        return given(path, value);
    }

    /**
     * {@return the value of a field; where it is absent, this element is open for want of it}
     *
     * @param field its path
     * @param value null where the design does not state it
     */
    public <T> T given(String field, @Nullable T value) {
        if (value == null) {
            throw new OpenQuestion(notGiven(field));
        }
        return value;
    }

    /** {@return a quantity at this element in SI; where it is absent, the element is open for want of it} */
    public double si(@Nullable Quantity<?> quantity) {
        return Si.of(given(path, quantity));
    }

    /** {@return a quantity of a field in SI; where it is absent, this element is open for want of it} */
    public double si(String field, @Nullable Quantity<?> quantity) {
        return Si.of(given(field, quantity));
    }

    /**
     * {@return the row of a table that the field at this element names; where the table has none, the element is open and
     * tells the names it has}
     *
     * @param name as the design states it
     * @param found the row; empty where there is none
     * @param known every name of the table
     */
    public <T> T tabled(String name, Optional<T> found, Stream<String> known) {
        return found.orElseThrow(() -> new OpenQuestion(open(
                path,
                Message.of(
                        CommonMessages.NOT_TABLED,
                        Arg.at("field", path),
                        Arg.of("found", name),
                        Arg.of("known", known.collect(Collectors.joining(", ")))))));
    }

    /** {@return a number of the plant in SI; where there is none, this element is open for the plant's reason} */
    public double known(Amount amount) {
        if (amount instanceof Amount.Known number) {
            return number.value();
        }
        throw new OpenQuestion(unknown((Amount.Unknown) amount));
    }

    /** {@return what a law answered; outside its range, this element is open with law, input and range} */
    public double known(Answer answer) {
        if (answer instanceof Answer.Value number) {
            return number.value();
        }
        throw new OpenQuestion(outside((Answer.Outside) answer));
    }

    /** {@return value ≤ a limit of the rule} */
    public Outcome atMost(double value, Limit most) {
        return compare(Comparison.atMost(value, most));
    }

    /** {@return value ≤ a limit of the design or of a table} */
    public Outcome atMost(double value, double most, QuantityKind kind) {
        return compare(Comparison.atMost(value, most, kind));
    }

    /** {@return value ≤ a number of the plant; where there is none, this element is open for the plant's reason} */
    public Outcome atMost(double value, Amount most, QuantityKind kind) {
        return atMost(value, known(most), kind);
    }

    /** {@return value ≤ what the field at this element says; where it is absent, this element is open for want of it} */
    public Outcome atMost(double value, @Nullable Quantity<?> most, QuantityKind kind) {
        return atMost(value, si(most), kind);
    }

    /** {@return value ≥ a limit of the rule} */
    public Outcome atLeast(double value, Limit least) {
        return compare(Comparison.atLeast(value, least));
    }

    /** {@return value ≥ a limit of the design or of a table} */
    public Outcome atLeast(double value, double least, QuantityKind kind) {
        return compare(Comparison.atLeast(value, least, kind));
    }

    /** {@return low ≤ value ≤ high, both limits of the rule} */
    public Outcome within(double value, Limit low, Limit high) {
        return compare(Comparison.within(value, low, high));
    }

    /** {@return low ≤ value ≤ high, limits of the design or of a table} */
    public Outcome within(double value, double low, double high, QuantityKind kind) {
        return compare(Comparison.within(value, low, high, kind));
    }

    /** {@return pass or fail, by the comparison} */
    public Outcome compare(Comparison comparison) {
        return decided(comparison.holds(), comparison);
    }

    /** {@return pass or fail, where nothing is compared} */
    public Outcome holds(boolean holds) {
        return decided(holds, null);
    }

    /** {@return pass or fail by a yes or no at this element; open where the design does not state it} */
    public Outcome isSo(@Nullable Boolean stated) {
        return holds(given(stated));
    }

    /**
     * {@return the answer whose text has this name; the card says of which kind it is}
     *
     * @throws IllegalStateException if the card has no such text
     */
    public Outcome says(String text) {
        Message message = message(text, null);
        Kind kind = rule.card().text(text).kind();
        if (kind == null) {
            throw new IllegalStateException(rule.card().id() + " says a way out as an answer: " + text);
        }
        return switch (kind) {
            case PASS -> new Outcome.Pass(identity(), inForce(), null, message);
            case FAIL -> new Outcome.Fail(identity(), inForce(), null, message);
            case OPEN -> new Outcome.Open(identity(), inForce(), null, message, null);
            case REVIEW -> new Outcome.Review(identity(), inForce(), message);
            case INFORMATIONAL -> new Outcome.Told(identity(), inForce(), message);
            case NOT_APPLICABLE -> new Outcome.NotApplicable(identity(), inForce(), message);
        };
    }

    /**
     * {@return an open question in the rule's own words}
     *
     * @param missing path of the field that would let the rule judge; null if no field would
     * @param text an open one of the card
     */
    public Outcome open(@Nullable String missing, String text) {
        return new Outcome.Open(identity(), inForce(), null, message(text, null), missing);
    }

    /**
     * {@return an open question: a field is not given} For a rule that goes on after it; others ask with {@link #given}.
     *
     * @param missing path of that field
     */
    public Outcome.Open notGiven(String missing) {
        return open(missing, Message.of(CommonMessages.NOT_GIVEN, Arg.at("field", missing)));
    }

    /** {@return an open question: the plant has no such number} For a rule that goes on; others ask with {@link #known}. */
    public Outcome.Open unknown(Amount.Unknown unknown) {
        if (unknown instanceof Amount.OutsideRange outside) {
            return open(outside.path(), LawRange.message(outside));
        }
        if (unknown.reason().equals(Amount.Missing.NOT_STATED)) {
            return notGiven(unknown.path());
        }
        return open(
                unknown.path(),
                Message.of(
                        CommonMessages.NOT_KNOWN,
                        Arg.at("field", unknown.path()),
                        Arg.phrase("reason", unknown.reason())));
    }

    Outcome.Open outside(Answer.Outside outside) {
        // conductors are told in the unit of the trade
        boolean conductor = outside.unit().equals("m²")
                && outside.high().isPresent()
                && outside.high().getAsDouble() < LARGEST_CONDUCTOR;
        double scale = conductor ? 1e6 : 1;
        List<Arg> args = new ArrayList<>(List.of(
                Arg.of("law", outside.law()),
                Arg.of("input", outside.input()),
                Arg.of("found", scale * outside.value(), QuantityKind.RATIO)));
        outside.low().ifPresent(low -> args.add(Arg.of("low", scale * low, QuantityKind.RATIO)));
        outside.high().ifPresent(high -> args.add(Arg.of("high", scale * high, QuantityKind.RATIO)));
        args.add(Arg.of("unit", conductor ? "mm²" : outside.unit()));
        String text = outside.high().isEmpty()
                ? CommonMessages.BELOW_LAW
                : outside.low().isEmpty() ? CommonMessages.ABOVE_LAW : CommonMessages.OUTSIDE_LAW;
        return open(null, Message.of(text, args.toArray(Arg[]::new)));
    }

    Outcome.Open open(@Nullable String missing, Message message) {
        return new Outcome.Open(identity(), inForce(), null, message, missing);
    }

    private Outcome decided(boolean holds, @Nullable Comparison comparison) {
        RuleCard card = rule.card();
        String text = holds
                ? passing == null ? card.first(Kind.PASS) : passing
                : failing == null ? card.first(Kind.FAIL) : failing;
        Message message = message(text, comparison);
        return holds
                ? new Outcome.Pass(identity(), inForce(), comparison, message)
                : new Outcome.Fail(identity(), inForce(), comparison, message);
    }

    private Message message(String text, @Nullable Comparison comparison) {
        String unfilled = rule.card().text(text).unfilled(args, comparison != null);
        if (unfilled != null) {
            throw new IllegalStateException(rule.card().id() + " says " + text + " without " + unfilled);
        }
        return new Message(text, args);
    }

    private Identity identity() {
        return new Identity(rule.card().id(), path, during);
    }

    private Level inForce() {
        if (level.compareTo(rule.card().worst()) > 0) {
            throw new IllegalStateException(rule.card().id() + " says it cannot fail as " + level);
        }
        return rule.inForce(level);
    }
}
