package org.leat.expression;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.TradeUnit;

/** Every name that expressions see, as a page in Markdown. */
public final class Reference {

    private Reference() {}

    /** {@return the page, ending in a line feed} */
    public static String page() {
        Vocabulary vocabulary = new Vocabulary();
        StringBuilder page = new StringBuilder("""
                # Names in expressions

                What a rule file's expressions can say; see [own-rules.md](own-rules.md). Made from the program itself.
                A quantity's type is its kind, so that only like is compared with like. What is not given makes the rule
                *open*; `has(x.y)` asks whether it is given.

                ## To begin with

                | name | holds | meaning |
                |---|---|---|
                """);
        vocabulary.names().forEach((name, known) -> row(page, name, CompilerWords.of(known.type()), known.meaning()));
        row(page, "each", "what for-each goes through", "the thing being judged");
        row(page, "limit.NAME", "a quantity", "a limit of the rule, as it is in force");
        functions(page);
        for (Struct struct : vocabulary.structs()) {
            page.append("\n## ").append(struct.name()).append("\n\n");
            page.append(struct.meaning().isEmpty() ? "" : struct.meaning() + "\n\n");
            page.append("| name | holds | SI unit | meaning |\n|---|---|---|---|\n");
            for (Struct.Field field : struct.fields()) {
                QuantityKind kind = field.kind();
                page.append("| `").append(field.name()).append("` | ").append(CompilerWords.of(field.type()));
                page.append(" | ").append(kind == null ? "" : kind.siSymbol());
                page.append(" | ").append(field.meaning()).append(" |\n");
            }
        }
        return page.toString();
    }

    private static void row(StringBuilder page, String name, String holds, String meaning) {
        page.append("| `")
                .append(name)
                .append("` | ")
                .append(holds)
                .append(" | ")
                .append(meaning)
                .append(" |\n");
    }

    private static void functions(StringBuilder page) {
        page.append("""

                ## Units

                Each is a function of a number, `bar(4)` or `4.bar()`.

                | kind | units |
                |---|---|
                """);
        for (QuantityKind kind : QuantityKind.values()) {
            List<String> words = UnitWords.ALL.entrySet().stream()
                    .filter(e -> e.getValue().kind() == kind)
                    .map(e -> "`" + e.getKey() + "`" + spelled(e.getKey(), e.getValue()))
                    .toList();
            if (!words.isEmpty()) {
                page.append("| ").append(kind == QuantityKind.RATIO ? "a number" : kind.label());
                page.append(" | ").append(String.join(", ", words)).append(" |\n");
            }
        }
        page.append("""

                ## Operators and functions

                `<` `<=` `>` `>=` `==` `!=` go with two of the same kind, `+` and `-` too; `*` and `/` scale by a number,
                and `/` of two of the same kind is a number. Two temperatures have a difference and no sum. Beyond the
                Common Expression Language's own, `most`, `least` and `total` take a list of quantities of one kind.
                Products of kinds:

                """);
        Set<String> products = new LinkedHashSet<>();
        for (List<QuantityKind> p : Operators.PRODUCTS) {
            products.add("- " + p.get(0).label() + " × " + p.get(1).label() + " = "
                    + p.get(2).label());
        }
        page.append(products.stream().collect(Collectors.joining("\n"))).append('\n');
    }

    private static String spelled(String word, TradeUnit unit) {
        return word.equals(unit.symbol()) ? "" : " (" + unit.symbol() + ")";
    }
}
