package org.leat.expression;

import dev.cel.common.CelAbstractSyntaxTree;
import dev.cel.common.ast.CelConstant;
import dev.cel.common.ast.CelExpr;
import dev.cel.common.ast.CelExpr.ExprKind.Kind;
import dev.cel.common.navigation.CelNavigableAst;
import dev.cel.common.navigation.CelNavigableExpr;
import dev.cel.common.navigation.TraversalOrder;
import dev.cel.runtime.CelEvaluationException;
import dev.cel.runtime.CelRuntime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What can never be computed, whatever the plant: told when a rule is read, not when it is judged. */
final class Constants {

    private final CelAbstractSyntaxTree tree;
    private final String text;
    private final CelRuntime runtime;
    private final Map<Long, Object> values = new HashMap<>();
    private final Set<Long> constant = new HashSet<>();
    private final Set<Long> faulty = new HashSet<>();
    private final List<ExpressionProblem> problems = new ArrayList<>();

    private Constants(CelAbstractSyntaxTree tree, String text, CelRuntime runtime) {
        this.tree = tree;
        this.text = text;
        this.runtime = runtime;
    }

    static List<ExpressionProblem> faults(CelAbstractSyntaxTree tree, String text, CelRuntime runtime) {
        Constants constants = new Constants(tree, text, runtime);
        CelNavigableAst.fromAst(tree)
                .getRoot()
                .allNodes(TraversalOrder.POST_ORDER)
                .forEach(constants::look);
        return constants.problems;
    }

    private void look(CelNavigableExpr node) {
        CelExpr expr = node.expr();
        List<CelExpr> children = node.children().map(CelNavigableExpr::expr).toList();
        if (children.stream().anyMatch(c -> faulty.contains(c.id()))) {
            faulty.add(expr.id());
            return;
        }
        boolean all = children.stream().allMatch(c -> constant.contains(c.id()));
        if (expr.getKind() == Kind.CONSTANT || (all && (expr.getKind() == Kind.CALL || expr.getKind() == Kind.LIST))) {
            constant.add(expr.id());
            evaluate(expr, expr);
        } else if (expr.getKind() == Kind.CALL) {
            halfConstant(expr);
        }
    }

    /** What one constant argument alone can spoil. */
    private void halfConstant(CelExpr expr) {
        String function = expr.call().function();
        List<CelExpr> args = expr.call().args();
        CelExpr last = args.isEmpty() ? expr : args.get(args.size() - 1);
        if ((function.equals("_/_") || function.equals("_%_")) && isNothing(values.get(last.id()))) {
            fault(expr, "a division by 0");
        } else if (function.equals("matches") && constant.contains(last.id())) {
            CelExpr empty =
                    CelExpr.ofConstant(expr.call().target().orElse(args.get(0)).id(), CelConstant.ofValue(""));
            boolean member = expr.call().target().isPresent();
            evaluate(
                    expr,
                    CelExpr.ofCall(
                            expr.id(),
                            member ? Optional.of(empty) : Optional.empty(),
                            function,
                            member
                                    ? com.google.common.collect.ImmutableList.of(last)
                                    : com.google.common.collect.ImmutableList.of(empty, last)));
        }
    }

    private void evaluate(CelExpr at, CelExpr whole) {
        try {
            Object value = runtime.createProgram(CelAbstractSyntaxTree.newCheckedAst(
                            whole, tree.getSource(), tree.getReferenceMap(), tree.getTypeMap()))
                    .eval();
            if (value instanceof Double || value instanceof Magnitude) {
                if (!Double.isFinite(Expression.si(value))) {
                    fault(at, "a number out of reach");
                    return;
                }
            }
            values.put(at.id(), value);
        } catch (CelEvaluationException | RuntimeException e) {
            fault(at, CompilerWords.evaluation(String.valueOf(e.getMessage())));
        }
    }

    private void fault(CelExpr at, String found) {
        faulty.add(at.id());
        problems.add(Bounds.at(tree, text, at, found, "what can be computed"));
    }

    private static boolean isNothing(@Nullable Object value) {
        return (value instanceof Number || value instanceof Magnitude) && Expression.si(value) == 0;
    }
}
