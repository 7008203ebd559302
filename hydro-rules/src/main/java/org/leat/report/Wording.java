package org.leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.Arg;
import org.leat.check.CardText.Placeholder;
import org.leat.check.Comparison;
import org.leat.check.Finding;
import org.leat.check.Message;
import org.leat.check.Outcome;
import org.leat.check.Paths;
import org.leat.check.RuleInForce;
import org.leat.check.Rulebook;
import org.leat.check.WayOut;

/**
 * Turns messages into sentences with a rulebook's texts. A text holds placeholders: {@code {flow}}, {@code {flow:L/s}},
 * {@code {flow:L/s,2}}; {@code {value}}, {@code {limit}} and {@code {margin}} come from the comparison.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class Wording {

    static final Pattern PLACEHOLDER = Placeholder.PATTERN;

    private final Rulebook rulebook;

    /** Words messages with these texts. */
    public Wording(Rulebook rulebook) {
        this.rulebook = rulebook;
    }

    /** {@return the sentence of a finding} */
    public String of(Finding finding) {
        return of(finding.outcome());
    }

    /** {@return the sentence of an outcome} */
    public String of(Outcome outcome) {
        return sentence(outcome.rule(), outcome.message(), outcome.comparison());
    }

    /** {@return what a way out of an outcome says to do, and what it would change of what is on hand already} */
    public String of(WayOut way, Outcome outcome) {
        return sentence(outcome.rule(), way.message(), outcome.comparison()) + OnHandText.of(way);
    }

    /** {@return what an outcome compares, in words; "" where nothing is compared} */
    public String value(Outcome outcome) {
        ComparisonText compared = comparison(outcome);
        return compared == null ? "" : compared.value();
    }

    /** {@return the limit that an outcome compares with, in words; "" where nothing is compared} */
    public String limit(Outcome outcome) {
        ComparisonText compared = comparison(outcome);
        return compared == null ? "" : compared.limit();
    }

    /** {@return how far an outcome's value is from its limit, in words; "" where nothing is compared} */
    public String margin(Outcome outcome) {
        ComparisonText compared = comparison(outcome);
        return compared == null ? "" : compared.margin();
    }

    /** {@return what the rule of an outcome is about, in a few words} */
    public String title(Outcome outcome) {
        return rule(outcome.rule()).card().title();
    }

    /** {@return where what an outcome compares with comes from} */
    public String source(Outcome outcome) {
        return FindingText.source(rule(outcome.rule()), outcome.comparison());
    }

    /** {@return the text of a key, or the key where nobody wrote one} */
    public String phrase(String key) {
        String text = rulebook.texts().get(key);
        return text == null ? key.replace('/', ' ').replace('-', ' ') : text;
    }

    /** {@return value, limit and margin in words; null where nothing is compared} */
    @Nullable
    ComparisonText comparison(Outcome outcome) {
        Comparison comparison = outcome.comparison();
        return comparison == null ? null : ComparisonText.of(comparison, rule(outcome.rule()));
    }

    /** {@return a text with its placeholders numbered from {0} in their order; null where nobody wrote one} */
    @Nullable
    String numbered(String rule, String messageId) {
        String text = template(rule, messageId);
        if (text == null) {
            return null;
        }
        Matcher m = PLACEHOLDER.matcher(text);
        StringBuilder numbered = new StringBuilder();
        for (int i = 0; m.find(); i++) {
            m.appendReplacement(numbered, "{" + i + "}");
        }
        return m.appendTail(numbered).toString();
    }

    /** {@return what fills the numbered placeholders of an outcome's text} */
    List<String> arguments(Outcome outcome) {
        String text = template(outcome.rule(), outcome.message().id());
        ComparisonText compared = comparison(outcome);
        List<String> arguments = new ArrayList<>();
        Matcher m = PLACEHOLDER.matcher(text == null ? "" : text);
        while (m.find()) {
            arguments.add(filled(m, outcome.message().args(), compared));
        }
        return arguments;
    }

    private @Nullable String template(String rule, String messageId) {
        Map<String, String> texts = rulebook.texts();
        String own = texts.get(rule + "." + messageId);
        return own == null ? texts.get(messageId) : own;
    }

    RuleInForce rule(String id) {
        return rulebook.rule(id);
    }

    private String sentence(String rule, Message message, @Nullable Comparison comparison) {
        String text = template(rule, message.id());
        if (text == null) {
            return unworded(message);
        }
        ComparisonText compared = comparison == null ? null : ComparisonText.of(comparison, rule(rule));
        Matcher m = PLACEHOLDER.matcher(text);
        StringBuilder sentence = new StringBuilder();
        while (m.find()) {
            m.appendReplacement(sentence, Matcher.quoteReplacement(filled(m, message.args(), compared)));
        }
        return m.appendTail(sentence).toString();
    }

    /** A placeholder that nothing fills stays as it is: the tests over every pack find it. */
    private String filled(Matcher m, List<Arg> args, @Nullable ComparisonText compared) {
        int digits = m.group(3) == null ? 0 : Integer.parseInt(m.group(3));
        String filled = filled(m.group(1), m.group(2), digits, args, compared);
        return filled == null ? m.group() : filled;
    }

    private @Nullable String filled(
            String name, @Nullable String unit, int digits, List<Arg> args, @Nullable ComparisonText compared) {
        for (Arg arg : args) {
            if (arg.name().equals(name)) {
                return rendered(arg.value(), unit, digits);
            }
        }
        if (compared == null) {
            return null;
        }
        return switch (name) {
            case "value" -> unit == null ? compared.value() : compared.value(unit, digits);
            case "limit" -> unit == null ? compared.limit() : compared.limit(unit, digits);
            case "margin" -> compared.margin();
            default -> null;
        };
    }

    private String rendered(Arg.Value value, @Nullable String unit, int digits) {
        int significant = digits == 0 ? 3 : digits;
        if (value instanceof Arg.Amount a) {
            return unit == null
                    ? UsualUnits.show(a.si(), a.kind(), significant)
                    : UsualUnits.show(a.si(), a.kind(), unit, significant);
        }
        if (value instanceof Arg.Count c) {
            return Long.toString(c.number());
        }
        if (value instanceof Arg.Word w) {
            return w.text();
        }
        if (value instanceof Arg.Phrase p) {
            return p.text() == null ? phrase(p.key()) : p.text();
        }
        return value instanceof Arg.Element e ? place(e.path()) : value.toString();
    }

    /** {@return a path as people write it: {@code penstock.sections[run].pipe.sdr}} */
    static String place(String path) {
        return Paths.shown(path);
    }

    private String unworded(Message message) {
        StringBuilder text = new StringBuilder(message.id());
        for (Arg arg : message.args()) {
            text.append(' ').append(arg.name()).append('=').append(rendered(arg.value(), null, 0));
        }
        return text.toString();
    }
}
