package org.leat.rulefile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.leat.check.Level;
import org.leat.check.NamedLimit;
import org.leat.check.RuleCard;
import org.leat.check.RuleCardBuilder;
import org.leat.expression.Expression;
import org.leat.expression.ExpressionProblem;
import org.leat.expression.Expressions;
import org.leat.quantity.QuantityKind;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Reads one rule of a rule file. */
final class RuleReader {

    static final List<String> FIELDS = List.of(
            "id",
            "level",
            "title",
            "why",
            "source",
            "judged",
            "computed",
            "limits",
            "at",
            "for-each",
            "when",
            "value",
            "at-most",
            "at-least",
            "must",
            "show",
            "passes",
            "fails");
    static final List<String> REQUIRED = List.of("id", "level", "title", "why", "source", "judged", "fails");
    private static final Pattern WORD = Pattern.compile("[a-z][a-zA-Z0-9]*");

    private final Yaml yaml;
    private final Expressions expressions;
    private final Map<String, String> texts;
    private final Map<String, QuantityKind> kinds = new LinkedHashMap<>();
    private boolean sound = true;

    RuleReader(Yaml yaml, Expressions expressions, Map<String, String> texts) {
        this.yaml = yaml;
        this.expressions = expressions;
        this.texts = texts;
    }

    /** {@return the rule; null after a problem} */
    @Nullable
    WrittenRule rule(Node node) {
        Map<String, Node> fields = yaml.fields(node, FIELDS);
        if (fields == null) {
            return null;
        }
        Map<String, String> plain = new LinkedHashMap<>();
        for (String key : List.of("id", "level", "title", "why", "judged", "computed", "at", "passes", "fails")) {
            ScalarNode scalar = yaml.scalar(fields.get(key), "text");
            if (scalar != null) {
                plain.put(key, scalar.getValue().strip());
            }
            sound &= scalar != null || !fields.containsKey(key);
        }
        for (String key : REQUIRED) {
            if (!fields.containsKey(key)) {
                wrong(node, "\"" + key + "\" is missing");
            }
        }
        RuleCardBuilder card = card(fields, plain, node);
        Expression each = each(fields.get("for-each"));
        Expressions.Type item = each == null ? null : each.type().item();
        Expression when = condition(fields, "when", item);
        Expression must = condition(fields, "must", item);
        Expression value = expression(fields, "value", item);
        Expression atMost = limit(fields, "at-most", item, value);
        Expression atLeast = limit(fields, "at-least", item, value);
        decides(fields, node);
        Map<String, Expression> shown = shown(fields.get("show"), item);
        String at = plain.getOrDefault("at", "/");
        if (!at.startsWith("/")) {
            wrong(fields.getOrDefault("at", node), "a place in a design begins with a slash, as in /penstock");
        }
        texts(fields, plain, shown, value);
        if (!sound || card == null) {
            return null;
        }
        String compared = limitNames(fields);
        return new WrittenRule(finished(card, shown), each, at, when, value, atMost, atLeast, compared, must, shown);
    }

    private void wrong(Node at, String text) {
        sound = false;
        yaml.problem(at, text);
    }

    private static RuleCard finished(RuleCardBuilder card, Map<String, Expression> shown) {
        List<String> arguments = new ArrayList<>(List.of("at"));
        arguments.addAll(shown.keySet());
        String[] names = arguments.toArray(String[]::new);
        return card.message(WrittenRule.PASSES, names)
                .message(WrittenRule.FAILS, names)
                .message(WrittenRule.NOTHING)
                .build();
    }

    private @Nullable RuleCardBuilder card(Map<String, Node> fields, Map<String, String> plain, Node node) {
        Level level = null;
        for (Level known : Level.values()) {
            if (known.word().equals(plain.get("level"))) {
                level = known;
            }
        }
        if (level == null && plain.containsKey("level")) {
            wrong(fields.getOrDefault("level", node), "expected error, warning or note");
        }
        String id = plain.getOrDefault("id", "");
        if (!id.isEmpty() && !RuleCard.isId(id)) {
            wrong(fields.getOrDefault("id", node), "not a rule id: two parts as in hill/standing-pressure");
        }
        RuleCardBuilder card = RuleCard.of(id, level == null ? Level.NOTE : level)
                .title(plain.getOrDefault("title", ""))
                .why(plain.getOrDefault("why", ""))
                .judged(plain.getOrDefault("judged", ""))
                .formula(plain.getOrDefault("computed", written(fields)));
        Node source = fields.get("source");
        List<Node> sources =
                source instanceof SequenceNode list ? list.getValue() : source == null ? List.of() : List.of(source);
        for (Node one : sources) {
            ScalarNode scalar = yaml.scalar(one, "a source");
            if (scalar == null) {
                sound = false;
            } else {
                card.source(scalar.getValue());
            }
        }
        limits(fields.get("limits"), card);
        return sound ? card : null;
    }

    /** What is computed, as it is written. */
    private static String written(Map<String, Node> fields) {
        StringBuilder text = new StringBuilder();
        for (String key : List.of("for-each", "value", "at-least", "at-most", "must")) {
            if (fields.get(key) instanceof ScalarNode scalar) {
                text.append(text.isEmpty() ? "" : ", ")
                        .append(key.replace('-', ' '))
                        .append(" `");
                text.append(scalar.getValue().strip().replaceAll("\\s+", " ")).append('`');
            }
        }
        return text.isEmpty() ? "-" : text.toString();
    }

    private void limits(@Nullable Node node, RuleCardBuilder card) {
        Map<String, Node> limits = node == null ? Map.of() : yaml.fields(node, List.of());
        if (limits == null) {
            sound = false;
            return;
        }
        limits.forEach((name, at) -> {
            Map<String, Node> parts = yaml.fields(at, List.of("value", "source"));
            ScalarNode value = parts == null ? null : yaml.scalar(parts.get("value"), "a value with its unit");
            ScalarNode source = parts == null ? null : yaml.scalar(parts.get("source"), "a source");
            if (!WORD.matcher(name).matches()) {
                wrong(at, "a limit's name is one word of letters and digits, as in pressure");
            } else if (value == null || source == null) {
                wrong(at, "a limit has a value and a source");
            } else {
                NamedLimit limit = LimitText.read(name, value.getValue(), source.getValue());
                if (limit == null) {
                    wrong(value, "not a value with a unit: " + value.getValue());
                } else {
                    kinds.put(name, limit.kind());
                    card.limit(limit);
                }
            }
        });
    }

    private void decides(Map<String, Node> fields, Node node) {
        boolean must = fields.containsKey("must");
        boolean limited = fields.containsKey("at-most") || fields.containsKey("at-least");
        if (must == fields.containsKey("value")) {
            wrong(node, "either \"must\" or \"value\" decides: give one of them");
        } else if (must == limited) {
            wrong(node, must ? "a limit needs a \"value\" to compare" : "\"value\" needs \"at-most\" or \"at-least\"");
        }
    }

    private @Nullable Expression each(@Nullable Node node) {
        Expression each = compiled(node, null);
        if (each != null && node != null && each.type().item() == null) {
            wrong(
                    node,
                    "expected a list of things to judge, as penstock.sections or running; this is "
                            + each.type().words());
            return null;
        }
        return each;
    }

    private @Nullable Expression condition(Map<String, Node> fields, String key, Expressions.@Nullable Type item) {
        Node node = fields.get(key);
        Expression expression = compiled(node, item);
        if (expression != null && node != null && !expression.type().isCondition()) {
            wrong(node, "expected true or false; this is " + expression.type().words());
        }
        return expression;
    }

    private @Nullable Expression expression(Map<String, Node> fields, String key, Expressions.@Nullable Type item) {
        Node node = fields.get(key);
        Expression expression = compiled(node, item);
        if (expression != null && node != null && expression.type().kind() == null) {
            wrong(
                    node,
                    "expected a quantity or a number; this is "
                            + expression.type().words());
        }
        return expression;
    }

    private @Nullable Expression limit(
            Map<String, Node> fields, String key, Expressions.@Nullable Type item, @Nullable Expression value) {
        Expression limit = expression(fields, key, item);
        Node node = fields.get(key);
        if (limit != null
                && node != null
                && value != null
                && limit.type().kind() != value.type().kind()) {
            wrong(
                    node,
                    "the value is " + value.type().words() + ", this limit is "
                            + limit.type().words());
        }
        return limit;
    }

    private @Nullable Expression compiled(@Nullable Node node, Expressions.@Nullable Type item) {
        ScalarNode scalar = node == null ? null : yaml.scalar(node, "an expression");
        if (scalar == null) {
            sound &= node == null;
            return null;
        }
        Expressions.Compiled compiled = expressions.compile(scalar.getValue(), item, kinds);
        if (compiled instanceof Expressions.Refused refused) {
            sound = false;
            for (ExpressionProblem problem : refused.problems()) {
                yaml.problem(yaml.within(scalar, problem.line(), problem.column()), problem.text());
            }
            return null;
        }
        return ((Expressions.Understood) compiled).expression();
    }

    private Map<String, Expression> shown(@Nullable Node node, Expressions.@Nullable Type item) {
        Map<String, Node> fields = node == null ? Map.of() : yaml.fields(node, List.of());
        Map<String, Expression> shown = new LinkedHashMap<>();
        if (fields == null) {
            sound = false;
            return shown;
        }
        fields.forEach((name, value) -> {
            Expression expression = compiled(value, item);
            if (!name.matches("[a-zA-Z]+")
                    || List.of("at", "value", "limit", "margin").contains(name)) {
                wrong(value, "a name to show is a word of letters, and none of at, value, limit, margin");
            } else if (expression != null
                    && expression.type().kind() == null
                    && !expression.type().isText()) {
                wrong(
                        value,
                        "only quantities, numbers and text are shown; this is "
                                + expression.type().words());
            } else if (expression != null) {
                shown.put(name, expression);
            }
        });
        return shown;
    }

    private void texts(
            Map<String, Node> fields,
            Map<String, String> plain,
            Map<String, Expression> shown,
            @Nullable Expression value) {
        String id = plain.getOrDefault("id", "");
        String passes = value == null ? "Holds." : "{value} against {limit}.";
        for (String key : List.of("passes", "fails")) {
            Node node = fields.get(key);
            if (node != null) {
                for (String said : Placeholders.wrong(plain.getOrDefault(key, ""), shown, value)) {
                    wrong(node, said);
                }
            }
        }
        if (sound) {
            texts.put(id + "." + WrittenRule.PASSES, plain.getOrDefault("passes", passes));
            texts.put(id + "." + WrittenRule.FAILS, plain.getOrDefault("fails", ""));
            texts.put(id + "." + WrittenRule.NOTHING, "The design has nothing here for this rule to judge.");
        }
    }

    /** The rule's own limits that a comparison is with, where it is with nothing else. */
    private static @Nullable String limitNames(Map<String, Node> fields) {
        List<String> names = new ArrayList<>();
        for (String key : List.of("at-least", "at-most")) {
            if (fields.get(key) instanceof ScalarNode scalar) {
                String text = scalar.getValue().strip();
                if (!text.matches("limit\\.[a-z][a-zA-Z0-9]*")) {
                    return null;
                }
                names.add(text.substring("limit.".length()));
            }
        }
        return names.isEmpty() ? null : String.join(", ", names);
    }
}
