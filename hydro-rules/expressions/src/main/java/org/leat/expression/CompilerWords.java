package org.leat.expression;

import dev.cel.common.types.CelType;
import dev.cel.common.types.ListType;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.leat.file.Names;

/** The compiler's messages in the words of this project. */
final class CompilerWords {

    private static final Pattern OVERLOAD =
            Pattern.compile("found no matching overload for '([^']+)' applied to '(.*?)\\((.*)\\)'.*", Pattern.DOTALL);
    private static final Pattern UNDECLARED = Pattern.compile("undeclared reference to '([^']+)'.*", Pattern.DOTALL);

    private CompilerWords() {}

    static String of(CelType type) {
        if (type instanceof ListType list && list.hasElemType()) {
            return "a list, each " + list.elemType().name();
        }
        return switch (type.name()) {
            case "bool" -> "true or false";
            case "int" -> "a whole number";
            case "double" -> "a number";
            case "string" -> "text";
            default -> type.name();
        };
    }

    static String problem(String message, List<String> known) {
        Matcher undeclared = UNDECLARED.matcher(message);
        if (undeclared.matches()) {
            String nearest = Names.nearest(undeclared.group(1), known);
            return "nothing is called \"" + undeclared.group(1) + "\""
                    + (nearest.isEmpty() ? "" : "; did you mean \"" + nearest + "\"?");
        }
        Matcher overload = OVERLOAD.matcher(message);
        if (overload.matches()) {
            String types = overload.group(2) + overload.group(3);
            return "\"" + overload.group(1).replace("_", " ").strip() + "\" does not go with (" + types.strip() + ")"
                    + hint(types);
        }
        int candidates = message.indexOf(" (candidates:");
        return candidates < 0 ? message : message.substring(0, candidates);
    }

    private static String hint(String types) {
        boolean mixed = types.contains("int") && types.contains("double");
        boolean unitless = !mixed && types.matches(".*\\b(int|double)\\b.*") && types.contains(",");
        return mixed ? "; write a whole number as 2.0" : unitless ? "; a number may need a unit, as in 4.bar()" : "";
    }

    static String evaluation(String message) {
        return message.replaceAll("^evaluation error( at <input>:\\d+)?: ", "");
    }
}
