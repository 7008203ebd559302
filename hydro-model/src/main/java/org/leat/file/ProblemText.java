package org.leat.file;

import java.util.List;
import java.util.Locale;
import org.apiguardian.api.API;
import org.leat.design.ElementPath;
import org.leat.design.Texts;

/** Words problems for people. Control characters of files come out as their code. */
@API(status = API.Status.STABLE, since = "0.1")
public final class ProblemText {

    private ProblemText() {}

    /** {@return position and sentence: {@code plant.yaml:12:20: …}} */
    public static String line(Problem problem) {
        return safe(problem.position().toString()) + ": " + of(problem);
    }

    /** {@return path and sentence, without position} */
    public static String of(Problem p) {
        String where = p.path().equals(ElementPath.ROOT) ? "" : p.path() + ": ";
        return safe(where + worded(p));
    }

    /** {@return the sentence, without position and path} */
    public static String sentence(Problem p) {
        return safe(worded(p));
    }

    private static String worded(Problem p) {
        String found = "\"" + p.found() + "\"";
        return switch (p.kind()) {
            case UNREADABLE -> "the file cannot be read; expected " + p.expected();
            case TOO_LARGE -> "the file is too large: " + p.found() + "; expected " + p.expected();
            case NOT_UTF_8 -> "the file is not UTF-8 text: found " + p.found();
            case CONTROL_CHARACTER -> "found the control character " + p.found() + " in a text file";
            case EMPTY -> "the file holds nothing; expected " + p.expected();
            case SYNTAX -> "not readable here; expected " + p.expected();
            case TOO_DEEP -> "nested too deep; expected " + p.expected();
            case ALIAS -> "anchors and aliases are not read: found " + p.found() + "; write " + p.expected();
            case MERGE_KEY -> "merge keys are not read; write " + p.expected();
            case TAG -> "tags are not read: found " + p.found();
            case SECOND_DOCUMENT -> "a second document begins here; expected one in a file";
            case FIELD_NAME -> "expected " + p.expected();
            case DUPLICATE_FIELD ->
                found + " is given twice" + (p.hint().isEmpty() ? "" : ", first in line " + p.hint());
            case MISSING_FORMAT -> "the version of the file format is missing; write " + p.expected();
            case UNSUPPORTED_FORMAT -> "format " + p.found() + " is not read here; expected " + p.expected();
            case UNKNOWN_FIELD ->
                "no field is called " + found + meant(p, "known here")
                        + (p.expected().isEmpty() ? "" : (p.hint().isEmpty() ? "; write " : " Write ") + p.expected());
            case MISSING_FIELD -> "missing; expected " + p.expected() + about(p) + listed(": ", p.choices());
            case MISSING_CHOICE -> "missing; expected " + p.expected();
            case WRONG_SHAPE -> "found " + p.found() + "; expected " + p.expected() + write(p);
            case NO_VALUE -> "has no value; expected " + p.expected() + ", or leave the field out";
            case UNKNOWN_WORD -> "found " + found + meant(p, "expected one of");
            case NOT_A_QUANTITY ->
                "found " + found + "; expected " + p.expected() + ", a number with a unit" + listed(": ", p.choices())
                        + write(p);
            case NO_UNIT ->
                "found " + found + " without a unit; expected " + p.expected() + listed(" in ", p.choices()) + write(p);
            case UNKNOWN_UNIT ->
                "found " + found + ", a unit not known; expected " + p.expected() + listed(" in ", p.choices())
                        + write(p);
            case WRONG_UNIT ->
                "found " + found + ", " + p.hint() + ", where " + p.expected() + " belongs" + listed(": ", p.choices());
            case DECIMAL_COMMA -> "found " + found + "; a decimal point belongs there, no comma" + write(p);
            case TOLERANCE -> "found " + found + "; no tolerance belongs here" + write(p);
            case NEGATIVE_TOLERANCE -> "found " + found + "; a tolerance cannot be negative" + write(p);
            case NOT_FINITE -> "found " + found + ", which is no finite number in reach; expected " + p.expected();
            case NOT_A_NUMBER, NOT_WHOLE, NOT_YES_NO -> "found " + found + "; expected " + p.expected() + write(p);
            case NOT_TEXT ->
                "found " + found + "; expected text: "
                        + (p.hint().isEmpty() ? "put it in quotation marks" : "write " + p.hint());
            case NOT_A_DAY -> "found " + found + "; expected " + p.expected() + write(p);
            case UNKNOWN_RULE -> "no rule is called " + found + meant(p, "known");
            case UNKNOWN_LIMIT -> "the rule has no limit called " + found + meant(p, "known here");
            case NOTHING_CHANGED -> "nothing is changed here; expected " + p.expected();
            case NOBODY_ANSWERS ->
                "an error of this rule can hurt someone, and nobody answers for hiding it or playing it down; expected "
                        + p.expected();
            case SETTINGS_FILE_MISSING -> "the settings file " + found + " cannot be read: " + p.expected();
            case SETTINGS_CYCLE -> "the settings file " + found + " builds on itself: " + p.expected();
            case UNKNOWN_PACK -> "the pack " + found + " cannot be loaded: " + p.expected();
            case UNKNOWN_NAME -> "nothing is called " + found + meant(p, "known here");
            case EXPRESSION -> "found " + p.found() + "; expected " + p.expected() + about(p);
            case PLACEHOLDER -> "found " + p.found() + "; expected " + p.expected() + listed(": ", p.choices());
            case NOT_OUR_LOG -> "found " + p.found() + "; expected " + p.expected();
            case IMPOSSIBLE_VALUE -> "found " + p.found() + ", which cannot be; expected " + p.expected();
            case CONTRADICTION -> "found " + p.found() + ", which contradicts the rest; expected " + p.expected();
            case PARTS_FILE_OUTSIDE -> "the parts file " + found + " lies outside the design file's folder";
            case PARTS_FILE_MISSING -> "the parts file " + found + " cannot be read: " + p.expected();
            case PARTS_NOT_ALLOWED -> "the parts file " + found + " cannot be looked up for a design without a folder";
            case UNKNOWN_PART -> "no part is called " + found + meant(p, "known");
            case PART_CYCLE -> "the part " + found + " takes itself: " + p.expected();
            case TOO_MANY_VALUES ->
                "too much for one design" + (p.found().isEmpty() ? "" : ": " + p.found()) + "; expected "
                        + p.expected();
            case MORE_PROBLEMS -> "more problems follow; the first " + p.found() + " are listed";
        };
    }

    /** The very words, where they are known. */
    private static String write(Problem p) {
        return p.hint().isEmpty() ? "" : "; write \"" + p.hint() + "\"";
    }

    private static String about(Problem p) {
        return p.hint().isEmpty() ? "" : ": " + p.hint();
    }

    private static String meant(Problem p, String known) {
        if (!p.hint().isEmpty()) {
            return "; did you mean \"" + p.hint() + "\"?";
        }
        return listed("; " + known + ": ", p.choices());
    }

    private static String listed(String before, List<String> choices) {
        return choices.isEmpty() ? "" : before + String.join(", ", choices);
    }

    /** Control characters and marks of writing direction as their code. */
    private static String safe(String text) {
        StringBuilder out = new StringBuilder(text.length());
        Texts.disarmed(text).codePoints().forEach(c -> {
            int type = Character.getType(c);
            if (type == Character.CONTROL
                    || type == Character.FORMAT
                    || type == Character.SURROGATE
                    || type == Character.LINE_SEPARATOR
                    || type == Character.PARAGRAPH_SEPARATOR) {
                out.append(String.format(Locale.ROOT, "\\u%04X", c));
            } else {
                out.appendCodePoint(c);
            }
        });
        return out.toString();
    }
}
