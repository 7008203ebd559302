package org.leat.expression;

import dev.cel.common.CelAbstractSyntaxTree;
import dev.cel.common.ast.CelConstant;
import dev.cel.common.ast.CelExpr;
import dev.cel.common.ast.CelExpr.ExprKind.Kind;
import dev.cel.common.ast.CelReference;
import dev.cel.common.navigation.CelNavigableAst;
import dev.cel.common.types.CelKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Refuses what compiles but could grow without bound: joined text and lists, compared lists, made things. */
final class Bounds {

    private Bounds() {}

    static List<ExpressionProblem> beyond(CelAbstractSyntaxTree tree, String text) {
        List<ExpressionProblem> problems = new ArrayList<>();
        CelNavigableAst.fromAst(tree).getRoot().allNodes().forEach(node -> {
            CelExpr expr = node.expr();
            List<String> said = beyond(tree, expr);
            if (said != null) {
                problems.add(at(tree, text, expr, said.get(0), said.get(1)));
            }
        });
        return problems;
    }

    /** Found and expected. */
    private static @Nullable List<String> beyond(CelAbstractSyntaxTree tree, CelExpr expr) {
        if (expr.getKind() == Kind.STRUCT) {
            return List.of("a thing that is made", "what the plant has");
        }
        if (expr.getKind() != Kind.CALL) {
            return null;
        }
        List<CelExpr> args = expr.call().args();
        Optional<CelReference> reference = tree.getReference(expr.id());
        List<String> overloads =
                reference.isPresent() ? List.copyOf(reference.get().overloadIds()) : List.of();
        if (overloads.contains("add_string") || overloads.contains("add_bytes")) {
            return List.of("joined text", "text as it stands");
        }
        if (overloads.contains("add_list") && !accumulates(args.get(0))) {
            return List.of("joined lists", "one list");
        }
        return switch (expr.call().function()) {
            case "_==_", "_!=_" ->
                args.stream().anyMatch(a -> isLarge(tree, a))
                        ? List.of("a list or a thing that is compared", "single values")
                        : null;
            case "@in" ->
                isLarge(tree, args.get(0)) ? List.of("a list or a thing that is looked for", "a single value") : null;
            case "matches" -> pattern(args.get(args.size() - 1));
            default -> null;
        };
    }

    /** A counted repetition, nested, makes a pattern of any size from a few characters. */
    private static @Nullable List<String> pattern(CelExpr pattern) {
        boolean written =
                pattern.getKind() == Kind.CONSTANT && pattern.constant().getKind() == CelConstant.Kind.STRING_VALUE;
        if (!written || pattern.constant().stringValue().length() > 200) {
            return List.of("a pattern that is put together or long", "one written out, in at most 200 characters");
        }
        return pattern.constant().stringValue().contains("{")
                ? List.of("a pattern with a counted repetition { }", "one without")
                : null;
    }

    /** A macro gathers its list so; nobody can write that name. */
    private static boolean accumulates(CelExpr first) {
        return first.getKind() == Kind.IDENT && first.ident().name().startsWith("@");
    }

    private static boolean isLarge(CelAbstractSyntaxTree tree, CelExpr expr) {
        CelKind kind = tree.getType(expr.id()).map(t -> t.kind()).orElse(CelKind.DYN);
        return kind == CelKind.LIST || kind == CelKind.MAP || kind == CelKind.STRUCT || kind == CelKind.DYN;
    }

    static ExpressionProblem at(CelAbstractSyntaxTree tree, String text, CelExpr expr, String found, String expected) {
        Integer offset = tree.getSource().getPositionsMap().get(expr.id());
        int line = 1;
        int column = 1;
        int[] points = text.codePoints().limit(offset == null ? 0 : offset).toArray();
        for (int point : points) {
            column = point == '\n' ? 1 : column + 1;
            line += point == '\n' ? 1 : 0;
        }
        return ExpressionProblem.of(line, column, found, expected);
    }
}
