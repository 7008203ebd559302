package org.leat.file;

import java.util.Locale;
import org.apiguardian.api.API;

/**
 * What can be wrong with a design file, a settings file, a rule file or a log. Of values that are not understood the hint
 * is the very words to write in their place, where they can be known.
 */
@API(status = API.Status.STABLE, since = "0.1")
public enum ProblemKind {
    /** The file cannot be opened or is no ordinary file; expected: why. */
    UNREADABLE,
    /** Larger than is read; found: the size, expected: the limit. */
    TOO_LARGE,
    /** The bytes are not UTF-8; found: the byte or the other encoding. */
    NOT_UTF_8,
    /** A character no text file holds; found: its code. */
    CONTROL_CHARACTER,
    /** Nothing but blanks and comments. */
    EMPTY,
    /** No YAML or JSON; expected: what the parser missed. */
    SYNTAX,
    /** Nested too deep; expected: the limit. */
    TOO_DEEP,
    /** An anchor or alias; found: its name. */
    ALIAS,
    /** A merge key. */
    MERGE_KEY,
    /** A tag; found: the tag. */
    TAG,
    /** A second document in one file. */
    SECOND_DOCUMENT,
    /** A field name that is a list or a mapping. */
    FIELD_NAME,
    /** The same field again; hint: line of the first. */
    DUPLICATE_FIELD,
    /** No {@code format}; expected: the one read. */
    MISSING_FORMAT,
    /** A version of the format that is not read; expected: the one read. */
    UNSUPPORTED_FORMAT,
    /** Hint: the field that was probably meant; expected: another way to tell it; choices: the known fields. */
    UNKNOWN_FIELD,
    /** Expected: what belongs there. */
    MISSING_FIELD,
    /** None of several fields of which one is needed; expected: which. */
    MISSING_CHOICE,
    /** A mapping, list or plain value where another belongs. */
    WRONG_SHAPE,
    /** A field without a value. */
    NO_VALUE,
    /** Not one of the words; hint: the nearest; choices: all. */
    UNKNOWN_WORD,
    /** Expected: the quantity. */
    NOT_A_QUANTITY,
    /** A bare number; expected: the quantity; choices: its units. */
    NO_UNIT,
    /** A unit nobody knows; expected: the quantity; choices: its units. */
    UNKNOWN_UNIT,
    /** A unit of something else; hint: of what; expected: the quantity; choices: its units. */
    WRONG_UNIT,
    /** A comma where the decimal point belongs. */
    DECIMAL_COMMA,
    /** A tolerance where none is asked. */
    TOLERANCE,
    /** A negative tolerance. */
    NEGATIVE_TOLERANCE,
    /** Infinite, not a number, or too large. */
    NOT_FINITE,
    /** Not a number. */
    NOT_A_NUMBER,
    /** Not a whole number. */
    NOT_WHOLE,
    /** Neither true nor false. */
    NOT_YES_NO,
    /** A number or truth value where text belongs. */
    NOT_TEXT,
    /** Not a day of the calendar. */
    NOT_A_DAY,
    /** A value that can never be; expected: the limit. */
    IMPOSSIBLE_VALUE,
    /** Two values that cannot both be; expected: how they would agree. */
    CONTRADICTION,
    /** A parts file outside the design file's folder. */
    PARTS_FILE_OUTSIDE,
    /** A parts file that is not there or cannot be opened. */
    PARTS_FILE_MISSING,
    /** Parts files where none can be looked up. */
    PARTS_NOT_ALLOWED,
    /** No parts file has that part; hint: the nearest; choices: all. */
    UNKNOWN_PART,
    /** A part that takes itself. */
    PART_CYCLE,
    /** No rule is called that; hint: the nearest. */
    UNKNOWN_RULE,
    /** The rule has no such limit; hint: the nearest; choices: all. */
    UNKNOWN_LIMIT,
    /** Nothing is said to be changed; expected: what could be. */
    NOTHING_CHANGED,
    /** What can hurt someone is hidden or played down, and no named person answers for it; expected: what to write. */
    NOBODY_ANSWERS,
    /** A settings file that is not there or cannot be read; expected: why. */
    SETTINGS_FILE_MISSING,
    /** A settings file that builds on itself; expected: by what way. */
    SETTINGS_CYCLE,
    /** No pack is called that; expected: why. */
    UNKNOWN_PACK,
    /** A name in an expression that nothing has; hint: the nearest. */
    UNKNOWN_NAME,
    /** An expression that is none, does not fit, or cannot be computed; expected: what would do. */
    EXPRESSION,
    /** A placeholder of a text that nothing fills, or not so; expected: what would do. */
    PLACEHOLDER,
    /** A log that is none of ours; expected: what is. */
    NOT_OUR_LOG,
    /** More values than any design holds, or more parts files. */
    TOO_MANY_VALUES,
    /** More problems than are listed; found: how many are. */
    MORE_PROBLEMS;

    /** {@return the kind as a word for machines} */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
