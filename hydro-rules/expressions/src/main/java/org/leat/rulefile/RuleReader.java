package org.leat.rulefile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.leat.check.NamedLimit;
import org.leat.check.Rule;
import org.leat.check.RuleBuilder;
import org.leat.check.RuleCard;
import org.leat.design.ElementPath;
import org.leat.expression.Expression;
import org.leat.expression.ExpressionProblem;
import org.leat.expression.Expressions;
import org.leat.file.PlainValue;
import org.leat.file.ProblemKind;
import org.leat.quantity.QuantityKind;

/** Takes one rule of a rule file at its word. */
final class RuleReader {

    private static final Pattern WORD = Pattern.compile("[a-z][a-zA-Z0-9]*");
    private static final List<String> TAKEN = List.of("at", "value", "limit", "margin");

    private final RuleText text;
    private final String path;
    private final Expressions expressions;
    private final Wrong wrong;
    private final Map<String, QuantityKind> kinds = new LinkedHashMap<>();

    RuleReader(RuleText text, String path, Expressions expressions, Wrong wrong) {
        this.text = text;
        this.path = path;
        this.expressions = expressions;
        this.wrong = wrong;
    }

    /** {@return the rule; null after a problem} */
    @Nullable
    Rule rule() {
        int before = wrong.count();
        words();
        List<NamedLimit> limits = limits();
        Expression each = each();
        Expressions.Type item = each == null ? null : each.type().item();
        if (text.forEach() != null && item == null) {
            return null; // what each is nobody knows: the rest cannot be held against it
        }
        Expression when = condition("when", text.when(), item);
        Expression must = condition("must", text.must(), item);
        Expression value = quantity("value", text.value(), item);
        Expression atMost = limit("at-most", text.atMost(), item, value);
        Expression atLeast = limit("at-least", text.atLeast(), item, value);
        Map<String, Expression> shown = shown(item);
        String at = text.at() == null ? ElementPath.ROOT : text.at().strip();
        placeholders("passes", text.passes(), shown, value);
        placeholders("fails", text.fails(), shown, value);
        if (wrong.count() > before) {
            return null;
        }
        WrittenRule written = new WrittenRule(each, at, when, value, atMost, atLeast, limitNames(), must, shown);
        return rule(limits, written);
    }

    private void words() {
        if (!RuleCard.isId(text.id())) {
            impossible("id", text.id(), "two parts, as in hill/standing-pressure");
        }
        Map<String, @Nullable String> needed = new LinkedHashMap<>();
        needed.put("title", text.title());
        needed.put("why", text.why());
        for (int i = 0; i < text.source().size(); i++) {
            needed.put("source[" + i + "]", text.source().get(i));
        }
        needed.put("judged", text.judged());
        needed.put("computed", text.computed());
        needed.put("passes", text.passes());
        needed.put("fails", text.fails());
        needed.forEach((key, said) -> {
            if (said != null && said.isBlank()) {
                wrong.add(ProblemKind.NO_VALUE, path + "/" + key, "", "text");
            }
        });
        if (text.at() != null && !text.at().startsWith("/")) {
            impossible("at", text.at(), "a place in a design, which begins with a slash, as in /penstock");
        }
    }

    private void impossible(String key, String found, String expected) {
        wrong.add(ProblemKind.IMPOSSIBLE_VALUE, path + "/" + key, found, expected);
    }

    private List<NamedLimit> limits() {
        List<NamedLimit> limits = new ArrayList<>();
        text.limits().forEach((name, given) -> {
            String at = ElementPath.named(path + "/limits", name, 0);
            NamedLimit limit = LimitText.read(name, given.value().text(), given.source());
            if (!WORD.matcher(name).matches()) {
                wrong.atName(at, name, "one word of letters and digits, as in pressure");
            } else if (given.source().isBlank()) {
                wrong.add(ProblemKind.NO_VALUE, at + "/source", "", "text");
            } else if (limit == null) {
                wrong.add(
                        ProblemKind.NOT_A_QUANTITY, at + "/value", given.value().text(), "a limit");
            } else {
                kinds.put(name, limit.kind());
                limits.add(limit);
            }
        });
        return limits;
    }

    private Rule rule(List<NamedLimit> limits, WrittenRule written) {
        String plainly = written.value() == null ? "Holds." : "{value} against {limit}.";
        RuleBuilder rule = Rule.of(text.id(), text.level(), text.title().strip())
                .why(text.why().strip())
                .judged(text.judged().strip())
                .formula(text.computed() == null ? written() : text.computed().strip());
        text.source().forEach(rule::source);
        limits.forEach(rule::limit);
        return rule.passes(
                        WrittenRule.PASSES,
                        text.passes() == null ? plainly : text.passes().strip())
                .fails(WrittenRule.FAILS, text.fails().strip())
                .notApplicable(WrittenRule.NOTHING, "The design has nothing here for this rule to judge.")
                .judgeAll(written::judge)
                .build();
    }

    /** What is computed, as it is written. */
    private String written() {
        Map<String, @Nullable PlainValue> parts = new LinkedHashMap<>();
        parts.put("for each", text.forEach());
        parts.put("value", text.value());
        parts.put("at least", text.atLeast());
        parts.put("at most", text.atMost());
        parts.put("must", text.must());
        List<String> all = new ArrayList<>();
        parts.forEach((key, value) -> {
            if (value != null) {
                all.add(key + " `" + value.text().strip().replaceAll("\\s+", " ") + "`");
            }
        });
        return String.join(", ", all);
    }

    private @Nullable Expression each() {
        Expression each = compiled(path + "/for-each", text.forEach(), null);
        if (each != null && each.type().item() == null) {
            unfit("for-each", each, "a list of things to judge, as penstock.sections or running");
            return null;
        }
        return each;
    }

    private @Nullable Expression condition(String key, @Nullable PlainValue given, Expressions.@Nullable Type item) {
        Expression expression = compiled(path + "/" + key, given, item);
        if (expression != null && !expression.type().isCondition()) {
            unfit(key, expression, "true or false");
        }
        return expression;
    }

    private @Nullable Expression quantity(String key, @Nullable PlainValue given, Expressions.@Nullable Type item) {
        Expression expression = compiled(path + "/" + key, given, item);
        if (expression != null && expression.type().kind() == null) {
            unfit(key, expression, "a quantity or a number");
        }
        return expression;
    }

    private @Nullable Expression limit(
            String key, @Nullable PlainValue given, Expressions.@Nullable Type item, @Nullable Expression value) {
        Expression limit = quantity(key, given, item);
        if (limit != null
                && value != null
                && limit.type().kind() != null
                && value.type().kind() != null
                && limit.type().kind() != value.type().kind()) {
            unfit(key, limit, value.type().words() + ", as the value is");
        }
        return limit;
    }

    private void unfit(String key, Expression expression, String expected) {
        wrong.add(ProblemKind.EXPRESSION, path + "/" + key, expression.type().words(), expected);
    }

    private @Nullable Expression compiled(String at, @Nullable PlainValue given, Expressions.@Nullable Type item) {
        if (given == null) {
            return null;
        }
        if (given.text().isBlank()) {
            wrong.add(ProblemKind.NO_VALUE, at, "", "an expression");
            return null;
        }
        Expressions.Compiled compiled = expressions.compile(given.text(), item, kinds);
        if (compiled instanceof Expressions.Refused refused) {
            for (ExpressionProblem problem : refused.problems()) {
                wrong.expression(at, given.text(), problem);
            }
            return null;
        }
        return ((Expressions.Understood) compiled).expression();
    }

    private Map<String, Expression> shown(Expressions.@Nullable Type item) {
        Map<String, Expression> shown = new LinkedHashMap<>();
        text.show().forEach((name, value) -> {
            String at = ElementPath.named(path + "/show", name, 0);
            Expression expression = compiled(at, value, item);
            if (!name.matches("[a-zA-Z]+") || TAKEN.contains(name)) {
                wrong.atName(at, name, "a word of letters, and none of " + String.join(", ", TAKEN));
            } else if (expression != null
                    && expression.type().kind() == null
                    && !expression.type().isText()) {
                wrong.add(ProblemKind.EXPRESSION, at, expression.type().words(), "a quantity, a number or text");
            } else if (expression != null) {
                shown.put(name, expression);
            }
        });
        return shown;
    }

    private void placeholders(
            String key, @Nullable String said, Map<String, Expression> shown, @Nullable Expression value) {
        if (said != null) {
            Placeholders.wrong(said, shown, value)
                    .forEach(
                            (found, expected) -> wrong.add(ProblemKind.PLACEHOLDER, path + "/" + key, found, expected));
        }
    }

    /** The rule's own limits that a comparison is with, where it is with nothing else. */
    private @Nullable String limitNames() {
        List<String> names = new ArrayList<>();
        for (PlainValue given : new @Nullable PlainValue[] {text.atLeast(), text.atMost()}) {
            if (given != null) {
                String written = given.text().strip();
                if (!written.matches("limit\\.[a-z][a-zA-Z0-9]*")) {
                    return null;
                }
                names.add(written.substring("limit.".length()));
            }
        }
        return names.isEmpty() ? null : String.join(", ", names);
    }
}
