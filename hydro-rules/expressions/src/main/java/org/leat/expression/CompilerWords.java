package org.leat.expression;

import dev.cel.common.types.CelType;
import dev.cel.common.types.ListType;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.leat.file.Names;
import org.leat.file.ProblemKind;

/** The compiler's messages in the words of this project. */
final class CompilerWords {

    private static final Pattern OVERLOAD =
            Pattern.compile("found no matching overload for '([^']+)' applied to '(.*?)\\((.*)\\)'.*", Pattern.DOTALL);
    private static final Pattern UNDECLARED = Pattern.compile("undeclared reference to '([^']+)'.*", Pattern.DOTALL);
    private static final Pattern FIELD = Pattern.compile("undefined field '([^']+)'.*", Pattern.DOTALL);
    private static final Pattern FIELDLESS = Pattern.compile("type '([^']+)' does not support field selection");
    private static final Pattern RANGE = Pattern.compile("expression of type '([^']+)' cannot be range.*");
    private static final Pattern RESERVED = Pattern.compile("reserved identifier: (.*)");
    private static final Pattern NUMBER = Pattern.compile("For input string: \"(.*)\".*");
    private static final Pattern TOKEN = Pattern.compile("token recognition error at: '(.*)'", Pattern.DOTALL);
    private static final Pattern INPUT = Pattern.compile(
            "(mismatched input|extraneous input|missing '\\)' at|no viable alternative at input) '(.*?)'(?: expecting (.*))?",
            Pattern.DOTALL);

    private static final Map<String, String> WORDS_OF_OTHERS =
            Map.of("and", "&&", "or", "||", "not", "!", "=", "==", "<>", "!=", "&", "&&", "|", "||");

    private CompilerWords() {}

    static String of(CelType type) {
        if (type instanceof ListType list && list.hasElemType()) {
            return "a list, each " + list.elemType().name();
        }
        return of(type.name());
    }

    private static String of(String type) {
        return switch (type.strip()) {
            case "bool" -> "true or false";
            case "int" -> "a whole number";
            case "double" -> "a number";
            case "string" -> "text";
            default -> type.strip();
        };
    }

    /** {@return whether a message says that the text cannot be parsed: what follows it is hearsay} */
    static boolean syntax(String message) {
        return TOKEN.matcher(message).matches() || INPUT.matcher(message).matches();
    }

    /**
     * {@return a message as a problem}
     *
     * @param known names that an expression can begin with
     * @param fields names of the fields of all things
     */
    static ExpressionProblem problem(int line, int column, String message, List<String> known, List<String> fields) {
        Matcher undeclared = UNDECLARED.matcher(message);
        if (undeclared.matches()) {
            return unknown(line, column, undeclared.group(1), known);
        }
        Matcher field = FIELD.matcher(message);
        if (field.matches()) {
            return unknown(line, column, field.group(1), fields);
        }
        Matcher overload = OVERLOAD.matcher(message);
        if (overload.matches()) {
            return overload(line, column, overload.group(1), overload.group(2) + overload.group(3));
        }
        String[] said = said(message);
        String hint = said.length > 2 ? said[2] : "";
        return new ExpressionProblem(ProblemKind.EXPRESSION, line, column, said[0], said[1], hint);
    }

    private static ExpressionProblem unknown(int line, int column, String name, List<String> known) {
        String nearest = Names.nearest(name, known);
        return new ExpressionProblem(ProblemKind.UNKNOWN_NAME, line, column, name, "a name", nearest);
    }

    private static ExpressionProblem overload(int line, int column, String function, String types) {
        String name = function.replace("@", "").replace("_", " ").strip();
        boolean mixed = types.contains("int") && types.contains("double");
        boolean unitless = !mixed && types.matches(".*\\b(int|double)\\b.*") && types.contains(",");
        String expected = mixed
                ? "two numbers of one sort; write a whole number as 2.0"
                : unitless ? "two of one kind; a number may need a unit, as in 4.bar()" : "what goes together";
        return ExpressionProblem.of(line, column, "\"" + name + "\" with (" + types.strip() + ")", expected);
    }

    /** Found, expected, and perhaps a hint. */
    private static String[] said(String message) {
        Matcher token = TOKEN.matcher(message);
        if (token.matches()) {
            return token(token.group(1).strip());
        }
        Matcher input = INPUT.matcher(message);
        if (input.matches()) {
            String found = input.group(2);
            String expecting = input.group(3) == null ? "" : input.group(3);
            String shown = found.equals("<EOF>") ? "the end" : "\"" + found + "\"";
            return new String[] {shown, expected(input.group(1), found, expecting)};
        }
        Matcher fieldless = FIELDLESS.matcher(message);
        if (fieldless.matches()) {
            return new String[] {"a field of " + of(fieldless.group(1)), "a thing that has fields"};
        }
        Matcher range = RANGE.matcher(message);
        if (range.matches()) {
            return new String[] {of(range.group(1)), "a list to go through"};
        }
        Matcher reserved = RESERVED.matcher(message);
        if (reserved.matches()) {
            return new String[] {"\"" + reserved.group(1) + "\"", "a name that is no reserved word"};
        }
        Matcher number = NUMBER.matcher(message);
        if (number.matches()) {
            return new String[] {number.group(1), "a number in reach"};
        }
        if (message.contains("argument to has()")) {
            return new String[] {"has() of what is no field", "a field, as in has(design.runner)"};
        }
        if (message.contains("must be a simple name")) {
            return new String[] {"what is no name", "a name for each thing gone through, as in all(s, s.length > 1.m())"
            };
        }
        if (message.contains("code point size")) {
            return new String[] {"too long an expression", "at most " + Expressions.LONGEST + " characters"};
        }
        if (message.contains("recursion limit")) {
            return new String[] {"an expression nested too deep", "at most " + Expressions.DEEPEST + " levels"};
        }
        int candidates = message.indexOf(" (candidates:");
        return new String[] {
            "what is not understood", "an expression", candidates < 0 ? message : message.substring(0, candidates)
        };
    }

    private static String[] token(String found) {
        if (found.startsWith("'") || found.startsWith("\"")) {
            return found.contains("\\")
                    ? new String[] {"an escape that is not known", "\\\\, \\', \\\" or \\n, or none"}
                    : new String[] {"text that does not end", "the closing quotation mark"};
        }
        String meant = WORDS_OF_OTHERS.get(found);
        return new String[] {
            found.isEmpty() ? "a character that cannot stand here" : "\"" + found + "\"",
            meant == null ? "a character of an expression" : meant
        };
    }

    private static String expected(String what, String found, String expecting) {
        if (what.startsWith("missing")) {
            return "the closing )";
        }
        if (what.startsWith("no viable")) {
            return "a name";
        }
        String meant = WORDS_OF_OTHERS.get(found);
        if (meant != null) {
            return meant;
        }
        if (expecting.contains("NUM_INT")) {
            return expecting.contains("')'") ? "a value, or the closing )" : "a value";
        }
        for (String close : List.of("]", "}")) {
            if (expecting.contains("'" + close + "'")) {
                return "a comma, or the closing " + close;
            }
        }
        if (expecting.contains("':'")) {
            return "a colon and what it is otherwise";
        }
        return found.equals(")") ? "an opening ( before it" : "an operator before it, as + or &&";
    }

    /** {@return why an expression could not be computed} */
    static String evaluation(String message) {
        String said = message.replaceAll("^evaluation error( at <input>:\\d+)?: ", "");
        if (said.contains("by zero")) {
            return "a division by 0";
        }
        if (said.contains("regexp")) {
            return "a pattern that is no regular expression: " + said.replaceAll("^.*parsing regexp: ", "");
        }
        if (said.contains("Index out of bounds")) {
            return "a place beyond the list's end:" + said.substring(said.lastIndexOf(':') + 1);
        }
        if (said.contains("For input string")) {
            return "text that is no number";
        }
        if (said.contains("overflow")) {
            return "a whole number out of reach";
        }
        return said;
    }
}
