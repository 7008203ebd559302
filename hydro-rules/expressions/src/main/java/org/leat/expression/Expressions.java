package org.leat.expression;

import com.google.common.collect.ImmutableCollection;
import com.google.common.collect.ImmutableMap;
import dev.cel.checker.CelStandardDeclarations;
import dev.cel.checker.CelStandardDeclarations.StandardFunction;
import dev.cel.common.CelAbstractSyntaxTree;
import dev.cel.common.CelIssue;
import dev.cel.common.CelOptions;
import dev.cel.common.CelValidationResult;
import dev.cel.common.types.CelKind;
import dev.cel.common.types.CelType;
import dev.cel.common.types.CelTypeProvider;
import dev.cel.common.types.ListType;
import dev.cel.common.types.SimpleType;
import dev.cel.compiler.CelCompilerBuilder;
import dev.cel.compiler.CelCompilerFactory;
import dev.cel.parser.CelStandardMacro;
import dev.cel.runtime.CelEvaluationException;
import dev.cel.runtime.CelRuntime;
import dev.cel.runtime.CelRuntimeFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leat.quantity.QuantityKind;

/**
 * Compiles expressions. Their language is the Common Expression Language (cel-spec), less what could grow without bound
 * (joining text and lists, comparing lists) or leaves the types (dyn, type, time stamps), with units, the products of
 * quantities, {@code most}, {@code least} and {@code total} of a list added. Safe to share between threads.
 */
public final class Expressions {

    /** The longest expression, code points. */
    public static final int LONGEST = 4000;

    static final int DEEPEST = 40;

    private static final CelOptions OPTIONS = CelOptions.current()
            .maxExpressionCodePointSize(LONGEST)
            .maxParseRecursionDepth(DEEPEST)
            .comprehensionMaxIterations(10_000)
            .enableHeterogeneousNumericComparisons(true)
            .enableHiddenAccumulatorVar(true)
            .build();

    private static final CelStandardDeclarations STANDARD = CelStandardDeclarations.newBuilder()
            .excludeFunctions(
                    StandardFunction.BYTES,
                    StandardFunction.DYN,
                    StandardFunction.TYPE,
                    StandardFunction.DURATION,
                    StandardFunction.TIMESTAMP,
                    StandardFunction.UINT)
            .build();

    private final Vocabulary vocabulary = new Vocabulary();
    private final CelTypeProvider types = types(vocabulary);
    private final List<Overload> overloads = Operators.all();
    private final CelRuntime runtime = CelRuntimeFactory.legacyCelRuntimeBuilder()
            .setOptions(OPTIONS)
            .addFunctionBindings(overloads.stream().map(Overload::bound).toList())
            .build();

    /** What came of compiling: an expression, or what is wrong with it. */
    public sealed interface Compiled {}

    /**
     * It cannot be used.
     *
     * @param problems what is wrong with it; at least one
     */
    public record Refused(List<ExpressionProblem> problems) implements Compiled {
        public Refused {
            problems = List.copyOf(problems);
        }
    }

    /**
     * It can be used.
     *
     * @param expression to be evaluated
     */
    public record Understood(Expression expression) implements Compiled {}

    /** A type of expressions, as it is asked for and told. */
    public record Type(CelType cel) {
        /** true or false. */
        public static final Type CONDITION = new Type(SimpleType.BOOL);

        /** {@return the type of a quantity} */
        public static Type of(QuantityKind kind) {
            return new Type(Kinds.type(kind));
        }

        /** {@return the kind of quantity it is; a plain number is a ratio; null for anything else} */
        public @Nullable QuantityKind kind() {
            for (QuantityKind kind : QuantityKind.values()) {
                if (Kinds.type(kind).equals(cel)) {
                    return kind;
                }
            }
            return cel.equals(SimpleType.INT) ? QuantityKind.RATIO : null;
        }

        /** {@return whether it is text} */
        public boolean isText() {
            return cel.equals(SimpleType.STRING);
        }

        /** {@return whether it is true or false} */
        public boolean isCondition() {
            return cel.equals(SimpleType.BOOL);
        }

        /** {@return what each thing of a list of things is; null for anything else} */
        public @Nullable Type item() {
            return cel instanceof ListType list && list.elemType().kind() == CelKind.STRUCT
                    ? new Type(list.elemType())
                    : null;
        }

        /** {@return the type in words} */
        public String words() {
            return CompilerWords.of(cel);
        }
    }

    /**
     * {@return an expression over a plant}
     *
     * @param each what {@code each} is; null where there is none
     * @param limits names and kinds of the limits, read as {@code limit.name}
     */
    public Compiled compile(String text, @Nullable Type each, Map<String, QuantityKind> limits) {
        CelCompilerBuilder builder = CelCompilerFactory.standardCelCompilerBuilder()
                .setOptions(OPTIONS)
                .setStandardEnvironmentEnabled(false)
                .setStandardDeclarations(STANDARD)
                .setStandardMacros(CelStandardMacro.STANDARD_MACROS)
                .setTypeProvider(types)
                .addFunctionDeclarations(Overload.declarations(overloads));
        vocabulary.names().forEach((name, known) -> builder.addVar(name, known.type()));
        if (each != null) {
            builder.addVar("each", each.cel());
        }
        limits.forEach((name, kind) -> builder.addVar("limit." + name, Kinds.type(kind)));
        CelValidationResult result = builder.build().compile(text);
        if (result.hasError()) {
            List<String> known = new ArrayList<>(vocabulary.names().keySet());
            limits.keySet().forEach(name -> known.add("limit." + name));
            List<CelIssue> issues = result.getErrors();
            boolean unparsed = CompilerWords.syntax(issues.get(0).getMessage());
            return new Refused(issues.stream()
                    .limit(unparsed ? 1 : issues.size())
                    .map(issue -> CompilerWords.problem(
                            Math.max(1, issue.getSourceLocation().getLine()),
                            Math.max(0, issue.getSourceLocation().getColumn()) + 1,
                            issue.getMessage(),
                            known,
                            vocabulary.fields()))
                    .distinct()
                    .toList());
        }
        try {
            CelAbstractSyntaxTree tree = result.getAst();
            List<ExpressionProblem> wrong = Bounds.beyond(tree, text);
            if (wrong.isEmpty()) {
                wrong = Constants.faults(tree, text, runtime);
            }
            if (!wrong.isEmpty()) {
                return new Refused(wrong);
            }
            return new Understood(
                    new Expression(runtime.createProgram(tree), new Type(tree.getResultType()), vocabulary.names()));
        } catch (dev.cel.common.CelValidationException | CelEvaluationException e) {
            return new Refused(List.of(ExpressionProblem.of(
                    1, 1, CompilerWords.evaluation(String.valueOf(e.getMessage())), "what can be computed")));
        }
    }

    private static CelTypeProvider types(Vocabulary vocabulary) {
        ImmutableMap.Builder<String, CelType> named = ImmutableMap.builder();
        vocabulary.structs().forEach(struct -> named.put(struct.name(), struct.type()));
        ImmutableMap<String, CelType> byName = named.buildOrThrow();
        return new CelTypeProvider() {
            @Override
            public ImmutableCollection<CelType> types() {
                return byName.values();
            }

            @Override
            public Optional<CelType> findType(String name) {
                return Optional.ofNullable(byName.get(name));
            }
        };
    }
}
